import type { Result } from '../../model/evidence/index.ts';
import type { Calculator } from './calculator.ts';

/** An answer as one object: what the command line prints and a page downloads. */
export interface Report {
  calculator: string;
  inputs: Readonly<Record<string, unknown>>;
  figures: Result['figures'];
  series?: Result['series'];
  tables?: Result['tables'];
  cautions: Result['cautions'];
  evidence: Result['evidence'];
}

/** The report of an answer. Drawings are left out: they follow from the figures. */
export function report(calculator: Calculator, inputs: Readonly<Record<string, unknown>>, result: Result): Report {
  return {
    calculator: calculator.id,
    inputs,
    figures: result.figures,
    ...(result.series ? { series: result.series } : {}),
    ...(result.tables ? { tables: result.tables } : {}),
    cautions: result.cautions,
    evidence: result.evidence,
  };
}
