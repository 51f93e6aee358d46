/** What something measures or is, with its article: `an area`, `a volume`, `a difference of…`; the hyphens of an id become spaces. */
export const aOrAn = (word: string): string => `${/^[aeiou]/i.test(word) ? 'an' : 'a'} ${word.replaceAll('-', ' ')}`;
