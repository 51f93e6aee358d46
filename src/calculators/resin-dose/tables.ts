import { derivedBasis, type ResultTable } from '../../model/evidence/index.ts';
import { convert } from '../../model/quantity/index.ts';
import { markedUnit } from './measured.ts';
import type { DosePlan } from './plan.ts';

function round(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}

/** What stands in a row of the table: a cup, or all of them. */
interface Row {
  label: string;
  stage: string;
  colour: string;
  /** As measured, in g or mL. */
  a: number;
  b: number;
  pigment: number;
  off: number | null;
}

/**
 * What goes into which cup, and all cups together.
 *
 * Grams, millilitres and fluid ounces stand side by side for every reader, and ounces where the scale is marked in them:
 * scale and cups are marked in their own units, whatever the reader measures boards in.
 */
export function cupTable(plan: DosePlan): ResultTable {
  const { mix, cups, measured } = plan;
  const unit = markedUnit(plan);
  const byWeight = mix.by === 'weight';
  const parts = ({ a, b }: Row) =>
    byWeight
      ? { massA: a, massB: b, volumeA: a / mix.densityA, volumeB: b / mix.densityB }
      : { massA: a * mix.densityA, massB: b * mix.densityB, volumeA: a, volumeB: b };
  // What is measured is shown to its division; what follows from it deserves no more than a tenth.
  const shown = (value: number, code: string) => round(value, unit === code ? 4 : 1);
  const ounces = (grams: number) => round(convert(grams, 'g', '[oz_av]'), 3);
  const fluidOunces = (millilitres: number) =>
    round(convert(millilitres, 'mL', '[foz_us]'), unit === '[foz_us]' ? 4 : 2);
  const cells = (row: Row) => {
    const { massA, massB, volumeA, volumeB } = parts(row);
    return [
      row.label,
      row.stage,
      row.colour,
      ...(unit === '[oz_av]' ? [ounces(massA), ounces(massB)] : []),
      shown(massA, 'g'),
      shown(massB, 'g'),
      shown(volumeA, 'mL'),
      shown(volumeB, 'mL'),
      fluidOunces(volumeA),
      fluidOunces(volumeB),
      row.pigment > 0 ? round(row.pigment, 1) : null,
      row.off === null ? null : round(row.off, 1),
    ];
  };
  return {
    id: 'cups',
    title: byWeight
      ? 'Cups, weighed: millilitres and fluid ounces follow from the weights'
      : 'Cups, measured by volume: grams follow from the volumes',
    columns: [
      { id: 'cup', label: 'Cup' },
      { id: 'stage', label: 'For' },
      { id: 'colour', label: 'Colour' },
      ...(unit === '[oz_av]'
        ? [
            { id: 'massA_oz', label: 'A, oz', digits: 6 },
            { id: 'massB_oz', label: 'B, oz', digits: 6 },
          ]
        : []),
      { id: 'massA_g', label: 'A, g', digits: 7 },
      { id: 'massB_g', label: 'B, g', digits: 7 },
      { id: 'volumeA_ml', label: 'A, ml', digits: 7 },
      { id: 'volumeB_ml', label: 'B, ml', digits: 7 },
      { id: 'volumeA_floz', label: 'A, fl oz', digits: 6 },
      { id: 'volumeB_floz', label: 'B, fl oz', digits: 6 },
      { id: 'pigment_g', label: 'Pigment, g', digits: 4 },
      { id: 'off_percent', label: 'Off by rounding, %', digits: 2 },
    ],
    rows: [
      ...cups.map((cup) => cells({ ...cup, label: String(cup.number) })),
      cells({
        label: 'All',
        stage: '',
        colour: '',
        a: measured.a,
        b: measured.b,
        pigment: cups.reduce((sum, { pigment }) => sum + pigment, 0),
        off: null,
      }),
    ],
    basis: derivedBasis([mix.basis]),
  };
}
