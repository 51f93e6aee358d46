import type { CslItem } from './csl.ts';

/** Lumber: grading, sizes, the words of the trade. */
export const stockSources = [
  {
    id: 'ahec-grading-guide',
    type: 'report',
    title: 'Guide to American hardwood lumber grades: measurement',
    publisher: 'American Hardwood Export Council',
    note: 'Its section on measurement was read; the title is from memory.',
  },
  {
    id: 'nhla-rules',
    type: 'standard',
    title: 'Rules for the measurement and inspection of hardwood and cypress',
    publisher: 'National Hardwood Lumber Association',
    issued: { 'date-parts': [[2015, 1, 1]] },
    note: 'Opened at its contents only; figures that are its own come through texts that repeat it.',
  },
  {
    id: 'lumber-inspector-article',
    type: 'webpage',
    title: 'A hardwood inspector’s article on measuring and tallying lumber',
    note: 'Quoted; it follows the rules of the National Hardwood Lumber Association.',
  },
  {
    id: 'hardwood-dimensions-table',
    type: 'webpage',
    title: 'Hardwood lumber dimensions, a table of a general engineering reference',
    note: 'Quoted; its figures are those of the hardwood rules on surfaced lumber.',
  },
  {
    id: 'sawing-and-drying-forum',
    type: 'webpage',
    title: 'A sawing-and-drying forum answer that cites the hardwood rules on kiln-dried thickness',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'ps-20',
    type: 'standard',
    title: 'American softwood lumber standard',
    number: 'PS 20-20, revision 1',
    publisher: 'U.S. National Institute of Standards and Technology',
    issued: { 'date-parts': [[2021, 10]] },
    note: 'Its Table 3 was read in two public repositories that quote it. A later edition, PS 20-25, is reported and disputed.',
  },
  {
    id: 'wengert-glue-joints',
    type: 'webpage',
    title: 'Aching glue joints, an excerpt of The wood doctor’s Rx',
    'title-short': 'Wengert on glue joints',
    author: [{ family: 'Wengert', given: 'Gene' }],
    issued: { 'date-parts': [[1998]] },
    note: 'Read as it is reprinted on a trade site: the passage on sunken joints of edge-glued panels.',
  },
] as const satisfies readonly CslItem[];
