import { describe, expect, test, vi } from 'vitest';
import { answerTo } from '../../../src/calculators/kit/answer.ts';
import type { Calculator, RawInputs } from '../../../src/calculators/kit/calculator.ts';
import {
  type Appointment,
  answerInWorker,
  type Question,
  type WorkerScope,
} from '../../../src/calculators/view/answer-worker.ts';
import { type AnsweringWorker, answering } from '../../../src/calculators/view/answering.ts';
import type { Outcome, Result } from '../../../src/model/evidence/index.ts';
import { sample } from '../kit/sample.ts';

const calculator: Calculator = sample;
const width = (value: string): RawInputs => ({ ...calculator.example.metric, width: value });
const here = (asked: RawInputs) => answerTo(calculator, asked);

/** A worker that answers when it is told to. */
class SlowWorker implements AnsweringWorker {
  onmessage: AnsweringWorker['onmessage'] = null;
  onerror: AnsweringWorker['onerror'] = null;
  asked: Question[] = [];
  ended = false;
  postMessage(question: Question) {
    this.asked.push(question);
  }
  terminate() {
    this.ended = true;
  }
  /** Answer the question at this place. */
  reply(at: number) {
    const { number, asked } = this.asked[at] as Question;
    this.onmessage?.({ data: { number, outcome: here(asked) } } as MessageEvent);
  }
}

function open(make?: () => AnsweringWorker) {
  const worker = new SlowWorker();
  const given: { asked: RawInputs; outcome: Outcome<Result> }[] = [];
  let answeredHere = 0;
  const line = answering(
    make ?? (() => worker),
    (asked) => {
      answeredHere += 1;
      return here(asked);
    },
    (asked, outcome) => given.push({ asked, outcome }),
  );
  return { worker, given, line, countHere: () => answeredHere };
}

describe('a worker that answers', () => {
  test('made ready is asked nothing, and is the one that gets the first question', () => {
    let made = 0;
    const worker = new SlowWorker();
    const { line } = open(() => {
      made += 1;
      return worker;
    });
    line.ready();
    line.ready();
    expect([made, worker.asked.length]).toEqual([1, 0]);
    line.ask(width('200 mm'));
    expect([made, worker.asked.length]).toEqual([1, 1]);
  });

  test('that cannot be made ready leaves the questions to the page', () => {
    const { line, given, countHere } = open(() => {
      throw new Error('no workers here');
    });
    line.ready();
    expect(given).toEqual([]);
    line.ask(width('200 mm'));
    expect([given.length, countHere()]).toEqual([1, 1]);
  });

  test('is made at the first question and gets it', () => {
    const { worker, given, line } = open();
    line.ask(width('200 mm'));
    expect(worker.asked).toHaveLength(1);
    expect(given).toEqual([]);
    worker.reply(0);
    expect(given.map(({ asked }) => asked.width)).toEqual(['200 mm']);
    expect(given[0]?.outcome).toEqual(here(width('200 mm')));
  });

  test('has one question at a time, and of those that wait only the latest is asked', () => {
    const { worker, given, line } = open();
    for (const value of ['2', '20', '200', '2000']) line.ask(width(`${value} mm`));
    expect(worker.asked.map(({ asked }) => asked.width)).toEqual(['2 mm']);
    worker.reply(0);
    expect(worker.asked.map(({ asked }) => asked.width)).toEqual(['2 mm', '2000 mm']);
    expect(given).toEqual([]);
    worker.reply(1);
    expect(given.map(({ asked }) => asked.width)).toEqual(['2000 mm']);
  });

  test('whose answer comes twice, or for another question, is not heard', () => {
    const { worker, given, line } = open();
    line.ask(width('200 mm'));
    worker.onmessage?.({ data: { number: 99, outcome: here(width('1 mm')) } } as MessageEvent);
    expect(given).toEqual([]);
    const second = open();
    second.line.ask(width('200 mm'));
    second.worker.reply(0);
    second.worker.reply(0);
    expect(second.given).toHaveLength(1);
  });

  test('that cannot be made leaves the questions to the page', () => {
    const { given, line, countHere } = open(() => {
      throw new Error('no workers here');
    });
    line.ask(width('200 mm'));
    line.ask(width('300 mm'));
    expect(given.map(({ asked }) => asked.width)).toEqual(['200 mm', '300 mm']);
    expect(countHere()).toBe(2);
  });

  test('that fails leaves the latest question to the page, and all after it', () => {
    const { worker, given, line, countHere } = open();
    line.ask(width('200 mm'));
    line.ask(width('300 mm'));
    worker.onerror?.({} as ErrorEvent);
    expect(given.map(({ asked }) => asked.width)).toEqual(['300 mm']);
    expect(worker.ended).toBe(true);
    line.ask(width('400 mm'));
    expect(given.map(({ asked }) => asked.width)).toEqual(['300 mm', '400 mm']);
    expect(countHere()).toBe(2);
  });

  test('ends with its page, and says nothing after', () => {
    const { worker, given, line } = open();
    line.ask(width('200 mm'));
    line.close();
    worker.reply(0);
    expect(worker.ended).toBe(true);
    expect(given).toEqual([]);
  });
});

describe('in the worker', () => {
  const appointedFor = (load: (id: string) => Promise<Calculator>) => {
    const replies: unknown[] = [];
    const scope: WorkerScope = { onmessage: null, postMessage: (reply) => replies.push(reply) };
    answerInWorker(load, scope);
    return { replies, say: (data: Appointment | Question) => scope.onmessage?.({ data }) };
  };

  test('a question is answered under its own number, with what the page would say itself, by the calculator appointed', async () => {
    const loaded: string[] = [];
    const { replies, say } = appointedFor(async (id) => {
      loaded.push(id);
      return calculator;
    });
    await say({ calculator: 'sample' });
    await say({ number: 7, asked: width('200 mm') });
    await say({ number: 8, asked: width('wide') });
    expect(loaded).toEqual(['sample']);
    expect(replies).toEqual([
      { number: 7, outcome: here(width('200 mm')) },
      { number: 8, outcome: here(width('wide')) },
    ]);
  });

  test('a calculator that cannot be fetched ends in an error of the worker, and no answer', async () => {
    vi.useFakeTimers();
    const { replies, say } = appointedFor(() => Promise.reject(new Error('offline')));
    await say({ calculator: 'sample' });
    await say({ number: 7, asked: width('200 mm') });
    expect(() => vi.runAllTimers()).toThrow('offline');
    expect(replies).toEqual([]);
    vi.useRealTimers();
  });

  test('answers survive the way back', () => {
    const outcome = here(width('200 mm'));
    expect(structuredClone(outcome)).toEqual(outcome);
  });
});
