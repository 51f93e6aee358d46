import { createContext, type ReactNode, useCallback, useContext, useId, useMemo, useState } from 'react';
import type { EditContext, EditProblem, Splice } from '../../../method/edit/index.ts';
import { addEntry, looseData, moveEntry, removeEntry, renameEntry, setValue } from '../../../method/edit/index.ts';

/** Path of a part of the record. */
export type Path = readonly (string | number)[];

/** A record that a form shows and changes: its text, what stands in it, and what is wrong with it. */
export interface RecordForm {
  text: string;
  data: Readonly<Record<string, unknown>>;
  problems: readonly EditProblem[];
  context: EditContext;
  /** Nothing can be changed here. */
  readOnly: boolean;
  /** What could not be written, until the next change. */
  refused: string;
  set: (path: Path, value: unknown) => void;
  /** Add to a group by a name, to a list without one; at its end unless told. */
  add: (path: Path, name: string | undefined, value: unknown, at?: number) => void;
  remove: (path: Path) => void;
  move: (path: Path, to: number) => void;
  rename: (path: Path, name: string) => void;
  /** The text as it is at this moment: another window may have changed what was shown. */
  now: () => string;
  /** Splices of the text as it is now. */
  edit: (splices: readonly Splice[]) => void;
}

const Around = createContext<RecordForm | undefined>(undefined);

/** The record of the form that a part stands in. */
export function useRecord(): RecordForm {
  const record = useContext(Around);
  if (!record) throw new Error('A part of a form stands in a RecordProvider.');
  return record;
}

interface RecordProviderProps {
  text: string;
  problems: readonly EditProblem[];
  context: EditContext;
  readOnly?: boolean;
  /** The text as it is at this moment, where somebody else may change it too; splices then count in it. */
  current?: () => string;
  onEdit: (splices: readonly Splice[]) => void;
  children: ReactNode;
}

const refusal =
  'That could not be written, since the text as it stands cannot be read. Mend it in the text, and change it here again.';

/** What is said where the entry of a field is gone; what was typed stands in it, so that it is not lost. */
const goneWords = (value: unknown) =>
  `What this belongs to was taken out meanwhile, perhaps in another window.${
    typeof value === 'string' || typeof value === 'number' ? ` You had written “${value}”: it is in no entry now.` : ''
  }`;

/** By what an entry of a list is known again: its id, or all of it. */
const identity = (entry: unknown): string =>
  isGroup(entry) && typeof entry['id'] === 'string' ? `id ${entry['id']}` : JSON.stringify(entry ?? null);

/** The path of the same part in data that changed meanwhile: entries of lists are known by their ids. Undefined where it is gone. */
export function samePlace(path: Path, seen: unknown, now: unknown): Path | undefined {
  let [was, is] = [seen, now];
  const found: (string | number)[] = [];
  for (const step of path) {
    let next = step;
    if (typeof step === 'number' && Array.isArray(was) && Array.isArray(is) && step < was.length) {
      const wanted = identity(was[step]);
      if (identity(is[step]) !== wanted) next = is.findIndex((entry) => identity(entry) === wanted);
      if (next === -1) return undefined;
    }
    found.push(next);
    was = valueAt(was, [step]);
    is = valueAt(is, [next]);
  }
  return found;
}

/** Gives the parts of a form the record of a text; what they change goes out as splices of it. */
export function RecordProvider(props: RecordProviderProps) {
  const { text, problems, context, readOnly = false, current, onEdit, children } = props;
  const [refused, setRefused] = useState('');
  const write = useCallback(
    (path: Path, splicesOf: (now: string, there: Path) => readonly Splice[] | undefined, value?: unknown) => {
      const now = current?.() ?? text;
      const there = now === text ? path : samePlace(path, looseData(text), looseData(now));
      const splices = there && splicesOf(now, there);
      setRefused(splices ? '' : there ? refusal : goneWords(value));
      if (splices && splices.length > 0) onEdit(splices);
    },
    [text, current, onEdit],
  );
  const record = useMemo<RecordForm>(
    () => ({
      text,
      data: looseData(text),
      problems,
      context,
      readOnly,
      refused,
      set: (path, value) =>
        write(
          path,
          (now, there) => (value === undefined ? removeEntry(now, leftOut(now, there)) : setValue(now, there, value)),
          value,
        ),
      add: (path, name, value, at) => write(path, (now, there) => addEntry(now, there, name, value, at)),
      remove: (path) => write(path, removeEntry),
      move: (path, to) => write(path, (now, there) => moveEntry(now, there, to)),
      rename: (path, name) => write(path, (now, there) => renameEntry(now, there, name)),
      now: () => current?.() ?? text,
      edit: onEdit,
    }),
    [text, problems, context, readOnly, refused, write, current, onEdit],
  );
  return <Around.Provider value={record}>{children}</Around.Provider>;
}

/** Groups that say nothing once they are empty. */
const sayNothing = ['hands', 'limits', 'piece', 'air', 'overhead', 'energy', 'week', 'calendar'];

/** What is taken out where a field is left out: its group too, where nothing else stands in it. */
function leftOut(text: string, path: Path): Path {
  const above = path.slice(0, -1);
  const group = valueAt(looseData(text), above);
  const alone = isGroup(group) && Object.keys(group).length === 1;
  return alone && sayNothing.includes(String(above.at(-1))) ? leftOut(text, above) : path;
}

/** What stands at a path. */
export const valueAt = (data: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Record<string | number, unknown>)[step]
        : undefined,
    data,
  );

export const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether a path begins with another. */
const beginsWith = (path: Path, head: Path) => head.every((step, at) => String(path[at]) === String(step));

/** Problems of a part of the record; of what lies in it too, but for the parts that show their own. */
export function useProblemsAt(path: Path, shownElsewhere: readonly string[] = []): readonly EditProblem[] {
  const { problems } = useRecord();
  return problems.filter((problem) => {
    if (problem.excepted !== undefined || !beginsWith(problem.path, path)) return false;
    const next = problem.path[path.length];
    return next === undefined || !shownElsewhere.includes(String(next));
  });
}

/** A field of the form: its ids, its value, its problems. */
export function useField(path: Path) {
  const record = useRecord();
  const id = useId();
  const problems = useProblemsAt(path);
  return {
    ...record,
    id,
    value: valueAt(record.data, path),
    problems,
    described: { 'aria-describedby': `${id}-help ${id}-problems`, 'aria-invalid': problems.length > 0 || undefined },
    /** For whoever moves to the field of a problem. */
    marked: { 'data-path': path.join('/') },
  };
}

/** A list or calculator could not be fetched, as without a network: what is written still stands in its field and can be changed in the text. */
export const notFetched = (): void => undefined;
