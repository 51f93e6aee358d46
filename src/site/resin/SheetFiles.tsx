import { useState } from 'react';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import { resinSheetForm } from '../../calculators/kit/resin-sheet.ts';
import {
  freeName,
  largestSheetFile,
  readSheetFile,
  sameName,
  sheetText,
  withSheet,
  writeSheetFile,
} from '../../calculators/kit/resin-sheet-file.ts';
import { download } from '../../calculators/view/download.ts';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import frame from '../../calculators/view/frame.module.css';
import { changeKept, type KeptSheets, keptSheets } from '../../calculators/view/kept-sheets.ts';
import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './resin.module.css';

/** Sheets to a file and back. Nothing kept is replaced unasked. */
export function SheetFiles({ kept }: { kept: KeptSheets }) {
  const { href } = useLinks();
  const units = useUnits();
  const [said, setSaid] = useState('');
  /** Sheets of a file whose names are taken by other sheets, until the reader says what to do. */
  const [waiting, setWaiting] = useState<readonly RawInputs[]>([]);

  const load = async (file: File) => {
    if (file.size > largestSheetFile) {
      setSaid(`${file.name} is larger than 1 MB, the most that is read here. What is kept is unchanged.`);
      return;
    }
    const read = readSheetFile(await file.text(), file.name);
    if (!read.ok) {
      setSaid(read.errors.map(({ message }) => inReaderUnits(message, units)).join(' '));
      return;
    }
    const now = keptSheets().sheets;
    const same = read.value.filter((sheet) => now.some((one) => sheetText(one) === sheetText(sheet)));
    const clash = read.value.filter((sheet) => !same.includes(sheet) && now.some((one) => sameName(one, sheet)));
    const fresh = read.value.filter((sheet) => !same.includes(sheet) && !clash.includes(sheet));
    const lasting = fresh.length === 0 || changeKept((before) => fresh.reduce<RawInputs[]>(withSheet, [...before]));
    setWaiting(clash);
    setSaid(
      [
        fresh.length > 0 ? `Taken from ${file.name}: ${names(fresh)}.` : '',
        lasting ? '' : 'This browser stores nothing: they last as long as this page.',
        same.length > 0 ? `Kept already, with the same entries: ${names(same)}.` : '',
        clash.length > 0 ? `Kept already, with other entries: ${names(clash)}.` : '',
      ]
        .filter(Boolean)
        .join(' '),
    );
  };

  const settle = (sheet: RawInputs, how: 'replace' | 'both' | 'leave') => {
    setWaiting((before) => before.filter((one) => one !== sheet));
    if (how === 'leave') {
      setSaid(`“${sheet.name}” of the file was left out.`);
      return;
    }
    changeKept((now) =>
      withSheet(now, how === 'replace' ? sheet : { ...sheet, name: freeName(now, String(sheet.name)) }),
    );
    setSaid(how === 'replace' ? `“${sheet.name}” is replaced.` : `Both sheets named “${sheet.name}” are kept.`);
  };

  return (
    <section aria-labelledby="sheet-files" data-part="sheet-files">
      <h2 id="sheet-files">To a file and back</h2>
      <div className={styles.buttons}>
        <FileButton accept=".json,application/json" part="sheet-file" onFile={(file) => void load(file)}>
          Import a file
        </FileButton>
        <button
          type="button"
          className={frame.button}
          disabled={kept.sheets.length === 0}
          onClick={() => download('resin-sheets.json', 'application/json', writeSheetFile(kept.sheets))}
        >
          Export all
        </button>
      </div>
      <p role="status" className={styles.status}>
        {said}
      </p>
      {waiting.map((sheet) => (
        <div key={sheetText(sheet)} className={styles.notice}>
          <p>“{sheet.name}” is kept already, and the file’s sheet of that name has other entries.</p>
          <span className={styles.buttons}>
            <button type="button" className={frame.button} onClick={() => settle(sheet, 'replace')}>
              Replace the kept one<span className="visually-hidden"> {sheet.name}</span>
            </button>
            <button type="button" className={frame.button} onClick={() => settle(sheet, 'both')}>
              Keep both<span className="visually-hidden"> {sheet.name}</span>
            </button>
            <button type="button" className={frame.button} onClick={() => settle(sheet, 'leave')}>
              Leave the file’s out<span className="visually-hidden"> {sheet.name}</span>
            </button>
          </span>
        </div>
      ))}
      <h3>The file</h3>
      <p>
        A file of sheets is JSON with three members: the format, its version, and the sheets, each an object of texts as
        you would type them. All entries but the name may be left out;{' '}
        <a href={href('/schemas/resin-sheet.json')}>the schema</a> lists them. A file is taken whole or refused whole,
        and read as data only.
      </p>
      <pre className={styles.sample}>{writeSheetFile([resinSheetForm.example.metric])}</pre>
    </section>
  );
}

function names(sheets: readonly RawInputs[]): string {
  return sheets.map(({ name }) => `“${name}”`).join(', ');
}
