import type { TableColumn, TableDefinition } from '../evidence/index.ts';

const text = (name: string, title: string, required = true): TableColumn => ({ name, kind: 'text', title, required });
const seen: TableColumn = {
  name: 'seen',
  kind: 'seen',
  title: 'How the row was read: in a text that repeats the figure (quoted), or not at all (memory)',
  required: true,
};

/** Tables of abrasive gradings. The standards' own tables were not seen: every row comes through a text that repeats one. */
export const tables: readonly TableDefinition[] = [
  {
    name: 'grain-sizes',
    room: 'abrasive',
    title: 'Grain sizes of abrasive grades, as several texts give them',
    notes: [
      'The standards’ own tables (ISO 6344 and FEPA 43, ANSI B74.18, JIS R 6001) were not seen. Rows are what texts that repeat them print; where texts differ each has its row.',
      'FEPA P and ISO 6344 have the same grades: P12 to P220 by sieving, P240 and finer by sedimentation, and P1500 and finer by another instrument, which leaves a step in the figures.',
      'A grade is a distribution with limits on coarse and fine grains; one number never tells the whole scratch. Tolerances of medians are near 9 %, none tighter than 3 %.',
      'JIS R 6001 grades loose and bonded grain by electrical resistance. Coated abrasives in Japan follow JIS R 6010, which has the P grades.',
      'ISO 6344-3:2021 goes on to P5000; no figures finer than P2500 were read. ANSI B74.18 ends at 600 in its editions of 2006 and 2016.',
    ],
    columns: [
      text('system', 'Grading: FEPA P, ANSI B74.18 or JIS R 6001'),
      text('grade', 'Grade, as printed'),
      { name: 'micrometres', kind: 'number', unit: 'um', title: 'Grain size', required: true },
      {
        name: 'tolerance',
        kind: 'number',
        unit: 'um',
        title: 'Tolerance of the grain size, where printed',
        required: false,
      },
      text('measure', 'What the figure is: a mean or a median, and how it is measured'),
      text('source', 'Key of the text; for rows from memory, of the standard'),
      seen,
      text('note', 'Where texts disagree, and doubts', false),
    ],
  },
  {
    name: 'grit-equivalents',
    room: 'abrasive',
    title: 'ANSI grades and the P grades that texts print beside them',
    notes: ['Pairs as printed in one row of a table. Two texts disagree at 400 and 500.'],
    columns: [
      text('ansi', 'ANSI B74.18 grade'),
      text('p', 'FEPA P grade beside it'),
      text('source', 'Key of the text'),
      seen,
      text('note', 'Where texts disagree', false),
    ],
  },
];
