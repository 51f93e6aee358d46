import { useEffect, useMemo } from 'react';
import { Frame, type FrameProps } from './Frame.tsx';
import { workAhead } from './first-answer.ts';
import type { Shown } from './shown.ts';
import { useQuestion } from './use-question.ts';
import { letWait, workerIfHeavy } from './worker-of.ts';

/** What a page says of the calculator that it holds. */
export interface CalculatorViewProps
  extends Pick<FrameProps, 'preset' | 'headingLevel' | 'titled' | 'ordinal' | 'prefix' | 'said' | 'remembers'> {
  /** The calculator and what its page needs to show it; the build writes it for each. */
  shown: Shown;
}

/** A calculator as what a page is about, with controls by the kinds of its fields. The server writes its answer into the page. */
export function CalculatorView({ shown, prefix = shown.calculator.id, ...props }: CalculatorViewProps) {
  const worker = useMemo(() => workerIfHeavy(shown.calculator), [shown.calculator]);
  return (
    <>
      <noscript>
        <p>
          Scripts are off, so this is the worked case with its answer. Numbers of your own need scripts, or the command
          line.
        </p>
      </noscript>
      <Frame {...shown} {...props} prefix={prefix} worker={worker} />
    </>
  );
}

export interface CalculatorAheadProps extends CalculatorViewProps {
  /** Told once the answer is there. */
  done: () => void;
}

/** Nothing to be seen: the answer that a calculator will first be drawn with, worked out while the page as sent still stands. */
export function CalculatorAhead({
  shown,
  done,
  preset,
  prefix = shown.calculator.id,
  remembers,
}: CalculatorAheadProps) {
  const { calculator } = shown;
  const { question } = useQuestion({ calculator, preset, prefix, remembers });
  useEffect(() => {
    let gone = false;
    void workAhead(calculator, question, workerIfHeavy(calculator)).then((worker) => {
      if (worker) letWait(calculator.id, worker);
      if (!gone) done();
    });
    return () => {
      gone = true;
    };
  }, [calculator, question, done]);
  return null;
}
