/** What is wrong with a text and what to do instead; the words of a field error without its name. */
export interface FieldProblem {
  problem: string;
  wayOut: string;
}

/** What a reader of a text gives: the value, or why there is none. */
export type Read<T> = { ok: true; value: T } | ({ ok: false } & FieldProblem);

/** Words in a row, as a sentence has them: ‘one’, ‘one and two’, ‘one, two and three’. */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** A text cut to a length that an error message can bear. */
export function excerpt(text: string, length = 40): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > length ? `${line.slice(0, length - 1)}…` : line;
}
