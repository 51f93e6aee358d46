import { nameKey } from '../../model/quantity/index.ts';
import { usualWoods } from '../../model/species/usual.ts';
import type { WoodName } from './row.ts';

/**
 * Woods of which every word typed begins a word of one of the names: common, trade or botanical.
 *
 * A whole name comes first, then a common name that begins so, then any common name, then the other names;
 * within each the usual woods, then the rest in the order given.
 *
 * @param woods what to look through
 * @param text as typed; an empty text finds every wood
 */
export function findWoods<Wood extends WoodName>(woods: readonly Wood[], text: string): Wood[] {
  const wanted = nameKey(text);
  if (wanted === '') return [...woods];
  const words = wanted.split(' ');
  const ranked = woods.flatMap((wood) => {
    const name = nameKey(wood.name);
    const others = [...wood.trade, wood.botanical ?? ''].map(nameKey);
    const all = ` ${[name, ...others].join(' ')}`;
    if (!words.every((word) => all.includes(` ${word}`))) return [];
    return [{ wood, rank: rankOf(wanted, words, name, others) }];
  });
  return ranked
    .sort((a, b) => a.rank - b.rank || Number(isUsual(b.wood)) - Number(isUsual(a.wood)))
    .map(({ wood }) => wood);
}

function rankOf(wanted: string, words: readonly string[], name: string, others: readonly string[]): number {
  if (name === wanted) return 0;
  if (others.includes(wanted)) return 1;
  if (name.startsWith(wanted)) return 2;
  if (words.every((word) => ` ${name}`.includes(` ${word}`))) return 3;
  return 4;
}

const isUsual = (wood: WoodName) => usualWoods.includes(wood.id);
