import { type RefObject, useEffect, useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import frame from '../../calculators/view/frame.module.css';
import { useLinks } from '../../calculators/view/links.tsx';
import type { Draft, DraftShelf } from '../kept/drafts.ts';
import styles from './bench.module.css';
import type { EditorHandle } from './editor.ts';
import { linkOf } from './link.ts';
import { fileName, tidyName } from './names.ts';

interface DraftToolsProps {
  draft: Draft;
  drafts: DraftShelf;
  /** Whether it may be changed here. */
  mine: boolean;
  undoable: { undo: boolean; redo: boolean };
  editor: RefObject<EditorHandle | null>;
}

/** The name of a draft, and what can be done with all of it. */
export function DraftTools({ draft, drafts, mine, undoable, editor }: DraftToolsProps) {
  const { href, Link } = useLinks();
  const [name, setName] = useState(draft.name);
  const [link, setLink] = useState('');
  const [said, setSaid] = useState('');
  const { id, text } = draft;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a link of another text is none of this one.
  useEffect(() => {
    setLink('');
    setSaid('');
  }, [id, text]);

  const makeLink = async () => {
    const made = await linkOf(`${window.location.origin}${href('/bench')}`, text);
    setLink(made.ok ? made.link : '');
    if (!made.ok) return setSaid(made.message);
    try {
      await navigator.clipboard.writeText(made.link);
      setSaid('The link holds the whole text and is copied. Whoever opens it gets a draft of their own.');
    } catch {
      setSaid('The link holds the whole text: mark it and copy it. Whoever opens it gets a draft of their own.');
    }
  };

  return (
    <div data-part="draft-tools">
      <label className={styles.field}>
        Name of the draft
        <input
          type="text"
          value={name}
          maxLength={80}
          readOnly={!mine}
          onChange={(event) => {
            setName(event.target.value);
            const tidy = tidyName(event.target.value);
            if (tidy !== '') drafts.change(id, { name: tidy });
          }}
          onBlur={() => setName(drafts.get(id)?.name ?? name)}
        />
      </label>
      <span className={styles.buttons}>
        <button
          type="button"
          className={frame.button}
          disabled={!mine || !undoable.undo}
          onClick={() => editor.current?.undo()}
        >
          Undo
        </button>
        <button
          type="button"
          className={frame.button}
          disabled={!mine || !undoable.redo}
          onClick={() => editor.current?.redo()}
        >
          Redo
        </button>
        <button
          type="button"
          className={frame.button}
          onClick={() => download(fileName(draft.name), 'application/yaml', text)}
        >
          Export the file
        </button>
        <button type="button" className={frame.button} onClick={() => void makeLink()}>
          Make a link
        </button>
        <span className={styles.link}>
          <Link to={`/sheets?draft=${id}`}>Print its sheets</Link>
        </span>
        <span className={styles.link}>
          <Link to={`/batches?draft=${id}`}>Open as a batch</Link>
        </span>
      </span>
      <p role="status" className={styles.status}>
        {said}
      </p>
      {link !== '' && (
        <label className={styles.field}>
          The link
          <input type="text" readOnly value={link} onFocus={(event) => event.target.select()} />
        </label>
      )}
    </div>
  );
}
