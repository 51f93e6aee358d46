import type { Calculator } from '../kit/calculator.ts';
import { DrawingControl } from '../kit/DrawingControl.tsx';
import type { ControlProps } from '../kit/Field.tsx';
import { Frame } from '../kit/Frame.tsx';
import type { ViewProps } from '../kit/view.ts';
import { finishCoatsCalculator } from './calculator.ts';

const calculator = finishCoatsCalculator as unknown as Calculator;

const controls = { drawing: (props: ControlProps) => <DrawingControl {...props} /> };

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} controls={controls} />;
}
