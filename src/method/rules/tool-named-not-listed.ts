import type { WorkedMethod } from '../case/types.ts';
import { remembered } from '../remembered.ts';
import { atStep } from './kit.ts';
import { rule } from './rule.ts';

/**
 * Hand tools by words that mean nothing else in a shop, one and several. Words that do (a plane, a level, a scale, a rule, a square) are left out, and
 * so is whatever has a kind of its own, which other rules ask for.
 */
const tools: readonly (readonly [name: string, words: RegExp])[] = [
  ['pencil', /\bpencils?\b/giu],
  ['chalk', /\bchalk\b/giu],
  ['awl', /\bawls?\b/giu],
  ['calliper', /\bcall?ipers?\b/giu],
  ['chisel', /\bchisels?\b/giu],
  ['mallet', /\bmallets?\b/giu],
  ['push stick', /\bpush[ -]sticks?\b/giu],
  ['bench hook', /\bbench[ -]hooks?\b/giu],
  ['stickers', /\bstickers\b/giu],
  ['spokeshave', /\bspokeshaves?\b/giu],
  ['block plane', /\bblock planes?\b/giu],
  ['marking gauge', /\bmarking gauges?\b/giu],
  ['feeler gauge', /\bfeeler gauges?\b/giu],
  ['syringe', /\bsyringes?\b/giu],
  ['toothpick', /\btoothpicks?\b/giu],
];

/** What turns a tool away, some words before it: no chisel, never lever it off with a chisel. */
const turnedAway = /\b(?:no|not|never|without|nor)\s+(?:[^\s.,;:]+\s+){0,5}$/iu;

/** Whether a text takes a tool into the hand. */
function isNamed(text: string, words: RegExp): boolean {
  return [...text.matchAll(words)].some(({ index }) => !turnedAway.test(text.slice(Math.max(0, index - 40), index)));
}

/** All that the lists of a method say, notes included. */
const listsOf = ({ tools: all, materials }: WorkedMethod): string =>
  [...Object.values(all), ...Object.values(materials)]
    .map(({ record }) => `${record.what}. ${record.note ?? ''}`)
    .join('\n');

const between = '\u0000';

/** Small letters as a search in whatever case takes them: the long s is one of them. */
const plainLetters = (text: string): string => text.toLowerCase().replaceAll('ſ', 's');

/** Letters that every spelling of a name has at its beginning. */
const stemOf = (name: string): string => name.slice(0, 3);

/** Names of the tools that stand in what is said and not in the lists behind it. */
const notListed = remembered((saidAndLists): ReadonlySet<string> => {
  const [said = '', lists = ''] = saidAndLists.split(between);
  // Most of the words stand nowhere, and plain letters are found many times as quickly as a word in whatever case.
  const letters = plainLetters(said);
  return new Set(
    tools.flatMap(([name, words]) =>
      !letters.includes(stemOf(name)) || said.search(words) < 0 || lists.search(words) >= 0 ? [] : [name],
    ),
  );
}, 8);

/** A hand tool that a text names and no list of the method has. */
export const toolNamedNotListed = rule({
  id: 'tool-named-not-listed',
  level: 'note',
  title: 'A tool that a text names stands in a list',
  looksAt: `What the steps say to do: words for small tools that mean nothing else (${tools.map(([name]) => name).join(', ')}), beside the tools and materials of the method as a whole.`,
  why: 'Who lays out the bench goes by the list, and nobody goes to look for a pencil with glue on their hands.',
  find(worked) {
    const lists = listsOf(worked);
    // Most of these words stand nowhere: one look over all that is said spares a look at each step.
    const said = worked.steps.map(({ record }) => record.does).join('\n');
    const wanting = notListed(`${said}${between}${lists}`);
    return tools.flatMap(([name, words]) => {
      if (!wanting.has(name)) return [];
      const steps = worked.steps.filter(({ record }) => isNamed(record.does, words));
      const [first, ...others] = steps;
      if (!first) return [];
      const more =
        others.length > 0
          ? `, and so ${others.length === 1 ? 'does one step more' : `do ${others.length} steps more`}`
          : '';
      return [
        {
          ...atStep(first, 'does'),
          message: `“${first.record.title}” names “${name}”${more}, and no list of the method has it.`,
          wayOut: 'Add it to the tools (kind: other), and list it in the steps that take it.',
        },
      ];
    });
  },
});
