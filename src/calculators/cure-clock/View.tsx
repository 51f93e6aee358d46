import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../view/Frame.tsx';
import { ResinControl } from '../view/ResinControl.tsx';
import type { ViewProps } from '../view/view.ts';
import { cureClockCalculator } from './calculator.ts';

const calculator = cureClockCalculator as unknown as Calculator;
const controls = { resin: ResinControl };

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} controls={controls} />;
}
