import type { Citation, Figure } from '../evidence/index.ts';
import { convert } from '../quantity/index.ts';
import { day } from '../quantity/seconds.ts';

/** How a finish is kept up by whoever has the board. */
export type Upkeep =
  /** A little more of the same, rubbed in and wiped. */
  | {
      kind: 'renew';
      /** When and how, a sentence of the finish's own record. */
      words: string;
      /** True where cloths wet with it can take fire by themselves. */
      selfHeating: boolean;
      /** How long it soaks before it is wiped; null where that is not known. In s, with the ends of what is usual. */
      soak: Figure | null;
      /** From one renewal to the next in a home, s, with the ends of what is usual; null where that is not known. */
      every: Figure | null;
    }
  /** A film: it is not oiled, and goes back to the maker when it is cut or lifts. */
  | { kind: 'film' }
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
  /** How it is washed: a finish that hot water and soap go through is only wiped. `hot` unless told, `warm` over resin. */
  washing?: 'hot' | 'damp-cloth';
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

/** ‘15 to 45 minutes’ from a figure in s; one number where it has no ends, or where they are the same. */
function soaking({ value, low = value, high = value }: Figure): string {
  const [from, to] = [Math.round(low / 60), Math.round(high / 60)];
  return from === to ? `${from} minutes` : `${from} to ${to} minutes`;
}

/** Whole months, at least one, in so many s. */
const monthsIn = (seconds: number) => Math.max(1, Math.round(convert(seconds, 's', 'mo')));

/** A figure in s as whole months, at least one: nobody renews a board every 182 days. */
export function inMonths(figure: Figure): Figure {
  const { value, low, high } = figure;
  return {
    ...figure,
    value: monthsIn(value),
    ...(low === undefined || high === undefined ? {} : { low: monthsIn(low), high: monthsIn(high) }),
    unit: 'mo',
  };
}

/** ‘every 1 to 6 months’ from a figure in s; in weeks where the longer end is below two months. */
export function interval({ value, low = value, high = value }: Figure): string {
  const monthly = high >= 60 * day;
  const [from, to] = [low, high].map((each) => (monthly ? monthsIn(each) : Math.max(1, Math.round(each / (7 * day)))));
  const unit = monthly ? 'month' : 'week';
  if (from === to) return to === 1 ? `every ${unit}` : `every ${to} ${unit}s`;
  return `every ${from} to ${to} ${unit}s`;
}

function renewLines({ upkeep, finish, sensitiser }: BoardForCare): CareLine[] {
  const sanding = sensitiser
    ? 'Scored and no longer clean: bring it back. Do not sand it: the dust of this wood can cause allergy.'
    : 'Scored and no longer clean: have it planed or sanded, and finished again.';
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
  const name = (finish ?? 'the same finish').toLowerCase();
  const times = [
    upkeep.soak ? `soak ${soaking(upkeep.soak)}` : '',
    upkeep.every ? `${interval(upkeep.every)} in a home` : '',
  ].filter(Boolean);
  return [
    { text: upkeep.words },
    {
      text: `Use ${name}${times.length > 0 ? `: ${times.join('; ')}` : ''}. No oil from the kitchen: it turns rancid or stays sticky.`,
    },
    ...(upkeep.selfHeating
      ? [
          {
            text: 'Cloths wet with this oil can catch fire by themselves: at once into water, in a metal container with a lid.',
            citation: rags,
          },
        ]
      : []),
    { text: sanding },
  ];
}

/** A finish that water and soap go through. */
const wiped: readonly CareLine[] = [
  {
    text: 'After use, a cloth that is barely damp, both faces alike; then dry it at once. No hot water, no washing-up liquid, no alcohol: they go through its finish.',
  },
  { text: 'Moist food, raw meat, fish and poultry: on another board.' },
];

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
      lines:
        board.washing === 'damp-cloth'
          ? wiped
          : [
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
    { id: 'renew', heading: board.upkeep.kind === 'renew' ? 'Renew' : 'Keep up', lines: renewLines(board) },
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
