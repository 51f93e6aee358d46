import type { Outcome, Result } from '../../model/evidence/index.ts';
import { answerTo } from '../kit/answer.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { type AnsweringWorker, answering, type MakeWorker } from './answering.ts';

/** What is asked, as a text: the same for the same question. */
export const keyOf = (asked: RawInputs): string => JSON.stringify(asked);

/** The answer of each calculator that was worked out ahead, with its question. */
const ahead = new WeakMap<Calculator, { key: string; outcome: Outcome<Result> }>();

/** The answer to the question with which a calculator is first drawn: as it was worked out ahead, else worked out at once. */
export function firstAnswer(calculator: Calculator, asked: RawInputs): Outcome<Result> {
  const known = ahead.get(calculator);
  return known?.key === keyOf(asked) ? known.outcome : answerTo(calculator, asked);
}

/**
 * Work out ahead what a calculator will first be drawn with: an answer that is worked out while it is drawn holds up whoever types meanwhile.
 *
 * @param worker makes the worker of a heavy calculator; any other answers here, in a turn of its own
 * @returns the worker, where one was made and answered: it can go on answering
 */
export function workAhead(
  calculator: Calculator,
  asked: RawInputs,
  worker: MakeWorker | undefined,
): Promise<AnsweringWorker | undefined> {
  return new Promise((resolve) => {
    const give = (question: RawInputs, outcome: Outcome<Result>) => {
      ahead.set(calculator, { key: keyOf(question), outcome });
      resolve(line?.release());
    };
    const here = (question: RawInputs) => answerTo(calculator, question);
    const line = worker && answering(worker, here, give);
    // In a turn of its own: a worker that cannot be made answers at once.
    setTimeout(() => (line ? line.ask(asked) : give(asked, here(asked))));
  });
}
