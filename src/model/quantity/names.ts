import { remembering } from './remember.ts';

/** Letters that carry no accent of their own to be taken off, as they are typed on a keyboard that has none. */
const plainLetters: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  ı: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
};

/**
 * A name as it is compared: letters and digits in lower case, parted by single spaces, without accents and apostrophes,
 * so that `Maple, sugar` meets `maple sugar`, `Québec` meets `quebec` and `St. John’s` meets `st johns`.
 *
 * Every wood, place and finish is compared with whatever is looked for, so that keys are remembered.
 *
 * @param text as typed or as it stands in a record
 */
export const nameKey: (text: string) => string = remembering(4000, (text) =>
  text
    .normalize('NFKD')
    .toLowerCase()
    // A lower-case letter may come apart where its capital did not.
    .normalize('NFKD')
    .replace(/[\p{M}'’‘ʼ`]/gu, '')
    .replace(/[øłđðıßæœþ]/g, (letter) => plainLetters[letter] ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim(),
);
