import type { ComponentType } from 'react';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import type { Onward } from '../kit/carry.ts';
import type { Controls } from './Field.tsx';
import type { HeadingLevel } from './Heading.tsx';

/** A part of a calculator's own below a good answer; it gets the inputs that were asked. */
export type Extra = ComponentType<{ asked: RawInputs; headingLevel: HeadingLevel }>;

/**
 * A calculator with what its page needs to show it. Whoever shows a calculator imports it, so that it comes with the page: fetched only
 * once the page is live, it would let the answer that the server wrote vanish and come again.
 */
export interface Shown {
  calculator: Calculator;
  controls?: Controls;
  extra?: Extra;
  /** The calculators that can go on with a case of this one. */
  onward?: readonly Onward[];
}
