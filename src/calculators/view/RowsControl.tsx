import { type ClipboardEvent, memo, useEffect, useMemo, useRef, useState } from 'react';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { exampleFor } from '../kit/example.ts';
import type { FieldMeta } from '../kit/fields.ts';
import { isTooLong } from '../kit/limits.ts';
import type { ListRows, ShownColumn } from '../kit/list-field.ts';
import { Combobox } from './Combobox.tsx';
import type { ControlProps } from './Field.tsx';
import form from './form.module.css';
import frame from './frame.module.css';
import styles from './rows.module.css';
import unseen from './unseen.module.css';

/** More rows than this are easier to read and to mend as a text. */
const mostRows = 60;

type Cells = readonly string[];

/**
 * A list in rows to fill, one input a cell, or as the text that an address holds. A list that does not fit its columns, or that is very
 * long, stands as text.
 */
export function RowsControl({ id, value, meta, units, invalid, describedBy, onChange }: ControlProps) {
  const rows = meta.rows as ListRows;
  const labelledBy = `${id}-label`;
  const [asText, setAsText] = useState(false);
  // Rows as typed: kept while they stand for the text of the field, so that an empty row and a half-typed cell stay.
  const [typed, setTyped] = useState<readonly Cells[]>([]);
  // Where the focus goes once it is drawn: a row comes or goes, and what was pressed may be gone.
  const goTo = useRef<string>(undefined);
  useEffect(() => {
    const target = goTo.current === undefined ? null : document.getElementById(goTo.current);
    if (!target) return;
    target.focus();
    goTo.current = undefined;
  });
  const rowId = (row: number) => (row === 0 ? id : `${id}-row-${row}`);
  const empty = rows.columns.map(() => '');
  const placeholders = useMemo(() => examplesOf(meta, rows, units), [meta, rows, units]);
  const split = () => (isTooLong(meta, value) ? undefined : rows.split(value));
  const read = typed.length > 0 && rows.join(typed) === value ? typed : split();
  const shown = read && read.length <= mostRows ? (read.length > 0 ? read : [empty]) : undefined;

  const change = (next: readonly Cells[]) => {
    setTyped(next);
    onChange(rows.join(next));
  };

  // What a row does to the list, as it stands when that is done: a row is the same to draw while others are typed in.
  const doing = useRef<RowActs>(noActs);
  doing.current = {
    change: (row, next) => shown && change(shown.map((old, index) => (index === row ? next : old))),
    takeAway: (row) => {
      if (!shown) return;
      goTo.current = rowId(Math.min(row, shown.length - 2));
      change(shown.filter((_, index) => index !== row));
    },
    // Lines of a clipboard, or cells parted by tabs, go into rows of their own from this cell on.
    paste: (event, row, column) => {
      const pasted = pastedRows(event.clipboardData.getData('text'), column, rows);
      if (!shown || !pasted) return;
      event.preventDefault();
      const here = shown[row] ?? empty;
      const kept = here.some((cell) => cell.trim() !== '') ? [here] : [];
      change([...shown.slice(0, row), ...kept, ...pasted, ...shown.slice(row + 1)]);
    },
  };
  const acts = useMemo<RowActs>(
    () => ({
      change: (...what) => doing.current.change(...what),
      takeAway: (...what) => doing.current.takeAway(...what),
      paste: (...what) => doing.current.paste(...what),
    }),
    [],
  );

  const turn = (toText: boolean) => {
    goTo.current = id;
    setAsText(toText);
  };

  if (asText || !shown) {
    return (
      <>
        <AsText {...{ id, value, meta, units, invalid, describedBy, onChange }} />
        {shown && (
          <button type="button" className={frame.button} onClick={() => turn(false)}>
            In rows
          </button>
        )}
      </>
    );
  }

  return (
    <fieldset className={styles.rows} aria-labelledby={labelledBy} aria-describedby={describedBy}>
      <ol className={styles.list}>
        {shown.map((cells, row) => (
          <Row
            // Rows have no identity beyond their place in the list.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            key={row}
            id={rowId(row)}
            row={row}
            cells={cells}
            rows={rows}
            placeholders={placeholders}
            units={units}
            invalid={invalid}
            isOnly={shown.length < 2}
            acts={acts}
          />
        ))}
      </ol>
      <div className={frame.actions}>
        <button
          type="button"
          className={frame.button}
          onClick={() => {
            goTo.current = rowId(shown.length);
            change([...shown, empty]);
          }}
        >
          Add {/^[aeiou]/.test(rows.noun) ? 'an' : 'a'} {rows.noun}
        </button>
        <button type="button" className={frame.button} onClick={() => turn(true)}>
          As text
        </button>
      </div>
    </fieldset>
  );
}

