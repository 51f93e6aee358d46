import type { Basis, ResultTable } from '../../model/evidence/index.ts';
import { resistanceScatter } from '../../model/finish/index.ts';
import type { MoistureYear } from '../../model/finish/year.ts';
import { diffusionScatter } from '../../model/moisture/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { Found, Spell, Three } from './found.ts';
import { type Ends, ends, type Widths } from './widths.ts';

const band = `Wood half and twice as quick, and a coating ${resistanceScatter} times as leaky and as tight.`;
const bareBand = `Wood half and twice as quick: coefficients differ by a factor of ${diffusionScatter} between boards and ways of measuring.`;
const widthBand =
  'As for the moisture, and for boards of this wood that move less and more than the average, nine in ten.';

/** What a year of weather makes of the board. */
const foretold = true;

/** What the calculator may tell, the headline first. */
export const figures = {
  swingLeft: {
    label: 'Part of the yearly swing that is left',
    unit: '%',
    foretold,
    help: 'Swing of the finished board’s moisture as a share of the bare board’s, over a year in this air.',
  },
  widthSwingBare: { label: 'Swing of the width, bare', unit: 'mm', digits: 2, foretold },
  widthSwingFinished: { label: 'Swing of the width, finished', unit: 'mm', digits: 2, foretold },
  moistureSwingAir: {
    label: 'Swing of balance with the air',
    unit: '%',
    digits: 2,
    minor: true,
    foretold,
    help: 'Percentage points of moisture content, as for the board.',
  },
  moistureSwingBare: { label: 'Swing of the moisture, bare', unit: '%', digits: 2, foretold },
  moistureSwingFinished: { label: 'Swing of the moisture, finished', unit: '%', digits: 2, foretold },
  lagBare: { label: 'Lag behind the air, bare', unit: 's', digits: 2 },
  lagFinished: { label: 'Lag behind the air, finished', unit: 's', digits: 2 },
  delay: {
    label: 'Delay by the finish alone',
    unit: 's',
    digits: 2,
    minor: true,
    help: 'Resistance times half the thickness: to the wood’s own time the coating adds so much.',
  },
  weekBare: {
    label: 'Made of a change within a week, bare',
    unit: '%',
    digits: 2,
    minor: true,
    foretold,
    help: 'How far the board gets to a new balance in a week of other weather.',
  },
  weekFinished: { label: 'Made of a change within a week, finished', unit: '%', digits: 2, minor: true, foretold },
  halfWayBare: { label: 'Half-way to balance, bare', unit: 's', digits: 2, minor: true },
  halfWayFinished: { label: 'Half-way to balance, finished', unit: 's', digits: 2, minor: true },
  faceDifference: { label: 'Largest difference between the faces', unit: '%', digits: 2, foretold },
  // In millions: a resistance has up to nine zeros.
  resistance: { label: 'Resistance of the coating', unit: 'Ms/m', digits: 2, minor: true },
} as const satisfies Record<string, FigureDeclaration>;

type Values = Partial<Record<keyof typeof figures, FigureValue>>;

/** The figures of an answer. */
export function figuresOf(found: Found, widths: Widths, basis: Basis, widthBasis: Basis): Values {
  const { bare, coated, both } = found;
  const figure = ({ value, low, high }: Ends, why = band): FigureValue => ({
    value,
    // A finish that holds nothing back leaves no room for a band.
    ...(low === high ? {} : { low, high, band: why }),
    basis,
  });
  const of = (years: Three<MoistureYear>, name: 'swing' | 'lag' | 'faceDifference', why?: string) =>
    figure(ends({ value: years.value[name], slow: years.slow[name], quick: years.quick[name] }), why);
  const width = (years: Three<MoistureYear>): FigureValue => ({
    ...figure(widths.swing(years), widthBand),
    basis: widthBasis,
  });
  return {
    swingLeft: figure(swingLeft(found)),
    widthSwingBare: width(bare),
    widthSwingFinished: width(coated),
    moistureSwingAir: {
      value: Math.max(...found.balance) - Math.min(...found.balance),
      basis: 'derived',
      citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
    },
    moistureSwingBare: of(bare, 'swing', bareBand),
    moistureSwingFinished: of(coated, 'swing'),
    lagBare: of(bare, 'lag', bareBand),
    lagFinished: of(coated, 'lag'),
    ...(found.spell ? spellFigures(found.spell, figure) : {}),
    ...(both ? { delay: delayFigure(found) } : { faceDifference: of(coated, 'faceDifference') }),
    resistance: resistanceFigure(found),
  };
}

/** What a week of other weather does. */
function spellFigures(
  { bare, coated }: NonNullable<Found['spell']>,
  figure: (ends: Ends, why?: string) => FigureValue,
): Values {
  const of = ({ value, slow, quick }: Three<Spell>, name: keyof Spell, factor: number) =>
    ends({ value: value[name] * factor, slow: slow[name] * factor, quick: quick[name] * factor });
  return {
    weekBare: figure(of(bare, 'week', 100), bareBand),
    weekFinished: figure(of(coated, 'week', 100)),
    halfWayBare: figure(of(bare, 'halfWay', 1), bareBand),
    halfWayFinished: figure(of(coated, 'halfWay', 1)),
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

/** A quantity that follows from the resistance, s/m, with the ends that its class of finishes gives it. */
const byClass = ({ resistance, coating }: Found, of: (resistance: number) => number) => ({
  value: of(resistance),
  ...(coating ? { low: of(coating.low), high: of(coating.high), band: 'Within a class of finishes.' } : {}),
  basis: coating?.basis ?? ('memory' as const),
});

/** Resistance times half the thickness: how long the coating alone holds a board back. */
const delayFigure = (found: Found): FigureValue =>
  byClass(found, (resistance) => resistance * (found.given.thickness / 2000));

const resistanceFigure = (found: Found): FigureValue => ({
  ...byClass(found, (resistance) => resistance / 1e6),
  ...(found.given.coating === undefined ? {} : { basis: 'supplier-sheet' }),
  ...(found.coating ? { citation: found.coating.citation } : {}),
  note: resistanceNote(found),
});

function resistanceNote({ given, coating, finish, coats }: Found): string {
  if (given.coating !== undefined) return 'The reader’s own, in place of the finish’s.';
  if (!coating) return 'Taken as bare wood.';
  const words = coating.how.charAt(0).toUpperCase() + coating.how.slice(1);
  return `${finish.name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}. ${words}.`;
}

/** Every finish on this board, so that one can be picked: usual coats, and what each does. */
export function finishTable(found: Found): ResultTable {
  return {
    id: 'finishes',
    title: 'Every finish on this board',
    columns: [
      { id: 'finish', label: 'Finish' },
      { id: 'coats', label: 'Coats', unit: '{count}', digits: 2 },
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
