import type { Calculator } from '../kit/calculator.ts';
import { climateOptions } from '../view/climate-options.ts';
import type { ControlProps } from '../view/Field.tsx';
import { Frame } from '../view/Frame.tsx';
import { ReadingsControl } from '../view/ReadingsControl.tsx';
import { speciesOptions } from '../view/species-options.ts';
import type { ViewProps } from '../view/view.ts';
import { finishAndMoistureCalculator } from './calculator.ts';

const calculator = finishAndMoistureCalculator as unknown as Calculator;

const options = {
  species: speciesOptions,
  climate: climateOptions,
};

const controls = { readings: (props: ControlProps) => <ReadingsControl {...props} /> };
// Written out here, for the bundler finds a worker by these very words.
const worker = () => new Worker(new URL('./worker.ts', import.meta.url));

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} options={options} controls={controls} worker={worker} />;
}
