import { howTo } from './how-to.ts';

/** One thing that a numbered line of a page tells its reader to do or to see. */
export type Told =
  | { do: 'open'; address: string }
  | { do: 'press'; name: string; narrow: boolean }
  | { do: 'change'; from: string; into: string }
  | { do: 'add'; under: string; block: string }
  | { do: 'fill'; field: string; value: string }
  | { do: 'read'; where: string; words: string };

/** The steps of the tutorial that are done in the browser, by the ids of their headings. */
export const browserSteps = ['open', 'change', 'break', 'form', 'page', 'print', 'file'] as const;

const source = howTo('writing-a-method').source;

/** A part of the page from its heading to the next of that level. */
export function partOf(id: string): string {
  const [, part] = source.split(`{/* #${id} */}`);
  if (part === undefined) throw new Error(`docs/writing-a-method.mdx has no heading #${id}`);
  return part.split('\n## ')[0] ?? '';
}

/** The numbered lines of a part, each with what is indented below it. */
export function numbered(id: string): string[] {
  return partOf(id)
    .split(/^(?=\d+\. )/m)
    .slice(1)
    .map((item) => item.split(/\n\n(?! )/)[0] ?? '');
}

const forms: readonly { pattern: RegExp; told: (...found: string[]) => Told }[] = [
  { pattern: /Open \[[^\]]+\]\(([^)]+)\)/g, told: (address = '') => ({ do: 'open', address }) },
  {
    pattern: /(On a narrow screen p|P)ress \*\*([^*]+)\*\*/g,
    told: (lead = '', name = '') => ({ do: 'press', name, narrow: lead !== 'P' }),
  },
  { pattern: /[Cc]hange `([^`]+)` into `([^`]+)`/g, told: (from = '', into = '') => ({ do: 'change', from, into }) },
  {
    pattern: /Under (?:the last line, )?`([^`]+)`,? write [^:`]+:\n\n {3}```yaml\n([\s\S]*?)\n {3}```/g,
    told: (under = '', block = '') => ({ do: 'add', under, block: block.replace(/^ {3}/gm, '') }),
  },
  { pattern: /In \*\*([^*]+)\*\* write `([^`]+)`/g, told: (field = '', value = '') => ({ do: 'fill', field, value }) },
  {
    pattern: /Read (below the buttons|in the list|in the text|on the page|on the sheet): [‘`]([^’`]+)[’`]/g,
    told: (where = '', words = '') => ({ do: 'read', where, words }),
  },
];

/** Everything that a numbered line tells, in its order. */
export function toldIn(item: string): Told[] {
  return forms
    .flatMap(({ pattern, told }) =>
      [...item.matchAll(pattern)].map(({ index, 1: first = '', 2: second = '' }) => ({
        index,
        told: told(first, second),
      })),
    )
    .sort((one, other) => one.index - other.index)
    .map(({ told }) => told);
}

/** The tutorial as one list. A numbered line that tells nothing that is known here is an error: nobody would hold it. */
export function tutorial(): Told[] {
  return browserSteps.flatMap((id) =>
    numbered(id).flatMap((item) => {
      const told = toldIn(item);
      if (told.length === 0) throw new Error(`Nothing is told to be done or seen in “${item}”`);
      return told;
    }),
  );
}
