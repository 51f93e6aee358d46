import { useEffect, useMemo, useRef, useState } from 'react';
import { onFailure } from '../../calculators/view/worker-failure.ts';
import { canonical } from '../../method/batch/merge.ts';
import type { BatchRecord } from '../../method/batch/record.ts';
import type { BatchShown, ShownBatch } from '../../method/batch/shown.ts';
import type { BatchQuestion, BatchReply } from './batch-worker.ts';

/** A batch as it is shown, and whether its timetable is still being laid. */
export interface Shown {
  shown?: ShownBatch;
  problems?: readonly string[];
  laying: boolean;
}

type Ask = (question: BatchQuestion) => void;

const notFetched =
  'What works the batch out could not be fetched: there may be no connection. What you entered is kept; load the page again once there is one.';

/** Somebody who answers: a worker, or the page itself where none can be made. */
function answerer(give: (reply: BatchReply) => void): { ask: Ask; close: () => void } {
  const here: Ask = async ({ number, record, now, stage }) => {
    try {
      const { shownBatch } = await import('../../method/batch/shown.ts');
      give({ number, stage: 'today', answer: await shownBatch(record, now, 'today') });
      if (stage === 'whole') give({ number, stage, answer: await shownBatch(record, now, stage) });
    } catch {
      give({ number, stage, answer: { ok: false, problems: [notFetched] } });
    }
  };
  let asked: BatchQuestion | undefined;
  let ask: Ask = here;
  try {
    const worker = new Worker(new URL('./batch-worker.ts', import.meta.url));
    worker.onmessage = ({ data }: MessageEvent<BatchReply>) => give(data);
    worker.onerror = onFailure(() => {
      worker.terminate();
      ask = here;
      if (asked) void here(asked);
    });
    ask = (question) => worker.postMessage(question);
    return {
      ask: (question) => {
        asked = question;
        ask(question);
      },
      close: () => worker.terminate(),
    };
  } catch {
    return { ask: here, close: () => undefined };
  }
}

/** Instant that it is, told anew each minute, and a way to look at the clock at once. */
export function useNow(): { now: number; look: () => void } {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 60_000);
    const look = () => setNow(Date.now());
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, []);
  return { now, look: () => setNow(Date.now()) };
}

/** The plan is laid anew where the record has changed, and each quarter of an hour, ms. */
const layAgain = 15 * 60_000;

/** A batch worked out beside the page: first today’s list, then the timetable. */
export function useShown(record: BatchRecord, now: number): Shown {
  const [state, setState] = useState<Shown>({ laying: true });
  /** Numbers of the last question, and of the last that asked for the plan. */
  const number = useRef({ last: 0, whole: 0 });
  const asking = useRef<{ ask: Ask; close: () => void } | undefined>(undefined);
  const laid = useRef({ text: '', at: 0 });
  const text = useMemo(() => canonical(record), [record]);

  useEffect(() => {
    const made = answerer(({ number: of, stage, answer }) => {
      if (of !== (stage === 'whole' ? number.current.whole : number.current.last)) return;
      setState((before) => merged(before, answer, stage));
    });
    asking.current = made;
    laid.current = { text: '', at: 0 };
    return () => {
      asking.current = undefined;
      made.close();
    };
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the text says whether the record has changed
  useEffect(() => {
    const asked = number.current.last + 1;
    const fresh = laid.current.text !== text;
    const whole = fresh || Math.abs(now - laid.current.at) >= layAgain;
    number.current = { last: asked, whole: whole ? asked : number.current.whole };
    if (whole) {
      laid.current = { text, at: now };
      setState((before) => ({ ...(fresh ? withoutPlan(before) : before), laying: true }));
    }
    asking.current?.ask({ number: asked, record, now: new Date(now).toISOString(), stage: whole ? 'whole' : 'today' });
  }, [text, now]);
  return state;
}

/** What is shown without what was laid for another record: no label outlives an entry that speaks against it. */
function withoutPlan({ shown, ...rest }: Shown): Shown {
  if (!shown) return rest;
  const { label: _label, sessions: _sessions, ends: _ends, drawn: _drawn, ...today } = shown;
  return { ...rest, shown: { ...today, state: { ...today.state, changes: [], untimed: [] } } };
}

function merged(before: Shown, answer: BatchShown, stage: 'today' | 'whole'): Shown {
  if (!answer.ok) return { problems: answer.problems, laying: false };
  if (stage === 'whole') return { shown: answer.shown, laying: false };
  const { label, sessions, ends, drawn, state } = before.shown ?? {};
  // Today’s list knows no plan: what was laid last stands until the next is.
  const shown = {
    ...answer.shown,
    ...(state ? { state: { ...answer.shown.state, changes: state.changes, untimed: state.untimed } } : {}),
    ...(label ? { label } : {}),
    ...(sessions ? { sessions } : {}),
    ...(ends ? { ends } : {}),
    ...(drawn ? { drawn } : {}),
  };
  return { shown, laying: before.laying };
}
