import { onFailure } from '../../calculators/view/worker-failure.ts';
import type { TextAnswer, TextAnswers, TextQuestion } from './text-answers.ts';

interface Reply {
  number: number;
  answer: unknown;
}

/** The part of a `Worker` that is used here. */
export interface TextWorker {
  onmessage: ((event: MessageEvent<Reply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(message: { number: number; question: TextQuestion }): void;
  terminate(): void;
}

interface Asked {
  question: TextQuestion;
  resolve: (answer: unknown) => void;
}

const makeWorker = (): TextWorker => new Worker(new URL('./text-worker.ts', import.meta.url));

/**
 * Asks about a text, off the page's own thread where the browser can. Of questions for problems only the latest is answered: one that is passed by
 * ends with undefined. Where no worker can be made, or it fails, the page answers itself.
 */
export class TextService {
  readonly #make: () => TextWorker;
  readonly #here: () => Promise<Pick<TextAnswers, 'answer'>>;
  readonly #asked = new Map<number, Asked>();
  #worker: TextWorker | null | undefined;
  #answers: Promise<Pick<TextAnswers, 'answer'>> | undefined;
  #number = 0;
  #looking = false;
  #waiting: Asked | undefined;

  constructor(
    make: () => TextWorker = makeWorker,
    here: () => Promise<Pick<TextAnswers, 'answer'>> = async () =>
      new (await import('./text-answers.ts')).TextAnswers(),
  ) {
    this.#make = make;
    this.#here = here;
  }

  ask<Q extends TextQuestion>(question: Q): Promise<TextAnswer[Q['kind']] | undefined> {
    return new Promise((resolve) => {
      const asked = { question, resolve: resolve as (answer: unknown) => void };
      if (question.kind !== 'problems') return this.#send(asked);
      if (!this.#looking) return this.#look(asked);
      this.#waiting?.resolve(undefined);
      this.#waiting = asked;
    });
  }

  #look({ question, resolve }: Asked): void {
    this.#looking = true;
    this.#send({
      question,
      resolve: (answer) => {
        const next = this.#waiting;
        this.#waiting = undefined;
        this.#looking = false;
        resolve(next ? undefined : answer);
        if (next) this.#look(next);
      },
    });
  }

  #send(asked: Asked): void {
    this.#number += 1;
    const number = this.#number;
    this.#asked.set(number, asked);
    try {
      this.#worker ??= this.#worker === null ? null : this.#start();
      if (this.#worker) this.#worker.postMessage({ number, question: asked.question });
      else void this.#answerHere(number);
    } catch {
      this.#instead();
    }
  }

  #start(): TextWorker {
    const worker = this.#make();
    worker.onmessage = ({ data: { number, answer } }) => this.#settle(number, answer);
    worker.onerror = onFailure(() => this.#instead());
    return worker;
  }

  #settle(number: number, answer: unknown): void {
    const asked = this.#asked.get(number);
    this.#asked.delete(number);
    asked?.resolve(answer);
  }

  /** Answer here what the worker will not answer any more. */
  #instead(): void {
    this.#worker?.terminate();
    this.#worker = null;
    for (const number of [...this.#asked.keys()]) void this.#answerHere(number);
  }

  async #answerHere(number: number): Promise<void> {
    const asked = this.#asked.get(number);
    if (!asked) return;
    this.#answers ??= this.#here();
    const answers = this.#answers;
    try {
      this.#settle(number, await (await answers).answer(asked.question));
    } catch {
      // What could not be fetched is asked for again with the next question: there may be a network by then.
      if (this.#answers === answers) this.#answers = undefined;
      this.#settle(number, undefined);
    }
  }

  close(): void {
    this.#waiting?.resolve(undefined);
    this.#waiting = undefined;
    this.#worker?.terminate();
    this.#worker = null;
    for (const number of [...this.#asked.keys()]) this.#settle(number, undefined);
  }
}
