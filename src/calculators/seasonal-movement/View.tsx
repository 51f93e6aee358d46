import type { Calculator } from '../kit/calculator.ts';
import { climateOptions } from '../view/climate-options.ts';
import type { ControlProps } from '../view/Field.tsx';
import { Frame } from '../view/Frame.tsx';
import { ReadingsControl } from '../view/ReadingsControl.tsx';
import { speciesOptions } from '../view/species-options.ts';
import type { ViewProps } from '../view/view.ts';
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
