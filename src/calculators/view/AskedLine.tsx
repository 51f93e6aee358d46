import type { ReaderUnits } from '../../model/quantity/index.ts';
import { askedWords } from '../kit/asked.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import { AskedWordsLine } from './AskedWordsLine.tsx';

interface AskedLineProps {
  calculator: Calculator;
  raw: RawInputs;
  units: ReaderUnits;
}

/** On paper, in place of the form: what was entered, and what was taken where nothing was. */
export function AskedLine({ calculator, raw, units }: AskedLineProps) {
  return (
    <div className="print-only" aria-hidden="true">
      <AskedWordsLine asked={askedWords(calculator, raw, units)} />
    </div>
  );
}
