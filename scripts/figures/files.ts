import { calculatorFigures } from './calculators.ts';
import { columns, line } from './lines.ts';
import { methodFigures } from './methods.ts';

const table = (lines: readonly string[]): string => `${[line(...columns), ...lines].join('\n')}\n`;

/** The files that hold every figure as it was reviewed last, by path from the project folder. */
export const figureFiles: Readonly<Record<string, () => string | Promise<string>>> = {
  'tests/figures/calculators.csv': () => table(calculatorFigures()),
  'tests/figures/methods.csv': async () => table(await methodFigures()),
};
