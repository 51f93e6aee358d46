import type * as z from 'zod/mini';
import { likeliest } from '../quantity/nearest.ts';
import { fieldNames, partOf } from './shape.ts';
import type { Part } from './yaml-places.ts';

type Issue = z.core.$ZodIssue;

/** What a schema refuses, with the path of it, and which end of `name: value` is meant. */
export interface SchemaFault {
  path: PropertyKey[];
  part: Part;
  message: string;
}

/** The value at a path of a data structure, or undefined where the path leads nowhere. */
function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(partOf, data);
}

/** A value as read, short enough for a message. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text =
    typeof value === 'string' ? `“${value}”` : typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/** What a value is, in a maker's words. */
function kindOf(value: unknown): string {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  return (
    { string: 'a text', number: 'a number', boolean: 'true or false', object: 'a group of fields' }[
      typeof value as string
    ] ?? 'something else'
  );
}

/** What a schema expects, in the same words. */
const expectedWords: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'a group of fields',
  record: 'a group of fields',
  null: 'nothing',
};

const needed = (expected: string): string => expectedWords[expected] ?? 'another kind of value';

/** How to write what is needed, given what stands there. */
function wayOut(expected: string, value: unknown): string {
  const text = typeof value === 'string' ? value.trim() : undefined;
  switch (expected) {
    case 'string':
      if (typeof value === 'object' && value !== null)
        return 'Write it in one line, in double quotes where it holds : # [ ] { or }.';
      return value === null || value === undefined ? 'Write it behind the colon.' : `Put it in quotes: "${value}".`;
    case 'number':
    case 'int':
      if (text && /^-?\d+(\.\d+)?$/.test(text)) return `Write it without quotes: ${text}.`;
      if (text && /^-?\d+,\d+$/.test(text)) return `Write ${text.replace(',', '.')}, with a decimal point.`;
      return expected === 'int' ? 'Write digits alone.' : 'Write digits with a decimal point, without a unit.';
    case 'boolean':
      return 'Write true or false, without quotes.';
    case 'array':
    case 'tuple':
      if (text && /^-\S/.test(text)) return 'Put a space behind each dash.';
      return 'Write [one, two], or lines below that begin with “- ”.';
    case 'object':
    case 'record':
      return 'Write its fields in lines below, each “name: value”, indented by two spaces.';
    default:
      return 'Compare it with another record.';
  }
}

/** The known name that a misspelt one may mean; of names of one or two letters each is as near as the next. */
function meant(name: string, known: readonly string[]): string | undefined {
  return name.length > 2 ? likeliest(name, known) : undefined;
}

/** Allowed words, one behind the other: the first dozen, or all of up to forty short ones where nothing better can be told. */
function listed(words: readonly string[], whole = true): string {
  const all = whole && words.length <= 40 && words.every((word) => word.length <= 24);
  return words.length > 12 && !all
    ? `${words.slice(0, 12).join(', ')} and ${words.length - 12} more`
    : words.join(', ');
}

/** What is said of a value that is none of those allowed. */
function notOneOf(value: unknown, allowed: readonly unknown[]): string {
  const words = allowed.map(String);
  if (value === undefined || value === null) {
    const missing = value === null ? 'the field is empty.' : 'the field is missing.';
    return words.length === 1 ? `${missing} Write ${words[0]}.` : `${missing} Write one of ${listed(words)}.`;
  }
  const quoted =
    typeof value === 'string' && allowed.find((each) => typeof each !== 'string' && String(each) === value);
  if (quoted !== false && quoted !== undefined)
    return `${shown(value)} is a text here. Write it without quotes: ${quoted}.`;
  const near = typeof value === 'string' ? meant(value, words) : undefined;
  if (words.length === 1) return `${shown(value)} cannot stand here, only ${words[0]}. Write ${words[0]}.`;
  return `${shown(value)} is not one of ${listed(words, near === undefined)}. ${near ? `Did you mean “${near}”?` : 'Pick one of them.'}`;
}

function wrongKind(value: unknown, expected: readonly string[]): string {
  const kinds = [...new Set(expected.map(needed))];
  const takes = kinds.join(' or ');
  const countless = typeof value === 'number' && !Number.isFinite(value);
  const way = wayOut(countless ? 'number' : (expected[0] ?? ''), value);
  if (value === undefined) return `the field is missing. Add it: it takes ${takes}.`;
  if (value === null && kinds.length > 3) return 'the field is empty. Write its value behind the colon.';
  if (value === null) return `the field is empty, and it takes ${takes}. ${way}`;
  if (countless) return `this is no number that can be counted with. ${way}`;
  if (typeof value === 'number' && takes === 'a whole number') return `${value} is not a whole number. ${way}`;
  return `${shown(value)} is ${kindOf(value)}, and ${takes} is needed here. ${way}`;
}

