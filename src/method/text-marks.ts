import { type TextFault, unwelcomeCharacter } from '../model/data/yaml-guard.ts';
import { remembering } from '../model/quantity/remember.ts';
import { readPointer } from './pointer.ts';

/** A reference in a text, `{/parameters/depth}`, with its place in it; `to` is just behind the brace. */
export interface TextPointer {
  pointer: string;
  from: number;
  to: number;
}

/** A text in which each reference is one private letter, so that no mark inside it is taken for Markdown. */
export interface MaskedText {
  readonly masked: string;
  readonly pointers: readonly TextPointer[];
  readonly faults: readonly TextFault[];
}

/** Letters without a meaning of their own, U+E000 to U+F8FF: the n-th stands for the n-th reference. */
const firstLetter = 0xe000;
const letters = /[\ue000-\uf8ff]/;

/** Number of the reference that a letter of a masked text stands for; undefined where it stands for itself. */
export function referenceOf(letter: string): number | undefined {
  return letters.test(letter) ? letter.charCodeAt(0) - firstLetter : undefined;
}

/** A masked text, cut at its references. */
export function cutAtReferences(masked: string): string[] {
  return masked.split(/([\ue000-\uf8ff])/).filter((piece) => piece !== '');
}

/** Where an offset of the masked text stands in the text as written. */
export function unmaskedOffset(offset: number, pointers: readonly TextPointer[]): number {
  let written = offset;
  for (const { from, to } of pointers) {
    if (from >= written) break;
    written += to - from - 1;
  }
  return written;
}

const braceWay =
  'In braces only a reference can stand, such as {/parameters/depth}; write other words in round brackets.';

/** Why what stands between two braces is no reference; undefined where it is one. */
function faultOfReference(inner: string, from: number): TextFault | undefined {
  const to = from + inner.length + 2;
  if (!inner.startsWith('/')) return { from, to, message: `“{${inner.slice(0, 40)}}” is no reference. ${braceWay}` };
  const space = inner.search(/\s/);
  if (space >= 0) {
    const place = from + 1 + space;
    return {
      from: place,
      to: place + 1,
      message: 'a space stands inside a reference. Write it without, {/parameters/depth}.',
    };
  }
  const reading = readPointer(inner);
  if (reading.ok) return undefined;
  const place = from + 1 + reading.at;
  return { from: place, to: place + 1, message: reading.why };
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
 * Put letters in place of the references of a text, and find what it may not hold. Texts are remembered as long as one method is read, worked
 * out and judged, all of which ask for them.
 */
export const maskText: (source: string) => MaskedText = remembering(300, mask);

function mask(source: string): MaskedText {
  const faults = faultsOfCharacters(source);
  const pointers: TextPointer[] = [];
  let masked = '';
  for (let at = 0; at < source.length; at += 1) {
    const character = source[at] as string;
    if (character === '\\') {
      masked += source.slice(at, at + 2);
      at += 1;
      continue;
    }
    if (character === '}')
      faults.push({ from: at, to: at + 1, message: `a brace closes here that was not opened. ${braceWay}` });
    if (character !== '{') {
      masked += character;
      continue;
    }
    if (source[at + 1] === '{') {
      faults.push({ from: at, to: at + 2, message: 'two braces open here. A reference has one: {/parameters/depth}.' });
      return { masked, pointers, faults };
    }
    const end = /[{}\n]/.exec(source.slice(at + 1));
    if (end?.[0] !== '}') {
      faults.push({
        from: at,
        to: at + 1,
        message: `the brace that opens here is not closed in its line. ${braceWay}`,
      });
      masked += character;
      continue;
    }
    const inner = source.slice(at + 1, at + 1 + end.index);
    const fault = faultOfReference(inner, at);
    if (fault) faults.push(fault);
    masked += String.fromCharCode(firstLetter + pointers.length);
    pointers.push({ pointer: inner, from: at, to: at + inner.length + 2 });
    at += inner.length + 1;
  }
  return { masked, pointers, faults };
}
