import { useState } from 'react';
import { cuts } from '../../model/movement/index.ts';
import { readerUnit, withUnit } from '../../model/quantity/index.ts';
import { Combobox } from '../view/Combobox.tsx';
import type { ControlProps } from '../view/Field.tsx';
import form from '../view/form.module.css';
import frame from '../view/frame.module.css';
import { speciesOptions } from '../view/species-options.ts';
import styles from './staves.module.css';

/** A stave as it is typed. */
interface StaveText {
  species: string;
  width: string;
  cut: string;
}

/** The staves of a panel as rows of species, width and cut; the address holds them as one text. */
export function StavesControl({ id, value, meta, invalid, describedBy, units, onChange }: ControlProps) {
  const bareUnit = readerUnit('length', units);
  const written = (staves: readonly StaveText[]) =>
    meta.rows?.join(staves.map(({ species, width, cut }) => [species, withUnit(width, bareUnit), cut])) ?? '';
  // Rows as typed: kept while they stand for the text in the address, so that a half-typed width stays as it is.
  const [typed, setTyped] = useState<readonly StaveText[]>([]);
  // A text that does not fall into rows stands in one, whole.
  const split = () =>
    (meta.rows?.split(value) ?? [[value]]).map(([species = '', width = '', cut = '']) => ({ species, width, cut }));
  const rows = written(typed) === value && typed.length > 0 ? typed : split();

  const change = (next: readonly StaveText[]) => {
    setTyped(next);
    onChange(written(next));
  };
  const edit = (index: number, patch: Partial<StaveText>) =>
    change(rows.map((row, at) => (at === index ? { ...row, ...patch } : row)));

  return (
    <fieldset className={styles.staves} aria-label="Staves" aria-describedby={describedBy}>
      <ol className={styles.list}>
        {rows.map((row, index) => (
          // Rows have no identity beyond their place in the panel.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <li key={index} className={styles.row}>
            <span className={styles.species}>
              <label className={form.hidden} htmlFor={index === 0 ? id : `${id}-${index}`}>
                Wood of stave {index + 1}
              </label>
              <Combobox
                id={index === 0 ? id : `${id}-${index}`}
                value={row.species}
                options={speciesOptions}
                invalid={invalid}
                describedBy={undefined}
                onChange={(species) => edit(index, { species: species.replaceAll(/[,;\n]/g, ' ') })}
              />
            </span>
            <input
              className={form.input}
              aria-label={`Width of stave ${index + 1}`}
              value={row.width}
              inputMode={units.system === 'metric' ? 'decimal' : 'text'}
              autoComplete="off"
              onChange={(event) => edit(index, { width: event.target.value.replaceAll(/[;\n]/g, ' ') })}
            />
            <select
              className={form.select}
              aria-label={`Cut of stave ${index + 1}`}
              value={row.cut}
              onChange={(event) => edit(index, { cut: event.target.value })}
            >
              <option value="">as the panel</option>
              {cuts.map((cut) => (
                <option key={cut} value={cut}>
                  {cut}
                </option>
              ))}
            </select>
            <button
              type="button"
              className={frame.button}
              aria-label={`Take away stave ${index + 1}`}
              disabled={rows.length < 2}
              onClick={() => change(rows.filter((_, at) => at !== index))}
            >
              −
            </button>
          </li>
        ))}
      </ol>
      <button
        type="button"
        className={frame.button}
        onClick={() => change([...rows, rows[rows.length - 1] ?? { species: 'white-ash', width: '60 mm', cut: '' }])}
      >
        Add a stave
      </button>
    </fieldset>
  );
}