function outOfRange(issue: Issue & { code: 'too_small' | 'too_big' }, value: unknown): string {
  const few = issue.code === 'too_small';
  const limit = String(few ? issue.minimum : issue.maximum);
  if (Array.isArray(value))
    return few
      ? `the list holds ${value.length}; it takes at least ${limit}. Add to it.`
      : `the list holds ${value.length}; it takes at most ${limit}. Take some out.`;
  if (typeof value === 'string')
    return few
      ? value === ''
        ? 'the text is empty. Write it between the quotes, or remove the field if it may be left out.'
        : `${shown(value)} is ${value.length} characters long; it takes at least ${limit}. Write more.`
      : `the text is ${value.length} characters long; it takes at most ${limit}. Shorten it.`;
  if (issue.inclusive === false)
    return few
      ? `${shown(value)} is not more than ${limit}. Give more.`
      : `${shown(value)} is not less than ${limit}. Give less.`;
  return few
    ? `${shown(value)} is less than the least allowed, ${limit}. Give more.`
    : `${shown(value)} is more than the most allowed, ${limit}. Give less.`;
}

/** How the group at a path is called. */
function groupWords(path: readonly PropertyKey[]): string {
  const name = path.at(-1);
  if (name === undefined) return 'of this record';
  return typeof name === 'number' ? 'of this part of the list' : `of “${String(name)}”`;
}

/** What a schema refused of a value, in words: what was read, what is allowed, and a way out. */
function issueWords(issue: Issue, value: unknown): string {
  // A schema may carry words of its own; without any, zod/mini says only this.
  if (issue.message !== 'Invalid input')
    return issue.code === 'custom' ? issue.message : `${shown(value)} cannot be used. ${issue.message}`;
  switch (issue.code) {
    case 'invalid_value':
      return notOneOf(value, issue.values);
    case 'invalid_type':
      return wrongKind(value, [issue.expected]);
    case 'too_small':
    case 'too_big':
      return outOfRange(issue, value);
    case 'not_multiple_of':
      return `${shown(value)} is not a whole multiple of ${issue.divisor}. Round it to one.`;
    case 'invalid_format':
      return `${shown(value)} does not have the form ${issue.pattern ?? issue.format}. Rewrite it in that form.`;
    default:
      return `${shown(value)} cannot be used here. Compare it with another record.`;
  }
}

/** The kinds of value that the issues of one branch of a union ask for at its head; none where a value of the right kind stands there. */
function wrongKindsOf(branch: readonly Issue[]): string[] {
  return branch.flatMap((each) => {
    if (each.path.length > 0) return [];
    if (each.code === 'invalid_type') return [each.expected];
    if (each.code !== 'invalid_union' || !each.errors.every((inner) => wrongKindsOf(inner).length > 0)) return [];
    return each.errors.flatMap(wrongKindsOf);
  });
}

/** What no kind of value allowed at a place fits: told of the kind that comes nearest to what is written. */
function unionFaults(
  issue: Issue & { code: 'invalid_union' },
  path: readonly PropertyKey[],
  data: unknown,
  schema: z.core.$ZodType,
): SchemaFault[] {
  const value = valueAt(data, path);
  const { discriminator, options } = issue as { discriminator?: string; options?: readonly unknown[] };
  if (discriminator !== undefined) return [{ path: [...path], part: 'value', message: notOneOf(value, options ?? []) }];
  const fitting = issue.errors.filter((branch) => wrongKindsOf(branch).length === 0);
  const [best] = fitting.sort((one, other) => one.length - other.length);
  if (best) return schemaFaults(best, data, schema, path);
  const own = issue.message === 'Invalid input' ? undefined : issue.message;
  const message =
    own === undefined
      ? wrongKind(value, issue.errors.flatMap(wrongKindsOf))
      : `${value === undefined ? 'the field is missing' : value === null ? 'the field is empty' : `${shown(value)} cannot be used`}. ${own}`;
  return [{ path: [...path], part: 'value', message }];
}

/**
 * Everything that a schema refused, in words and with its place.
 *
 * @param issues from zod
 * @param data the whole record that was checked
 * @param schema of the whole record
 * @param above the path that the issues' own paths start from
 */
export function schemaFaults(
  issues: readonly Issue[],
  data: unknown,
  schema: z.core.$ZodType,
  above: readonly PropertyKey[] = [],
): SchemaFault[] {
  const placeOf = (issue: Issue) => issue.path.map(String).join('/');
  const wrongKinds = new Set(issues.filter(({ code }) => code === 'invalid_type').map(placeOf));
  return issues.flatMap((issue): SchemaFault[] => {
    const path = [...above, ...issue.path];
    // The length of a text says nothing where a list is needed.
    if ((issue.code === 'too_small' || issue.code === 'too_big') && wrongKinds.has(placeOf(issue))) return [];
    switch (issue.code) {
      case 'unrecognized_keys': {
        const names = fieldNames(schema, path, data);
        const group = valueAt(data, path);
        const free = names.filter((name) => partOf(group, name) === undefined);
        return issue.keys.map((key) => {
          const near = meant(key, free);
          const way = /:\S/.test(key)
            ? 'Write a space behind its colon.'
            : near
              ? `Did you mean “${near}”?`
              : `Remove it, or correct its spelling${free.length > 0 ? `; the fields not yet written are ${listed(free)}` : ''}.`;
          const message = `${shown(key)} is not a field ${groupWords(path)}. ${way}`;
          return { path: [...path, key], part: 'key', message };
        });
      }
      case 'invalid_key':
        return [{ path, part: 'key', message: issue.issues.map((inner) => issueWords(inner, path.at(-1))).join(' ') }];
      case 'invalid_union':
        return unionFaults(issue, path, data, schema);
      default:
        return [{ path, part: 'value', message: issueWords(issue, valueAt(data, path)) }];
    }
  });
}
