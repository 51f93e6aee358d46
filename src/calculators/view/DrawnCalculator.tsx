import { useCallback } from 'react';
import { marketOfRegion } from '../../model/food/market-of-region.ts';
import { useSearch } from './address-bar.ts';
import { standsIn } from './both-units.tsx';
import type { CalculatorViewProps } from './CalculatorView.tsx';
// What the answer is drawn with stands in the page before the code that draws it; what few answers have comes with the calculator.
import './caution.module.css';
import './chart.module.css';
import './drawing.module.css';
import { DrawnPart } from './DrawnPart.tsx';
import type { Drawn, Live } from './drawn.ts';
import './evidence.module.css';
import './form.module.css';
import './frame.module.css';
import './onward.module.css';
import './resin.module.css';
import './result.module.css';
import './rows.module.css';
import './take-away.module.css';
import './timeline.module.css';
import './unseen.module.css';
import './verdict.module.css';
import { keepsOwn } from './keeps-own.ts';
import { unitsNow, useUnits } from './units.tsx';

export interface DrawnCalculatorProps extends Omit<CalculatorViewProps, 'shown'> {
  calculator: Drawn;
}

/**
 * A calculator as what a page is about. The page as sent holds its form and the answer to its worked case, in both systems of units; its code,
 * with the woods, places and sources, is fetched when somebody comes near, or where this browser knows something that changes the case: a case
 * in the address, inches written otherwise, a shop record.
 */
export function DrawnCalculator({ calculator, ...props }: DrawnCalculatorProps) {
  const { id, load, live, asksMarket } = calculator;
  const units = useUnits();
  const search = useSearch();
  const { prefix = '', remembers } = props;
  const addressed = [...new URLSearchParams(search).keys()].some(
    (key) => prefix === '' || key.startsWith(`${prefix}.`),
  );
  // Another choice of units asks once more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  const own = useCallback(
    (part: Element) => {
      const market = () => marketOfRegion(navigator.languages ?? []);
      const elsewhere = () => JSON.stringify(market()) !== JSON.stringify(marketOfRegion([]));
      return (
        addressed || !standsIn(part, unitsNow()) || (Boolean(remembers) && (keepsOwn() || (asksMarket && elsewhere())))
      );
    },
    [addressed, units, remembers, asksMarket],
  );
  const draw = ({ CalculatorView, shown }: Live) => <CalculatorView shown={shown} {...props} />;
  const ahead = ({ CalculatorAhead, shown }: Live, done: () => void) => (
    <CalculatorAhead shown={shown} done={done} {...props} />
  );
  return <DrawnPart name={id} load={load} here={live} draw={draw} ahead={ahead} own={own} inBoth />;
}
