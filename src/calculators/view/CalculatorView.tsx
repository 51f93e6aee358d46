import { useMemo } from 'react';
import { Frame, type FrameProps } from './Frame.tsx';
import type { Shown } from './shown.ts';
import { workerOf } from './worker-of.ts';

/** What a page says of the calculator that it holds. */
export interface CalculatorViewProps
  extends Pick<FrameProps, 'preset' | 'headingLevel' | 'titled' | 'ordinal' | 'prefix' | 'said' | 'remembers'> {
  /** The calculator and what its page needs to show it; the build writes it for each. */
  shown: Shown;
}

/** A calculator as what a page is about, with controls by the kinds of its fields. The server writes its answer into the page. */
export function CalculatorView({ shown, prefix = shown.calculator.id, ...props }: CalculatorViewProps) {
  const { id, heavy } = shown.calculator;
  const worker = useMemo(() => (heavy ? workerOf(id) : undefined), [id, heavy]);
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
