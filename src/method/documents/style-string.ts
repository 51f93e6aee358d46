/** A text as a string of a style sheet: whatever is no letter, digit or space is written by its number, so that nothing in it ends the string. */
export const styleString = (text: string): string =>
  `"${text.replace(/[^\p{L}\p{N} ]/gu, (character) => `\\${character.codePointAt(0)?.toString(16)} `)}"`;
