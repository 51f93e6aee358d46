export * from './kinds.ts';
export * from './kinetics.ts';
export * from './ratio.ts';
export * from './resin.ts';
export * from './types.ts';
