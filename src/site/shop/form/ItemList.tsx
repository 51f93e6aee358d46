import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { applySplices, removeEntry } from '../../../method/edit/index.ts';
import { nameFrom, useKeys } from '../../bench/form/EntryList.tsx';
import { LineField } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { Problems } from '../../bench/form/Problems.tsx';
import { isGroup, type Path, useProblemsAt, useRecord, valueAt } from '../../bench/form/use-record.tsx';
import styles from './shop-form.module.css';

/** Lists of a shop record whose entries bear ids: one id names one thing of the shop. */
const listsWithIds = ['machines', 'moulds', 'clamps', 'scales', 'bits', 'resins', 'people', 'materials', 'fees'];

/** Every id that the record gives. */
export function idsIn(data: Readonly<Record<string, unknown>>): string[] {
  return listsWithIds.flatMap((list) => {
    const entries = data[list];
    return Array.isArray(entries) ? entries.flatMap((entry) => (isGroup(entry) ? [String(entry['id'])] : [])) : [];
  });
}

type Entry = Readonly<Record<string, unknown>>;

interface ItemProps {
  path: Path;
  number: number;
  count: number;
  words: string;
  kind: string;
  /** It was added just now. */
  fresh: boolean;
  shows: readonly string[];
  remove: () => void;
  children: () => ReactNode;
}

function Item({ path, number, count, words, kind, fresh, shows, remove, children }: ItemProps) {
  const { move } = useRecord();
  const [open, setOpen] = useState(fresh);
  const summary = useRef<HTMLElement>(null);
  const every = useProblemsAt(path);
  const own = useProblemsAt(path, [...shows, 'id']);
  useEffect(() => {
    if (fresh) summary.current?.focus();
  }, [fresh]);
  const button = (label: string, press: () => void, off = false) => (
    <button type="button" className={forms.small} disabled={off} onClick={press}>
      {label}
      <span className="visually-hidden">: {words}</span>
    </button>
  );
  return (
    <li className={forms.entry} data-entry={path.join('/')}>
      <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary ref={summary} className={styles.item}>
          <span>{words}</span>
          {every.length > 0 && (
            <span className={forms.count}>{every.length === 1 ? '1 to mend' : `${every.length} to mend`}</span>
          )}
        </summary>
        {open && (
          <div className={forms.inside}>
            <Problems problems={own} />
            {children()}
            <LineField
              path={[...path, 'id']}
              label="Short name"
              help="By which methods call it: small letters, digits and hyphens. A method that names it must be changed along."
            />
            <div className={forms.buttons}>
              {button('Move up', () => move(path, number - 1), number === 0)}
              {button('Move down', () => move(path, number + 1), number === count - 1)}
              {button(`Remove this ${kind}`, remove)}
            </div>
          </div>
        )}
      </details>
    </li>
  );
}

/** What was taken out, and how to have it back. */
interface Removed {
  words: string;
  /** The text before and after: while nothing else has changed it is put back as it was, comments and all. */
  before: string;
  after: string;
  /** Else the entry by itself goes back to its number. */
  value: unknown;
  at: number;
}

interface ItemListProps {
  /** The list. */
  list: string;
  /** What one of them is: `machine`. */
  kind: string;
  /** A heading, where several lists share a part of the form. */
  title?: string;
  about?: string;
  /** How an entry is known, beside its name. */
  words?: (entry: Entry) => string;
  /** Fields that show their own problems. */
  shows: readonly string[];
  /** A new entry that is called so, without its id. */
  fresh: (name: string) => Record<string, unknown>;
  /** What asks for a new entry, in place of a field for its name. */
  asking?: (add: (name: string, value: Record<string, unknown>) => void) => ReactNode;
  children: (path: Path, entry: Entry) => ReactNode;
}

/** A short name as words: `drum-sander` as Drum sander. */
export const inWords = (name: string) => name.replaceAll('-', ' ').replace(/^./, (letter) => letter.toUpperCase());

/** What an entry is called: by its name, a resin by that of its data sheet, else by its id. */
function nameOf(entry: Entry): string {
  const { name, sheet, id } = entry;
  const called = isGroup(sheet) ? sheet['name'] : name;
  return typeof called === 'string' && called !== '' ? called : inWords(String(id ?? 'Without a name'));
}

