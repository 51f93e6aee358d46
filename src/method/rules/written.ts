import { remembering } from '../../model/quantity/remember.ts';
import { cutAtMarks, markOf, maskText, type TextMark } from '../text-marks.ts';
import { readWritten, type WrittenQuantity } from '../text-quantity.ts';

export type { WrittenQuantity };

/** A sentence with what it refers to and what it writes out. */
export interface Sentence {
  pointers: readonly string[];
  written: readonly WrittenQuantity[];
}

/** A number with a unit behind it: `0.5 mm`, `1/4 in`, `20 °C`, `8 %`, `40 min`. Of words for units only those that nothing else means. */
const quantity =
  /(?<![\d./,P])(\d+(?:[.,]\d+)?(?:\s+\d+\/\d+)?|\d+\/\d+)\s?(mm|cm|in\b|inch(?:es)?|ft\b|°C|°F|%|min(?:utes?)?\b|h(?:ours?)?\b|d(?:ays?)?\b|kg\b|g\b|ml\b|l\b)(?![\p{L}²³/])/gu;

function readMatch([text, number = '', unit = '']: RegExpMatchArray): WrittenQuantity[] {
  const read = readWritten(`${number} ${unit}`);
  return read.ok ? [{ ...read.value, text }] : [];
}

/** Whether it says what stands before it again in other units: `3 mm (1/8 in)`. Behind a reference it is somebody's own word for it. */
function isOtherUnits(sentence: string, { index = 0, 0: text }: RegExpMatchArray, marks: readonly TextMark[]): boolean {
  const before = /(.?)\s*\($/u.exec(sentence.slice(0, index));
  if (!before || sentence.charAt(index + text.length) !== ')') return false;
  const mark = markOf(before[1] ?? '', marks);
  return !mark || 'quantity' in mark;
}

/** The sentences of a text of a step. A point between digits ends none. Two rules ask for them, one after the other. */
export const sentencesOf: (source: string) => readonly Sentence[] = remembering(300, takeApart);

function takeApart(source: string): Sentence[] {
  const { masked, marks } = maskText(source);
  return masked.split(/(?<=[.!?:;])\s+|\n+/).map((sentence) => {
    const held = cutAtMarks(sentence).flatMap((piece) => markOf(piece, marks) ?? []);
    const all = /\d/.test(sentence) ? [...sentence.matchAll(quantity)] : [];
    const typed = all.filter((match) => !isOtherUnits(sentence, match, marks));
    return {
      pointers: held.flatMap((mark) => ('pointer' in mark ? mark.pointer : [])),
      written: [...held.flatMap((mark) => ('quantity' in mark ? mark.quantity : [])), ...typed.flatMap(readMatch)],
    };
  });
}
