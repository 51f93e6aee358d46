import { readYaml } from '../../model/data/yaml.ts';
import { likeliest } from '../../model/quantity/index.ts';
import { pointerOf, stepsOfPointer } from '../pointer.ts';
import { completeAt } from './complete.ts';
import { kindOfRecord, longestRecord, looseData } from './outline.ts';
import { pointersIn } from './pointers.ts';
import { shapeOf, shapesAt, valueAt } from './shape.ts';
import type { EditContext, Fix, Splice } from './types.ts';

/** Where a problem stands. */
export interface FaultyPlace {
  from: number;
  to: number;
  path: readonly (string | number)[];
  /** Among the first of its text, for which a mend of the writing itself is tried out. */
  first: boolean;
}

/** A text with a splice done. */
const spliced = (text: string, { from, to, insert }: Splice) => text.slice(0, from) + insert + text.slice(to);

/** The reference nearest to one that leads nowhere: right as far as it goes, then the likeliest of the names that follow. */
function nearestPointer(pointer: string, known: readonly string[]): string | undefined {
  let left = known.map(stepsOfPointer);
  const meant: string[] = [];
  for (const step of stepsOfPointer(pointer)) {
    const at = meant.length;
    const next = [...new Set(left.map((steps) => steps[at]).filter((each) => each !== undefined))];
    const name = next.includes(step) ? step : likeliest(step, next);
    if (name === undefined) return undefined;
    meant.push(name);
    left = left.filter((steps) => steps[at] === name);
  }
  const found = pointerOf(meant);
  return known.includes(found) && found !== pointer ? found : undefined;
}

/** The name that a misspelt one may mean, from what may be written at its place. */
async function nearestName(text: string, { from, to }: FaultyPlace, context: EditContext): Promise<Fix[]> {
  const written = text.slice(from, to);
  if (written === '' || written.length > 120 || /\s/.test(written)) return [];
  const inBraces = written.startsWith('{') ? 1 : 0;
  const end = to - (/["'}]$/.test(written) ? 1 : 0);
  const options = await completeAt(text, end, context);
  if (!options || options.from > to || options.from < from) return [];
  const word = written.replace(/^["'{]|["'}]$/g, '');
  const known = options.options.map(({ label }) => label);
  if (word.length < 3 || known.includes(word)) return [];
  // A reference that leads somewhere is not misspelt: what it leads to measures something else, and no other name was meant.
  if (word.startsWith('/') && (await pointersIn(looseData(text), context)).some(({ pointer }) => pointer === word))
    return [];
  const near = word.startsWith('/') ? nearestPointer(word, known) : likeliest(word, known);
  if (near === undefined) return [];
  const start = from + (inBraces || /^["']/.test(written) ? 1 : 0);
  return [{ title: `Write ${near}`, splice: { from: start, to: start + word.length, insert: near } }];
}

/** Quotes around what is read as a number and must be a text, and none around a number. */
function quotes(text: string, { from, to, path }: FaultyPlace): Fix[] {
  const value = valueAt(looseData(text), path);
  const written = text.slice(from, to);
  const types = new Set(shapesAt(shapeOf(kindOfRecord(text)), path, undefined).map(({ type }) => type));
  if ((typeof value === 'number' || typeof value === 'boolean') && types.size === 1 && types.has('string'))
    return [{ title: 'Put it in quotes', splice: { from, to, insert: `"${written}"` } }];
  const bare = /^(["'])(-?\d+(?:\.\d+)?)\1$/.exec(written)?.[2];
  const counts = !types.has('string') && (types.has('number') || types.has('integer'));
  if (bare !== undefined && counts) return [{ title: 'Take the quotes away', splice: { from, to, insert: bare } }];
  return [];
}

/** Ways to mend a line whose writing cannot be read. */
function waysInLine(text: string, at: number): Fix[] {
  const from = text.lastIndexOf('\n', at - 1) + 1;
  const end = text.indexOf('\n', at);
  const line = text.slice(from, end < 0 ? text.length : end).trimEnd();
  const fixes: Fix[] = [];
  const put = (title: string, start: number, length: number, insert: string) =>
    fixes.push({ title, splice: { from: from + start, to: from + start + length, insert } });
  const blanks = /^[ \t]*/.exec(line)?.[0] ?? '';
  if (blanks.includes('\t')) {
    const above = text.slice(0, from).trimEnd();
    const last = above.slice(above.lastIndexOf('\n') + 1);
    const beside = `${/^ */.exec(last)?.[0] ?? ''}${last.endsWith(':') ? '  ' : ''}`;
    for (const spaces of [beside, blanks.replaceAll('\t', '  ')])
      put('Write spaces in place of the tab', 0, blanks.length, spaces);
  }
  const curly = /[“”„]([^“”„]*)[“”]/.exec(line);
  if (curly && !curly[1]?.includes('"')) put('Use straight quotes', curly.index, curly[0].length, `"${curly[1]}"`);
  const tight = /^(\s*(?:- )?[\w-]+:)(?=[^\s])/.exec(line);
  if (tight) put('Write a space behind the colon', tight[0].length, 0, ' ');
  const dash = /^\s*-(?=[^\s-])/.exec(line);
  if (dash) put('Write a space behind the dash', dash[0].length, 0, ' ');
  const value = /^(\s*(?:- )*(?:[\w-]+:[ \t]+)?)(?=\S)(.*?)(?=\s+#.*$|$)/.exec(line);
  if (value?.[2] && !/^["'|>]/.test(value[2]))
    put('Put it in quotes', value[1]?.length ?? 0, value[2].length, JSON.stringify(value[2]));
  return fixes;
}

/** The ways that take a fault of the writing away and bring no other, tried out on the text. */
function triedOut(text: string, { from }: FaultyPlace): Fix[] {
  const read = (changed: string) => readYaml(changed, '', longestRecord).problems;
  const before = read(text).length;
  if (before === 0) return [];
  const lineOf = (offset: number) => text.slice(0, offset).split('\n').length;
  const line = lineOf(from);
  return waysInLine(text, from)
    .filter(({ splice }) => {
      const after = read(spliced(text, splice));
      return after.length < before || (after.length <= before && !after.some((problem) => problem.line <= line));
    })
    .slice(0, 1);
}

/** Mends of a problem that have one right answer; none where there are several, or it cannot be told. */
export async function fixesOf(text: string, place: FaultyPlace, context: EditContext): Promise<readonly Fix[]> {
  if (place.path.length > 0) {
    const quoted = quotes(text, place);
    const found = quoted.length > 0 ? quoted : await nearestName(text, place, context);
    if (found.length > 0) return found;
  }
  return place.first ? triedOut(text, place) : [];
}
