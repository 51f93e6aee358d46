import type { MakeWorker } from './answering.ts';

/**
 * Makes the worker of a heavy calculator. All of them share one: it fetches the calculator that it is told first.
 *
 * @param id of the calculator
 */
export const workerOf =
  (id: string): MakeWorker =>
  () => {
    // Written out here, for the bundler finds a worker by these very words.
    const worker = new Worker(new URL('./worker.ts', import.meta.url));
    worker.postMessage({ calculator: id });
    return worker;
  };
