import { type CslItem, forestProducts } from './csl.ts';

/** Oils, waxes, varnishes and what they do to moisture. */
export const finishSources = [
  {
    id: 'fpl-rp-462',
    type: 'report',
    title: 'The moisture-excluding effectiveness of finishes on wood surfaces',
    'title-short': 'FPL-RP-462',
    author: [{ family: 'Feist' }, { family: 'Little' }, { family: 'Wennesheimer' }],
    publisher: forestProducts,
    number: 'Research Paper FPL 462',
    issued: { 'date-parts': [[1985]] },
    note: 'Public domain. Abstract read, and the front matter of its support data, which names 91 finishes; its tables were not read but through the handbook and texts that repeat them.',
  },
  {
    id: 'excluding-magazine-table',
    type: 'webpage',
    title:
      'A woodworking magazine’s page on wood and moisture, with a table of finishes from the Forest Products Laboratory',
    'title-short': 'Magazine’s table of finishes',
    note: 'Repeats eight finishes at two coats. Where it repeats a row that was read in the handbook, it agrees.',
  },
  {
    id: 'excluding-forum-excerpt',
    type: 'webpage',
    title: 'A forum thread with an excerpt of the Forest Products Laboratory’s figures after 14 days',
    'title-short': 'Forum’s excerpt of finishes',
    note: 'Repeats fourteen finishes at three coats, after 14 days alone. Where it repeats a row that was read in the handbook, it agrees.',
  },
  {
    id: 'astm-d12',
    type: 'standard',
    title: 'ASTM D12-88: Specification for raw tung oil',
    'title-short': 'ASTM D12',
    publisher: 'ASTM International',
    issued: { 'date-parts': [[1988]] },
    note: 'Limits read; the title is from memory.',
  },
  {
    id: 'orc-3741-09',
    type: 'legislation',
    title: 'Ohio Revised Code 3741.09: boiled linseed oil',
    'title-short': 'Ohio Revised Code 3741.09',
    note: 'Read; the title is described, not quoted.',
  },
] as const satisfies readonly CslItem[];
