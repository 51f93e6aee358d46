import { type ClassProgress, type WorkedClass, workClass } from '../../method/class/class.ts';
import { missedSession } from '../../method/class/missed.ts';
import { type ClassPacket, type ClassPacketOptions, classPacket } from '../../method/class/packet.ts';
import type { ClassAnswer, ClassPage, ClassQuestion, MissedSession } from '../../method/class/types.ts';

/** What the page asks: a class, or what a missed session of the class that was asked last comes to. */
export type ClassAsked = { number: number } & (
  | { question: ClassQuestion }
  | { missed: { place: string; session: number } }
  | { packet: ClassPacketOptions }
);
export type ClassReply = { number: number } & (
  | { progress: ClassProgress }
  | { answer: ClassAnswer }
  | { missed: MissedSession | undefined }
  | { packet: ClassPacket | undefined }
);

const scope = globalThis as unknown as {
  onmessage: (event: MessageEvent<ClassAsked>) => void;
  postMessage(reply: ClassReply): void;
};
const memo = new Map<string, unknown>();
/** So many answers of calculators are kept from one class to the next. */
const mostKept = 3000;
let state: Promise<{ known: WorkedClass; page: ClassPage } | undefined> = Promise.resolve(undefined);

async function work({ number, question }: Extract<ClassAsked, { question: ClassQuestion }>) {
  if (memo.size > mostKept) memo.clear();
  const worked = await workClass(question, (progress) => scope.postMessage({ number, progress }), memo);
  scope.postMessage({ number, answer: worked.answer });
  return worked.state && worked.answer.ok ? { known: worked.state, page: worked.answer.page } : undefined;
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
  const { number } = data;
  const reply =
    'packet' in data
      ? state
          .then((worked) => worked && classPacket(worked.known, worked.page, data.packet))
          .then((packet) => scope.postMessage({ number, packet }))
      : state
          .then((worked) => worked && missedSession(worked.known, data.missed.place, data.missed.session))
          .then((missed) => scope.postMessage({ number, missed }));
  reply.catch(thrown);
};
