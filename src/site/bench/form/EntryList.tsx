import { type ReactNode, useId, useRef, useState } from 'react';
import { useTyped } from './fields.tsx';
import styles from './form.module.css';
import { Problems } from './Problems.tsx';
import { isGroup, type Path, useProblemsAt, useRecord, valueAt } from './use-record.tsx';

/** A name as the record has names, from words: `First coat` gives `first-coat`. */
export function nameFrom(words: string, taken: readonly string[]): string {
  const plain = words
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[-0-9]+|-+$/g, '')
    .slice(0, 50);
  const name = plain === '' ? 'entry' : plain;
  if (!taken.includes(name)) return name;
  for (let number = 2; ; number += 1) if (!taken.includes(`${name}-${number}`)) return `${name}-${number}`;
}

/** The name of an entry, which the rest of the record calls it by. */
function NameField({
  path,
  taken,
  renamed,
}: {
  path: Path;
  taken: readonly string[];
  renamed: (name: string) => void;
}) {
  const { rename, readOnly } = useRecord();
  const id = useId();
  const name = String(path.at(-1));
  const [wrong, setWrong] = useState('');
  const typed = useTyped(name, (fresh) => {
    const fault = !/^[a-z][a-zA-Z0-9]*(-[a-zA-Z0-9]+)*$/.test(fresh)
      ? `“${fresh}” cannot be a name. It begins with a small letter and has letters, digits and hyphens, such as second-coat.`
      : taken.includes(fresh)
        ? `“${fresh}” is taken. Write another name.`
        : '';
    setWrong(fault);
    if (fault !== '') return;
    renamed(fresh);
    rename(path, fresh);
  });
  return (
    <div className={styles.row}>
      <label className={styles.label} htmlFor={id}>
        Short name
      </label>
      <input
        id={id}
        className={styles.input}
        readOnly={readOnly}
        autoComplete="off"
        aria-describedby={`${id}-help`}
        aria-invalid={wrong !== '' || undefined}
        value={typed.value}
        onChange={typed.onChange}
        onBlur={typed.onBlur}
        onKeyDown={({ key }) => key === 'Enter' && typed.onBlur()}
      />
      <p id={`${id}-help`} className={styles.help}>
        {wrong || 'By which the other parts call it; they are changed along with it.'}
      </p>
    </div>
  );
}

interface EntryProps {
  path: Path;
  number: number;
  all: readonly string[];
  words: string;
  /** Fields that show their own problems. */
  shows: readonly string[];
  kind: string;
  renamed: (name: string) => void;
  children: () => ReactNode;
}

function Entry({ path, number, all, words, shows, kind, renamed, children }: EntryProps) {
  const { move, remove, readOnly } = useRecord();
  const [open, setOpen] = useState(false);
  const every = useProblemsAt(path);
  const own = useProblemsAt(path, shows);
  const name = String(path.at(-1));
  const button = (label: string, press: () => void, off = false) => (
    <button type="button" className={styles.small} disabled={off} onClick={press}>
      {label}
      <span className="visually-hidden">: {words}</span>
    </button>
  );
  return (
    <li className={styles.entry} data-entry={path.join('/')}>
      <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary className={styles.summary}>
          <span>
            {number + 1}. {words}
          </span>
          {every.length > 0 && (
            <span className={styles.count}>{every.length === 1 ? '1 problem' : `${every.length} problems`}</span>
          )}
        </summary>
        {open && (
          <div className={styles.inside}>
            <Problems problems={own} />
            {children()}
            <NameField path={path} taken={all.filter((each) => each !== name)} renamed={renamed} />
            {!readOnly && (
              <div className={styles.buttons}>
                {button('Move up', () => move(path, number - 1), number === 0)}
                {button('Move down', () => move(path, number + 1), number === all.length - 1)}
                {button(`Remove this ${kind}`, () => remove(path))}
              </div>
            )}
          </div>
        )}
      </details>
    </li>
  );
}

/** Keys of entries that stay theirs when they are renamed, so that what is open and where the caret stands stay as they are. */
export function useKeys() {
  const keys = useRef(new Map<string, string>());
  const count = useRef(0);
  const keyOf = (name: string) => keys.current.get(name) ?? name;
  const renamed = (old: string, name: string) => {
    const key = keyOf(old);
    count.current += 1;
    keys.current.set(old, `${old} ${count.current}`);
    keys.current.set(name, key);
  };
  return { keyOf, renamed };
}

interface EntryListProps {
  path: Path;
  title: string;
  /** What one of them is: `step`. */
  kind: string;
  about: string;
  /** Field by which an entry is known. */
  called: string;
  shows: readonly string[];
  /** A new entry that is called so. */
  fresh: (words: string) => Record<string, unknown>;
  children: (path: Path, name: string) => ReactNode;
}

/** Named entries of a record: each opens to its fields, can be moved and removed; others are added below. */
export function EntryList({ path, title, kind, about, called, shows, fresh, children }: EntryListProps) {
  const { data, add, readOnly } = useRecord();
  const id = useId();
  const keys = useKeys();
  const [words, setWords] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const group = valueAt(data, path);
  const entries = isGroup(group) ? Object.entries(group) : [];
  const names = entries.map(([name]) => name);
  const press = () => {
    const wanted = words.trim();
    if (wanted === '') {
      field.current?.focus();
      return;
    }
    add(path, nameFrom(wanted, names), fresh(wanted));
    setWords('');
  };
  return (
    <section aria-labelledby={`${id}-title`} data-part={path.join('/')}>
      <h3 id={`${id}-title`}>{title}</h3>
      <p className={styles.help}>{about}</p>
      <ol className={styles.entries}>
        {entries.map(([name, entry], number) => {
          const label = isGroup(entry) ? entry[called] : undefined;
          return (
            <Entry
              key={keys.keyOf(name)}
              renamed={(fresh) => keys.renamed(name, fresh)}
              path={[...path, name]}
              number={number}
              all={names}
              words={typeof label === 'string' && label !== '' ? label : name}
              shows={shows}
              kind={kind}
            >
              {() => children([...path, name], name)}
            </Entry>
          );
        })}
      </ol>
      {!readOnly && (
        <div className={styles.adding}>
          <label className={styles.label} htmlFor={`${id}-add`}>
            A new {kind}, in words
          </label>
          <div className={styles.value}>
            <input
              id={`${id}-add`}
              ref={field}
              className={styles.input}
              autoComplete="off"
              value={words}
              onChange={({ target }) => setWords(target.value)}
              onKeyDown={({ key }) => key === 'Enter' && press()}
            />
            <button type="button" className={styles.small} onClick={press}>
              Add this {kind}
            </button>
          </div>
        </div>
      )}
    </section>
  );
}
