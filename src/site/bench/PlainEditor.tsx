import { type Ref, useImperativeHandle, useRef } from 'react';
import type { Splice } from '../../method/edit/index.ts';
import styles from './bench.module.css';
import type { EditorHandle } from './editor.ts';

interface PlainEditorProps {
  text: string;
  readOnly: boolean;
  label: string;
  onChange: (text: string) => void;
  handle: Ref<EditorHandle>;
}

/** A text with its edits made. */
function spliced(text: string, splices: readonly Splice[]): string {
  return [...splices]
    .sort((one, other) => other.from - one.from)
    .reduce((before, { from, to, insert }) => before.slice(0, from) + insert + before.slice(to), text);
}

/** The text in a plain field, where the editor could not be fetched: everything but colours and offers works. */
export function PlainEditor({ text, readOnly, label, onChange, handle }: PlainEditorProps) {
  const field = useRef<HTMLTextAreaElement>(null);
  useImperativeHandle(
    handle,
    () => ({
      text: () => field.current?.value ?? '',
      apply: (splices) => onChange(spliced(field.current?.value ?? '', splices)),
      show: () => undefined,
      goTo({ from, to }) {
        field.current?.focus();
        field.current?.setSelectionRange(from, Math.max(from, to));
      },
      undo: () => undefined,
      redo: () => undefined,
      destroy: () => undefined,
    }),
    [onChange],
  );
  return (
    <textarea
      ref={field}
      className={styles.plain}
      aria-label={label}
      value={text}
      readOnly={readOnly}
      spellCheck={false}
      autoCapitalize="off"
      onChange={(event) => onChange(event.target.value)}
    />
  );
}
