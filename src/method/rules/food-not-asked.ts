import type { WorkedMethod } from '../case/types.ts';
import { askedOf, listed, placeOf, wordTold } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** Kinds of food as the calculators ask for them, each harder on a board than the one before. */
const order: readonly string[] = ['dry', 'moist', 'fatty', 'hot'];

/** Words of a claim that name food harder than dry. Fruit and vegetables that are whole or dried are dry. */
const wordsFor: Readonly<Record<'moist' | 'fatty' | 'hot', RegExp>> = {
  moist:
    /(?<!\b(?:whole|dried|dry|uncut)\s)\b(?:fruits?|vegetables?|berr(?:y|ies))\b|\b(?:(?:cut|sliced|peeled) (?:fruits?|vegetables?|tomatoes|apples|melons?)|tomatoes|salads?|melons?|olives|pickles|moist food|wet food)\b/giu,
  fatty:
    /\b(?:cheeses?|butter|meats?|sausages?|ham|salami|bacon|charcuterie|cold cuts|fish|salmon|seafood|pâté|cakes?|pastr(?:y|ies)|fatty food|oily food)\b/giu,
  hot: /\bhot (?:food|dishes|meals?)\b|\b(?:roasts?|pizzas?)\b/giu,
};

/** What a clause turns away is not claimed: “not for cheese”, “no meat”. A new clause begins behind a stop or ‘but’. */
const clauses = (claim: string): string[] => claim.split(/[.;:()]|,\s*(?=(?:not|no|never|but)\b)|\bbut\b/iu);
const turnsAway = /\b(?:no|not|never|without|nor|neither)\b/iu;

/** The words of a claim for the hardest kind of food in it, if it is harder than dry. */
function hardestOf(claim: string): { kind: keyof typeof wordsFor; words: readonly string[] } | undefined {
  const said = clauses(claim).filter((clause) => !turnsAway.test(clause));
  for (const kind of ['hot', 'fatty', 'moist'] as const) {
    const words = said.flatMap((clause) => clause.match(wordsFor[kind]) ?? []);
    if (words.length > 0) return { kind, words: [...new Set(words.map((word) => word.toLowerCase()))] };
  }
  return undefined;
}

/** A label that is worked out for easier food than the method says will lie on the piece. */
export const foodNotAsked = rule({
  id: 'food-not-asked',
  level: 'warn',
  title: 'What is asked of food is what the piece is said to be for',
  looksAt:
    'The words of the claim that name moist, fatty or hot food, and the kind of food that the calculations for food contact and for the care card were asked about.',
  why: 'Food that is moist or fatty takes up more of what is in wood, oil and resin than bread does, and the rules ask more for it.',
  find(worked: WorkedMethod) {
    const { food } = worked.record;
    const claimed = food && hardestOf(food.claim);
    if (!claimed) return [];
    return askedOf(worked, 'food-contact', 'care-card').flatMap((calculation): Found[] => {
      const { use, name } = calculation;
      // A care card knows no hot food, and is for dry where nothing is said.
      const needed = use === 'care-card' && claimed.kind === 'hot' ? 'fatty' : claimed.kind;
      const asked = wordTold(calculation, 'food') ?? (use === 'care-card' ? 'dry' : undefined);
      if (asked === undefined || order.indexOf(asked) >= order.indexOf(needed)) return [];
      return [
        {
          ...placeOf(calculation, 'with', 'food'),
          message: `The claim names ${listed(claimed.words.map((word) => `“${word}”`))}, and ${name} was asked about ${asked} food.`,
          wayOut: `Ask with food: ${needed}, or claim only ${asked} food.`,
        },
      ];
    });
  },
});
