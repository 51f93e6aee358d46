import type { Outcome, Result } from '../../model/evidence/index.ts';
import { answer } from './answer.ts';
import type { Calculator, RawInputs } from './calculator.ts';

/** What a page asks of a worker, and what comes back: the same number on both. */
export interface Question {
  number: number;
  asked: RawInputs;
}
export interface Reply {
  number: number;
  outcome: Outcome<Result>;
}

/** Read the inputs and compute: what the page shows. */
export function answerTo(calculator: Calculator, asked: RawInputs): Outcome<Result> {
  const outcome = answer(calculator, asked);
  return outcome.ok ? { ok: true, value: outcome.value.result } : outcome;
}

/** The part of a worker's own world that is used here. */
export interface WorkerScope {
  onmessage: ((event: { data: Question }) => void) | null;
  postMessage(reply: Reply): void;
}

/**
 * Let a worker answer for a calculator. A heavy calculator has a `worker.ts` beside its view that calls this and nothing else,
 * so that its bundle holds the one calculator and no React.
 */
export function answerInWorker(calculator: Calculator, scope = globalThis as unknown as WorkerScope): void {
  scope.onmessage = ({ data: { number, asked } }) => {
    scope.postMessage({ number, outcome: answerTo(calculator, asked) });
  };
}
