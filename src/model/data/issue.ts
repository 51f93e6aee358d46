import type * as z from 'zod/mini';

/** The value at a path of a data structure, or undefined where the path leads nowhere. */
function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], data);
}

/** A value as read, short enough for a message. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = typeof value === 'string' ? `“${value}”` : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}

/**
 * What a schema refused, in words: what was read, what is allowed, and a way out.
 *
 * @param issue from zod
 * @param data the whole record that was checked
 */
export function issueWords(issue: z.core.$ZodIssue, data: unknown): string {
  const value = valueAt(data, issue.path);
  // A schema may carry words of its own; without any, zod/mini says only this.
  if (issue.message !== 'Invalid input' && issue.code !== 'custom')
    return `${shown(value)} cannot be used. ${issue.message}`;
  switch (issue.code) {
    case 'unrecognized_keys':
      return `${shown(issue.keys[0])} is not a field of this record. Remove it, or correct its spelling.`;
    case 'invalid_value':
      return `${shown(value)} is not one of ${issue.values.map(String).join(', ')}. Pick one of them.`;
    case 'invalid_type':
      return value === undefined
        ? `the field is missing. Add it with a value of the kind ${issue.expected}.`
        : `${shown(value)} is not of the kind ${issue.expected}. Give one, in quotes where it must stay a text.`;
    case 'too_small':
      return `${shown(value)} is less than the least allowed, ${issue.minimum}. Give more.`;
    case 'too_big':
      return `${shown(value)} is more than the most allowed, ${issue.maximum}. Give less.`;
    case 'invalid_format':
      return `${shown(value)} does not have the form ${issue.pattern ?? issue.format}. Rewrite it in that form.`;
    case 'custom':
      return issue.message;
    default:
      return `${shown(value)} is not allowed here (${issue.code}). Compare the record with its schema.`;
  }
}
