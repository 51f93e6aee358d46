import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, expect, test } from 'vitest';
import { answerTo } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import type { Question } from '../../src/calculators/view/answer-worker.ts';
import type { AnsweringWorker } from '../../src/calculators/view/answering.ts';
import { Frame } from '../../src/calculators/view/Frame.tsx';
import { sample } from '../calculators/kit/sample.ts';

const calculator: Calculator = sample;
const made: { questions: Question[]; reply: () => void; fail: () => void }[] = [];

/** A worker of the page's, whose answers the test sends off. */
const worker = (): AnsweringWorker => {
  const questions: Question[] = [];
  const self: AnsweringWorker = {
    onmessage: null,
    onerror: null,
    postMessage: (question) => questions.push(question),
    terminate() {},
  };
  made.push({
    questions,
    reply() {
      const { number, asked } = questions.at(-1) as Question;
      act(() => self.onmessage?.({ data: { number, outcome: answerTo(calculator, asked) } } as MessageEvent));
    },
    fail: () => act(() => self.onerror?.({} as ErrorEvent)),
  });
  return self;
};
const field = () => screen.getByLabelText<HTMLInputElement>(/^Width/);
const headline = () => document.querySelector('[data-figure="area"]')?.textContent ?? '';
const answer = () => document.querySelector('[aria-busy]');
const pause = (ms: number) => act(() => new Promise((resolve) => setTimeout(resolve, ms)));

const open = (search = '') => {
  window.history.replaceState(null, '', `/page${search}`);
  return render(<Frame calculator={calculator} worker={worker} />);
};

afterEach(() => {
  cleanup();
  made.length = 0;
});

test('the server and the first paint answer without a worker', () => {
  expect(renderToString(<Frame calculator={calculator} worker={worker} />)).toContain('1800 cm²');
  open();
  expect(headline()).toContain('1800 cm²');
  expect(made).toEqual([]);
  expect(answer()).toBeNull();
});

test('while the worker works the old answer stays, marked, and the new one takes its place', async () => {
  open();
  await userEvent.clear(field());
  await userEvent.type(field(), '200');
  expect(headline()).toContain('1800 cm²');
  expect(answer()?.getAttribute('aria-busy')).toBe('true');
  await pause(450);
  expect(screen.getByText(/Being worked out/).textContent).toContain('for the inputs before');
  expect(field().value).toBe('200');
  // The empty field was asked first; while it was worked out only the last of the rest waited.
  made[0]?.reply();
  expect(made[0]?.questions).toHaveLength(2);
  made[0]?.reply();
  expect(headline()).toContain('1200 cm²');
  expect(answer()).toBeNull();
  expect(screen.queryByText(/Being worked out/)).toBeNull();
});

test('an error of the worker’s answer stands at its field', async () => {
  open();
  await userEvent.type(field(), ' wide');
  made[0]?.reply();
  made[0]?.reply();
  expect(field().getAttribute('aria-invalid')).toBe('true');
  expect(headline()).toContain('1800 cm²');
});

test('where the worker fails the page answers', async () => {
  open();
  await userEvent.clear(field());
  await userEvent.type(field(), '200');
  made[0]?.fail();
  expect(headline()).toContain('1200 cm²');
  await userEvent.type(field(), '0');
  expect(headline()).toContain('m²');
  expect(answer()).toBeNull();
});
