import { answerMethod, MethodMemory } from '../../method/page/answer.ts';
import { withoutDocuments } from '../../method/page/patch.ts';
import type { MethodPage } from '../../method/page/types.ts';
import { DataError, readMethodTexts } from '../../store/index.ts';

/** A method in the list of all: what somebody asks before they choose one. */
export interface MethodSummary {
  id: string;
  title: string;
  for: string;
  makes: string;
  pieces: number;
  /** Hands-on time for all pieces, min; from the first stroke to the last, min. */
  hands: number;
  lasts?: number;
  dangers: number;
  steps: number;
}

/** A method of the house with its page as it is at its defaults. */
export interface MethodEntry {
  id: string;
  page: MethodPage;
  summary: MethodSummary;
}

/**
 * Every method of the house worked out at its defaults, without a shop record: hours and hands are assumed, and the page says so.
 *
 * @throws DataError where a method cannot be worked out
 */
export async function gatherMethodPages(): Promise<MethodEntry[]> {
  const memory = new MethodMemory();
  const entries: MethodEntry[] = [];
  for (const { id, file, text } of readMethodTexts()) {
    const answered = await answerMethod({ text, file }, memory);
    if (!answered.ok) throw new DataError(answered.problems);
    const { page } = answered;
    const { hands, lasts, dangers } = page.brief;
    const summary = {
      id,
      title: page.title,
      for: page.for,
      makes: page.makes.what,
      pieces: page.makes.pieces,
      hands,
      ...(lasts === undefined ? {} : { lasts }),
      dangers: dangers.length,
      steps: page.steps.length,
    };
    entries.push({ id, page: withoutDocuments(page), summary });
  }
  return entries;
}
