// Every module of the room that holds an equation; the Equations page shows what carries a record and passes over the rest.
export * from './anchor.ts';
export * from './base.ts';
export * from './clock.ts';
export * from './dose.ts';
export * from './flood.ts';
export * from './kinetics.ts';
export * from './pour.ts';
export * from './ratio.ts';
