import { type CSSProperties, useId, useState } from 'react';
import type { PaperBlock } from '../../model/evidence/index.ts';
import { type LabelGrid, labelGrids, labelPlaces, labelSheets, labelsOn } from '../../model/outline/label-grids.ts';
import { papers } from '../../model/outline/tiles.ts';
import { formatQuantity, type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { labelPadding, labelType, usualGrid, withTyped } from '../kit/label-type.ts';
import { Blocks } from './DocumentBlocks.tsx';
import styles from './document.module.css';
import form from './form.module.css';
import paper from './paper.module.css';

/** How labels are printed: on which sheet, from which of its labels on, how many, and what was typed for their lines. */
export interface LabelWishes {
  grid: LabelGrid;
  start: number;
  count: number;
  typed: Readonly<Record<string, string | undefined>>;
}

interface LabelPaperProps extends LabelWishes {
  /** Words of each label; one alone is printed as often as was wished. */
  labels: readonly (readonly PaperBlock[])[];
  units: ReaderUnits;
}

/** Sheets of labels as the printer gets them: no margin, each label in its place. */
export function LabelPaper({ labels, grid, start, count, typed, units }: LabelPaperProps) {
  const places = labelPlaces(grid);
  const page = papers[grid.paper];
  // Type is fitted to the words as they will stand there.
  const filled = labels.map((blocks) => withTyped(wordsInReaderUnits(blocks, units), typed));
  const size = Math.min(...filled.map((blocks) => labelType(blocks, grid) ?? 5));
  return labelSheets(grid, count, start).map((sheet, at) => (
    <div
      // biome-ignore lint/suspicious/noArrayIndexKey: a sheet of labels has no other name than its place
      key={at}
      className={grid.paper === 'a4' ? paper.labelsA4 : paper.labelsLetter}
      data-part="label-sheet"
      style={{ width: `${page.width}mm`, height: `${page.height}mm` }}
    >
      {places.map(({ left, top }, place) => {
        const label = sheet[place];
        if (label === undefined) return null;
        const room: CSSProperties = {
          left: `${left}mm`,
          top: `${top}mm`,
          width: `${grid.width}mm`,
          height: `${grid.height}mm`,
          padding: `${labelPadding}mm`,
          fontSize: `${size}pt`,
        };
        return (
          <div key={`${left},${top}`} className={styles.label} data-part="label" style={room}>
            <Blocks blocks={filled[label % filled.length] ?? []} units={units} />
          </div>
        );
      })}
    </div>
  ));
}

const sizeWords = ({ columns, rows, width, height, paper: on }: LabelGrid, units: ReaderUnits) =>
  `${papers[on].label}, ${columns} × ${rows} of ${formatQuantity(width, 'mm', units, { digits: 4 })} × ${formatQuantity(height, 'mm', units, { digits: 4 })}`;

/** How much paper that takes: `99 labels on 5 sheets`. */
export function sheetsWords({ grid, start, count }: LabelWishes): string {
  const sheets = labelSheets(grid, count, start).length;
  return `${count} ${count === 1 ? 'label' : 'labels'} on ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'}.`;
}

interface OptionsProps {
  blocks: readonly PaperBlock[];
  units: ReaderUnits;
  wishes: LabelWishes;
  change: (patch: Partial<LabelWishes>) => void;
}

/** What the labels are printed on, from which one, and the maker's own words for their lines. */
export function LabelOptions({ blocks, units, wishes, change }: OptionsProps) {
  const id = useId();
  const lines = blocks.flatMap((block) => (block.kind === 'blanks' ? block.labels : []));
  const each = labelsOn(wishes.grid);
  return (
    <div className={`${styles.options} no-print`}>
      <label htmlFor={`${id}-grid`}>
        Sheet of labels
        <select
          id={`${id}-grid`}
          className={form.select}
          value={wishes.grid.id}
          onChange={({ target }) => {
            const grid = labelGrids.find((one) => one.id === target.value);
            if (grid) change({ grid, start: 1, count: labelsOn(grid) });
          }}
        >
          {labelGrids.map((grid) => (
            <option key={grid.id} value={grid.id}>
              {sizeWords(grid, units)}
            </option>
          ))}
        </select>
      </label>
      <Whole label="Start at label" most={each} value={wishes.start} set={(start) => change({ start })} />
      <Whole label="How many" most={300} value={wishes.count} set={(count) => change({ count })} />
      <p role="status">{sheetsWords(wishes)}</p>
      {lines.map((line) => (
        <label key={line} htmlFor={`${id}-${line}`}>
          {line}
          <input
            id={`${id}-${line}`}
            className={form.input}
            type="text"
            maxLength={80}
            autoComplete="off"
            value={wishes.typed[line] ?? ''}
            onChange={({ target }) => change({ typed: { ...wishes.typed, [line]: target.value } })}
          />
        </label>
      ))}
    </div>
  );
}

/** A whole number from 1; what is typed and is none stays to be seen, and the last good one counts. */
function Whole({
  label,
  most,
  value,
  set,
}: {
  label: string;
  most: number;
  value: number;
  set: (value: number) => void;
}) {
  const id = useId();
  const [text, setText] = useState<string>();
  const good = (typed: string) => /^\d{1,4}$/.test(typed.trim()) && Number(typed) >= 1 && Number(typed) <= most;
  const wrong = text !== undefined && !good(text);
  return (
    <div>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className={form.input}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={text ?? `${value}`}
        aria-invalid={wrong || undefined}
        aria-describedby={wrong ? `${id}-error` : undefined}
        onChange={({ target }) => {
          const typed = target.value;
          if (good(typed)) {
            set(Number(typed));
            setText(undefined);
          } else setText(typed);
        }}
      />
      {wrong && (
        <p id={`${id}-error`} className={form.error}>
          “{text.slice(0, 20)}” is not a whole number from 1 to {most}: {value} counts.
        </p>
      )}
    </div>
  );
}

/** What labels begin with: a whole sheet of the usual size of the reader's paper, and nothing typed. */
export function usualWishes(blocks: readonly PaperBlock[], units: ReaderUnits): LabelWishes {
  const grid = usualGrid(units.system === 'inch' ? 'letter' : 'a4', blocks);
  return { grid, start: 1, count: labelsOn(grid), typed: {} };
}

/** What is said where the words do not fit the labels; undefined where they do. */
export function labelFault(blocks: readonly PaperBlock[], { grid, typed }: LabelWishes): string | undefined {
  if (labelType(withTyped(blocks, typed), grid) !== undefined) return undefined;
  return 'So much does not stand on a label of this size in type that can be read. Take a larger label, or type less.';
}
