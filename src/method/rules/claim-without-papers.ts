import { finishesOf, inSentence, listed } from './kit.ts';
import { rule } from './rule.ts';

/** A use with food that somebody else's written word must bear, without that word. */
export const claimWithoutPapers = rule({
  id: 'claim-without-papers',
  level: 'stop',
  title: 'What is said of food rests on papers where it must',
  looksAt:
    'What food touches, the standing of every finish with the food rules, and whether the method names what was got in writing.',
  why: 'No rule that we found clears a resin inlay in wood, and some finishes stand on their recipe alone, which only their maker knows.',
  citation: { source: 'cfr-21-175-300', locator: '(a)', seen: 'source-text' },
  find(worked) {
    const { food } = worked.record;
    if (!food || food.touches === 'nothing' || food.papers !== undefined) return [];
    const finishes = food.touches === 'resin' ? [] : finishesOf(worked);
    const lacking = [
      ...(food.touches === 'wood' ? [] : ['the resin']),
      ...finishes
        .filter(({ thing }) => thing.food.level === 'ask-the-maker' || thing.food.level === 'better-not')
        .map(({ thing }) => `the finish (${inSentence(thing.name)})`),
    ];
    if (lacking.length === 0) return [];
    return [
      {
        path: ['food'],
        message: `“${food.claim}” is said of the piece, and no paper is named for ${listed(lacking)}.`,
        wayOut: `Ask the maker of ${listed(lacking)} for a written declaration and name it under papers, or keep food off that part and say so.`,
      },
    ];
  },
});
