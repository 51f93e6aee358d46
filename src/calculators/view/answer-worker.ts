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
