import type { Calculator } from '../kit/calculator.ts';
import { DrawingControl } from '../kit/DrawingControl.tsx';
import type { ControlProps } from '../kit/Field.tsx';
import { Frame } from '../kit/Frame.tsx';
import { ResinControl } from '../kit/ResinControl.tsx';
import type { ViewProps } from '../kit/view.ts';
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
