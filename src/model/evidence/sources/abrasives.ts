import type { CslItem } from './csl.ts';

/** Grading of abrasives. */
export const abrasivesSources = [
  {
    id: 'iso-6344',
    type: 'standard',
    title: 'Coated abrasives: grain size analysis',
    number: 'ISO 6344-2:2021 and ISO 6344-3:2021',
    publisher: 'International Organization for Standardization',
    issued: { 'date-parts': [[2021]] },
    note: 'Previews read; its tables of grain sizes were not seen. FEPA 43 has the same grades.',
  },
  {
    id: 'fepa-43',
    type: 'standard',
    title: 'Grains of fused aluminium oxide, silicon carbide and other abrasive materials for coated abrasives',
    number: 'FEPA 43',
    publisher: 'Federation of European Producers of Abrasives',
    issued: { 'date-parts': [[2006]] },
    note: 'Not seen; the title is from memory. A public table of particle sizes cites it.',
  },
  {
    id: 'ansi-b74-18',
    type: 'standard',
    title: 'Grading of certain abrasive grain on coated abrasive material',
    number: 'ANSI B74.18',
    publisher: 'American National Standards Institute',
    issued: { 'date-parts': [[2016]] },
    note: 'Not seen; the title is from memory. The editions of 2006 and 2016 end at grade 600, by a compiler who read them.',
  },
  {
    id: 'grit-units-dictionary',
    type: 'webpage',
    title: 'An online dictionary of units, entry on sandpaper',
    note: 'Quoted; the excerpt ends at P120. Its inches do not always agree with its micrometres.',
  },
  {
    id: 'grit-comparison-table',
    type: 'webpage',
    title: 'A coating supplier’s grit comparison table',
    note: 'Quoted; whole micrometres.',
  },
  {
    id: 'grit-particle-sizes',
    type: 'dataset',
    title: 'A public source-code table of particle sizes of refractories, citing FEPA 43 (2006)',
    note: 'Quoted.',
  },
  {
    id: 'grit-craft-glossary',
    type: 'webpage',
    title: 'A German craft glossary, entry on sandpaper',
    note: 'Quoted; weak evidence.',
  },
  {
    id: 'jis-r-6001',
    type: 'standard',
    title: 'Particle size distribution of micro grains',
    number: 'JIS R 6001:1987',
    publisher: 'Japanese Industrial Standards Committee',
    issued: { 'date-parts': [[1987]] },
    note: 'Quoted on a Japanese technical page. For loose and bonded grain, not for coated abrasives.',
  },
] as const satisfies readonly CslItem[];
