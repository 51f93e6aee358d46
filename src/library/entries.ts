/** One thing that can be imported from the package. */
export interface LibraryEntry {
  /** The source file that it is made from, from the folder of the project. */
  source: string;
  /** What it holds, as its lists say it. */
  about: string;
}

/** What can be imported from the package, by the name behind `kerf-and-cure/`. */
export const entries: Readonly<Record<string, LibraryEntry>> = {
  quantity: {
    source: 'src/model/quantity/index.ts',
    about: 'units; reading `10 1/4 in`, `260 mm` and lists of them; writing them back',
  },
  evidence: {
    source: 'src/model/evidence/index.ts',
    about: 'sources, the basis of a figure, check values, cautions, what an answer is',
  },
  species: {
    source: 'src/model/species/index.ts',
    about: 'woods with every figure and its source; finding one by any of its names',
  },
  food: { source: 'src/model/food/index.ts', about: 'what rules on food contact ask, what may be said of a board' },
  moisture: {
    source: 'src/model/moisture/index.ts',
    about: 'air and the moisture of wood, both ways; rooms, seasons, drying',
  },
  movement: {
    source: 'src/model/movement/index.ts',
    about: 'change across the width, cup, panels, inlays, the band',
  },
  stock: { source: 'src/model/stock/index.ts', about: 'lumber arithmetic, yield, flattening, machine limits, cutters' },
  outline: {
    source: 'src/model/outline/index.ts',
    about: 'outlines of templates: corners, necks, tear-out, drawings as SVG',
  },
  abrasive: { source: 'src/model/abrasive/index.ts', about: 'gradings and grit sequences' },
  resin: { source: 'src/model/resin/index.ts', about: 'kinds of resin, ratios, kinetics' },
  finish: { source: 'src/model/finish/index.ts', about: 'kinds of finish, coats and waits, what they keep out' },
  calculators: { source: 'src/library/calculators.ts', about: 'every calculator, and how one is asked' },
  method: { source: 'src/library/method.ts', about: 'shop methods: read, work out, judge, plan' },
  schedule: {
    source: 'src/method/schedule/index.ts',
    about: 'planning with hands, time lags and opening hours; knows nothing of wood',
  },
  store: {
    source: 'src/library/store.ts',
    about: 'tables, records and methods as they lie in the package; Node alone',
  },
};

/** The one of them that reads files, and so needs Node. */
export const nodeEntries: readonly string[] = ['store'];

/** What runs by itself: the command, and the worker that it starts where many methods are checked. */
export const programs: Readonly<Record<string, string>> = {
  kerf: 'src/library/kerf.ts',
  'check-worker': 'src/command/check-worker.ts',
};
