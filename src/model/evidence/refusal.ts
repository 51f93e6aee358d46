/** One thing wrong with one input: the field, what was read, what is allowed and a way out. */
export interface FieldError {
  /** Path of the field, for example `width` or `staves.2.cut`. */
  field: string;
  /** One or two sentences that name the value read and what is allowed, and end with a way out. */
  message: string;
}

/** An answer, or the reasons why there is none. Nothing in the model throws for what a reader may type. */
export type Outcome<T> = { ok: true; value: T } | { ok: false; errors: readonly FieldError[] };

/** An answer as an outcome: nothing stood in its way. */
export function answer<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/**
 * Refuse an input.
 *
 * @param field path of the input
 * @param problem what was read and why it cannot be used, without a full stop
 * @param wayOut what the reader can do, a sentence
 */
export function refuse(field: string, problem: string, wayOut: string): { ok: false; errors: FieldError[] } {
  return { ok: false, errors: [{ field, message: `${problem}. ${wayOut}` }] };
}
