import { findNamed, nameKey, surelyNamed } from '../../model/quantity/index.ts';
import { findWoods, namesOf as namesOfWood } from '../../model/species/find-woods.ts';
import type { PickOption } from '../kit/fields.ts';

const shown = 12;

const namesOf = ({ label, value, detail = '' }: PickOption) => ({
  name: label,
  others: [value, ...detail.split(', ')],
});

/** The option that a text surely names; one that several share is nobody's until the reader picks. */
export function sureOption(options: readonly PickOption[], text: string): PickOption | undefined {
  return surelyNamed(options, text, (option) => (option.wood ? namesOfWood(option.wood) : namesOf(option)));
}

/** Options that a text finds, the likeliest first; the first of all where nothing is typed. */
export function matchOptions(options: readonly PickOption[], text: string): PickOption[] {
  if (nameKey(text) === '') return options.slice(0, shown);
  const byWood = new Map(options.flatMap((option) => (option.wood ? [[option.wood.id, option] as const] : [])));
  const found =
    byWood.size === options.length
      ? findWoods(
          options.flatMap(({ wood }) => wood ?? []),
          text,
        ).flatMap(({ id }) => byWood.get(id) ?? [])
      : findNamed(options, text, namesOf);
  return found.slice(0, shown);
}

/** So many are offered under a refusal: more would push the rest of the form away. */
const offered = 8;

/**
 * What a refused text may have meant: the options that its words find, else those at which the refusal guesses by their ids. A text that surely
 * names one is refused for what that one lacks, and meant nothing else.
 *
 * @param error the refusal, which may guess at a slip of the pen: `Did you mean duluth-mn?`
 */
export function candidatesFor(options: readonly PickOption[], text: string, error: string): readonly PickOption[] {
  if (nameKey(text) === '' || sureOption(options, text)) return [];
  const found = matchOptions(options, text);
  if (found.length > 0) return found.slice(0, offered);
  const words = new Set(/Did you mean ([^?]*)\?/.exec(error)?.[1]?.split(/[\s,]+/));
  return options.filter(({ value }) => words.has(value)).slice(0, offered);
}
