/** Kinds of food as the calculators ask for them, each harder on a board than the one before. */
export const foodKinds: readonly string[] = ['dry', 'moist', 'fatty', 'hot'];

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
const turnsAway = /\b(?:no|not|never|without|nor|neither|avoid|keep|off|away)\b/iu;

/** The words of a claim, or of a text that is read to whoever gets the piece, for the hardest kind of food in it, if it is harder than dry. */
export function hardestFood(claim: string): { kind: keyof typeof wordsFor; words: readonly string[] } | undefined {
  const said = clauses(claim).filter((clause) => !turnsAway.test(clause));
  for (const kind of ['hot', 'fatty', 'moist'] as const) {
    const words = said.flatMap((clause) => clause.match(wordsFor[kind]) ?? []);
    if (words.length > 0) return { kind, words: [...new Set(words.map((word) => word.toLowerCase()))] };
  }
  return undefined;
}
