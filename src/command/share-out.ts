import { Worker } from 'node:worker_threads';

/** How a worker is started, and how long one of its tasks may take. */
export interface Workshop {
  /** The script: it answers each message with one. */
  script: URL;
  workerData: unknown;
  workers: number;
  /** Milliseconds for one task, after which its worker is ended. */
  patience: number;
}

/** What became of a task: its answer, or why there is none. */
export type Done<Answer> = { ok: true; answer: Answer } | { ok: false; why: string };

/**
 * Young memory of a worker, MB: what a check builds up for one file and drops with it fits in several times over. With Node's own 48 MB a check of
 * two hundred methods takes an eighth more time, all of it for clearing memory.
 */
const maxYoungGenerationSizeMb = 256;

/**
 * Give tasks to workers, each the next one as soon as it is done with its last, and gather the answers in the order of the tasks. A worker that
 * fails or takes too long is ended; that task has no answer, and another worker goes on with the rest.
 */
export async function shareOut<Task, Answer>(
  tasks: readonly Task[],
  { script, workerData, workers, patience }: Workshop,
): Promise<Done<Answer>[]> {
  const done = new Array<Done<Answer>>(tasks.length);
  let next = 0;
  /** One worker's day; true where it ended before the tasks did. */
  const day = () =>
    new Promise<boolean>((resolve) => {
      const worker = new Worker(script, { workerData, resourceLimits: { maxYoungGenerationSizeMb } });
      let at = -1;
      let clock: NodeJS.Timeout | undefined;
      const end = (unfinished: boolean) => {
        clearTimeout(clock);
        worker.removeAllListeners();
        // What it still throws as it is ended is nobody's.
        worker.on('error', () => undefined);
        void worker.terminate().then(() => resolve(unfinished));
      };
      const fail = (why: string) => {
        // A worker that does not even start takes a task with it all the same, so that this comes to an end.
        if (at < 0) at = next++;
        if (at < tasks.length) done[at] = { ok: false, why };
        end(true);
      };
      const take = () => {
        clearTimeout(clock);
        at = next++;
        if (at >= tasks.length) return end(false);
        clock = setTimeout(() => fail(`took more than ${patience / 1000} s and was ended`), patience);
        worker.postMessage(tasks[at]);
      };
      worker.on('message', (answer: Answer) => {
        done[at] = { ok: true, answer };
        take();
      });
      worker.on('error', (error) => fail(`ended with “${error.message}”`));
      worker.on('exit', (code) => fail(`ended by itself (exit code ${code})`));
      worker.once('online', take);
    });
  const shift = async () => {
    while (next < tasks.length && (await day()));
  };
  await Promise.all(Array.from({ length: Math.min(workers, tasks.length) }, shift));
  return done;
}
