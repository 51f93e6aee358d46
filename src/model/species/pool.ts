const printedNumber =
  '(?<=Given as )[\\d.]+(?= )|(?<=Given as [\\d.]+ to )[\\d.]+(?= )|(?<=Mean of )\\d+(?= (?:trees|published))';

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** A label as it stands inside a JSON text. */
function quoted(label: string): string {
  return JSON.stringify(label).slice(1, -1);
}

/** A text of the pool by number, and what fills its holes in order. */
export interface Pooled {
  at: number;
  /** Numbers of the wood's labels, for `@`. */
  labels: number[];
  /** Numbers that a source prints, for `#`. */
  numbers: number[];
}

/**
 * Texts that many woods share, each kept once. A pooled text is JSON with holes: `@` where a printed label of the wood
 * stands and `#` where a number that a source prints stands.
 */
export class Pool {
  readonly texts: string[] = [];
  readonly #numbers = new Map<string, number>();

  /**
   * Put a value in the pool.
   *
   * @param value anything that JSON can hold
   * @param labels the wood's own labels
   */
  fill(value: unknown, labels: readonly string[]): Pooled {
    const json = JSON.stringify(value);
    if (/[@#]/.test(json)) throw new Error(`A text to be pooled holds @ or #: ${json}`);
    const longestFirst = [...labels].sort((one, other) => other.length - one.length);
    const patterns = longestFirst.map((label) => `(?<=, |"locator":"|group )${escaped(quoted(label))}(?="|: )`);
    const filled: Pooled = { at: 0, labels: [], numbers: [] };
    const text = json.replace(new RegExp([...patterns, printedNumber].join('|'), 'g'), (found) => {
      const label = labels.findIndex((each) => quoted(each) === found);
      if (label === -1) filled.numbers.push(Number(found));
      else filled.labels.push(label);
      return label === -1 ? '#' : '@';
    });
    return { ...filled, at: this.add(text) };
  }

  /** Number of a text in the pool, which takes it in where it is new. */
  add(text: string): number {
    const known = this.#numbers.get(text);
    if (known !== undefined) return known;
    this.#numbers.set(text, this.texts.length);
    return this.texts.push(text) - 1;
  }
}

/**
 * Take a value out of the pool.
 *
 * @param labels the wood's own labels
 * @param filled which text, and what fills its holes
 */
export function readPooled<T>(pool: readonly string[], labels: readonly string[], filled: Pooled): T {
  let nextLabel = 0;
  let nextNumber = 0;
  const json = (pool[filled.at] ?? 'null').replace(/[@#]/g, (mark) => {
    if (mark === '@') return quoted(labels[filled.labels[nextLabel++] ?? 0] ?? '');
    return String(filled.numbers[nextNumber++] ?? 0);
  });
  return JSON.parse(json) as T;
}
