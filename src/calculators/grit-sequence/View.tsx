import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../view/Frame.tsx';
import type { ViewProps } from '../view/view.ts';
import { gritSequenceCalculator } from './calculator.ts';

const calculator = gritSequenceCalculator as unknown as Calculator;

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} />;
}
