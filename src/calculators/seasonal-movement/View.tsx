import type { Calculator } from '../kit/calculator.ts';
import { climateOptions } from '../kit/climate-options.ts';
import type { ControlProps } from '../kit/Field.tsx';
import { Frame } from '../kit/Frame.tsx';
import { ReadingsControl } from '../kit/ReadingsControl.tsx';
import { speciesOptions } from '../kit/species-options.ts';
import type { ViewProps } from '../kit/view.ts';
import { seasonalMovementCalculator } from './calculator.ts';
import { StavesControl } from './StavesControl.tsx';

const calculator = seasonalMovementCalculator as unknown as Calculator;

const options = {
  species: speciesOptions,
  climate: climateOptions,
};

const controls = {
  staves: (props: ControlProps) => <StavesControl {...props} />,
  readings: (props: ControlProps) => <ReadingsControl {...props} />,
};

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} options={options} controls={controls} />;
}
