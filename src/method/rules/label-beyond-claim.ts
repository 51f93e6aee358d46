import type { WorkedCalculation, WorkedMethod, WorkedStep } from '../case/types.ts';
import { foodKinds, hardestFood } from './food-words.ts';
import { atStep, listed, placeOf, stepsThat, wordTold } from './kit.ts';
import { type Found, rule } from './rule.ts';

/** What the head of a method says of food, as a label can be held against it. */
interface Claimed {
  /** Place of the hardest food among `foodKinds`; -1 where nothing is claimed. */
  hardest: number;
  /** As it stands in a message. */
  words: string;
}

function claimedBy({ record: { food } }: WorkedMethod): Claimed {
  if (!food) return { hardest: -1, words: 'the head of the method claims no food' };
  if (food.touches === 'nothing') return { hardest: -1, words: 'by the head of the method food touches nothing' };
  const kind = hardestFood(food.claim)?.kind ?? 'dry';
  return { hardest: foodKinds.indexOf(kind), words: `the claim is “${food.claim}”` };
}

const wayOut = 'Let the label say what the claim says, or change the claim where the piece is made for it.';

/** What whoever gets the piece reads or is told, beside the claim. */
function inTexts(step: WorkedStep, claimed: Claimed): Found[] {
  return (['does', 'tell'] as const).flatMap((part) => {
    const said = hardestFood(step.record[part] ?? '');
    if (!said || foodKinds.indexOf(said.kind) <= claimed.hardest) return [];
    const words = listed(said.words.map((word) => `“${word}”`));
    return [{ ...atStep(step, part), message: `The text names ${words}, and ${claimed.words}.`, wayOut }];
  });
}

/** What a label or card was worked out for, beside the claim. */
function inLabel(worked: WorkedMethod, calculation: WorkedCalculation, claimed: Claimed): Found[] {
  const { food } = worked.record;
  const found = (input: string, message: string): Found => ({
    ...placeOf(calculation, 'with', input),
    message,
    wayOut,
  });
  const asked = wordTold(calculation, 'food');
  const place = wordTold(calculation, 'resinPlace');
  const papers = wordTold(calculation, 'papers');
  const market = wordTold(calculation, 'market');
  const harder = asked !== undefined && foodKinds.indexOf(asked) > claimed.hardest;
  const onResin = food?.touches === 'wood' && place === 'under-food';
  const unnamed = food !== undefined && food.papers === undefined && papers !== undefined && papers !== 'none';
  const elsewhere = food !== undefined && market !== undefined && market !== food.market;
  return [
    ...(harder ? [found('food', `${calculation.name} is worked out for ${asked} food, and ${claimed.words}.`)] : []),
    ...(onResin
      ? [
          found(
            'resinPlace',
            `${calculation.name} is worked out for food on the resin, and by the head food touches the wood alone.`,
          ),
        ]
      : []),
    ...(unnamed
      ? [
          found(
            'papers',
            `${calculation.name} is worked out as if papers were there, and the head names none under food.`,
          ),
        ]
      : []),
    ...(elsewhere
      ? [found('market', `${calculation.name} speaks by the rules of another market than the head of the method does.`)]
      : []),
  ];
}

/** A label, a card or a word at the handing over that promises more than the method claims. */
export const labelBeyondClaim = rule({
  id: 'label-beyond-claim',
  level: 'stop',
  title: 'A label says no more than the method claims',
  looksAt:
    'The steps that label, pack and hand over: the food that their texts name, and the food, the place of the resin, the papers and the market that their label and care card were worked out for; beside the claim, what food touches, the papers and the market in the head of the method.',
  why: 'The method was judged by what its head claims; whoever gets the piece goes by the label.',
  citation: { source: 'fda-food-code', locator: '4-101.17(B)', seen: 'quoted' },
  find(worked) {
    const claimed = claimedBy(worked);
    return stepsThat(worked, 'label', 'pack', 'hand-over').flatMap((step) => [
      ...inTexts(step, claimed),
      ...step.calculations
        .filter(({ use }) => use === 'food-contact' || use === 'care-card')
        .flatMap((calculation) => inLabel(worked, calculation, claimed)),
    ]);
  },
});
