import { useState } from 'react';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import { Form } from '../../calculators/kit/Form.tsx';
import frame from '../../calculators/kit/frame.module.css';
import { changeKept, type KeptSheets } from '../../calculators/kit/kept-sheets.ts';
import { entryLabel, readResinSheet, resinSheetForm } from '../../calculators/kit/resin-sheet.ts';
import { freeName, sameName, sheetText, withoutSheet, withSheet } from '../../calculators/kit/resin-sheet-file.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { layResinSheet } from '../../model/resin/resin.ts';
import { type Draft, explicitSheet, type useDraft } from './draft.ts';
import styles from './resin.module.css';
import { SheetPreview } from './SheetPreview.tsx';

interface SheetFormProps {
  form: ReturnType<typeof useDraft>;
  kept: KeptSheets;
  units: ReaderUnits;
}

/** The form of a data sheet, what the calculators would take from it, and the ways to keep it. */
export function SheetForm({ form: { draft, set, start }, kept, units }: SheetFormProps) {
  const [tried, setTried] = useState(false);
  const [said, setSaid] = useState('');
  const [asked, setAsked] = useState(false);
  /** What the form held before it was emptied, to be put back. */
  const [before, setBefore] = useState<Draft | null>(null);
  const { raw, began } = draft;
  const sheet = explicitSheet(raw, units);
  const read = readResinSheet(sheet);
  const errors = read.ok ? [] : read.errors;
  // Nobody has failed to fill in a form that was only opened.
  const told = errors.filter(({ field }) => tried || (raw[field] ?? '') !== '');
  const namesake = kept.sheets.find((one) => sameName(one, sheet));
  const itself = began !== null && namesake !== undefined && sameName(namesake, { name: began });

  const keep = (named: RawInputs) => {
    const lasting = changeKept((now) => {
      const others = began !== null && !sameName(named, { name: began }) ? withoutSheet(now, began) : now;
      return withSheet(others, named);
    });
    setSaid(
      lasting
        ? `“${named.name}” is kept in this browser.`
        : `“${named.name}” lasts only as long as this page, since this browser stores nothing. Export it to a file.`,
    );
    setAsked(false);
    setTried(false);
    setBefore(null);
    start({ raw: {}, began: null });
  };

  const press = () => {
    setTried(true);
    if (!read.ok) {
      const names = [...new Set(errors.map(({ field }) => entryLabel(field)))].join(', ');
      setSaid(`Not kept yet; to mend: ${names}.`);
    } else if (namesake && !itself && sheetText(namesake) !== sheetText(sheet)) {
      setSaid(`A sheet named “${namesake.name}” is kept already, and differs from this one.`);
      setAsked(true);
    } else keep(sheet);
  };

  const clear = () => {
    setBefore(draft);
    setTried(false);
    setAsked(false);
    setSaid('The form is empty.');
    start({ raw: {}, began: null });
  };

  return (
    <section aria-labelledby="enter-sheet" data-part="enter-sheet">
      <h2 id="enter-sheet">{began === null ? 'Enter a data sheet' : `Change “${began}”`}</h2>
      <p>
        Copy what the maker’s sheet says and leave the rest empty. What you type stays in this browser, also when you
        close the page before you keep it.
      </p>
      <div className={styles.columns}>
        <div>
          <Form
            calculator={resinSheetForm}
            raw={raw}
            errors={told}
            units={units}
            controls={undefined}
            options={undefined}
            set={(patch) => {
              setAsked(false);
              setSaid('');
              set(patch);
            }}
          />
          <div className={styles.buttons}>
            <button type="button" className={frame.button} onClick={press}>
              Keep this sheet
            </button>
            <button type="button" className={frame.button} onClick={clear}>
              Empty the form
            </button>
            {before && (
              <button
                type="button"
                className={frame.button}
                onClick={() => {
                  start(before);
                  setBefore(null);
                  setSaid('');
                }}
              >
                Put back what was in it
              </button>
            )}
          </div>
          <p role="status" className={styles.status}>
            {said}
          </p>
          {asked && read.ok && (
            <div className={styles.buttons}>
              <button type="button" className={frame.button} onClick={() => keep(sheet)}>
                Replace the kept one
              </button>
              <button
                type="button"
                className={frame.button}
                onClick={() => keep({ ...sheet, name: freeName(kept.sheets, String(sheet.name)) })}
              >
                Keep both
              </button>
            </div>
          )}
        </div>
        {read.ok && <SheetPreview resin={layResinSheet(read.value)} units={units} />}
      </div>
    </section>
  );
}
