import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Outcome, Result } from '../../model/evidence/index.ts';
import { answerTo } from '../kit/answer.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { type Answering, answering, type MakeWorker } from './answering.ts';
import { firstAnswer, keyOf } from './first-answer.ts';

export interface Answer {
  /** The inputs that `outcome` answers; with a worker they may lag behind what is asked. */
  asked: RawInputs;
  outcome: Outcome<Result>;
  /** True while another answer is being worked out. */
  pending: boolean;
  /** To be called when a question is near, as when a field is entered: a worker takes a while to start. */
  ready: () => void;
}

/**
 * The answer to what is asked: at once, or by a worker where the calculator has one. The first answer, that of the server
 * and of the first paint, is there at once: it was worked out ahead, or is now.
 */
export function useAnswer(calculator: Calculator, asked: RawInputs, worker: MakeWorker | undefined): Answer {
  const here = useMemo(
    () => (worker ? undefined : { asked, outcome: firstAnswer(calculator, asked) }),
    [calculator, asked, worker],
  );
  const [latest, setLatest] = useState(() => (worker ? { asked, outcome: firstAnswer(calculator, asked) } : undefined));
  const line = useRef<Answering>(undefined);

  useEffect(() => {
    if (!worker) return;
    const open = answering(
      worker,
      (question) => answerTo(calculator, question),
      // Drawing a long answer may wait for the next keystroke, not the other way.
      (question, outcome) => startTransition(() => setLatest({ asked: question, outcome })),
    );
    line.current = open;
    return () => open.close();
  }, [calculator, worker]);

  const key = keyOf(asked);
  const answered = latest && keyOf(latest.asked);
  const sent = useRef(answered);
  useEffect(() => {
    if (!worker || sent.current === key) return;
    sent.current = key;
    line.current?.ask(asked);
  }, [worker, key, asked]);

  const ready = useCallback(() => line.current?.ready(), []);
  const shown = (here ?? latest) as Pick<Answer, 'asked' | 'outcome'>;
  return { ...shown, pending: !here && answered !== key, ready };
}

/** Words about waiting come only after this, ms: a text that flickers with every key helps nobody. */
const patience = 400;

/** Whether something has been pending for so long that it must be said. */
export function useLate(pending: boolean): boolean {
  const [late, setLate] = useState(false);
  useEffect(() => {
    if (!pending) return setLate(false);
    const timer = setTimeout(() => setLate(true), patience);
    return () => clearTimeout(timer);
  }, [pending]);
  return pending && late;
}