/** Entries of a list of the record: each opens to its fields, can be moved, taken out and had back; others are added below. */
export function ItemList({ list, kind, title, about, words, shows, fresh, asking, children }: ItemListProps) {
  const { data, add, edit, now, remove } = useRecord();
  const id = useId();
  const keys = useKeys();
  const [added, setAdded] = useState<string>();
  const [name, setName] = useState('');
  const [removed, setRemoved] = useState<Removed>();
  const field = useRef<HTMLInputElement>(null);
  const held = valueAt(data, [list]);
  const entries: readonly unknown[] = Array.isArray(held) ? held : [];
  const ids = entries.map((entry) => (isGroup(entry) ? String(entry['id']) : ''));
  // An id that is changed in place is the same entry: what is open and where the caret stands stay as they are.
  const before = useRef(ids);
  if (before.current.length === ids.length) {
    const changed = ids.flatMap((each, at) => (each === before.current[at] ? [] : [at]));
    const [at] = changed;
    if (changed.length === 1 && at !== undefined) keys.renamed(before.current[at] as string, ids[at] as string);
  }
  before.current = ids;
  const wordsOf = (entry: unknown) => {
    if (!isGroup(entry)) return 'An entry that cannot be read';
    const more = words?.(entry);
    return more ? `${nameOf(entry)}: ${more}` : nameOf(entry);
  };
  const put = (words: string, value: Record<string, unknown>) => {
    const own = nameFrom(words, idsIn(data));
    add([list], undefined, { id: own, ...value });
    setAdded(own);
    setName('');
    setRemoved(undefined);
  };
  const press = () => {
    if (name.trim() === '') field.current?.focus();
    else put(name.trim(), fresh(name.trim()));
  };
  const takeOut = (at: number) => {
    const text = now();
    const splices = removeEntry(text, [list, at]);
    if (splices) {
      const after = applySplices(text, splices);
      setRemoved({ words: wordsOf(entries[at]), before: text, after, value: entries[at], at });
    }
    remove([list, at]);
  };
  const putBack = ({ before: whole, after, value, at }: Removed) => {
    if (now() === after) edit([{ from: 0, to: after.length, insert: whole }]);
    else add([list], undefined, value, at);
    setRemoved(undefined);
  };
  const seen = new Map<string, number>();
  return (
    <section aria-labelledby={title ? `${id}-title` : undefined} data-part={list}>
      {title && <h4 id={`${id}-title`}>{title}</h4>}
      {about && <p className={forms.help}>{about}</p>}
      {entries.length > 0 && (
        <ol className={forms.entries}>
          {entries.map((entry, at) => {
            const own = ids[at] ?? '';
            const times = (seen.get(own) ?? 0) + 1;
            seen.set(own, times);
            return (
              <Item
                key={`${keys.keyOf(own)} ${times}`}
                path={[list, at]}
                number={at}
                count={entries.length}
                words={wordsOf(entry)}
                kind={kind}
                fresh={own === added}
                shows={shows}
                remove={() => takeOut(at)}
              >
                {() => (isGroup(entry) ? children([list, at], entry) : null)}
              </Item>
            );
          })}
        </ol>
      )}
      <p role="status" className={styles.removed}>
        {removed && (
          <>
            “{removed.words}” is taken out.{' '}
            <button type="button" className={forms.small} onClick={() => putBack(removed)}>
              Put it back
            </button>
          </>
        )}
      </p>
      {asking ? (
        asking(put)
      ) : (
        <div className={forms.adding}>
          <label className={forms.label} htmlFor={`${id}-add`}>
            Another {kind}, by its name
          </label>
          <div className={forms.value}>
            <input
              id={`${id}-add`}
              ref={field}
              className={forms.input}
              autoComplete="off"
              value={name}
              onChange={({ target }) => setName(target.value)}
              onKeyDown={({ key }) => key === 'Enter' && press()}
            />
            <button type="button" className={forms.small} onClick={press}>
              Add<span className="visually-hidden"> this {kind}</span>
            </button>
          </div>
        </div>
      )}
    </section>
  );
}
