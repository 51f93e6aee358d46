// The woods as pages and calculators read them. The join and its parts (resolve.ts, tables.ts, checks.ts, record.ts)
// are for scripts, tests and the site's build, and are imported by path so that no browser bundle carries them.
export { allSpecies, speciesById } from './all.ts';
export { findWoods, type WoodNames } from './find-woods.ts';
export { foodRules, foodScope } from './food.ts';
export { distance, nearestAlternatives } from './nearest.ts';
export { searchSpecies, woodsNamed } from './search.ts';
export * from './types.ts';
