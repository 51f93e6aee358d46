import { type Citation, derivedBasis, type Figure } from '../evidence/index.ts';
import { rungs } from './authority.ts';
import type { Candidate } from './candidates.ts';
import { coefficientFromShrinkage } from './equations.ts';
import { figureKinds } from './labels.ts';
import { tidy } from './printed.ts';
import { type JoinedRow, number, seenOf } from './rows.ts';
import type { FigureName, OtherMovement } from './types.ts';

/** Fewest trees whose mean may stand for a wood; fewer are single lots. */
const fewestTrees = 5;
/** One tree or two say nothing of a wood: they are shown among the other figures and never stand for it. */
const tooFewTrees = 2;

interface Property {
  name: FigureName | 'other';
  label: string;
  unit: string;
  trees: string;
  /** Columns of the mean, the lowest and the highest tree. */
  columns: readonly [string, string, string];
}

function columns(stem: string, suffix: string): Property['columns'] {
  return [`${stem}_${suffix}`, `${stem}_low_${suffix}`, `${stem}_high_${suffix}`];
}

const fibreSaturation: Property = {
  name: 'other',
  label: 'Fibre saturation point, as measured',
  unit: '%',
  trees: 'trees_shrinkage',
  columns: columns('fibre_saturation', 'pct_mc'),
};

const volumeCoefficient: Property = {
  name: 'other',
  label: 'Shrinkage of the volume for 1 % of moisture content',
  unit: '%',
  trees: 'trees_coefficient',
  columns: columns('volumetric_coefficient', 'pct_per_pct_mc'),
};

const properties: readonly Property[] = [
  { name: 'density12', ...figureKinds.density12, trees: 'trees_density', columns: columns('density_12pct', 'kg_m3') },
  {
    name: 'volumetricShrinkage',
    ...figureKinds.volumetricShrinkage,
    trees: 'trees_shrinkage',
    columns: columns('volumetric', 'pct'),
  },
  fibreSaturation,
  volumeCoefficient,
];

interface Mean {
  trees: number;
  mean: number;
  low: number;
  high: number;
}

function meanIn(row: JoinedRow, { trees, columns: [mean, low, high] }: Property): Mean[] {
  const [count, value, least, most] = [trees, mean, low, high].map((column) => number(row, column));
  if (count == null || value == null) return [];
  return [{ trees: count, mean: value, low: least ?? value, high: most ?? value }];
}

/** One mean over the trees of all taxa sold under a name, each taxon weighing by its trees. */
function pooled(means: readonly Mean[]): Mean {
  const trees = means.reduce((sum, each) => sum + each.trees, 0);
  return {
    trees,
    mean: tidy(means.reduce((sum, each) => sum + each.mean * each.trees, 0) / trees),
    low: Math.min(...means.map((each) => each.low)),
    high: Math.max(...means.map((each) => each.high)),
  };
}

function citeTrees(rows: readonly JoinedRow[]): Citation {
  return {
    source: 'cirad-krvf0e',
    locator: rows.map((row) => row.label).join(', '),
    seen: seenOf(rows[0] as JoinedRow),
  };
}

function candidateOf(rows: readonly JoinedRow[], property: Property, group: boolean): Candidate[] {
  const given = rows.filter((row) => row.group === group && meanIn(row, property).length > 0);
  if (given.length === 0) return [];
  const { trees, mean, low, high } = pooled(given.flatMap((row) => meanIn(row, property)));
  const figure: Figure = {
    label: group ? `${property.label} (of the group)` : property.label,
    value: mean,
    ...(trees > 1 ? { low, high, band: 'Lowest and highest tree.' } : {}),
    unit: property.unit,
    basis: 'derived',
    citation: citeTrees(given),
    note: trees === 1 ? 'One tree.' : `Mean of ${trees} trees, computed here.`,
  };
  const thin = trees <= tooFewTrees;
  return [
    {
      name: thin ? 'other' : property.name,
      figure: thin ? { ...figure, note: `${figure.note} Too few to stand for the wood.` } : figure,
      rung: trees < fewestTrees ? rungs.singleLot : rungs.measured,
      group,
    },
  ];
}

/**
 * Figures of a wood from trees that one institute measured one by one: the mean over the trees of all its taxa.
 *
 * @param rows joined rows of the table of trees
 */
export function fromTrees(rows: readonly JoinedRow[]): Candidate[] {
  return [false, true].flatMap((group) => properties.flatMap((property) => candidateOf(rows, property, group)));
}

/**
 * Movement across the grain from the trees: their shrinkage in volume for 1 % of moisture content, shared between the two
 * directions as the wood's printed shrinkage is, and started at the fibre saturation point measured on the same trees.
 *
 * @param rows joined rows of the table of trees
 * @param shrinkage the wood's printed shrinkage, whose ratio shares the volume out
 * @returns coefficients of the dimension at 10 %, with the digits they deserve; none from fewer than five trees
 */
export function movementOfTrees(
  rows: readonly JoinedRow[],
  { radialShrinkage, tangentialShrinkage }: Readonly<Record<'radialShrinkage' | 'tangentialShrinkage', Figure | null>>,
): OtherMovement[] {
  const own = rows.filter((row) => !row.group);
  const volumes = own.flatMap((row) => meanIn(row, volumeCoefficient));
  const starts = own.flatMap((row) => meanIn(row, fibreSaturation));
  if (!radialShrinkage || !tangentialShrinkage || volumes.length === 0 || starts.length === 0) return [];
  const { trees, mean: perPercent } = pooled(volumes);
  const { mean: start } = pooled(starts);
  if (trees < fewestTrees) return [];
  const whole = radialShrinkage.value + tangentialShrinkage.value;
  const coefficient = ({ value }: Figure) =>
    Number(coefficientFromShrinkage((value / whole) * perPercent * start, start).toPrecision(3));
  return [
    {
      by: 'trees',
      radial: coefficient(radialShrinkage),
      tangential: coefficient(tangentialShrinkage),
      basis: derivedBasis([radialShrinkage.basis, tangentialShrinkage.basis]),
      citation: citeTrees(own),
      note: `Mean of ${trees} trees, computed here.`,
    },
  ];
}
