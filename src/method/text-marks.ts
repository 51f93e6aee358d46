import { type TextFault, unwelcomeCharacter } from '../model/data/yaml-guard.ts';
import { remembering } from '../model/quantity/remember.ts';
import { readPointer } from './pointer.ts';
import { readWritten, type WrittenQuantity } from './text-quantity.ts';

/** A reference in a text, `{/parameters/depth}`, with its place in it; `to` is just behind the brace. */
export interface TextPointer {
  pointer: string;
  from: number;
  to: number;
}

/** A quantity in braces, `{20 cm}`, which is shown in the reader's units; its place as that of a reference. */
export interface TextQuantity {
  quantity: WrittenQuantity;
  from: number;
  to: number;
}

/** What stands in braces. */
export type TextMark = TextPointer | TextQuantity;

/** A text in which each mark in braces is one private letter, so that nothing inside it is taken for Markdown. */
export interface MaskedText {
  readonly masked: string;
  /** What each letter stands for. */
  readonly marks: readonly TextMark[];
  /** The references among the marks. */
  readonly pointers: readonly TextPointer[];
  readonly faults: readonly TextFault[];
}

/** Letters without a meaning of their own, U+E000 to U+F8FF: the n-th stands for the n-th mark. */
const firstLetter = 0xe000;
const letters = /[\ue000-\uf8ff]/;

/** What a letter of a masked text stands for; undefined where it stands for itself. */
export function markOf(letter: string, marks: readonly TextMark[]): TextMark | undefined {
  return letters.test(letter) ? marks[letter.charCodeAt(0) - firstLetter] : undefined;
}

/** A masked text, cut at its marks. */
export function cutAtMarks(masked: string): string[] {
  return masked.split(/([\ue000-\uf8ff])/).filter((piece) => piece !== '');
}

/** Where an offset of the masked text stands in the text as written. */
export function unmaskedOffset(offset: number, marks: readonly TextMark[]): number {
  let written = offset;
  for (const { from, to } of marks) {
    if (from >= written) break;
    written += to - from - 1;
  }
  return written;
}

const braceWay =
  'In braces a reference can stand, such as {/parameters/depth}, or a quantity, such as {20 cm}; write other words in round brackets.';

