import type { Calculator } from '../kit/calculator.ts';
import type { AnsweringWorker, MakeWorker } from './answering.ts';

/** Workers that have answered a first question and wait for the next, by calculator. */
const waiting = new Map<string, AnsweringWorker>();

/**
 * Makes the worker of a heavy calculator, or takes the one that waits. All of them share one: it fetches the calculator that it is told first.
 *
 * @param id of the calculator
 */
export const workerOf =
  (id: string): MakeWorker =>
  () => {
    const ready = waiting.get(id);
    waiting.delete(id);
    if (ready) return ready;
    // Written out here, for the bundler finds a worker by these very words.
    const worker = new Worker(new URL('./worker.ts', import.meta.url));
    worker.postMessage({ calculator: id });
    return worker;
  };

/** Makes the worker of a calculator where it is heavy; any other answers in its page. */
export const workerIfHeavy = ({ id, heavy }: Pick<Calculator, 'id' | 'heavy'>): MakeWorker | undefined =>
  heavy ? workerOf(id) : undefined;

/** Let a worker wait until its calculator is drawn. */
export function letWait(id: string, worker: AnsweringWorker): void {
  waiting.get(id)?.terminate();
  waiting.set(id, worker);
}
