import type { Calculator } from '../kit/calculator.ts';
import { DrawingControl } from '../view/DrawingControl.tsx';
import type { ControlProps } from '../view/Field.tsx';
import { Frame } from '../view/Frame.tsx';
import type { ViewProps } from '../view/view.ts';
import { finishCoatsCalculator } from './calculator.ts';

const calculator = finishCoatsCalculator as unknown as Calculator;

const controls = { drawing: (props: ControlProps) => <DrawingControl {...props} /> };

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} controls={controls} />;
}
