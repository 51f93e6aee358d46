import type { ComponentType } from 'react';
import type { RawInputs } from '../kit/calculator.ts';
import type { HeadingLevel } from './Heading.tsx';
import type { ViewProps } from './view.ts';

/** What a page says of the calculator that it holds. */
export interface CalculatorProps {
  /** Which calculator, for example `seasonal-movement`. */
  id: string;
  /**
   * Its `View.tsx`. Whoever shows a calculator imports it, so that it comes with the page: fetched only once the page is live, it
   * would let the answer that the server wrote vanish and come again.
   */
  view: ComponentType<ViewProps>;
  /** Texts laid over its worked case. */
  preset?: RawInputs;
  headingLevel?: HeadingLevel;
  /** Prefix of its inputs in the address: the calculator's id unless told; '' on its own page. */
  prefix?: string;
  /** False where the page's own heading names it already. */
  titled?: boolean;
  /** '2' for the second of its kind on a page, and so on. */
  ordinal?: string;
}

/** A calculator in a page. The server writes its answer into the page. */
export default function Calculator({ id, view: View, prefix = id, ...props }: CalculatorProps) {
  return (
    <>
      <noscript>
        <p>
          Scripts are off, so this is the worked case with its answer. Numbers of your own need scripts, or the command
          line.
        </p>
      </noscript>
      <View prefix={prefix} {...props} />
    </>
  );
}
