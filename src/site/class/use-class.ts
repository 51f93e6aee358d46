import { useEffect, useRef, useState } from 'react';
import type { ClassProgress } from '../../method/class/class.ts';
import type { ClassAnswer, ClassQuestion, MissedSession } from '../../method/class/types.ts';
import type { ClassAsked, ClassReply } from './class-worker.ts';

/** How long nothing is typed before a class is worked out again, ms. */
const pause = 500;

/** A class worked out beside the page, and a way to ask about a session that somebody missed. */
export function useClass(question: ClassQuestion | undefined) {
  const worker = useRef<Worker | undefined>(undefined);
  const last = useRef(0);
  const [answer, setAnswer] = useState<ClassAnswer>();
  const [progress, setProgress] = useState<ClassProgress>();
  const [missed, setMissed] = useState<MissedSession>();
  const [failed, setFailed] = useState(false);

  useEffect(() => {
    const made = new Worker(new URL('./class-worker.ts', import.meta.url));
    worker.current = made;
    made.onmessage = ({ data }: MessageEvent<ClassReply>) => {
      if (data.number !== last.current) return;
      if ('progress' in data) setProgress(data.progress);
      else if ('missed' in data) setMissed(data.missed);
      else {
        setAnswer(data.answer);
        setProgress(undefined);
      }
    };
    made.onerror = () => {
      setFailed(true);
      setProgress(undefined);
    };
    return () => made.terminate();
  }, []);

  const post = (asked: ClassAsked extends infer One ? (One extends unknown ? Omit<One, 'number'> : never) : never) => {
    last.current += 1;
    setFailed(false);
    worker.current?.postMessage({ ...asked, number: last.current });
  };

  const key = question && JSON.stringify(question);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a question is the same where its text is
  useEffect(() => {
    if (!question) return;
    setMissed(undefined);
    const waiting = setTimeout(() => post({ question }), pause);
    return () => clearTimeout(waiting);
  }, [key]);

  return {
    answer,
    progress,
    failed,
    missed,
    askMissed: (place: string, session: number) => {
      setMissed(undefined);
      post({ missed: { place, session } });
    },
  };
}
