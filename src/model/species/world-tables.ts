import type { TableDefinition } from '../evidence/index.ts';
import { number, seen, text } from './columns.ts';

/** Tables of woods from outside the United States, each of one source. */
export const worldTables: readonly TableDefinition[] = [
  {
    name: 'wood-density-database',
    room: 'species',
    title: 'Specific gravity of woods of Europe, Australia and elsewhere, as a database of published figures lists it',
    source: 'zanne-2009',
    locator: 'rows of 60 taxa',
    notes: [
      'Each row is one published figure: ovendry mass and green volume, in g/cm³ as printed. The region and the number of the reference are the database’s; the reference itself was not read.',
      'The last column but one is ours: yes where the tree grows by nature in that region. Wood of plantations elsewhere often differs.',
      'The database is offered without restriction (CC0, from memory).',
    ],
    columns: [
      text('species', 'Botanical name, as in the database'),
      text('region', 'Region of the figure'),
      text('reference', 'Number of the reference in the database'),
      number('specific_gravity', 'Specific gravity, ovendry mass and green volume', '1', true),
      text('at_home', 'Whether the tree grows there by nature', false),
      seen,
    ],
  },
  {
    name: 'queensland-timber',
    room: 'species',
    title: 'Timbers of Queensland and Tasmania: shrinkage, unit shrinkage, density and durability',
    source: 'queensland-timber',
    locator: 'pages of single timbers',
    terms: {
      licence: 'CC-BY-4.0',
      credit: 'Wood properties of timber trees, State of Queensland. Single figures taken from its pages.',
      known: 'The terms are printed in a book of that government; the notice of the pages themselves was not read.',
    },
    notes: [
      'Three kinds of figure, never to be mixed: shrinkage from green to 12 %, which is not shrinkage to ovendry; unit shrinkage, the change in service for 1 % of moisture content, printed for timber reconditioned after seasoning; and density at 12 %.',
      'Unit shrinkage is used as a coefficient of movement. By Australian practice it is found from 12 to 5 %; the pages read do not say so.',
      'The page on brown salwood speaks of two trees. Its shrinkage is that of Acacia aulacocarpa, not of A. mangium, to which a dealer’s page gives it.',
      'Durability is in Australian classes of the heartwood, 1 the most durable: they are not the classes of EN 350.',
    ],
    columns: [
      text('species', 'Wood, as printed'),
      text('botanical_name', 'Botanical name, as printed'),
      text('property', 'What was measured or stated'),
      text('value', 'The value, as printed'),
      text('unit', 'Unit, as printed', false),
      text('condition', 'Moisture content or other condition', false),
      text('page', 'Page of the timber'),
      seen,
    ],
  },
];
