import type { Basis, Figure, ResultTable, Series } from '../../model/evidence/index.ts';
import { resistanceScatter } from '../../model/finish/index.ts';
import type { MoistureYear } from '../../model/finish/year.ts';
import { diffusionScatter } from '../../model/moisture/index.ts';
import type { Found, Spell, Three } from './found.ts';
import { type Ends, ends, type Widths } from './widths.ts';

const band = `Wood half and twice as quick, and a coating ${resistanceScatter} times as leaky and as tight.`;
const bareBand = `Wood half and twice as quick: coefficients differ by a factor of ${diffusionScatter} between boards and ways of measuring.`;
const widthBand =
  'As for the moisture, and for boards of this wood that move less and more than the average, nine in ten.';

/** Figures that the calculator may give, the headline first. */
export const figureLabels = {
  swingLeft: 'Part of the yearly swing that is left',
  widthSwingBare: 'Swing of the width, bare',
  widthSwingFinished: 'Swing of the width, finished',
  moistureSwingAir: 'Swing of balance with the air',
  moistureSwingBare: 'Swing of the moisture, bare',
  moistureSwingFinished: 'Swing of the moisture, finished',
  lagBare: 'Lag behind the air, bare',
  lagFinished: 'Lag behind the air, finished',
  delay: 'Delay by the finish alone',
  weekBare: 'Made of a change within a week, bare',
  weekFinished: 'Made of a change within a week, finished',
  halfWayBare: 'Half-way to balance, bare',
  halfWayFinished: 'Half-way to balance, finished',
  faceDifference: 'Largest difference between the faces',
  resistance: 'Resistance of the coating',
} as const;
export type FigureId = keyof typeof figureLabels;

/** Figures for whoever looks twice. */
export const minorFigures: readonly FigureId[] = [
  'moistureSwingAir',
  'delay',
  'weekBare',
  'weekFinished',
  'halfWayBare',
  'halfWayFinished',
  'resistance',
];

/** The figures of an answer. */
export function figuresOf(found: Found, widths: Widths, basis: Basis, widthBasis: Basis): Record<string, Figure> {
  const { bare, coated, spell, both, coating, resistance, given } = found;
  const figure = (id: FigureId, { value, low, high }: Ends, unit: string, more: Partial<Figure> = {}) => {
    const { band: why = band, ...rest } = more;
    // A finish that holds nothing back leaves no room for a band.
    const spread = low === high ? {} : { low, high, band: why };
    return { [id]: { label: figureLabels[id], value, ...spread, unit, basis, digits: 2, ...rest } satisfies Figure };
  };
  const of = (years: Three<MoistureYear>, name: 'swing' | 'lag' | 'faceDifference') =>
    ends({ value: years.value[name], slow: years.slow[name], quick: years.quick[name] });
  const spellOf = (which: 'bare' | 'coated', name: keyof Spell, factor: number) => {
    const three = (spell as NonNullable<Found['spell']>)[which];
    return ends({
      value: three.value[name] * factor,
      slow: three.slow[name] * factor,
      quick: three.quick[name] * factor,
    });
  };
  const air = Math.max(...found.balance) - Math.min(...found.balance);
  const alone = { band: bareBand };
  const wide = { band: widthBand, basis: widthBasis };
  return {
    ...figure('swingLeft', swingLeft(found), '%', {
      digits: 3,
      note: 'Swing of the finished board’s moisture as a share of the bare board’s, over a year in this air.',
    }),
    ...figure('widthSwingBare', widths.swing(bare), 'mm', wide),
    ...figure('widthSwingFinished', widths.swing(coated), 'mm', wide),
    moistureSwingAir: {
      label: figureLabels.moistureSwingAir,
      value: air,
      unit: '%',
      basis: 'derived',
      citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
      digits: 2,
      note: 'Percentage points of moisture content, as for the board.',
    },
    ...figure('moistureSwingBare', of(bare, 'swing'), '%', alone),
    ...figure('moistureSwingFinished', of(coated, 'swing'), '%'),
    ...figure('lagBare', of(bare, 'lag'), 's', alone),
    ...figure('lagFinished', of(coated, 'lag'), 's'),
    ...(spell
      ? {
          ...figure('weekBare', spellOf('bare', 'week', 100), '%', {
            ...alone,
            note: 'How far the board gets to a new balance in a week of other weather.',
          }),
          ...figure('weekFinished', spellOf('coated', 'week', 100), '%'),
          ...figure('halfWayBare', spellOf('bare', 'halfWay', 1), 's', alone),
          ...figure('halfWayFinished', spellOf('coated', 'halfWay', 1), 's'),
        }
      : {}),
    ...(both ? delayFigure(found) : figure('faceDifference', of(coated, 'faceDifference'), '%')),
    resistance: {
      label: figureLabels.resistance,
      // In millions: a resistance has up to nine zeros, or is nothing.
      value: resistance / 1e6,
      ...(coating ? { low: coating.low / 1e6, high: coating.high / 1e6, band: 'Within a class of finishes.' } : {}),
      unit: resistance === 0 ? 's/m' : 'Ms/m',
      basis: given.coating === undefined ? (coating?.basis ?? 'memory') : 'supplier-sheet',
      ...(coating ? { citation: coating.citation } : {}),
      digits: 2,
      note: resistanceNote(found),
    },
  };
}

