import type { CslItem } from './csl.ts';

/** Units, and this site itself. */
export const generalSources = [
  {
    id: 'nist-sp-811',
    type: 'report',
    title: 'Guide for the use of the International System of Units',
    'title-short': 'NIST SP 811',
    publisher: 'U.S. National Institute of Standards and Technology',
    number: 'Special Publication 811',
    note: 'Exact conversion factors; not opened, they are definitions known by heart.',
  },
  {
    id: 'ucum',
    type: 'standard',
    title: 'Unified code for units of measure',
    'title-short': 'UCUM',
    number: '2.2',
    publisher: 'Regenstrief Institute',
  },
  {
    id: 'kerf-and-cure',
    type: 'webpage',
    title: 'Derived on this site',
    'title-short': 'Derived on this site',
    note: 'A formula or figure of our own, worked out in the open from published ones.',
  },
] as const satisfies readonly CslItem[];
