/** What can be imported from the package, by the name behind `kerf-and-cure/`, with the source file that it is made from. */
export const entries: Readonly<Record<string, string>> = {
  evidence: 'src/model/evidence/index.ts',
  quantity: 'src/model/quantity/index.ts',
  food: 'src/model/food/index.ts',
  species: 'src/model/species/index.ts',
  moisture: 'src/model/moisture/index.ts',
  movement: 'src/model/movement/index.ts',
  stock: 'src/model/stock/index.ts',
  outline: 'src/model/outline/index.ts',
  abrasive: 'src/model/abrasive/index.ts',
  resin: 'src/model/resin/index.ts',
  finish: 'src/model/finish/index.ts',
  calculators: 'src/library/calculators.ts',
  method: 'src/library/method.ts',
  schedule: 'src/method/schedule/index.ts',
  store: 'src/library/store.ts',
};

/** The one of them that reads files, and so needs Node. */
export const nodeEntries: readonly string[] = ['store'];

/** What runs by itself: the command, and the worker that it starts where many methods are checked. */
export const programs: Readonly<Record<string, string>> = {
  kerf: 'src/library/kerf.ts',
  'check-worker': 'src/command/check-worker.ts',
};
