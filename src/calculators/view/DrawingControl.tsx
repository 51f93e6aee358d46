import { useId, useState } from 'react';
import { compactDrawing, type DrawingReading, largestDrawing, readDrawing } from '../../model/outline/index.ts';
import { parseQuantity, readerUnit } from '../../model/quantity/index.ts';
import type { ControlProps } from './Field.tsx';
import { FileButton } from './FileButton.tsx';
import form from './form.module.css';
import frame from './frame.module.css';

/** Pasted markup and long path data are turned into short path data at once, so that the address can hold it. */
const longText = 4000;

/** A text area for path data, and a button that reads an SVG file into it. Only numbers of the file are kept. */
export function DrawingControl({ id, value, units, invalid, describedBy, onChange }: ControlProps) {
  const widthId = useId();
  const [said, setSaid] = useState('');
  /** The text of a drawing that does not say how large it is, until its width is given. */
  const [waiting, setWaiting] = useState<{ name: string; text: string } | null>(null);
  const [width, setWidth] = useState('');

  const keep = (name: string, reading: DrawingReading) => {
    const { text, thinnedTo } = compactDrawing(reading.shape);
    onChange(text);
    setWaiting(null);
    const size = `${reading.width.toFixed(1)} × ${reading.height.toFixed(1)} mm`;
    const holes = reading.holes === 0 ? 'no holes' : reading.holes === 1 ? 'one hole' : `${reading.holes} holes`;
    setSaid(
      [
        `${name}: ${size}, ${holes}.`,
        ...reading.notes,
        ...(thinnedTo ? [`Thinned out to fit into the address: within ${thinnedTo} mm of the drawing.`] : []),
      ].join(' '),
    );
  };

  const take = (name: string, text: string, finishedWidth?: number) => {
    const outcome = readDrawing(text, finishedWidth === undefined ? {} : { width: finishedWidth });
    if (outcome.ok) return keep(name, outcome.value);
    const sizeless = outcome.errors.every(({ field }) => field === 'drawingWidth');
    setWaiting(sizeless ? { name, text } : null);
    setSaid(`${name}: ${outcome.errors.map(({ message }) => message).join(' ')} What was there before is unchanged.`);
  };

  const load = async (file: File) => {
    if (file.size > largestDrawing) {
      setSaid(
        `${file.name} is larger than 5 MB, the most that is read here. Save only the outline. What was there before is unchanged.`,
      );
      return;
    }
    take(file.name, await file.text());
  };

  const size = () => {
    const parsed = parseQuantity(width, { dimension: 'length', bareUnit: readerUnit('length', units) });
    if (!parsed.ok) setSaid(`${parsed.problem}. ${parsed.wayOut}`);
    else if (waiting) take(waiting.name, waiting.text, parsed.value);
  };

  return (
    <>
      <textarea
        id={id}
        className={form.textarea}
        spellCheck={false}
        value={value}
        aria-invalid={invalid || undefined}
        aria-describedby={describedBy}
        onChange={(event) => onChange(event.target.value)}
        onPaste={(event) => {
          const text = event.clipboardData.getData('text');
          if (!text.trimStart().startsWith('<') && text.length < longText) return;
          event.preventDefault();
          take('What was pasted', text);
        }}
      />
      <FileButton accept=".svg,image/svg+xml" part="drawing-file" onFile={(file) => void load(file)}>
        Load an SVG file
      </FileButton>
      <p className={form.help} role="status">
        {said}
      </p>
      {waiting && (
        <div>
          <label className={form.label} htmlFor={widthId}>
            Width of the finished outline
          </label>
          <input
            id={widthId}
            type="text"
            autoComplete="off"
            className={form.input}
            value={width}
            placeholder={units.system === 'metric' ? '320 mm' : '12 1/2 in'}
            onChange={(event) => setWidth(event.target.value)}
          />
          <button type="button" className={frame.button} onClick={size}>
            Read it at this width
          </button>
        </div>
      )}
    </>
  );
}
