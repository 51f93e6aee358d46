import { expect } from 'vitest';
import { finishPartOf, resinPartOf } from '../../src/model/finish/food-board.ts';
import { finishById } from '../../src/model/finish/kinds.ts';
import {
  type BoardForFood,
  type FoodKind,
  type FoodLevel,
  foodKinds,
  foodRuleById,
  foodStatement,
  type Market,
  markets,
  type ResinPlace,
} from '../../src/model/food/index.ts';
import { convert } from '../../src/model/quantity/index.ts';
import { resinOf } from '../../src/model/resin/kinds.ts';
import { speciesById } from '../../src/model/species/index.ts';
import { woodPartOf } from '../../src/model/species/wood-part.ts';
import { hold, result, workedCase } from './statements.ts';

// What the pages on food and care say of levels and limits, worked out again.

const level = (board: Omit<BoardForFood, 'market'>, market: Market): FoodLevel =>
  foodStatement({ ...board, market }).level;
const finishLevels = (ids: readonly string[], food: FoodKind = 'moist') =>
  markets.map((market) => [
    ...new Set(
      ids.map((id) => {
        const finish = finishById(id);
        if (!finish) throw new Error(`no finish ${id}`);
        return level({ food, finish: finishPartOf(finish, { declared: false, daysSince: 400 }) }, market);
      }),
    ),
  ]);
const resinLevel = (place: ResinPlace, market: Market, food: FoodKind) =>
  level({ food, resin: resinPartOf(resinOf('slow-casting-2-1'), place, { declared: false, daysSince: 400 }) }, market);
const resinLevels = (place: ResinPlace, market: Market, foods: readonly FoodKind[] = ['dry', 'moist', 'fatty']) => [
  ...new Set(foods.map((food) => resinLevel(place, market, food))),
];
const woodLevel = (id: string) => {
  const species = speciesById(id);
  if (!species) throw new Error(`no wood ${id}`);
  return markets.map((market) => level({ food: 'dry', wood: woodPartOf(species) }, market));
};
const fda = (at: number) => foodRuleById('cfr-21-175-300').figures[at]?.value ?? Number.NaN;
const eu = foodRuleById('eu-10-2011').figures[0]?.value ?? Number.NaN;

hold({
  'food-contact': [
    [
      'listed oils',
      () => {
        expect(finishLevels(['mineral-oil', 'oil-wax-paste'])).toEqual([['usual'], ['ask-the-maker']]);
        return '| food-grade mineral oil, beeswax, carnauba | listed, under conditions | ask the maker |';
      },
    ],
    [
      'pure drying oils',
      () => {
        expect(finishLevels(['linseed-oil', 'tung-oil', 'walnut-oil'])).toEqual([['usual'], ['ask-the-maker']]);
        return '| pure linseed, tung or walnut oil, cured | listed for coatings, under conditions | ask the maker |';
      },
    ],
    [
      'recipes',
      () => {
        const recipes = ['oil-with-driers', 'hard-wax-oil', 'varnish'];
        expect(finishLevels(recipes)).toEqual([['ask-the-maker'], ['ask-the-maker']]);
        return '| oil with driers, hard-wax oil, varnish | ask the maker | ask the maker |';
      },
    ],
    [
      'resin where food lies',
      () => {
        expect(resinLevels('under-food', 'us')).toEqual(['ask-the-maker']);
        expect(resinLevels('under-food', 'eu')).toEqual(['better-not']);
        return '| resin where food lies | ask the maker | better not, without a declaration on bisphenols |';
      },
    ],
    [
      'resin apart from food',
      () => {
        for (const place of ['beside-food', 'coat'] as const) {
          expect(resinLevel(place, 'us', 'dry')).toBe('with-care');
          expect(resinLevels(place, 'us', ['moist', 'fatty'])).toEqual(['ask-the-maker']);
          expect(resinLevels(place, 'eu')).toEqual(['ask-the-maker']);
        }
        return '| resin in the same face, or as a coat on a part of the board, apart from food | with care for dry food, else ask the maker | ask the maker |';
      },
    ],
    [
      'resin in the underside',
      () => {
        for (const market of markets) expect(resinLevels('underside', market, foodKinds)).toEqual(['with-care']);
        return '| resin in the underside | with care | with care |';
      },
    ],
    [
      'hot food on resin',
      () => {
        for (const market of markets) expect(resinLevel('under-food', market, 'hot')).toBe('better-not');
        return '| hot food on resin | better not | better not |';
      },
    ],
    [
      'woods',
      () => {
        expect(woodLevel('sugar-maple')).toEqual(['usual', 'usual']);
        for (const id of ['indian-rosewood', 'eastern-white-pine', 'pacific-yew']) {
          expect(woodLevel(id)).toEqual(['better-not', 'better-not']);
        }
        return 'a soft or a poisonous wood | better not | better not |';
      },
    ],
    [
      'a week for casting resin',
      () => {
        const cure = resinOf('slow-casting-2-1')?.figures.cure;
        expect(cure?.value).toBe(7 * 86_400);
        expect(cure?.basis).toBe('shop-practice');
        return 'a casting resin about a week at room temperature (common practice; the sheet wins)';
      },
    ],
    [
      'the words for the label of the worked case',
      () => {
        const { calculator, inputs } = workedCase('food-contact');
        expect(inputs).toMatchObject({ resinPlace: 'beside-food', food: 'dry', papers: 'none', market: 'us' });
        expect(result(calculator, inputs).verdict.text).toContain('For serving bread, biscuits and whole fruit.');
        return '‘For serving bread, biscuits and whole fruit. Keep food on the wood, not on the resin.’';
      },
    ],
    [
      'the two limits',
      () =>
        `**${fda(0)} mg/in²**, which is ${convert(fda(0), 'mg/[sin_i]', 'mg/dm2').toFixed(0)} mg/dm²: paragraph (c)(4), repeated use, not a container. The ${fda(3)} mg/in² that is often quoted is for small single-use containers. The Union’s limit for plastics is **${eu} mg/dm²**, which is ${convert(eu, 'mg/dm2', 'mg/[sin_i]').toFixed(3)} mg/in².`,
    ],
    [
      'how many times',
      () => `That does not make the one ${(convert(fda(0), 'mg/[sin_i]', 'mg/dm2') / eu).toFixed(0)} times stricter.`,
    ],
  ],
});