/** How a quantity begins: with a sign, a figure or a fraction of one letter. */
const beginsQuantity = /^\s*[-+−]?\s*[\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/;

/** Two quantities or more in one pair of braces: `3 to 5 mm`, `200 × 100 mm`. */
const several = /\d[^,;]*?(?:\bto\b|\band\b|\bor\b|[–×]|\bx\b)\s*\d/;

/** A brace takes no longer quantity: nobody writes one. */
const longestQuantity = 60;

type InBraces = { mark: { pointer: string } | { quantity: WrittenQuantity } } | { fault: TextFault };

/** What stands between two braces, or why nothing does. */
function readBraces(inner: string, from: number): InBraces {
  const to = from + inner.length + 2;
  const told = (message: string): InBraces => ({ fault: { from, to, message } });
  const quoted = `“{${inner.slice(0, 40)}}”`;
  if (beginsQuantity.test(inner)) {
    if (inner.length > longestQuantity)
      return told(`${quoted} is too long for a quantity. Write one number and its unit, such as {20 cm}.`);
    if (several.test(inner))
      return told(`${quoted} holds more than one quantity. Give each its own braces: {3 mm} to {5 mm}.`);
    const read = readWritten(inner);
    return read.ok ? { mark: { quantity: read.value } } : told(`${quoted}: ${read.problem}. ${read.wayOut}`);
  }
  if (!inner.startsWith('/')) return told(`${quoted} is no reference and no quantity. ${braceWay}`);
  const at = (place: number, message: string): InBraces => ({ fault: { from: place, to: place + 1, message } });
  const space = inner.search(/\s/);
  if (space >= 0)
    return at(from + 1 + space, 'a space stands inside a reference. Write it without, {/parameters/depth}.');
  const reading = readPointer(inner);
  return reading.ok ? { mark: { pointer: inner } } : at(from + 1 + reading.at, reading.why);
}

/** A difference of temperatures that is written as a temperature: by {10 °C} is by 10 °C and not by 50 °F. */
function faultOfDifference(source: string, { quantity, from, to }: TextQuantity): TextFault[] {
  if (quantity.dimension !== 'temperature') return [];
  const before = /\bby\s+(?:about\s+)?$/i.test(source.slice(Math.max(0, from - 20), from));
  const behind = /^\s+(?:warmer|cooler|colder|hotter)\b/i.test(source.slice(to, to + 20));
  if (!before && !behind) return [];
  return [
    {
      from,
      to,
      message: `“${source.slice(from, to)}” is read as a temperature, and by how much something is warmer is a difference. Write it in K, {10 K}: readers see 10 °C or 18 °F.`,
    },
  ];
}

/** What no text of a step may hold, however Markdown would read it. */
function faultsOfCharacters(source: string): TextFault[] {
  const faults: TextFault[] = [];
  const odd = unwelcomeCharacter(source);
  if (odd) faults.push({ from: odd.at, to: odd.at + 1, message: odd.message });
  const hidden = letters.exec(source);
  if (hidden) {
    const message = 'a character stands here that only one font can show. Remove it.';
    faults.push({ from: hidden.index, to: hidden.index + 1, message });
  }
  for (const { index, 0: tag } of source.matchAll(/\\*<[a-z/!?][^<>\s]{0,40}>?/gi)) {
    const backslashes = /^\\*/.exec(tag)?.[0].length ?? 0;
    if (backslashes % 2 === 1) continue;
    const from = index + backslashes;
    faults.push({
      from,
      to: index + tag.length,
      message: `“${tag.slice(backslashes)}” is a mark of web pages, which a text cannot hold. Write it in plain words; a link is written [words](https://…), and less than with a space behind it.`,
    });
  }
  return faults;
}

/**
 * Put letters in place of what stands in braces in a text, and find what it may not hold. Texts are remembered as long as one method is read, worked
 * out and judged, all of which ask for them.
 */
export const maskText: (source: string) => MaskedText = remembering(300, mask);

function mask(source: string): MaskedText {
  const faults = faultsOfCharacters(source);
  const marks: TextMark[] = [];
  const made = (masked: string): MaskedText => ({
    masked,
    marks,
    pointers: marks.flatMap((mark) => ('pointer' in mark ? mark : [])),
    faults,
  });
  let masked = '';
  const special = /[\\{}]/g;
  for (let at = 0; at < source.length; at += 1) {
    special.lastIndex = at;
    const found = special.exec(source)?.index ?? source.length;
    masked += source.slice(at, found);
    at = found;
    const character = source[at];
    if (character === undefined) break;
    if (character === '\\') {
      masked += source.slice(at, at + 2);
      at += 1;
      continue;
    }
    if (character === '}') {
      faults.push({ from: at, to: at + 1, message: `a brace closes here that was not opened. ${braceWay}` });
      masked += character;
      continue;
    }
    if (source[at + 1] === '{') {
      const message = 'two braces open here. Write one: {/parameters/depth}, {20 cm}.';
      faults.push({ from: at, to: at + 2, message });
      return made(masked);
    }
    const end = source.slice(at + 1).search(/[{}\n]/);
    if (source[at + 1 + end] !== '}' || end < 0) {
      const message = `the brace that opens here is not closed in its line. ${braceWay}`;
      faults.push({ from: at, to: at + 1, message });
      masked += character;
      continue;
    }
    const inner = source.slice(at + 1, at + 1 + end);
    const read = readBraces(inner, at);
    const place = { from: at, to: at + end + 2 };
    if ('fault' in read) faults.push(read.fault);
    // A letter stands for what could not be read too: its brackets are no marks of Markdown either.
    const mark: TextMark = 'fault' in read ? { pointer: inner, ...place } : { ...read.mark, ...place };
    if ('quantity' in mark) faults.push(...faultOfDifference(source, mark));
    masked += String.fromCharCode(firstLetter + marks.length);
    marks.push(mark);
    at += end + 1;
  }
  return made(masked);
}
