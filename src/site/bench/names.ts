/** Characters of a method at most, as its reader takes them. */
export const longestText = 131_072;

/** Characters of a draft's name. */
const longestName = 80;

/** What every editor shows as the end of a line, as one sign; the mark that some programs put before a text is left out. */
export function tidyText(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
}

/** A name on one line, without signs that cannot be seen, cut where it is too long for a list. */
export function tidyName(name: string): string {
  const line = name.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}\s]+/gu, ' ').trim();
  return [...line].slice(0, longestName).join('').trim();
}

/** The title that a method's text gives itself, by its line alone: the text need not be sound. */
export function titleOf(text: string): string | undefined {
  const line = /^title:[ \t]*(.+)$/m.exec(text)?.[1]?.trim() ?? '';
  const quoted = /^"((?:[^"\\]|\\.)*)"|^'((?:[^']|'')*)'/.exec(line);
  const plain = line.replace(/(^|\s)#.*$/, '');
  return tidyName(quoted?.[1]?.replace(/\\(["\\])/g, '$1') ?? quoted?.[2]?.replaceAll("''", "'") ?? plain) || undefined;
}

/** A name that none of the others has: the name itself, or with a number behind it. */
export function freeName(wanted: string, taken: readonly string[]): string {
  const name = tidyName(wanted) || 'A method';
  const lower = new Set(taken.map((each) => each.toLowerCase()));
  if (!lower.has(name.toLowerCase())) return name;
  for (let count = 2; ; count += 1) {
    const numbered = `${tidyName([...name].slice(0, longestName - 6).join(''))} (${count})`;
    if (!lower.has(numbered.toLowerCase())) return numbered;
  }
}

/** Names that a machine keeps for its own devices, with whatever ending. */
const reserved = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** A name as that of a file, safe on every machine: small letters, digits and hyphens, and never one that is taken; `empty` where nothing of it is left. */
export function fileName(
  name: string,
  {
    taken = [],
    ending = 'yaml',
    empty = 'method',
  }: { taken?: readonly string[]; ending?: string; empty?: string } = {},
): string {
  const word = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
  const safe = word === '' || reserved.test(word) ? `${empty}${word && `-${word}`}` : word;
  for (let count = 1; ; count += 1) {
    const file = `${safe}${count === 1 ? '' : `-${count}`}.${ending}`;
    if (!taken.includes(file)) return file;
  }
}

/** What a file is called in a list: its name without folders and ending. */
export function nameOfFile(file: string): string {
  const last = file.split(/[\\/]/).at(-1) ?? '';
  return tidyName(last.replace(/\.(ya?ml|txt)$/i, '')) || 'A file';
}
