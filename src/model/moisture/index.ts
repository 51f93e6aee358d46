export * from './climates.ts';
export * from './diffusion.ts';
export * from './psychrometrics.ts';
export * from './readings.ts';
export * from './rooms.ts';
export * from './season.ts';
export * from './sorption.ts';
export { months, tables } from './tables.ts';
