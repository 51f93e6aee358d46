import { Worker } from 'node:worker_threads';
import type { Browser } from '@playwright/test';

/** For how long processes run before they are stopped again, ms: short beside a frame, long beside what a signal takes. */
const slice = 2;

/** Run in a thread of its own, whose sleep nothing in this process delays. */
const byTurns = `
const { workerData: { pids, run, rest, done } } = require('node:worker_threads');
const flag = new Int32Array(done);
const tell = (signal) => { for (const pid of pids) try { process.kill(pid, signal); } catch {} };
while (Atomics.load(flag, 0) === 0) {
  tell('SIGCONT');
  Atomics.wait(flag, 0, 0, run);
  tell('SIGSTOP');
  Atomics.wait(flag, 0, 0, rest);
}
tell('SIGCONT');
`;

/**
 * Let processes run for a share of the time alone, with all of their threads alike: what a browser offers slows the thread of a page and leaves its
 * workers nearly as they were.
 *
 * @param rate how many times slower
 * @returns lets them run again
 */
export function slowProcesses(pids: readonly number[], rate: number): () => Promise<void> {
  const done = new SharedArrayBuffer(4);
  const workerData = { pids, run: slice, rest: slice * (rate - 1), done };
  const thread = new Worker(byTurns, { eval: true, workerData });
  const ended = new Promise<void>((resolve) => thread.once('exit', () => resolve()));
  return () => {
    Atomics.store(new Int32Array(done), 0, 1);
    Atomics.notify(new Int32Array(done), 0);
    return ended;
  };
}

/** The processes in which a browser draws its pages and runs their workers. */
export async function renderersOf(browser: Browser): Promise<number[]> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return processInfo.flatMap(({ type, id }) => (type === 'renderer' ? [id] : []));
}
