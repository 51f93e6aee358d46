import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../view/Frame.tsx';
import { ResinControl } from '../view/ResinControl.tsx';
import { speciesOptions } from '../view/species-options.ts';
import type { ViewProps } from '../view/view.ts';
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
