export * from './basis.ts';
export * from './check.ts';
export * from './equation.ts';
export * from './figure.ts';
export * from './level-words.ts';
export * from './refusal.ts';
export * from './sources/index.ts';
export * from './table.ts';