function swingShare(bare: MoistureYear, coated: MoistureYear): number {
  // Air that never changes leaves nothing to slow.
  return bare.swing > 1e-9 ? Math.min(100, (100 * coated.swing) / bare.swing) : 100;
}

/** Share of the bare board’s swing that the finished one keeps, %. */
export function swingLeft({ bare, coated }: Found): Ends {
  const share = (end: keyof Three<unknown>) => swingShare(bare[end], coated[end]);
  return ends({ value: share('value'), slow: share('slow'), quick: share('quick') });
}

/** Resistance times half the thickness: how long the coating alone holds a board back. */
function delayFigure({ resistance, coating, given }: Found): Record<string, Figure> {
  const depth = given.thickness / 2000;
  return {
    delay: {
      label: figureLabels.delay,
      value: resistance * depth,
      ...(coating ? { low: coating.low * depth, high: coating.high * depth, band: 'Within a class of finishes.' } : {}),
      unit: 's',
      basis: coating?.basis ?? 'memory',
      digits: 2,
      note: 'Resistance times half the thickness: to the wood’s own time the coating adds so much.',
    },
  };
}

function resistanceNote({ given, coating, finish, coats }: Found): string {
  if (given.coating !== undefined) return 'The reader’s own, in place of the finish’s.';
  if (!coating) return 'Taken as bare wood.';
  const words = coating.how.charAt(0).toUpperCase() + coating.how.slice(1);
  return `${finish.name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}. ${words}.`;
}

/** The year as charts: moisture of the air’s balance, of the bare and of the finished board; and both widths. */
export function seriesOf(found: Found, widths: Widths): Series[] {
  const { labels, axis, balance, bare, coated, finish } = found;
  const finished = `Finished: ${finish.name.toLowerCase()}`;
  const span = (years: Three<MoistureYear>) =>
    `from ${years.value.driest.toFixed(1)} to ${years.value.wettest.toFixed(1)} %`;
  const pointEnds = (years: Three<MoistureYear>) =>
    labels.map((_, at) =>
      ends({
        value: years.value.points[at] as number,
        slow: years.slow.points[at] as number,
        quick: years.quick.points[at] as number,
      }),
    );
  const line = (id: string, label: string, years: Three<MoistureYear>) => {
    const points = pointEnds(years);
    return {
      id,
      label,
      unit: '%',
      values: points.map(({ value }) => value),
      low: points.map(({ low }) => low),
      high: points.map(({ high }) => high),
    };
  };
  const widthLine = (id: string, label: string, years: Three<MoistureYear>) => ({
    id,
    label,
    unit: 'mm',
    values: years.value.points.map(widths.at),
  });
  return [
    {
      id: 'moisture',
      title: 'Moisture content of the board',
      description: `Mean moisture through the year: bare ${span(bare)}, finished ${span(coated)}, around the same mean of ${bare.value.mean.toFixed(1)} %.`,
      axis: { label: axis, values: labels },
      lines: [
        line('finished', `${finished}, with its band`, coated),
        line('bare', 'Bare, with its band', bare),
        { id: 'balance', label: 'At balance with the air', unit: '%', values: balance },
      ],
    },
    {
      id: 'width',
      title: 'Width',
      description: `Width through the year: bare between ${widths.at(bare.value.driest).toFixed(1)} and ${widths.at(bare.value.wettest).toFixed(1)} mm, finished between ${widths.at(coated.value.driest).toFixed(1)} and ${widths.at(coated.value.wettest).toFixed(1)} mm.`,
      axis: { label: axis, values: labels },
      lines: [widthLine('finished', finished, coated), widthLine('bare', 'Bare', bare)],
    },
  ];
}

/** Every finish on this board, so that one can be picked: usual coats, and what each does. */
export function finishTable(found: Found): ResultTable {
  return {
    id: 'finishes',
    title: 'Every finish on this board',
    columns: [
      { id: 'finish', label: 'Finish' },
      { id: 'coats', label: 'Coats', digits: 2 },
      { id: 'swing', label: 'Swing left', unit: '%', digits: 3 },
      { id: 'lag', label: 'Lag behind the air', unit: 's', digits: 2 },
      { id: 'measured', label: 'In the table' },
    ],
    rows: found.others.map(({ finish, coats, year }) => [
      finish.name,
      coats,
      swingShare(found.bare.value, year),
      year.lag,
      finish.excluding.measured ? 'yes' : finish.excluding.class ? 'nearest' : 'no: as bare',
    ]),
    basis: 'memory',
  };
}
