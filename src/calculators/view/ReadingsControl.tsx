import { useState } from 'react';
import { parseReadings, writeReadings } from '../../model/moisture/index.ts';
import { largestLog } from '../kit/limits.ts';
import type { ControlProps } from './Field.tsx';
import { FileButton } from './FileButton.tsx';
import form from './form.module.css';

/** Largest logger file that is read, in bytes: ten years of ten-minute readings. */

/** A text area for own readings, and a button that reads a logger's CSV file into it as monthly means. */
export function ReadingsControl({ id, value, invalid, describedBy, onChange }: ControlProps) {
  const [said, setSaid] = useState('');

  const load = async (file: File) => {
    if (file.size > largestLog) {
      setSaid(`${file.name} is larger than 10 MB, the most that is read here. Export a shorter span from the logger.`);
      return;
    }
    const outcome = parseReadings(await file.text());
    if (!outcome.ok) {
      setSaid(`${file.name}: ${outcome.errors.map((error) => error.message).join(' ')} What was typed is unchanged.`);
      return;
    }
    onChange(writeReadings(outcome.value.readings));
    setSaid(`${file.name}: ${outcome.value.note}`);
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
          // A pasted log is often thousands of lines: keep its means, which the address can hold.
          const text = event.clipboardData.getData('text');
          if (text.split('\n').length < 40) return;
          const outcome = parseReadings(text);
          if (!outcome.ok) return;
          event.preventDefault();
          onChange(writeReadings(outcome.value.readings));
          setSaid(outcome.value.note);
        }}
      />
      <FileButton accept=".csv,.txt,.tsv,text/csv,text/plain" part="readings-file" onFile={(file) => void load(file)}>
        Load a logger’s file
      </FileButton>
      <p className={form.help} role="status">
        {said}
      </p>
    </>
  );
}
