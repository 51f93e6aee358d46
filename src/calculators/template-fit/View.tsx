import type { Calculator } from '../kit/calculator.ts';
import { DrawingControl } from '../view/DrawingControl.tsx';
import type { ControlProps } from '../view/Field.tsx';
import { Frame } from '../view/Frame.tsx';
import type { ViewProps } from '../view/view.ts';
import { templateFitCalculator } from './calculator.ts';
import { Templates } from './Templates.tsx';

const calculator = templateFitCalculator as unknown as Calculator;

const controls = { drawing: (props: ControlProps) => <DrawingControl {...props} /> };

export default function View(props: ViewProps) {
  return (
    <Frame
      {...props}
      calculator={calculator}
      controls={controls}
      extra={(asked, level) => <Templates asked={asked} headingLevel={level} />}
    />
  );
}
