import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../view/Frame.tsx';
import { ResinControl } from '../view/ResinControl.tsx';
import type { ViewProps } from '../view/view.ts';
import { workingTimeCalculator } from './calculator.ts';

const calculator = workingTimeCalculator as unknown as Calculator;
const controls = { resin: ResinControl };
// Written out here, for the bundler finds a worker by these very words.
const worker = () => new Worker(new URL('./worker.ts', import.meta.url));

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} controls={controls} worker={worker} />;
}
