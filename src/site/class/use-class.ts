import { useCallback, useEffect, useRef, useState } from 'react';
import { onFailure } from '../../calculators/view/worker-failure.ts';
import type { ClassProgress } from '../../method/class/class.ts';
import type { ClassPacket, ClassPacketOptions } from '../../method/class/packet.ts';
import type { ClassAnswer, ClassQuestion, MissedSession } from '../../method/class/types.ts';
import type { ClassAsked, ClassReply } from './class-worker.ts';

/** How long nothing is typed before a class is worked out again, ms. */
const pause = 500;

type Asked = ClassAsked extends infer One ? (One extends unknown ? Omit<One, 'number'> : never) : never;

/** A class worked out beside the page, with ways to ask about a session that somebody missed and for its sheets. */
export function useClass(question: ClassQuestion | undefined) {
  const worker = useRef<Worker | undefined>(undefined);
  const last = useRef(0);
  const [answer, setAnswer] = useState<ClassAnswer>();
  const [progress, setProgress] = useState<ClassProgress>();
  const [missed, setMissed] = useState<MissedSession>();
  const [packet, setPacket] = useState<ClassPacket>();
  const [state, setState] = useState<'quiet' | 'working' | 'stopped' | 'failed'>('quiet');
  const [round, setRound] = useState(0);

  const begin = useCallback(() => {
    const made = new Worker(new URL('./class-worker.ts', import.meta.url));
    worker.current = made;
    made.onmessage = ({ data }: MessageEvent<ClassReply>) => {
      if (data.number !== last.current) return;
      if ('progress' in data) {
        setProgress(data.progress);
        return;
      }
      if ('missed' in data) setMissed(data.missed);
      else if ('packet' in data) setPacket(data.packet);
      else setAnswer(data.answer);
      setProgress(undefined);
      setState('quiet');
    };
    made.onerror = onFailure(() => {
      setState('failed');
      setProgress(undefined);
    });
  }, []);

  useEffect(() => {
    begin();
    return () => worker.current?.terminate();
  }, [begin]);

  const post = (asked: Asked) => {
    last.current += 1;
    setState('working');
    worker.current?.postMessage({ ...asked, number: last.current });
  };

  const key = question && JSON.stringify(question);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a question is the same where its text is
  useEffect(() => {
    if (!question) return;
    setMissed(undefined);
    setPacket(undefined);
    const waiting = setTimeout(() => post({ question }), pause);
    return () => clearTimeout(waiting);
  }, [key, round]);

  return {
    answer,
    progress,
    state,
    missed,
    packet,
    askMissed: (place: string, session: number) => {
      setMissed(undefined);
      post({ missed: { place, session } });
    },
    askPacket: (options: ClassPacketOptions) => post({ packet: options }),
    closePacket: () => setPacket(undefined),
    /** Give up what is being worked out; what was known before stays on the page. */
    stop: () => {
      worker.current?.terminate();
      last.current += 1;
      setProgress(undefined);
      setState('stopped');
      begin();
    },
    /** Work the class out once more. */
    again: () => setRound((now) => now + 1),
  };
}
