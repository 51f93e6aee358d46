import type { TableColumn, TableDefinition } from '../evidence/index.ts';
import { number, seen, text } from './columns.ts';

/** The mean over the trees of a taxon, and the lowest and highest tree. */
function spread(stem: string, suffix: string, title: string, unit: string): TableColumn[] {
  return [
    number(`${stem}_${suffix}`, `${title}, mean of the trees`, unit),
    number(`${stem}_low_${suffix}`, `${title}, lowest tree`, unit),
    number(`${stem}_high_${suffix}`, `${title}, highest tree`, unit),
  ];
}

/** Means over single trees of an open data set, which has terms of its own; so it stands in a file of its own. */
export const treesTable: TableDefinition = {
  name: 'cirad-wood-density',
  room: 'species',
  title: 'Density and shrinkage in volume, measured tree by tree',
  source: 'cirad-krvf0e',
  locator: 'data set of 4,022 trees',
  terms: {
    licence: 'CC-BY-SA-4.0',
    credit:
      'Vieilledent, Fischer, Chave, Guibal, Langbour and Gérard (2018), CIRAD Dataverse, doi 10.18167/DVN1/KRVF0E. Made from it by taking means over the trees of a taxon.',
    known:
      'The data set is given under these terms, and this file stands under them too: name the data set, say what you changed, and give on what you make of it under the same terms.',
  },
  notes: [
    'Each row is the mean over the trees of one taxon, computed here from the figures of the single trees, with the lowest and the highest tree. Fewer trees were measured for shrinkage than for density in some taxa; each count stands before its figures.',
    'The trees were measured by one institute, by one method, each on its own; a taxon of few trees says little.',
    'Volumetric shrinkage from green to ovendry is the coefficient times the fibre saturation point, as the paper defines it; the mean was taken over the trees.',
    'The fibre saturation point is where the measured line of shrinkage meets zero. It lies below the 30 % that the handbook assumes for most woods.',
    'The single trees give density in g/cm³ with two digits; lowest and highest are those times 1000.',
  ],
  columns: [
    text('species', 'Taxon, as in the data set'),
    number('trees_density', 'Trees measured for density', '1', true),
    ...spread('density_12pct', 'kg_m3', 'Density at 12 % moisture content', 'kg/m3'),
    number('trees_coefficient', 'Trees measured for the coefficient', '1', true),
    ...spread(
      'volumetric_coefficient',
      'pct_per_pct_mc',
      'Shrinkage of the volume for 1 % of moisture content, of the green volume',
      '%',
    ),
    number('trees_shrinkage', 'Trees with a fibre saturation point and a shrinkage', '1', true),
    ...spread('fibre_saturation', 'pct_mc', 'Fibre saturation point, moisture content', '%'),
    ...spread('volumetric', 'pct', 'Volumetric shrinkage, green to ovendry, of the green volume', '%'),
    seen,
  ],
};
