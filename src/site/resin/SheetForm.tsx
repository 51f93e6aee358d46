import { startTransition, useEffect, useRef, useState } from 'react';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import { entryLabel, readResinSheet, resinSheetForm } from '../../calculators/kit/resin-sheet.ts';
import { freeName, sameName, sheetText, withoutSheet, withSheet } from '../../calculators/kit/resin-sheet-file.ts';
import { Form } from '../../calculators/view/Form.tsx';
import frame from '../../calculators/view/frame.module.css';
import { changeKept, type KeptSheets } from '../../calculators/view/kept-sheets.ts';
import { type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { layResinSheet } from '../../model/resin/resin.ts';
import { explicitSheet, type useDraft } from './draft.ts';
import { DoseWith } from './KeptList.tsx';
import styles from './resin.module.css';
import { SheetPreview } from './SheetPreview.tsx';
import { SheetReview } from './SheetReview.tsx';

interface SheetFormProps {
  form: ReturnType<typeof useDraft>;
  kept: KeptSheets;
  units: ReaderUnits;
}

/** The form of a data sheet, what the calculators would take from it, and the ways to keep it. */
export function SheetForm({ form: { draft, set, start, displaced }, kept, units }: SheetFormProps) {
  const [tried, setTried] = useState(false);
  const [said, setSaid] = useState('');
  const [asked, setAsked] = useState(false);
  /** The sheet that was kept last, to be used at once. */
  const [done, setDone] = useState<RawInputs | null>(null);
  const section = useRef<HTMLElement>(null);
  const { raw, began } = draft;
  const sheet = explicitSheet(raw, units);
  const read = wordsInReaderUnits(readResinSheet(sheet), units);
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
    setDone(named);
    start({ raw: {}, began: null });
  };

  const press = () => {
    setTried(true);
    if (!read.ok) {
      const names = [...new Set(errors.map(({ field }) => entryLabel(field)))].join(', ');
      setSaid(`Not kept yet; to mend: ${names}.`);
      // The form is long: what is to be mended is out of sight on a phone.
      const wrong = [...(section.current?.querySelectorAll<HTMLElement>('[data-field]') ?? [])].find(({ dataset }) =>
        errors.some(({ field }) => field === dataset.field),
      );
      wrong?.querySelector<HTMLElement>('input, select')?.focus();
    } else if (namesake && !itself && sheetText(namesake) !== sheetText(sheet)) {
      setSaid(`A sheet named “${namesake.name}” is kept already, and differs from this one.`);
      setAsked(true);
    } else keep(sheet);
  };

  // What was typed last may be seen and not taken in yet: it is kept with that.
  const [pressed, setPressed] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each press, with all that was typed before it
  useEffect(() => {
    if (pressed > 0) press();
  }, [pressed]);

  // The form is empty again once a sheet is kept: what is wrong with that sheet is said where the reader looks.
  const readDone = done && readResinSheet(done);

  const clear = () => {
    setTried(false);
    setAsked(false);
    setDone(null);
    setSaid('The form is empty.');
    start({ raw: {}, began: null }, true);
  };

  return (
    <section aria-labelledby="enter-sheet" data-part="enter-sheet" ref={section}>
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
            set={(patch) => {
              setAsked(false);
              setDone(null);
              setSaid('');
              set(patch);
            }}
          />
          <div className={styles.buttons}>
            <button
              type="button"
              className={frame.button}
              onClick={() => startTransition(() => setPressed((times) => times + 1))}
            >
              Keep this sheet
            </button>
            <button type="button" className={frame.button} onClick={clear}>
              Empty the form
            </button>
            {displaced && (
              <button
                type="button"
                className={frame.button}
                onClick={() => {
                  start(displaced);
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
          {done && (
            <>
              {readDone?.ok && <SheetReview resin={layResinSheet(readDone.value)} units={units} />}
              <p className={styles.link}>
                <DoseWith sheet={done} />
              </p>
            </>
          )}
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
