import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../kit/Frame.tsx';
import { ResinControl } from '../kit/ResinControl.tsx';
import type { ViewProps } from '../kit/view.ts';
import { floodCoatCalculator } from './calculator.ts';

const calculator = floodCoatCalculator as unknown as Calculator;
const controls = { resin: ResinControl };

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} controls={controls} />;
}
