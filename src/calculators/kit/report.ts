import type { Result, ResultDocument } from '../../model/evidence/index.ts';
import { defaultUnits, type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import type { Calculator } from './calculator.ts';

/** An answer as one object: what the command line prints and a page downloads. */
export interface Report extends Omit<Result, 'drawings'> {
  calculator: string;
  inputs: Readonly<Record<string, unknown>>;
}

/**
 * The report of an answer. Drawings are left out: they follow from the figures.
 *
 * @param units in which the sentences name their quantities; numbers stay in the unit that stands beside them
 */
export function report(
  calculator: Calculator,
  inputs: Readonly<Record<string, unknown>>,
  answered: Result,
  units: ReaderUnits = defaultUnits,
): Report {
  const result = wordsInReaderUnits(answered, units);
  return {
    calculator: calculator.id,
    inputs,
    verdict: result.verdict,
    figures: result.figures,
    ...(result.series ? { series: result.series } : {}),
    ...(result.tables ? { tables: result.tables } : {}),
    ...(result.timeline ? { timeline: result.timeline } : {}),
    ...(result.uses ? { uses: result.uses } : {}),
    ...(result.documents ? { documents: result.documents.map(withoutDrawings) } : {}),
    cautions: result.cautions,
    evidence: result.evidence,
  };
}

function withoutDrawings(document: ResultDocument): ResultDocument {
  return { ...document, blocks: document.blocks.filter(({ kind }) => kind !== 'drawing') };
}
