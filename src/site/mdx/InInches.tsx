import { useUnits } from '../../calculators/view/units.tsx';
import { inFahrenheit, inInches } from './inches.ts';

/** The inches behind a length of a page's text, in the steps that the reader asks for, or °F behind °C; style shows them to readers of inches. */
export function InInches({ of }: { of: string }) {
  const { inches } = useUnits();
  return <span className="in-inches">{` (${of.endsWith('°C') ? inFahrenheit(of) : inInches(of, inches)})`}</span>;
}
