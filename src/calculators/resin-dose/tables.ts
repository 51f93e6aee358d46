import { derivedBasis, type ResultTable } from '../../model/evidence/index.ts';
import { convert } from '../../model/quantity/index.ts';
import { markedUnit } from './measured.ts';
import { alikeOf, calledOf, filledBy, fillsLabel, shapeWords } from './pieces.ts';
import type { DosePlan } from './plan.ts';

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}

/** What stands in a row of the table: a cup, or all of them. */
interface Row {
  label: string;
  stage: string;
  colour: string;
  fills: string;
  /** As measured, in g or mL. */
  a: number;
  b: number;
  pigment: number;
  coloured?: number | undefined;
  off: number | null;
}

/**
 * What goes into which cup, and all cups together.
 *
 * Grams and millilitres stand side by side for every reader, and ounces only where the scale or the cups are marked in them: scale and
 * cups are marked in their own units, whatever the reader measures boards in, and an ounce of one kind is soon taken for the other.
 */
export function cupTable(plan: DosePlan): ResultTable {
  const { mix, cups, measured, batches } = plan;
  const fromBatch = batches.length > 0;
  const unit = markedUnit(plan);
  const byWeight = mix.by === 'weight';
  const fills = filledBy(plan);
  const pieces = fills.some((words) => words !== '');
  const parts = ({ a, b }: Row) =>
    byWeight
      ? { massA: a, massB: b, volumeA: a / mix.densityA, volumeB: b / mix.densityB }
      : { massA: a * mix.densityA, massB: b * mix.densityB, volumeA: a, volumeB: b };
  // What is measured is shown to its division; what follows from it deserves no more than a tenth.
  const shown = (value: number, code: string) => round(value, unit === code ? 4 : 1);
  const cells = (row: Row) => {
    const { massA, massB, volumeA, volumeB } = parts(row);
    return [
      row.label,
      row.stage,
      row.colour,
      ...(pieces ? [row.fills] : []),
      ...(fromBatch ? [row.coloured === undefined ? null : shown(row.coloured, 'g')] : []),
      ...(unit === '[oz_av]' ? [massA, massB].map((mass) => round(convert(mass, 'g', unit), 4)) : []),
      ...(unit === '[foz_us]' ? [volumeA, volumeB].map((volume) => round(convert(volume, 'mL', unit), 4)) : []),
      shown(massA, 'g'),
      shown(massB, 'g'),
      shown(volumeA, 'mL'),
      shown(volumeB, 'mL'),
      row.pigment > 0 ? round(row.pigment, 1) : null,
      row.off === null ? null : round(row.off, 1),
    ];
  };
  const marks = (id: string, label: string) => [
    { id: `${id === 'oz' ? 'mass' : 'volume'}A_${id}`, label: `A, ${label}`, digits: 6 },
    { id: `${id === 'oz' ? 'mass' : 'volume'}B_${id}`, label: `B, ${label}`, digits: 6 },
  ];
  return {
    id: 'cups',
    title: byWeight
      ? 'Cups, weighed: millilitres follow from the weights'
      : 'Cups, measured by volume: grams follow from the volumes',
    columns: [
      { id: 'cup', label: 'Cup' },
      { id: 'stage', label: 'For' },
      { id: 'colour', label: 'Colour' },
      ...(pieces ? [{ id: 'pieces', label: fillsLabel(plan) }] : []),
      ...(fromBatch ? [{ id: 'coloured_g', label: 'Coloured A to pour, g', digits: 7 }] : []),
      ...(unit === '[oz_av]' ? marks('oz', 'oz') : []),
      ...(unit === '[foz_us]' ? marks('floz', 'fl oz') : []),
      { id: 'massA_g', label: fromBatch ? 'A without colour, g' : 'A, g', digits: 7 },
      { id: 'massB_g', label: 'B, g', digits: 7 },
      { id: 'volumeA_ml', label: 'A, ml', digits: 7 },
      { id: 'volumeB_ml', label: 'B, ml', digits: 7 },
      { id: 'pigment_g', label: 'Pigment, g', digits: 4 },
      { id: 'off_percent', label: 'Off by rounding, %', digits: 2 },
    ],
    rows: [
      ...cups.map((cup, index) => cells({ ...cup, label: String(cup.number), fills: fills[index] ?? '' })),
      cells({
        label: 'All',
        stage: '',
        colour: '',
        fills: '',
        a: measured.a,
        b: measured.b,
        pigment: cups.reduce((sum, { pigment }) => sum + pigment, 0),
        off: null,
      }),
    ],
    basis: derivedBasis([mix.basis]),
  };
}

/** What goes into each place, where there are several; nothing else. */
export function pieceTable(plan: DosePlan): ResultTable[] {
  const rows = alikeOf(plan);
  if (!rows.some(({ to }) => to > 1)) return [];
  const sealed = plan.dose.seal > 0;
  return [
    {
      id: 'pieces',
      title: 'Into each piece, in all layers and colours together, without spare and what stays in the cups',
      columns: [
        { id: 'pieces', label: 'Pieces' },
        { id: 'shape', label: 'Shape' },
        ...(sealed ? [{ id: 'seal_g', label: 'Seal coat, each', unit: 'g', digits: 2, kept: true }] : []),
        { id: 'fill_g', label: 'Fill, each', unit: 'g', kept: true },
      ],
      rows: rows.map((row) => [calledOf(row), shapeWords(row.shape), ...(sealed ? [row.seal] : []), row.fill]),
      basis: derivedBasis([plan.mix.densityBasis]),
    },
  ];
}
