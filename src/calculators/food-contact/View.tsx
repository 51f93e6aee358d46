import type { Calculator } from '../kit/calculator.ts';
import { Frame } from '../view/Frame.tsx';
import { useLinks } from '../view/links.tsx';
import { ResinControl } from '../view/ResinControl.tsx';
import { speciesOptions } from '../view/species-options.ts';
import type { ViewProps } from '../view/view.ts';
import { foodContactCalculator } from './calculator.ts';

const calculator = foodContactCalculator as unknown as Calculator;
const options = { species: speciesOptions };
const controls = { resin: ResinControl };

export default function View(props: ViewProps) {
  return <Frame {...props} calculator={calculator} options={options} controls={controls} extra={() => <Rules />} />;
}

/** Where the rules stand whole. */
function Rules() {
  const { Link } = useLinks();
  return (
    <p>
      What each rule says of wood, its numbers and whom it binds: <Link to="/reference/food-rules">rules on food</Link>.
    </p>
  );
}
