import leven from 'leven';

/** The known name with the fewest edits from a misspelt one, where that is at most two, or a third of its length. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  const wanted = name.toLowerCase().slice(0, 60);
  let best: { name: string; edits: number } | undefined;
  for (const candidate of known) {
    const edits = leven(wanted, candidate.toLowerCase());
    if (!best || edits < best.edits) best = { name: candidate, edits };
  }
  return best && best.edits <= Math.max(2, Math.floor(wanted.length / 3)) ? best.name : undefined;
}

/** The words that a name is made of: `first-coat`, `firstCoat` and `First coat` of first and coat. */
const wordsOf = (name: string) =>
  name
    .slice(0, 60)
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word.length > 2);

/** How many letters two words begin with alike. */
function beginning(one: string, other: string): number {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at++;
  return at;
}

/** Letters of a stem that two words must share where neither is the beginning of the other: glue, glued, gluing share three. */
const stem = 4;

/** How much of its words a name shares with another, in letters: whole words, and words of one stem, `routing` and `rout`. */
function shared(name: readonly string[], other: readonly string[]): number {
  return name.reduce((sum, word) => {
    const most = Math.max(
      0,
      ...other.map((each) => {
        const alike = beginning(word, each);
        return alike >= stem || alike === Math.min(word.length, each.length) ? alike : 0;
      }),
    );
    return sum + most;
  }, 0);
}

/** The known name with fewest edits from one that is not known; where all are too far off, the one that shares most of its words or their stems. */
export function likeliest(name: string, known: readonly string[]): string | undefined {
  const near = nearest(name, known);
  if (near !== undefined) return near;
  const words = wordsOf(name);
  let best: { name: string; letters: number } | undefined;
  for (const candidate of known) {
    const letters = shared(words, wordsOf(candidate));
    if (letters > (best?.letters ?? 0)) best = { name: candidate, letters };
  }
  return best?.name;
}
