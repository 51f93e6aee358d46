/** What the statement on access says that a test can hold: the day of the last look, the tools with their releases, what they looked at. */
export const lookedAt = {
  /** Day of the last look at the whole site. */
  day: '2026-11-30',
  /** axe-core, as the tests use it. */
  axe: '4.13.0',
  /** Playwright, which drives the browser. */
  playwright: '1.65.1',
  /** The browser of these looks, its first number. */
  chromium: 156,
} as const;

/** One criterion of WCAG 2.2 AA that is met in part, or of which it is not known, in the reader's words. */
export interface Short {
  criterion: string;
  where: string;
}

/** Where the site is known to fall short, or has not been tried. */
export const shorts: readonly Short[] = [
  {
    criterion: '1.3.1 Info and relationships; 4.1.2 Name, role, value',
    where: 'Formulas are sent as MathML beside the drawn ones. How well that is read depends on your screen reader.',
  },
  {
    criterion: '1.4.11 Contrast of what is not text',
    where:
      'The lines of a chart’s grid and the shading of open hours in a timetable are pale on purpose (about 1.1 to 1.5 to 1). What they show stands in the table of numbers below the chart, and in the list of sessions.',
  },
  {
    criterion: '2.5.8 Size of targets',
    where:
      'Controls are 44 px high, and links in lists are made as high. Links within a sentence are as high as its line, which the criterion allows.',
  },
  {
    criterion: '3.1.2 Language of parts',
    where:
      'Botanical names are marked as Latin in lists of woods, on their pages, in the search and in tables. Within the answer of a calculator, on printed sheets and in texts of sources they are not, as the criterion allows for technical terms.',
  },
];
