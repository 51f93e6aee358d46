import { expect, test } from 'vitest';
import { shareOut } from '../../src/command/share-out.ts';

/** A worker that answers each task by what it asks for. */
const script = new URL(
  `data:text/javascript,${encodeURIComponent(`
    import { parentPort, workerData } from 'node:worker_threads';
    const tasks = {
      double: ({ number }) => 2 * number,
      slow: ({ number }) => { Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 60); return 2 * number; },
      throw: () => { throw new Error('no such wood'); },
      leave: () => process.exit(3),
      hang: () => { for (;;); },
      data: () => workerData,
    };
    parentPort.on('message', (task) => parentPort.postMessage(tasks[task.do](task)));
  `)}`,
);
const share = (tasks: readonly { do: string; number?: number }[], workers = 2, patience = 1500) =>
  shareOut<{ do: string; number?: number }, unknown>(tasks, { script, workerData: 'told', workers, patience });
const answers = (from: number, to: number) =>
  Array.from({ length: to - from }, (_, at) => ({ ok: true, answer: 2 * (from + at) }));

test('answers come in the order of the tasks, whichever is done first', async () => {
  const tasks = Array.from({ length: 12 }, (_, number) => ({ do: number % 5 === 0 ? 'slow' : 'double', number }));
  expect(await share(tasks)).toEqual(answers(0, 12));
  expect(await share(tasks, 1)).toEqual(answers(0, 12));
  expect(await share([{ do: 'data' }], 8)).toEqual([{ ok: true, answer: 'told' }]);
  expect(await share([])).toEqual([]);
});

test('a worker that throws, leaves or hangs costs its own task and no other', async () => {
  const spoilt = ['throw', 'leave', 'hang', 'throw', 'throw'];
  const tasks = spoilt.flatMap((each, at) => [
    { do: each },
    { do: 'double', number: 2 * at },
    { do: 'double', number: 2 * at + 1 },
  ]);
  const done = await share(tasks);
  expect(done.filter(({ ok }) => ok)).toEqual(answers(0, 10));
  expect(done.flatMap((each) => (each.ok ? [] : each.why))).toEqual([
    'ended with “no such wood”',
    'ended by itself (exit code 3)',
    'took more than 1.5 s and was ended',
    'ended with “no such wood”',
    'ended with “no such wood”',
  ]);
});

test('a worker that cannot start ends all the same', async () => {
  const nowhere = new URL('file:///nowhere/at/all.mjs');
  const done = await shareOut([1, 2, 3], { script: nowhere, workerData: undefined, workers: 2, patience: 1000 });
  expect(done.map((each) => each.ok || /all\.mjs/.test(each.why))).toEqual([true, true, true]);
  expect(done.filter(({ ok }) => ok)).toEqual([]);
});
