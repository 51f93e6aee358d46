import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../view/Frame.tsx';
import { speciesOptions } from '../view/species-options.ts';
import type { ViewProps } from '../view/view.ts';
import { careCardCalculator } from './calculator.ts';

const calculator = careCardCalculator as unknown as Calculator;
const options = { species: speciesOptions };

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} options={options} />;
}
