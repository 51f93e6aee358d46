import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../kit/Frame.tsx';
import { ResinControl } from '../kit/ResinControl.tsx';
import { speciesOptions } from '../kit/species-options.ts';
import type { ViewProps } from '../kit/view.ts';
import { foodContactCalculator } from './calculator.ts';
import { Label } from './Label.tsx';

const calculator = foodContactCalculator as unknown as Calculator;
const options = { species: speciesOptions };
const controls = { resin: ResinControl };

export default function View(props: ViewProps) {
  return (
    <Frame
      {...props}
      calculator={calculator}
      options={options}
      controls={controls}
      extra={(asked, level) => <Label asked={asked} headingLevel={level} />}
    />
  );
}
