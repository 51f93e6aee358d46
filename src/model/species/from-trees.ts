import type { Figure } from '../evidence/index.ts';
import { type Candidate, rungs } from './candidates.ts';
import { figureKinds } from './labels.ts';
import { tidy } from './printed.ts';
import { type JoinedRow, number, seenOf } from './rows.ts';
import type { FigureName } from './types.ts';

/** Fewest trees whose mean may stand for a wood; fewer are single lots. */
const fewestTrees = 5;

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

const properties: readonly Property[] = [
  { name: 'density12', ...figureKinds.density12, trees: 'trees_density', columns: columns('density_12pct', 'kg_m3') },
  {
    name: 'volumetricShrinkage',
    ...figureKinds.volumetricShrinkage,
    trees: 'trees_shrinkage',
    columns: columns('volumetric', 'pct'),
  },
  {
    name: 'other',
    label: 'Fibre saturation point, as measured',
    unit: '%',
    trees: 'trees_shrinkage',
    columns: columns('fibre_saturation', 'pct_mc'),
  },
  {
    name: 'other',
    label: 'Shrinkage of the volume for 1 % of moisture content',
    unit: '%',
    trees: 'trees_coefficient',
    columns: columns('volumetric_coefficient', 'pct_per_pct_mc'),
  },
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

function candidateOf(rows: readonly JoinedRow[], property: Property, group: boolean): Candidate[] {
  const given = rows.filter((row) => row.group === group && meanIn(row, property).length > 0);
  const [first] = given;
  if (!first) return [];
  const { trees, mean, low, high } = pooled(given.flatMap((row) => meanIn(row, property)));
  const figure: Figure = {
    label: group ? `${property.label} (of the group)` : property.label,
    value: mean,
    ...(trees > 1 ? { low, high, band: 'Lowest and highest tree.' } : {}),
    unit: property.unit,
    basis: 'derived',
    citation: { source: 'cirad-krvf0e', locator: given.map((row) => row.label).join(', '), seen: seenOf(first) },
    note: trees === 1 ? 'One tree.' : `Mean of ${trees} trees, computed here.`,
  };
  return [{ name: property.name, figure, rung: trees < fewestTrees ? rungs.singleLot : rungs.measured, group }];
}

/**
 * Figures of a wood from trees that one institute measured one by one: the mean over the trees of all its taxa.
 *
 * @param rows joined rows of the table of trees
 */
export function fromTrees(rows: readonly JoinedRow[]): Candidate[] {
  return [false, true].flatMap((group) => properties.flatMap((property) => candidateOf(rows, property, group)));
}
