import { type ClassProgress, type WorkedClass, workClass } from '../../method/class/class.ts';
import { missedSession } from '../../method/class/missed.ts';
import type { ClassAnswer, ClassQuestion, MissedSession } from '../../method/class/types.ts';

/** What the page asks: a class, or what a missed session of the class that was asked last comes to. */
export type ClassAsked = { number: number } & (
  | { question: ClassQuestion }
  | { missed: { place: string; session: number } }
);
export type ClassReply = { number: number } & (
  | { progress: ClassProgress }
  | { answer: ClassAnswer }
  | { missed: MissedSession | undefined }
);

const scope = globalThis as unknown as {
  onmessage: (event: MessageEvent<ClassAsked>) => void;
  postMessage(reply: ClassReply): void;
};
const memo = new Map<string, unknown>();
/** So many answers of calculators are kept from one class to the next. */
const mostKept = 3000;
let state: Promise<WorkedClass | undefined> = Promise.resolve(undefined);

async function work({ number, question }: Extract<ClassAsked, { question: ClassQuestion }>) {
  if (memo.size > mostKept) memo.clear();
  const worked = await workClass(question, (progress) => scope.postMessage({ number, progress }), memo);
  scope.postMessage({ number, answer: worked.answer });
  return worked.state;
}

const thrown = (problem: unknown) =>
  setTimeout(() => {
    // Out of the promise, whose failure the page would not hear of.
    throw problem;
  });

scope.onmessage = ({ data }) => {
  if ('question' in data) {
    state = state.then(() => work(data)).catch((problem) => void thrown(problem));
    return;
  }
  state
    .then((known) => known && missedSession(known, data.missed.place, data.missed.session))
    .then((missed) => scope.postMessage({ number: data.number, missed }))
    .catch(thrown);
};
