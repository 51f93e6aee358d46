import { useEffect, useMemo, useRef, useState } from 'react';
import { onFailure } from '../../calculators/view/worker-failure.ts';
import { patched } from '../../method/page/patch.ts';
import type { MethodPage, MethodQuestion } from '../../method/page/types.ts';
import type { DataProblem } from '../../model/data/problem.ts';
import type { MethodReply } from './worker.ts';

/** Where the answer to a question stands. */
export interface MethodState {
  /** The last page that was worked out; while `problems` stand, of the question before. */
  page: MethodPage | undefined;
  problems: readonly DataProblem[];
  /** What is still being worked out. */
  pending: 'nothing' | 'numbers' | 'timetable' | 'advice';
  /** True where the worker failed, so that nothing is worked out any more. */
  failed: boolean;
}

/** A timetable that takes longer than this is left, and the worker begun anew, once somebody asks something else. ms */
const patience = 1500;

/** The same each time, so that a form without a fault is not drawn again. */
const noProblems: readonly DataProblem[] = [];

const makeWorker = () => new Worker(new URL('./worker.ts', import.meta.url));

/**
 * Work a method out in a worker: first its numbers, then its timetable, then its advice. While a question changes the page before stays.
 *
 * @param question undefined while nothing is to be asked: `first` is then the answer
 * @param first the page that was worked out before, as by the build
 * @param documents true where sheets are made of the page
 */
export function useMethod(question: MethodQuestion | undefined, first?: MethodPage, documents = false): MethodState {
  const [state, setState] = useState<MethodState>({
    page: first,
    problems: noProblems,
    pending: 'nothing',
    failed: false,
  });
  const worker = useRef<Worker | undefined>(undefined);
  const number = useRef(0);
  /** The last question that was answered at all; whether the worker is still at a timetable. */
  const heard = useRef(0);
  const busy = useRef(false);
  /** What the worker told last, whether or not it was still wanted: it tells what is new beside it. */
  const told = useRef<MethodPage | undefined>(undefined);
  const key = useMemo(() => question && JSON.stringify(question), [question]);

  useEffect(
    () => () => {
      worker.current?.terminate();
      worker.current = undefined;
    },
    [],
  );

  useEffect(() => {
    if (key === undefined) {
      number.current += 1;
      setState({ page: first, problems: noProblems, pending: 'nothing', failed: false });
      return;
    }
    number.current += 1;
    const asked = { number: number.current, question: JSON.parse(key) as MethodQuestion, documents };
    const begin = () => {
      const made = makeWorker();
      told.current = undefined;
      made.onmessage = ({ data }: MessageEvent<MethodReply>) => {
        // A worker that was left tells nothing that the next one knows of.
        if (worker.current !== made) return;
        if ('patch' in data) told.current = patched(told.current, data.patch);
        if (data.number !== number.current) return;
        const page = 'patch' in data ? told.current : undefined;
        busy.current = !data.last;
        heard.current = data.number;
        setState((before) => ({
          page: page ? withTimetableOf(page, before.page) : before.page,
          problems: 'problems' in data ? data.problems : noProblems,
          pending: page?.toCome ?? 'nothing',
          failed: false,
        }));
      };
      made.onerror = onFailure(() => {
        if (worker.current !== made) return;
        // What is asked next begins another, which may come once there is a network.
        made.terminate();
        worker.current = undefined;
        busy.current = false;
        setState((before) => ({ ...before, pending: 'nothing', failed: true }));
      });
      worker.current = made;
      return made;
    };
    setState((before) => ({ ...before, pending: 'numbers' }));
    const held = busy.current;
    busy.current = true;
    (worker.current ?? begin()).postMessage(asked);
    if (!held) return;
    const timer = setTimeout(() => {
      if (heard.current >= asked.number) return;
      // It is at the timetable of an older question, and hears nothing.
      worker.current?.terminate();
      begin().postMessage(asked);
    }, patience);
    return () => clearTimeout(timer);
  }, [key, first, documents]);

  return state;
}

/** A page of numbers keeps how long the one before lasted, so that the first screen does not jump; its timetable comes after it. */
function withTimetableOf(page: MethodPage, before: MethodPage | undefined): MethodPage {
  const lasts = page.toCome === 'timetable' ? before?.brief.lasts : undefined;
  return lasts === undefined || page.brief.lasts !== undefined ? page : { ...page, brief: { ...page.brief, lasts } };
}
