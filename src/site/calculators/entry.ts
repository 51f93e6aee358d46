import type { Calculator } from '../../calculators/kit/calculator.ts';

/** What a list of calculators shows of each, without its code. */
export interface CalculatorEntry {
  id: string;
  title: string;
  question: string;
  summary: string;
}

export function calculatorEntry({ id, title, question, summary }: Calculator): CalculatorEntry {
  return { id, title, question, summary };
}
