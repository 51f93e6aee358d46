import { Suspense } from 'react';
import type { RawInputs } from './kit/calculator.ts';
import type { HeadingLevel } from './kit/Heading.tsx';
import { views } from './views.ts';

/** What a page says of the calculator that it holds. */
export interface CalculatorProps {
  /** Which calculator, for example `seasonal-movement`. */
  id: string;
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

/** A calculator in a page. Its code is fetched only by pages that hold it; the server writes its answer into the page. */
export default function Calculator({ id, prefix = id, ...props }: CalculatorProps) {
  const View = views[id];
  if (!View) throw new Error(`There is no calculator “${id}”; there are ${Object.keys(views).join(', ')}.`);
  return (
    <>
      <noscript>
        <p>
          Scripts are off, so this is the worked case with its answer. Numbers of your own need scripts, or the command
          line.
        </p>
      </noscript>
      <Suspense>
        <View prefix={prefix} {...props} />
      </Suspense>
    </>
  );
}
