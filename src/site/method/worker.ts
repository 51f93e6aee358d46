import { answersTo, MethodMemory } from '../../method/page/answer.ts';
import { type PagePatch, PageTeller, withoutDocuments } from '../../method/page/patch.ts';
import type { MethodQuestion } from '../../method/page/types.ts';
import type { DataProblem } from '../../model/data/problem.ts';

/** What a page asks, and what comes back: the same number on all. */
export interface MethodAsked {
  number: number;
  question: MethodQuestion;
  /** True where sheets are made of the answer. */
  documents: boolean;
}
/** The page as it differs from the one in the reply before, or what is wrong. */
export type MethodReply = {
  number: number;
  /** True for the last answer to a question. */
  last: boolean;
} & ({ patch: PagePatch } | { problems: readonly DataProblem[] });

interface Scope {
  onmessage: ((event: { data: MethodAsked }) => void) | null;
  postMessage(reply: MethodReply): void;
}

const scope = globalThis as unknown as Scope;
const memory = new MethodMemory();
const teller = new PageTeller();
let latest = 0;

/** Let messages in that came while something was worked out. */
const breathe = () => new Promise((resolve) => setTimeout(resolve));

scope.onmessage = async ({ data: { number, question, documents } }) => {
  latest = number;
  await breathe();
  if (latest !== number) return;
  try {
    for await (const answer of answersTo(question, memory)) {
      const last = !answer.ok || answer.page.toCome === undefined;
      scope.postMessage(
        answer.ok
          ? { number, last, patch: teller.tell(documents ? answer.page : withoutDocuments(answer.page)) }
          : { number, last, problems: answer.problems },
      );
      await breathe();
      // Somebody typed on: a timetable of what is gone helps nobody.
      if (latest !== number) return;
    }
    // The first finding names its line, for which the text is parsed with its places: while nobody waits.
    memory.method(question.text, question.file).spanOf(['title']);
  } catch (error) {
    // Out of the promise, whose failure the page would not hear of.
    setTimeout(() => {
      throw error;
    });
  }
};
