import { isReference, type MethodRecord, type Step } from '../record/index.ts';
import { maskText } from '../text-marks.ts';
import type { Path } from './types.ts';

/** What a reference is there for: what it hands on must fit. */
export type Purpose =
  | {
      kind: 'input';
      calculation: string;
      input: string /** Inside a list or an object of the input. */;
      nested: boolean;
    }
  | { kind: 'time' }
  | { kind: 'length' }
  | { kind: 'limit'; tool: string; limit: string }
  | { kind: 'need'; material: string }
  | { kind: 'text' };

/** A pointer as it stands in a method: where, what for, and in which step. */
export interface Mention {
  pointer: string;
  path: Path;
  purpose: Purpose;
  step?: string;
  /** Its stretch of a text, by offsets in it. */
  within?: readonly [from: number, to: number];
}

/** What a text refers to: `{/calculations/heat/figures/peakRise}`. */
function mentionsIn(text: string, path: Path, step?: string): Mention[] {
  return maskText(text).pointers.map(
    ({ pointer, from, to }): Mention => ({
      pointer,
      path,
      purpose: { kind: 'text' },
      within: [from, to],
      ...(step === undefined ? {} : { step }),
    }),
  );
}

/** The texts of a step that a reader sees, by field. */
export function textsOf(
  step: Step,
): readonly (readonly [field: 'title' | 'does' | 'why' | 'tell' | 'wrong', text: string])[] {
  const fields = ['title', 'does', 'why', 'tell', 'wrong'] as const;
  return fields.flatMap((field) => {
    const text = step[field];
    return text === undefined ? [] : [[field, text] as const];
  });
}

/** Every reference inside a value, with its path from there. */
function inside(value: unknown, path: Path): { pointer: string; path: Path }[] {
  if (isReference(value)) return [{ pointer: value.from, path: [...path, 'from'] }];
  if (Array.isArray(value)) return value.flatMap((item, at) => inside(item, [...path, at]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, item]) => inside(item, [...path, key]));
}

function ofStep(id: string, step: Step): Mention[] {
  const base: Path = ['steps', id];
  const at = (value: unknown, path: Path, purpose: Purpose): Mention[] =>
    inside(value, [...base, ...path]).map((found) => ({ ...found, purpose, step: id }));
  return [
    ...Object.entries(step.calculations ?? {}).flatMap(([calculation, { with: inputs }]) =>
      Object.entries(inputs).flatMap(([input, value]) =>
        at(value, ['calculations', calculation, 'with', input], {
          kind: 'input',
          calculation,
          input,
          nested: !isReference(value),
        }),
      ),
    ),
    ...at(step.hands, ['hands'], { kind: 'time' }),
    ...at(step.after, ['after'], { kind: 'time' }),
    ...at(step.piece, ['piece'], { kind: 'length' }),
    ...textsOf(step).flatMap(([field, text]) => mentionsIn(text, [...base, field], id)),
  ];
}

const known = new WeakMap<MethodRecord, readonly Mention[]>();

/** Every reference of a method, in the order of the file. They are looked for once in each record. */
export function mentionsOf(record: MethodRecord): readonly Mention[] {
  const before = known.get(record);
  if (before) return before;
  const found = everyMention(record);
  known.set(record, found);
  return found;
}

function everyMention(record: MethodRecord): Mention[] {
  return [
    ...mentionsIn(record.about ?? '', ['about']),
    ...Object.entries(record.materials).flatMap(([name, { needs }]) =>
      needs.flatMap((need, at): Mention[] =>
        'from' in need
          ? [
              {
                pointer: need.from,
                path: ['materials', name, 'needs', at, 'from'],
                purpose: { kind: 'need', material: name },
              },
            ]
          : [],
      ),
    ),
    ...Object.entries(record.tools).flatMap(([name, { limits }]) =>
      Object.entries(limits ?? {}).flatMap(([limit, value]) =>
        inside(value, ['tools', name, 'limits', limit]).map(
          (found): Mention => ({ ...found, purpose: { kind: 'limit', tool: name, limit } }),
        ),
      ),
    ),
    ...Object.entries(record.steps).flatMap(([id, step]) => ofStep(id, step)),
  ];
}
