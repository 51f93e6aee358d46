import type { Citation, Figure } from '../evidence/index.ts';

/** How a finish is kept up by whoever has the board. */
export type Upkeep =
  /** A little of the same oil, soaked in and wiped. `drying` where its cloths can heat themselves. */
  | { kind: 'oil'; drying: boolean; every: Figure | null }
  /** A film: it is not oiled, and goes back to the maker when it is cut or lifts. */
  | { kind: 'film'; every: Figure | null }
  /** Bare wood. */
  | { kind: 'none' };

/** What a care card is written from. */
export interface BoardForCare {
  /** Common name of the wood in sentence case. */
  wood: string;
  /** Name of the finish in sentence case; absent for bare wood. */
  finish?: string;
  upkeep: Upkeep;
  /** True where resin is in the board, or a film of it on top. */
  resin: boolean;
  /** True where sanding dust of the wood can cause allergy. */
  sensitiser: boolean;
}

/** One line of the card, with what it rests on. */
export interface CareLine {
  text: string;
  /** Absent where it is common practice. */
  citation?: Citation;
}

/** Lines of the card that belong together. */
export interface CareSection {
  id: 'wash' | 'dry' | 'renew' | 'never';
  heading: string;
  lines: readonly CareLine[];
}

const washed: Citation = { source: 'ak-1994-decontamination', locator: 'abstract', seen: 'source-text' };
const rags: Citation = { source: 'fpl-gtr-190', locator: 'Chapter 16', seen: 'source-text' };

/** ‘About every 3 months’ from a figure in days. */
function interval(every: Figure): string {
  const months = every.value / 30;
  if (every.unit !== 'd' || months < 1) return `about every ${Math.max(1, Math.round(every.value))} days`;
  const whole = Math.round(months);
  return whole === 1 ? 'about once a month' : `about every ${whole} months`;
}

function renewLines({ upkeep, finish, sensitiser }: BoardForCare): CareLine[] {
  const sanding = sensitiser
    ? 'Scored so that it no longer comes clean: bring it back. Do not sand it yourself, the dust of this wood can cause allergy.'
    : 'Scored so that it no longer comes clean: have it planed or sanded, and finished again.';
  if (upkeep.kind === 'none') {
    const rough = sensitiser ? [] : [{ text: 'If it feels rough, sand it lightly along the grain.' }];
    return [{ text: 'It has no finish and needs none.' }, ...rough, { text: sanding }];
  }
  if (upkeep.kind === 'film') {
    return [
      { text: `Do not oil it: ${(finish ?? 'the film').toLowerCase()} lies on top of the wood. Do not cut on it.` },
      { text: 'Cut, lifting or cloudy: stop using it for food and bring it back.' },
    ];
  }
  const how = upkeep.every ? `, ${interval(upkeep.every)} in daily use` : '';
  return [
    {
      text: `When a drop of water darkens the wood${how}: wash, dry for a day, then a thin coat of ${(finish ?? 'oil').toLowerCase()}, 30 to 45 minutes to soak, and wipe off all that is left.`,
    },
    ...(upkeep.drying
      ? [
          {
            text: 'Cloths wet with this oil can catch fire by themselves: at once into water, in a metal container with a lid.',
            citation: rags,
          },
        ]
      : [{ text: 'No cooking oil: it turns rancid.' }]),
    { text: sanding },
  ];
}

/**
 * What the buyer does with the board, in the order of a card. Common practice but where a line is cited.
 *
 * @param board its wood, its finish and whether resin is in it
 */
export function careSections(board: BoardForCare): CareSection[] {
  return [
    {
      id: 'wash',
      heading: 'Wash',
      lines: [
        {
          text: `After use, ${board.resin ? 'warm' : 'hot'} water, a little washing-up liquid, a brush, both faces alike. Rinse.`,
          citation: washed,
        },
        { text: 'Raw meat, fish and poultry: on another board.' },
      ],
    },
    {
      id: 'dry',
      heading: 'Dry',
      lines: [
        { text: 'Wipe it at once and stand it on edge with air on both faces, away from stove, radiator and sun.' },
      ],
    },
    { id: 'renew', heading: board.upkeep.kind === 'oil' ? 'Oil again' : 'Keep up', lines: renewLines(board) },
    {
      id: 'never',
      heading: 'Never',
      lines: [
        { text: 'No dishwasher, no soaking, no microwave, no oven.' },
        {
          text: board.resin
            ? 'No hot pan or pot on it, least of all on the resin, which softens; no flame, no lit candle on the bare board.'
            : 'No hot pan or pot on it, no flame.',
        },
        ...(board.resin ? [{ text: 'No solvent, nail-varnish remover or scouring pad on the resin.' }] : []),
      ],
    },
  ];
}
