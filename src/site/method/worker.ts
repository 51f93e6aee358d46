import { answersTo, MethodMemory } from '../../method/page/answer.ts';
import type { MethodAnswer, MethodQuestion } from '../../method/page/types.ts';

/** What a page asks, and what comes back: the same number on all. */
export interface MethodAsked {
  number: number;
  question: MethodQuestion;
}
export interface MethodReply {
  number: number;
  answer: MethodAnswer;
  /** True for the last answer to a question. */
  last: boolean;
}

interface Scope {
  onmessage: ((event: { data: MethodAsked }) => void) | null;
  postMessage(reply: MethodReply): void;
}

const scope = globalThis as unknown as Scope;
const memory = new MethodMemory();
let latest = 0;

/** Let messages in that came while something was worked out. */
const breathe = () => new Promise((resolve) => setTimeout(resolve));

scope.onmessage = async ({ data: { number, question } }) => {
  latest = number;
  await breathe();
  if (latest !== number) return;
  try {
    for await (const answer of answersTo(question, memory)) {
      const last = !answer.ok || answer.page.toCome === undefined;
      scope.postMessage({ number, answer, last });
      await breathe();
      // Somebody typed on: a timetable of what is gone helps nobody.
      if (latest !== number) return;
    }
  } catch (error) {
    // Out of the promise, whose failure the page would not hear of.
    setTimeout(() => {
      throw error;
    });
  }
};
