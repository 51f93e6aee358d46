import { expect, test, vi } from 'vitest';
import { answerTo } from '../../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../../src/calculators/kit/calculator.ts';
import type { AnsweringWorker } from '../../../src/calculators/view/answering.ts';
import { firstAnswer, workAhead } from '../../../src/calculators/view/first-answer.ts';
import { letWait, workerOf } from '../../../src/calculators/view/worker-of.ts';
import { sample } from '../kit/sample.ts';

/** The sample, which counts how often it is asked. */
function counting() {
  const compute = vi.fn(sample.compute);
  return { calculator: { ...sample, compute } as Calculator, compute };
}
const asked = { ...sample.example.metric, width: '287 mm' };

/** A worker that answers at once. */
function worker(): AnsweringWorker & { ended: boolean } {
  return {
    onmessage: null,
    onerror: null,
    ended: false,
    postMessage({ number, asked: question }) {
      const outcome = answerTo(sample, question);
      queueMicrotask(() => this.onmessage?.({ data: { number, outcome } } as MessageEvent));
    },
    terminate() {
      this.ended = true;
    },
  };
}

test('what was worked out ahead is not worked out again while it is drawn', async () => {
  const { calculator, compute } = counting();
  await workAhead(calculator, asked, undefined);
  expect(compute).toHaveBeenCalledOnce();
  expect(firstAnswer(calculator, { ...asked })).toEqual(answerTo(sample, asked));
  expect(compute).toHaveBeenCalledOnce();
});

test('another question than that which was worked out ahead is answered at once', async () => {
  const { calculator } = counting();
  await workAhead(calculator, asked, undefined);
  const other = { ...asked, width: '288 mm' };
  expect(firstAnswer(calculator, other)).toEqual(answerTo(sample, other));
});

test('a heavy calculator is worked out by its worker, which then waits for the one that is drawn', async () => {
  const { calculator, compute } = counting();
  const made = worker();
  const waiting = await workAhead(calculator, asked, () => made);
  expect(waiting).toBe(made);
  expect(firstAnswer(calculator, asked)).toEqual(answerTo(sample, asked));
  expect(compute).not.toHaveBeenCalled();
  expect(made.ended).toBe(false);
  letWait('sample', made);
  expect(workerOf('sample')()).toBe(made);
});

test('of two that wait the first is ended', () => {
  const [first, second] = [worker(), worker()];
  letWait('sample', first);
  letWait('sample', second);
  expect([first.ended, second.ended]).toEqual([true, false]);
  expect(workerOf('sample')()).toBe(second);
});

test('where no worker can be made it is worked out here, and nothing waits', async () => {
  const { calculator, compute } = counting();
  const waiting = await workAhead(calculator, asked, () => {
    throw new Error('no workers here');
  });
  expect(waiting).toBeUndefined();
  expect(compute).toHaveBeenCalledOnce();
});
