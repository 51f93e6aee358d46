import type { Citation } from '../evidence/index.ts';

/** What a paper on boards and bacteria found. */
export interface HygieneFinding {
  id: string;
  /** Whom to name in a line, for example `Ak, Cliver and Kaspar 1994`. */
  who: string;
  tested: string;
  found: string;
  /** Whether it speaks for wood, against it, or neither. */
  speaks: 'for wood' | 'against wood' | 'no difference' | 'against oil on wood';
  citation: Citation;
}

const abstract = (source: Citation['source']): Citation => ({ source, locator: 'abstract', seen: 'source-text' });

/** Papers on boards and hygiene, oldest first. They disagree, and none tested a joint between wood and resin. */
export const hygieneFindings: readonly HygieneFinding[] = [
  {
    id: 'ak-contaminated',
    who: 'Ak, Cliver and Kaspar 1994',
    tested:
      'blocks of nine hardwoods, four plastics and hard rubber, new and used, with bacteria in broth or chicken juice',
    found:
      'clean wood took the liquid in within 3 to 10 minutes. Of 1 000 to 10 000 bacteria none could usually be recovered from wood; of a million at least 98 % were gone after 12 hours. On plastic they stayed, and grew overnight where it was kept moist. Mineral oil changed little.',
    speaks: 'for wood',
    citation: abstract('ak-1994-contaminated'),
  },
  {
    id: 'ak-decontamination',
    who: 'Ak, Cliver and Kaspar 1994, second paper',
    tested: 'the same blocks, and how they come clean',
    found:
      'hot water and detergent generally cleaned wood, new or used. Chicken fat on the surface kept some bacteria alive for 12 hours. Plastic full of knife scars was hard to clean by hand.',
    speaks: 'for wood',
    citation: abstract('ak-1994-decontamination'),
  },
  {
    id: 'miller',
    who: 'Miller and others 1996',
    tested: 'hardwood and polyethylene boards, unscored, with ground beef for up to 90 minutes',
    found:
      'no significant difference between wood and plastic. Washing with any cleaner, or water alone, removed most.',
    speaks: 'no difference',
    citation: abstract('miller-1996'),
  },
  {
    id: 'wear',
    who: 'Study of wear in food service, 1997',
    tested: 'wood and plastic boards, washed by hand and machine again and again',
    found:
      'wood wore more, with cracks wide enough to hold bacteria. Plastic was cleaner after washing. Some bacteria were still found after washing and sanitizing, on wood only.',
    speaks: 'against wood',
    citation: abstract('jfp-1997-cleanability'),
  },
  {
    id: 'lucke',
    who: 'Lücke and Skowyrska 2015',
    tested: 'maple, beech and polyethylene boards, in the laboratory and for two months in a small kitchen',
    found: 'no significant difference between the three.',
    speaks: 'no difference',
    citation: abstract('lucke-2015'),
  },
  {
    id: 'munir',
    who: 'Munir and others 2019',
    tested: 'nothing new: a review of work on untreated wood',
    found: 'untreated wood can stand beside plastic, glass and steel.',
    speaks: 'for wood',
    citation: abstract('munir-2019'),
  },
  {
    id: 'vega-gutierrez',
    who: 'Vega Gutierrez and others 2023',
    tested: 'four woods, bare and with hardening or non-hardening oils',
    found:
      'oiled wood gave back significantly more bacteria than bare wood; which oil made no significant difference; the wood did.',
    speaks: 'against oil on wood',
    citation: abstract('vega-gutierrez-2023'),
  },
];
