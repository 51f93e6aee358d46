import type { CslItem } from './csl.ts';

/** Kinetics, heat and handling of casting and coating resins. */
export const resinSources = [
  {
    id: 'thermal-explosions-slab',
    type: 'article-journal',
    title:
      'Thermal explosions and the disappearance of criticality at small activation energies: exact results for the slab',
    'title-short': 'Thermal explosions, the slab',
    'container-title': 'Proceedings of the Royal Society of London A',
    note: 'The abstract was read, which prints the critical numbers of slab, cylinder and sphere as about 0.88, 2 and 3.32 and names Frank-Kamenetskii 1938 for them; the journal is from memory and the paper itself was not opened.',
  },
  {
    id: 'en-iso-10077-2',
    type: 'standard',
    title:
      'Thermal performance of windows, doors and shutters. Calculation of thermal transmittance. Numerical method for frames',
    'title-short': 'EN ISO 10077-2',
    number: 'EN ISO 10077-2:2003',
    note: 'Densities and conductivities of plastics and woods were read in a table that quotes the standard; the standard itself was not opened. It gives no heat capacities.',
  },
  {
    id: 'chemics',
    type: 'webpage',
    title: 'Chemics: functions for chemical engineering, documentation of cp_wood',
    'title-short': 'Chemics',
    note: 'A general library that quotes the Wood Handbook’s equations for heat capacity and prints a computed example, 1.91 kJ/(kg K) at 12 % and 340 K.',
  },
  {
    id: 'riccardi-1984',
    type: 'article-journal',
    title: 'Curing reaction of epoxy resins with diamines',
    'title-short': 'Riccardi 1984',
    author: [{ family: 'Riccardi' }, { family: 'Adabbo' }, { family: 'Williams' }],
    'container-title': 'Journal of Applied Polymer Science',
    volume: '29',
    issued: { 'date-parts': [[1984]] },
    note: 'The abstract was read: 14 kcal/mol for the autocatalytic path of a bisphenol-A resin with an aliphatic diamine, 24.5 kcal/mol for the other. Volume and year are from memory; the paper was not opened.',
  },
  {
    id: 'de-gennes-2004',
    type: 'book',
    title: 'Capillarity and wetting phenomena: drops, bubbles, pearls, waves',
    'title-short': 'Capillarity and wetting phenomena',
    author: [
      { family: 'de Gennes', given: 'P.-G.' },
      { family: 'Brochard-Wyart', given: 'F.' },
      { family: 'Quéré', given: 'D.' },
    ],
    publisher: 'Springer',
    issued: { 'date-parts': [[2004]] },
    note: 'The thickness of a puddle was read where a text quotes it; the book was not opened.',
  },
] as const satisfies readonly CslItem[];
