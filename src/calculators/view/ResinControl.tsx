import { useState } from 'react';
import { resinKinds } from '../../model/resin/kinds.ts';
import type { RawInputs } from '../kit/calculator.ts';
import { readResinSheet, tidySheet } from '../kit/resin-sheet.ts';
import { freeName, sameName, sheetText, withSheet } from '../kit/resin-sheet-file.ts';
import type { ControlProps } from './Field.tsx';
import form from './form.module.css';
import frame from './frame.module.css';
import { changeKept, useKeptSheets } from './kept-sheets.ts';
import { useLinks } from './links.tsx';
import styles from './resin.module.css';

/** The texts of a sheet that an address carries, or undefined where it carries none that can be read. */
function sheetOf(value: string): RawInputs | undefined {
  if (!value.trim().startsWith('{')) return undefined;
  try {
    const sheet = JSON.parse(value) as Record<string, unknown>;
    return readResinSheet(sheet).ok ? tidySheet(sheet) : undefined;
  } catch {
    return undefined;
  }
}

/** A choice among the generic kinds, the reader's own sheets, and the sheet that the address carries. */
export function ResinControl({ id, value, meta, invalid, describedBy, onChange }: ControlProps) {
  const { Link } = useLinks();
  const { sheets } = useKeptSheets();
  const [said, setSaid] = useState('');
  const carried = sheetOf(value);
  const text = carried ? sheetText(carried) : value.trim().toLowerCase();
  const kept = carried && sheets.find((sheet) => sheetText(sheet) === text);
  const namesake = carried && !kept && sheets.some((sheet) => sameName(sheet, carried));
  // A sheet that came with a link and is not kept would be gone as soon as another is picked.
  const [lent, setLent] = useState<RawInputs | null>(null);
  if (carried && !kept && (lent === null || sheetText(lent) !== text)) setLent(carried);
  const left = lent !== null && sheetText(lent) !== text && !sheets.some((one) => sheetText(one) === sheetText(lent));
  const known = kept !== undefined || resinKinds.some(({ kind }) => kind === text);

  const keep = (sheet: RawInputs, as: string) => {
    const named = { ...sheet, name: as };
    const lasting = changeKept((now) => withSheet(now, named));
    onChange(sheetText(named));
    setSaid(lasting ? `“${as}” is kept.` : `This browser stores nothing: “${as}” lasts as long as this page.`);
  };

  const picked = kept?.name ?? resinKinds.find(({ kind }) => kind === text)?.name ?? carried?.name ?? '';
  return (
    <>
      <span className={styles.printed} aria-hidden="true">
        {picked}
      </span>
      <select
        id={id}
        className={`${form.select} ${styles.screen}`}
        value={text}
        aria-invalid={invalid || undefined}
        aria-describedby={describedBy}
        data-part="resin"
        onChange={(event) => {
          setSaid('');
          onChange(event.target.value);
        }}
      >
        {!known && text !== '' && (
          <option value={text}>{carried ? `${carried.name} (in the address)` : 'Not to be read: pick another'}</option>
        )}
        {left && <option value={sheetText(lent)}>{lent.name} (not kept)</option>}
        {text === '' && <option value="">{meta.label}: none</option>}
        {sheets.length > 0 && (
          <optgroup label="My data sheets">
            {sheets.map((sheet) => (
              <option key={sheet.name} value={sheetText(sheet)}>
                {sheet.name}
              </option>
            ))}
          </optgroup>
        )}
        <optgroup label="Generic kinds, from memory">
          {resinKinds.map(({ kind, name }) => (
            <option key={kind} value={kind}>
              {name}
            </option>
          ))}
        </optgroup>
      </select>
      {carried && !kept && (
        <div className={frame.actions}>
          {namesake ? (
            <>
              <span className={form.help}>
                This browser keeps a sheet of this name with other entries; it stands in the list above.
              </span>
              <button type="button" className={frame.button} onClick={() => keep(carried, String(carried.name))}>
                Replace it by this one
              </button>
              <button
                type="button"
                className={frame.button}
                onClick={() => keep(carried, freeName(sheets, String(carried.name)))}
              >
                Keep both
              </button>
            </>
          ) : (
            <button type="button" className={frame.button} onClick={() => keep(carried, String(carried.name))}>
              Keep this sheet
            </button>
          )}
        </div>
      )}
      <p className={form.help}>
        <span role="status">{said}</span> <Link to="/resin-sheets">Enter or change a data sheet</Link>
      </p>
    </>
  );
}
