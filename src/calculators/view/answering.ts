import type { Outcome, Result } from '../../model/evidence/index.ts';
import type { RawInputs } from '../kit/calculator.ts';
import type { Question, Reply } from './answer-worker.ts';
import { onFailure } from './worker-failure.ts';

/** The part of a `Worker` that is used here. */
export interface AnsweringWorker {
  onmessage: ((event: MessageEvent<Reply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(question: Question): void;
  terminate(): void;
}

/** Makes the worker of a calculator; called in a browser only, when a first question is near. */
export type MakeWorker = () => AnsweringWorker;

/** Somebody who answers a calculator's questions, one at a time. */
export interface Answering {
  /** Ask; a question that is still waiting is forgotten, and so is the answer to one that is being worked out. */
  ask(asked: RawInputs): void;
  /** Make the worker before the first question, so that this need not wait for it to start. */
  ready(): void;
  close(): void;
  /** Close, and give the worker away as it is, if there is one. */
  release(): AnsweringWorker | undefined;
}

/**
 * Answer in a worker, the latest question first.
 *
 * The worker has one question at a time; of those that come meanwhile only the latest is kept, so that fast typing builds no
 * queue. An answer is given only while its question is the latest. Where no worker can be made, or it fails, the
 * questions are answered here.
 *
 * @param make makes the worker
 * @param here answers without one
 * @param give gets the answer to the latest question, with the question
 */
export function answering(
  make: MakeWorker,
  here: (asked: RawInputs) => Outcome<Result>,
  give: (asked: RawInputs, outcome: Outcome<Result>) => void,
): Answering {
  let worker: AnsweringWorker | null | undefined;
  let number = 0;
  let working: Question | undefined;
  let waiting: Question | undefined;
  let closed = false;

  const instead = () => {
    worker?.terminate();
    worker = null;
    const question = waiting ?? working;
    working = undefined;
    waiting = undefined;
    if (question && !closed) give(question.asked, here(question.asked));
  };
  const send = (question: Question) => {
    try {
      worker ??= start();
      working = question;
      worker.postMessage(question);
    } catch {
      // No workers here, or not for this page.
      waiting = question;
      instead();
    }
  };
  const start = (): AnsweringWorker => {
    const made = make();
    made.onmessage = ({ data }) => {
      const question = working;
      working = undefined;
      if (closed || !question || data.number !== question.number) return;
      const next = waiting;
      waiting = undefined;
      if (next) send(next);
      else give(question.asked, data.outcome);
    };
    made.onerror = onFailure(instead);
    return made;
  };

  const release = () => {
    const given = worker ?? undefined;
    closed = true;
    worker = null;
    return given;
  };

  return {
    ask(asked) {
      number += 1;
      const question = { number, asked };
      if (worker === null) give(asked, here(asked));
      else if (working) waiting = question;
      else send(question);
    },
    ready() {
      if (closed) return;
      try {
        worker ??= start();
      } catch {
        instead();
      }
    },
    close: () => release()?.terminate(),
    release,
  };
}
