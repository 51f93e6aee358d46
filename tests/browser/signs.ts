import { faceFiles } from '../../src/site/fonts/faces.ts';

/** Characters of a CSS unicode-range. */
function inRanges(ranges: readonly string[]): (code: number) => boolean {
  const parts = ranges
    .flatMap((range) => range.split(','))
    .map((part) => {
      const [first = '', last = first] = part.replace('U+', '').split('-');
      return [Number.parseInt(first, 16), Number.parseInt(last, 16)] as const;
    });
  return (code) => parts.some(([first, last]) => code >= first && code <= last);
}

const held = inRanges(faceFiles.filter(({ family }) => family === 'Kerf Sans').map(({ range }) => range));
/** Signs that no file of ours holds. Zero-width spaces and line ends are not drawn. */
export const strange = (text: string) =>
  [...new Set(text.replace(/[\n\t\u200b]/g, ''))].filter((sign) => !held(sign.codePointAt(0) ?? 0));
