// The places and the tables are long and are loaded only where they are used: from './climates.ts' and './tables.ts'.
export type { Climate } from './climates.ts';
export * from './diffusion.ts';
export { erfc, scaledErfcBeyondLinear } from './error-function.ts';
export { months } from './months.ts';
export * from './psychrometrics.ts';
export * from './readings.ts';
export * from './rooms.ts';
export * from './season.ts';
export * from './sorption.ts';
