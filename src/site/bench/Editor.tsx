import { type Ref, useEffect, useImperativeHandle, useRef } from 'react';
import { writtenHistory } from '../kept/drafts.ts';
import { createEditor, type EditorHandle } from './editor.ts';

type Made = Parameters<typeof createEditor>[0];

interface EditorProps extends Pick<Made, 'readOnly' | 'label' | 'onChange' | 'onUndoable' | 'complete' | 'hover'> {
  /** What it begins with; a change of these afterwards is for whoever gives it another key. */
  text: string;
  history?: unknown;
  handle: Ref<EditorHandle>;
}

/** The editor in a shadow root. */
export default function Editor({ handle, ...options }: EditorProps) {
  const host = useRef<HTMLDivElement>(null);
  const made = useRef<EditorHandle>(null);
  const latest = useRef(options);
  latest.current = options;
  const { readOnly } = options;

  // Nothing may be asked of it before it stands.
  useImperativeHandle(
    handle,
    () => ({
      text: () => made.current?.text() ?? latest.current.text,
      apply: (splices) => made.current?.apply(splices),
      show: (problems, text) => made.current?.show(problems, text),
      goTo: (problem) => made.current?.goTo(problem),
      undo: () => made.current?.undo(),
      redo: () => made.current?.redo(),
      destroy: () => made.current?.destroy(),
    }),
    [],
  );

  useEffect(() => {
    const element = host.current;
    if (!element) return;
    const root = element.shadowRoot ?? element.attachShadow({ mode: 'open' });
    const parent = document.createElement('div');
    root.replaceChildren(parent);
    const { text, history, label } = latest.current;
    made.current = createEditor({
      parent,
      root,
      text,
      history: writtenHistory(history),
      readOnly,
      label,
      onChange: (...changed) => latest.current.onChange(...changed),
      onUndoable: (can) => latest.current.onUndoable(can),
      complete: (...asked) => latest.current.complete(...asked),
      hover: (...asked) => latest.current.hover(...asked),
    });
    return () => made.current?.destroy();
  }, [readOnly]);

  return <div ref={host} data-part="editor" />;
}
