import type { ShopBeyond } from '../../method/case/types.ts';
import { answersTo, MethodMemory } from '../../method/page/answer.ts';
import { type PagePatch, PageTeller, withoutDocuments } from '../../method/page/patch.ts';
import type { MethodQuestion } from '../../method/page/types.ts';
import type { DataProblem } from '../../model/data/problem.ts';

/** The long texts of a question, which stay while a case of it changes. */
export type MethodTexts = Pick<MethodQuestion, 'text' | 'shop'>;

/**
 * What is made of an answer: a page that follows somebody who changes one case (the numbers first, how the case before was judged and timed standing
 * meanwhile), a page, or sheets, which have papers too.
 */
export type MethodUse = 'following' | 'page' | 'sheets';

/** What a page asks, and what comes back: the same number on all. */
export interface MethodAsked {
  number: number;
  question: Omit<MethodQuestion, keyof MethodTexts>;
  /** Left out where they are those of the question before. */
  texts?: MethodTexts;
  use: MethodUse;
}
/** The page as it differs from the one in the reply before, or what is wrong. */
export type MethodReply = {
  number: number;
  /** True for the last answer to a question. */
  last: boolean;
} & ({ patch: PagePatch } | { problems: readonly DataProblem[]; beyond?: ShopBeyond });

interface Scope {
  onmessage: ((event: { data: MethodAsked }) => void) | null;
  postMessage(reply: MethodReply): void;
}

const scope = globalThis as unknown as Scope;
const memory = new MethodMemory();
const teller = new PageTeller();
let latest = 0;
let texts: MethodTexts = { text: '' };

/** Let messages in that came while something was worked out. */
const breathe = () => new Promise((resolve) => setTimeout(resolve));

scope.onmessage = async ({ data: { number, question: asked, texts: sent, use } }) => {
  latest = number;
  texts = sent ?? texts;
  const question = { ...asked, ...texts };
  await breathe();
  if (latest !== number) return;
  const follows = use === 'following';
  try {
    for await (const answer of answersTo(question, memory, follows)) {
      const last = !answer.ok || answer.page.toCome === undefined;
      scope.postMessage(
        answer.ok
          ? {
              number,
              last,
              patch: teller.tell(use === 'sheets' ? answer.page : withoutDocuments(answer.page), follows),
            }
          : { number, last, problems: answer.problems, ...(answer.beyond ? { beyond: answer.beyond } : {}) },
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
