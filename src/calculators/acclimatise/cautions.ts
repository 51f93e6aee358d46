import type { Caution } from '../../model/evidence/index.ts';
import type { Acclimatisation } from '../../model/moisture/index.ts';
import { sorptionCaution } from '../../model/moisture/sorption-caution.ts';
import { amount } from '../../model/quantity/index.ts';

/** A board, and the room that it comes into. */
export interface InRoom {
  /** mm. */
  thickness: number;
  /** Moisture content as it comes in, %. */
  start: number;
  /** Moisture content at balance with the room, %. */
  balance: number;
  /** °C. */
  temperature: number;
  /** %. */
  humidity: number;
}

/** Above it wood holds free water, and a board needs drying first, %. */
export const green = 30;

/** A fall to balance by so much is drying, which can check a board, percentage points (common practice). */
const hasty = 4;

/** What to beware of while a board settles. */
export function cautionsOf(
  board: Acclimatisation,
  { thickness, start, balance, temperature, humidity }: InRoom,
): Caution[] {
  return [
    ...sorptionCaution([{ temperature, humidity }]),
    ...(start > green
      ? [
          {
            id: 'green-wood',
            level: 'warning' as const,
            own: true,
            text: 'This board needs drying, not acclimatising: the time is only a lower bound.',
            why: `Above about ${green} % the wood holds free water, which moves by other laws than this.`,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...(start - balance > hasty
      ? [
          {
            id: 'drying-too-fast',
            level: 'warning' as const,
            own: true,
            text: 'Dry it in steps, with the ends sealed and air on both faces.',
            why: 'The shell will be much drier than the core for a while: thick or dense stock can check and case-harden.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    {
      id: 'ends-and-stickers',
      level: 'note',
      text: 'Seal the ends, stand the board on stickers, and measure until readings a few days apart agree.',
      why: `Within about four thicknesses, ${amount(4 * thickness, 'mm', 2)}, of an unsealed end the board follows faster than this, since moisture moves up to twelve times (spruce) or fifteen times (beech) as fast along the grain.`,
      basis: 'published',
      citation: { source: 'sonderegger-2011', locator: 'abstract', seen: 'source-text' },
    },
    ...(board.withinOne > 0
      ? [
          {
            id: 'swinging-air',
            level: 'note' as const,
            text: 'The room is taken as steady. A daily swing of its humidity reaches only the outermost skin of a board; a week of other weather reaches it all.',
            basis: 'derived' as const,
          },
        ]
      : []),
  ];
}
