// What calculators and pages use. The check values (checks.ts) and the tables (tables.ts) are imported by path.
export type { Grade, Grading } from './grade-data.ts';
export * from './grades.ts';
export * from './sequence.ts';
export * from './surfaces.ts';
