// What calculators and pages use. The check values (checks.ts), the fits (excluding-fit.ts), what makes their file
// (excluding-data.ts) and the lists of equations and tables are imported by path, so that no browser bundle carries them.
export * from './coats.ts';
export * from './excluding.ts';
export * from './kinds.ts';
export * from './types.ts';
