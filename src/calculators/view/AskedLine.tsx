import type { ReaderUnits } from '../../model/quantity/index.ts';
import { type AskedField, type AskedWords, askedWords } from '../kit/asked.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';

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

/** What was asked, in words. */
export function AskedWordsLine({ asked: { given, taken } }: { asked: AskedWords }) {
  return (
    <div data-part="asked">
      {given.length > 0 && <p>{listed(given)}</p>}
      {taken.length > 0 && <p>taken: {listed(taken)}</p>}
    </div>
  );
}

const listed = (fields: readonly AskedField[]) =>
  fields.map(({ name, label, words }, at) => (
    <span key={name}>
      {at > 0 && ' · '}
      {label} <b>{words}</b>
    </span>
  ));
