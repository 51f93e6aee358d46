import type { TableColumn, TableDefinition } from '../evidence/index.ts';

const text = (name: string, title: string, required = true): TableColumn => ({ name, kind: 'text', title, required });
const effectiveness = (name: string, days: string, required = true): TableColumn => ({
  name,
  kind: 'number',
  unit: '%',
  title: `Moisture-excluding effectiveness after ${days}`,
  required,
});

/** Tables on finishes. */
export const tables: readonly TableDefinition[] = [
  {
    name: 'moisture-excluding',
    room: 'finish',
    title: 'How much of the moisture that bare wood takes up in damp air a finish keeps out',
    notes: [
      'Ponderosa pine sapwood, coated all round, at rest with 30 % relative humidity, then in 90 %, at 80 °F (26.7 °C). 100 % would keep all moisture out, 0 % is bare wood.',
      'Rows of the handbook are from its Table 16-3 (2010 edition), of which the first part could be read. Rows marked quoted come through two texts that repeat figures of the same laboratory; they agree with the handbook wherever both were read.',
      'No finish changes what the wood comes to in the end: it slows it. That is why every row falls with the days.',
    ],
    columns: [
      text('finish', 'Finish, as printed'),
      text('binder', 'What it is made of, where printed', false),
      { name: 'coats', kind: 'number', unit: '1', title: 'Number of coats', required: true },
      effectiveness('day_1', '1 day', false),
      effectiveness('day_7', '7 days', false),
      effectiveness('day_14', '14 days'),
      text('source', 'Key of the text'),
      {
        name: 'seen',
        kind: 'seen',
        title: 'How the row was read: in the work itself, or in a text that repeats it (quoted)',
        required: true,
      },
      text('note', 'Agreements and doubts', false),
    ],
  },
];
