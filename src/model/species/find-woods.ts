import { findNamed, type Named, nameKey } from '../quantity/index.ts';
import { botanicalSynonyms } from './synonyms.ts';
import { usualWoods } from './usual.ts';

/** What a search reads of a wood; a row of a list holds as much. */
export interface WoodNames {
  id: string;
  name: string;
  botanical: string | null;
  tradeNames: readonly string[];
}

/** Words that say how wood looks or was sawn, not what it is: `curly maple` is maple. */
const lookWords = new Set([
  ...[
    'curly',
    'figured',
    'flame',
    'flamed',
    'tiger',
    'fiddleback',
    'quilted',
    'birdseye',
    'burl',
    'spalted',
    'ambrosia',
  ],
  ...['flatsawn', 'plainsawn', 'quartersawn', 'riftsawn', 'rift', 'sawn', 'rough', 'planed', 'kiln', 'dried', 'air'],
  ...['wood', 'lumber', 'timber', 'board', 'boards', 'slab', 'plank'],
]);

const withoutLooks = (text: string) =>
  nameKey(text)
    .split(' ')
    .filter((word) => !lookWords.has(word))
    .join(' ');

/** Older botanical names by the one that a record holds. */
const olderNames = new Map<string, string[]>();
for (const [older, held] of Object.entries(botanicalSynonyms)) {
  olderNames.set(nameKey(held), [...(olderNames.get(nameKey(held)) ?? []), older]);
}

/** All names of a wood, older botanical ones included. */
export const namesOf = (wood: WoodNames): Named => ({
  name: wood.name,
  others: [
    wood.id,
    ...wood.tradeNames,
    ...(wood.botanical ? [wood.botanical, ...(olderNames.get(nameKey(wood.botanical)) ?? [])] : []),
  ],
});

/** Usual woods first, the others as they come. */
export function usualFirst<Wood extends WoodNames>(woods: readonly Wood[]): Wood[] {
  const place = ({ id }: Wood) => (usualWoods.includes(id) ? usualWoods.indexOf(id) : usualWoods.length);
  return [...woods].sort((a, b) => place(a) - place(b));
}

/**
 * Find woods by common, trade or botanical name, the likelier first; beginnings of words count, and slips of spelling where
 * nothing is spelt so. The pages, the fields and the command line all find woods by this one.
 *
 * @param woods what to look through
 * @param text as typed; an empty text finds every wood in the order given
 */
export function findWoods<Wood extends WoodNames>(woods: readonly Wood[], text: string): Wood[] {
  if (nameKey(text) === '') return [...woods];
  const inOrder = usualFirst(woods);
  const found = findNamed(inOrder, text, namesOf);
  if (found.length > 0) return found;
  const plain = withoutLooks(text);
  // One of several spellings of a plural: `maples`, `ashes`.
  const single = plain.replace(/(?<=\w{3}(?:ch|sh|x))es\b|(?<=\w{3}[^s\s])s\b/g, '');
  for (const other of [plain, single]) {
    const again = other === '' ? [] : findNamed(inOrder, other, namesOf);
    if (again.length > 0) return again;
  }
  return [];
}
