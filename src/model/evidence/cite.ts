import type { Equation, EvidenceNote } from './index.ts';

/** An evidence note for an equation that an answer used. */
export function cite(equation: Equation<(...args: never[]) => unknown>, text: string): EvidenceNote {
  const { id, title, basis, citation } = equation.record;
  return { equation: id, text: `${title}. ${text}`, basis, ...(citation ? { citation } : {}) };
}
