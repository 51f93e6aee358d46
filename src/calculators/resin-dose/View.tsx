import type { Calculator } from '../kit/calculator.ts';
import { DrawingControl } from '../view/DrawingControl.tsx';
import type { ControlProps } from '../view/Field.tsx';
import { Frame } from '../view/Frame.tsx';
import { ResinControl } from '../view/ResinControl.tsx';
import type { ViewProps } from '../view/view.ts';
import { resinDoseCalculator } from './calculator.ts';
import { MixingSheet } from './MixingSheet.tsx';

const calculator = resinDoseCalculator as unknown as Calculator;

const controls = {
  resin: (props: ControlProps) => <ResinControl {...props} />,
  drawing: (props: ControlProps) => <DrawingControl {...props} />,
};

export default function View(props: ViewProps) {
  return (
    <Frame
      {...props}
      calculator={calculator}
      controls={controls}
      extra={(asked, level) => <MixingSheet asked={asked} headingLevel={level} />}
    />
  );
}
