// What calculators and pages use. The check values (checks.ts), the equations of lumber that only they use (lumber.ts) and the
// lists of equations and tables (equations.ts, tables.ts) are imported by path, so that no browser bundle carries them.
export * from './band.ts';
export * from './cuts.ts';
export * from './formulas.ts';
export * from './inlay.ts';
export * from './panel.ts';
export * from './properties.ts';
export * from './rings.ts';
export * from './season.ts';
export * from './section.ts';
export * from './strain.ts';
export * from './wood.ts';
