import { useState } from 'react';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import { readResinSheet } from '../../calculators/kit/resin-sheet.ts';
import { sheetText, withoutSheet, withSheet, writeSheetFile } from '../../calculators/kit/resin-sheet-file.ts';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { changeKept, dropDamaged, type KeptSheets, useDamagedText } from '../../calculators/view/kept-sheets.ts';
import { useLinks } from '../../calculators/view/links.tsx';
import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { layResinSheet } from '../../model/resin/resin.ts';
import { reviewSheet } from '../../model/resin/sheet-review.ts';
import { Removed } from '../kept/PutBack.tsx';
import styles from './resin.module.css';

/** The dose calculator with a sheet in its address. */
export const doseAddress = (sheet: RawInputs) =>
  `/calculators/resin-dose?resin=${encodeURIComponent(sheetText(sheet))}`;

/** The sheets that this browser keeps, each with what can be done with it. */
export function KeptList({
  kept,
  edit,
  units,
}: {
  kept: KeptSheets;
  edit: (sheet: RawInputs) => void;
  units: ReaderUnits;
}) {
  const [removed, setRemoved] = useState<RawInputs | null>(null);
  const remove = (sheet: RawInputs) => {
    changeKept((now) => withoutSheet(now, String(sheet.name)));
    setRemoved(sheet);
  };
  return (
    <section aria-labelledby="kept-sheets" data-part="kept-sheets">
      <h2 id="kept-sheets">Sheets kept in this browser</h2>
      <Damage kept={kept} />
      {!kept.lasting && (
        <p className={styles.notice}>
          This browser does not let the page store anything: these sheets last as long as the page. Export them to a
          file.
        </p>
      )}
      {kept.sheets.length === 0 && <p>None yet. Enter one below, or import a file.</p>}
      <ul className={styles.sheets}>
        {kept.sheets.map((sheet) => (
          <li key={sheetText(sheet)} className={styles.sheet}>
            <strong>{sheet.name}</strong>
            <span className="small">{summary(sheet)}</span>
            <Danger sheet={sheet} units={units} />
            <span className={styles.buttons}>
              <span className={styles.link}>
                <DoseWith sheet={sheet} />
              </span>
              <button type="button" className={frame.button} onClick={() => edit(sheet)}>
                Change<span className="visually-hidden"> {sheet.name}</span>
              </button>
              <button
                type="button"
                className={frame.button}
                onClick={() =>
                  download(
                    `resin-sheet-${fileWord(String(sheet.name))}.json`,
                    'application/json',
                    writeSheetFile([sheet]),
                  )
                }
              >
                Export<span className="visually-hidden"> {sheet.name}</span>
              </button>
              <button type="button" className={frame.button} onClick={() => remove(sheet)}>
                Remove<span className="visually-hidden"> {sheet.name}</span>
              </button>
            </span>
          </li>
        ))}
      </ul>
      <Removed
        name={removed ? String(removed.name) : undefined}
        className={styles.status}
        onPutBack={() => {
          if (removed) changeKept((now) => withSheet(now, removed));
          setRemoved(null);
        }}
      />
    </section>
  );
}

/** What in a sheet is at war with itself; undefined where nothing is, and where it cannot be read. */
function warOf(sheet: RawInputs): string | undefined {
  const read = readResinSheet(sheet);
  return read.ok ? reviewSheet(layResinSheet(read.value)).war : undefined;
}

/** The way to the dose. By a sheet at war with itself nothing is dosed: the way says so before it is gone. */
export function DoseWith({ sheet }: { sheet: RawInputs }) {
  const { Link } = useLinks();
  return <Link to={doseAddress(sheet)}>{warOf(sheet) ? 'See why nothing is dosed by it' : 'Dose with it'}</Link>;
}

/** The danger of a sheet that contradicts itself, beside its name for as long as it is kept. */
function Danger({ sheet, units }: { sheet: RawInputs; units: ReaderUnits }) {
  const war = warOf(sheet);
  if (!war) return null;
  return (
    <span className={styles.notice} data-part="sheet-danger">
      <strong>Contradicts itself:</strong> {inReaderUnits(war, units)}. Nothing is dosed or timed by it: look at the
      maker’s sheet again, and press Change.
    </span>
  );
}

/** What is said of stored text that could not be read: it is never thrown away unasked. */
function Damage({ kept }: { kept: KeptSheets }) {
  const putBy = useDamagedText();
  const text = kept.damaged?.text ?? putBy;
  if (!text) return null;
  return (
    <div className={styles.notice}>
      <p>
        {kept.damaged
          ? `What this browser had stored cannot be read whole. ${kept.damaged.problem}. It will be put by before anything is written over it.`
          : 'Stored text that could not be read is put by.'}{' '}
        Take it as a file: a sheet in it may be mended by hand and imported.
      </p>
      <span className={styles.buttons}>
        <button
          type="button"
          className={frame.button}
          onClick={() => download('resin-sheets-damaged.txt', 'text/plain', text)}
        >
          Take it as a file
        </button>
        {!kept.damaged && (
          <button type="button" className={frame.button} onClick={dropDamaged}>
            Throw it away
          </button>
        )}
      </span>
    </div>
  );
}

/** The few entries that tell one sheet from another. */
function summary(sheet: RawInputs): string {
  const read = readResinSheet(sheet);
  if (!read.ok) return 'An entry cannot be read: press Change to mend it.';
  return [
    sheet.mixByVolume && `${sheet.mixByVolume} by volume`,
    sheet.mixByWeight && `${sheet.mixByWeight} by weight`,
    sheet.potLife && `pot life ${sheet.potLife}`,
    sheet.greatestDepth && `at most ${sheet.greatestDepth} in one pour`,
  ]
    .filter(Boolean)
    .join(', ');
}

/** A name as a part of a file's name. */
function fileWord(name: string): string {
  const word = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return word.slice(0, 40) || 'sheet';
}
