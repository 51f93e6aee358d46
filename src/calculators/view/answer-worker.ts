import type { Outcome, Result } from '../../model/evidence/index.ts';
import { answerTo } from '../kit/answer.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';

/** What a page asks of a worker, and what comes back: the same number on both. */
export interface Question {
  number: number;
  asked: RawInputs;
}
export interface Reply {
  number: number;
  outcome: Outcome<Result>;
}

/** The first that a worker hears: for which calculator it will answer. It fetches that one and no other. */
export interface Appointment {
  calculator: string;
}

/** The part of a worker's own world that is used here. */
export interface WorkerScope {
  onmessage: ((event: { data: Appointment | Question }) => void) | null;
  postMessage(reply: Reply): void;
}

/**
 * Let a worker answer for the calculator that it is appointed for.
 *
 * A calculator that cannot be fetched ends in an error of the worker, upon which the page answers itself.
 *
 * @param load fetches a calculator by its id
 */
export function answerInWorker(
  load: (id: string) => Promise<Calculator>,
  scope = globalThis as unknown as WorkerScope,
): void {
  let appointed: Promise<Calculator> | undefined;
  scope.onmessage = async ({ data }) => {
    if ('calculator' in data) {
      appointed = load(data.calculator);
      // Out of the promise, whose failure the page would not hear of.
      appointed.catch((problem: unknown) =>
        setTimeout(() => {
          throw problem;
        }),
      );
      return;
    }
    const calculator = await appointed?.catch(() => undefined);
    if (calculator) scope.postMessage({ number: data.number, outcome: answerTo(calculator, data.asked) });
  };
}
