import type { Calculator } from '../kit/calculator.ts';
import { DrawingControl } from '../kit/DrawingControl.tsx';
import type { ControlProps } from '../kit/Field.tsx';
import { Frame } from '../kit/Frame.tsx';
import type { ViewProps } from '../kit/view.ts';
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
