/**
 * What a page may weigh, gzipped, until it answers, as a ratio to a plain page of the framework's own classic theme. A page that grows
 * past its budget fails `tests/browser/weight.spec.ts`. It is held by two measures: the goals are stated without the site's own faces, which
 * are fetched once for all pages and which the plain page has none of; the other is all that a first visit fetches. Faces of formulas count in both.
 * A page more makes every page heavier by its line in the list of pages: two dozen of them, of rules and sources, by 0.7 KB. One way to say a length,
 * wherever it stands, is 0.7 KB of every page with amounts in its sentences; a method's page fetches the reader's own case beside its code, 1.3 KB.
 */
export interface Budget {
  kind: string;
  /** A page of the kind. */
  path: string;
  /** Ratio that it must keep without the site's own faces. */
  most: number;
  /** Ratio that it must keep with all that is fetched. */
  mostInAll: number;
  /** Ratio that it should come to without the site's own faces. */
  goal: number;
  /** Style that it may carry, KB: 16 at most, the plain page has 14. */
  style: number;
}

/**
 * The plain page, in bytes: the page `/plain` of `bare-site.ts`, built with this version of the framework and weighed by `weigh.ts`.
 * `npm run bench` builds and weighs it anew, and says where the two part. It has no faces of its own.
 */
export const barePage = { framework: '3.10.2', html: 3227, css: 14138, js: 157101, total: 174486 } as const;

/** A calculator or method is sent drawn in both systems of units: what differs weighs 3 to 4 KB, with large drawings 11, and spares a reader of inches its code. */
export const budgets: readonly Budget[] = [
  { kind: 'the first page', path: '/', most: 0.97, mostInAll: 1.175, goal: 1.15, style: 10.8 },
  { kind: 'a wood', path: '/woods/sugar-maple/', most: 1.27, mostInAll: 1.61, goal: 1.4, style: 15.2 },
  {
    kind: 'a calculator',
    path: '/calculators/seasonal-movement/',
    most: 1.01,
    mostInAll: 1.29,
    goal: 1.5,
    style: 14.2,
  },
  {
    kind: 'a calculator with a drawing',
    path: '/calculators/template-fit/',
    most: 1.09,
    mostInAll: 1.38,
    goal: 1.5,
    style: 16,
  },
  {
    kind: 'the heaviest calculator',
    path: '/calculators/pour-heat/',
    most: 1.01,
    mostInAll: 1.29,
    goal: 1.5,
    style: 14.2,
  },
  {
    kind: 'a how-to page',
    path: '/how-to/pouring-without-overheating/',
    most: 1.19,
    mostInAll: 1.4,
    goal: 1.5,
    style: 12.8,
  },
  {
    kind: 'a how-to page with calculators',
    path: '/how-to/seasonal-movement/',
    most: 1.22,
    mostInAll: 1.48,
    goal: 1.5,
    style: 12.8,
  },
  {
    kind: 'a how-to page with formulas',
    path: '/how-to/bubbles/',
    most: 1.43,
    mostInAll: 1.64,
    goal: 1.5,
    style: 14.4,
  },
  {
    kind: 'equations',
    path: '/reference/equations/moisture/',
    most: 1.34,
    mostInAll: 1.61,
    goal: 1.5,
    style: 13,
  },
  {
    kind: 'a method',
    path: '/methods/first-tray/',
    most: 1.15,
    mostInAll: 1.35,
    goal: 1.6,
    style: 15.7,
  },
];