/** The list as the text that an address holds. */
function AsText({ id, value, meta, units, invalid, describedBy, onChange }: ControlProps) {
  return (
    <textarea
      id={id}
      className={form.textarea}
      spellCheck={false}
      rows={Math.min(12, Math.max(4, value.split('\n').length + 1))}
      value={value}
      placeholder={exampleFor(meta, units)}
      aria-labelledby={`${id}-label`}
      aria-invalid={invalid || undefined}
      aria-describedby={describedBy}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}

/** What can be done to a list from one of its rows. */
interface RowActs {
  change: (row: number, cells: Cells) => void;
  takeAway: (row: number) => void;
  paste: (event: ClipboardEvent, row: number, column: number) => void;
}

const noActs: RowActs = { change: () => undefined, takeAway: () => undefined, paste: () => undefined };

interface RowProps extends Pick<ControlProps, 'id' | 'units' | 'invalid'> {
  /** Its place in the list, from 0. */
  row: number;
  cells: Cells;
  rows: ListRows;
  /** An example for each cell. */
  placeholders: readonly string[];
  /** The only one stays. */
  isOnly: boolean;
  acts: RowActs;
}

/** A row is drawn again only when something of its own changes. */
const Row = memo(
  function Row({ id, row, cells, rows, placeholders, units, invalid, isOnly, acts }: RowProps) {
    return (
      <li className={styles.row}>
        {rows.columns.map((column, at) => (
          <span key={column.name} className={styles.cell} data-share={shareOf(column, rows.columns)}>
            {row === 0 && (
              <span className={styles.head} aria-hidden="true">
                {column.label}
              </span>
            )}
            <Cell
              id={at === 0 ? id : `${id}-${at}`}
              name={`${column.label}, ${rows.noun} ${row + 1}`}
              column={column}
              value={cells[at] ?? ''}
              placeholder={placeholders[at] ?? ''}
              units={units}
              invalid={invalid}
              onPaste={(event) => acts.paste(event, row, at)}
              onChange={(text) =>
                acts.change(
                  row,
                  cells.map((one, index) => (index === at ? text : one)),
                )
              }
            />
          </span>
        ))}
        <span className={styles.away}>
          <button
            type="button"
            className={frame.button}
            aria-label={`Remove ${rows.noun} ${row + 1}`}
            disabled={isOnly}
            onClick={() => acts.takeAway(row)}
          >
            −
          </button>
        </span>
      </li>
    );
  },
  (before, now) =>
    (Object.keys(now) as (keyof RowProps)[]).every((name) =>
      name === 'cells' ? now.cells.join('\n') === before.cells.join('\n') : now[name] === before[name],
    ),
);

interface CellProps {
  id: string;
  /** For those who do not see the head of the column. */
  name: string;
  column: ShownColumn;
  value: string;
  placeholder: string;
  units: ReaderUnits;
  invalid: boolean;
  onPaste: (event: ClipboardEvent) => void;
  onChange: (text: string) => void;
}

function Cell({ id, name, column, value, placeholder, units, invalid, onPaste, onChange }: CellProps) {
  if (column.pick) {
    return (
      <>
        <label className={unseen.unseen} htmlFor={id}>
          {name}
        </label>
        <Combobox
          id={id}
          value={value}
          options={column.pick}
          invalid={invalid}
          describedBy={undefined}
          onChange={onChange}
        />
      </>
    );
  }
  if (column.options) {
    return (
      <select
        id={id}
        className={form.select}
        aria-label={name}
        value={value}
        onChange={(event) => onChange(event.target.value)}
      >
        {(column.optional || value === '') && <option value="">as usual</option>}
        {value !== '' && !column.options.some((option) => option.value === value) && <option>{value}</option>}
        {column.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    );
  }
  return (
    <input
      id={id}
      type="text"
      className={form.input}
      aria-label={name}
      aria-invalid={invalid || undefined}
      // Inches take fractions, and words and spans take letters; millimetres need digits only.
      inputMode={units.system === 'metric' && column.measure === 'length' ? 'decimal' : 'text'}
      autoComplete="off"
      spellCheck={false}
      placeholder={placeholder}
      value={value}
      onPaste={onPaste}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}

/** How many cells share the line of this one: one that needs room stands alone. */
function shareOf(column: ShownColumn, columns: readonly ShownColumn[]): number {
  if (column.leading || column.wide) return 1;
  const narrow = columns.filter(({ leading, wide }) => !leading && !wide).length;
  return narrow <= 3 ? narrow : 2;
}

/** An example for each cell in the reader's own units, where the field has one in them. */
function examplesOf(meta: FieldMeta, rows: ListRows, units: ReaderUnits): string[] {
  const [first = []] = rows.split(exampleFor(meta, units) ?? '') ?? [];
  return rows.columns.map((column, at) => first[at] || (column.example ?? ''));
}

/** Several lines, or cells parted by tabs, as rows; undefined where a text is one cell. */
function pastedRows(text: string, column: number, rows: ListRows): Cells[] | undefined {
  const lines = text.split(/[\r\n]+/).filter((line) => line.trim() !== '');
  if (!text.includes('\t')) return lines.length > 1 ? rows.split(text) : undefined;
  const { length } = rows.columns;
  return lines.map((line) => {
    const cells = [...Array<string>(column).fill(''), ...line.split('\t').map((cell) => cell.trim())];
    const before = cells.slice(0, length - 1);
    // What is more than the columns goes into the last one.
    const last = cells
      .slice(length - 1)
      .filter(Boolean)
      .join(', ');
    return [...before, ...Array<string>(length - 1 - before.length).fill(''), last];
  });
}
