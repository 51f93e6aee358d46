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
  add: (path: Path, name: string | undefined, value: unknown) => void;
  remove: (path: Path) => void;
  move: (path: Path, to: number) => void;
  rename: (path: Path, name: string) => void;
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
  onEdit: (splices: readonly Splice[]) => void;
  children: ReactNode;
}

const refusal =
  'That could not be written, since the text as it stands cannot be read. Mend it in the text, and change it here again.';

/** Gives the parts of a form the record of a text; what they change goes out as splices of it. */
export function RecordProvider({ text, problems, context, readOnly = false, onEdit, children }: RecordProviderProps) {
  const [refused, setRefused] = useState('');
  const write = useCallback(
    (splices: readonly Splice[] | undefined) => {
      setRefused(splices ? '' : refusal);
      if (splices && splices.length > 0) onEdit(splices);
    },
    [onEdit],
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
        write(value === undefined ? removeEntry(text, leftOut(text, path)) : setValue(text, path, value)),
      add: (path, name, value) => write(addEntry(text, path, name, value)),
      remove: (path) => write(removeEntry(text, path)),
      move: (path, to) => write(moveEntry(text, path, to)),
      rename: (path, name) => write(renameEntry(text, path, name)),
    }),
    [text, problems, context, readOnly, refused, write],
  );
  return <Around.Provider value={record}>{children}</Around.Provider>;
}

/** Groups that say nothing once they are empty. */
const sayNothing = ['hands', 'limits', 'piece'];

/** What is taken out where a field is left out: its group too, where nothing else stands in it. */
function leftOut(text: string, path: Path): Path {
  const above = path.slice(0, -1);
  const group = valueAt(looseData(text), above);
  const alone = isGroup(group) && Object.keys(group).length === 1;
  return alone && sayNothing.includes(String(above.at(-1))) ? above : path;
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
