import type { FoodKind } from './standing.ts';
import type { FoodRuleId, Market } from './types.ts';

/** A paper to ask a supplier for, and what it must say. */
export interface PaperToAskFor {
  id: string;
  /** Who gives it. */
  from: 'maker of the resin' | 'maker of the finish' | 'maker of the pigment' | 'wood yard';
  title: string;
  /** What must stand in it. */
  says: string;
  rules: readonly FoodRuleId[];
}

/** What is on the board, as far as papers go. */
export interface PapersFor {
  market: Market;
  food: FoodKind;
  wood: boolean;
  resin: boolean;
  /** `oil` for one that never dries, `epoxy` for a film of epoxy, `other` for the rest; absent where the board is bare. */
  finish?: 'oil' | 'epoxy' | 'other';
}

const usTests: Readonly<Record<FoodKind, string>> = {
  dry: 'for dry solids (food type VIII) 21 CFR 175.300(d) asks no test at the end; the list of substances still holds',
  moist: 'water at 120 °F (49 °C) for 24 hours, and 8 % alcohol the same for drinks',
  fatty: 'heptane at 70 °F (21 °C) for 30 minutes, the result divided by five, beside the test in water',
  hot: 'below 150 °F (66 °C) water at 150 °F for 2 hours; above it, filled boiling and cooled to 100 °F (38 °C), and heptane at 120 °F (49 °C) for 15 minutes',
};

const foodWords: Readonly<Record<FoodKind, string>> = {
  dry: 'dry food',
  moist: 'moist food',
  fatty: 'fatty food',
  hot: 'hot food',
};

/** What a test report must have been made with, to fit the food. */
export function testConditions(market: Market, food: FoodKind): string {
  return market === 'us'
    ? `Conditions of 21 CFR 175.300(d) for ${foodWords[food]} at a board’s use: ${usTests[food]}. Limit: (c)(4), repeated use, not a container.`
    : `Test liquid, time and temperature, and that they stand for ${foodWords[food]} on an article used again; the result for the surface, in mg/dm², and for single substances.`;
}

/** The papers that this board needs before its maker can say anything of food. */
export function papersToAskFor({ market, food, wood, resin, finish }: PapersFor): PaperToAskFor[] {
  const epoxy = resin || finish === 'epoxy';
  const maker = resin ? 'maker of the resin' : 'maker of the finish';
  return [
    ...(epoxy
      ? [
          {
            id: 'resin-declaration',
            from: maker,
            title: market === 'us' ? 'Letter on 21 CFR 175.300' : 'Declaration of compliance',
            says:
              market === 'us'
                ? 'That resin, hardener, thinner and colour, mixed and cured as its sheet says, meet 21 CFR 175.300 for repeated use, cast at your depth on wood; for which food and up to which temperature.'
                : 'That the cured system meets Article 3 of (EC) 1935/2004 and the rules it falls under, for which food, how long and how hot, signed, dated and with the name of who answers for it.',
            rules:
              market === 'us'
                ? (['cfr-21-175-300'] as const)
                : (['eu-1935-2004', 'eu-1895-2005', 'eu-10-2011'] as const),
          } satisfies PaperToAskFor,
          {
            id: 'bisphenols',
            from: maker,
            title: 'Full statement on bisphenols',
            says: 'Whether resin, hardener or thinner were made with bisphenol A, another bisphenol or a derivative such as BADGE: made with, not only left over in. ‘BPA-free’ alone does not say it.',
            rules: market === 'us' ? (['cfr-21-175-300'] as const) : (['eu-2024-3190', 'eu-1895-2005'] as const),
          } satisfies PaperToAskFor,
          {
            id: 'migration-test',
            from: maker,
            title: 'Test report on what passes into food',
            says: testConditions(market, food),
            rules: market === 'us' ? (['cfr-21-175-300'] as const) : (['eu-10-2011', 'eu-1895-2005'] as const),
          } satisfies PaperToAskFor,
          {
            id: 'pigment',
            from: 'maker of the pigment',
            title: 'Statement on the colour',
            says: 'What is in the pigment or dye, and whether it may be used in plastics for food; a statement on the resin does not cover a colour of another maker.',
            rules: market === 'us' ? (['cfr-21-175-300'] as const) : (['eu-1935-2004'] as const),
          } satisfies PaperToAskFor,
        ]
      : []),
    ...(finish === 'oil'
      ? [
          {
            id: 'oil-grade',
            from: 'maker of the finish',
            title: 'Grade of the oil',
            says:
              market === 'us'
                ? 'That it meets 21 CFR 172.878, with the lot. ‘Technical white’ oil is another grade.'
                : 'Its grade and purity, and a declaration that it may be used on articles for food.',
            rules: market === 'us' ? (['cfr-21-178-3620', 'cfr-21-172-878'] as const) : (['eu-1935-2004'] as const),
          } satisfies PaperToAskFor,
        ]
      : []),
    ...(finish === 'other'
      ? [
          {
            id: 'finish-declaration',
            from: 'maker of the finish',
            title: market === 'us' ? 'Letter on food contact' : 'Declaration of compliance',
            says: `For which food the cured finish is meant, under which rule, after how many days and on which wood; which oils, resins and driers are in it. ${epoxy ? 'Tests as for the resin.' : testConditions(market, food)}`,
            rules: market === 'us' ? (['cfr-21-175-300'] as const) : (['eu-1935-2004'] as const),
          } satisfies PaperToAskFor,
        ]
      : []),
    ...(epoxy || finish === 'other'
      ? [
          {
            id: 'data-sheets',
            from: maker,
            title: 'Data sheet and safety data sheet',
            says: 'Days to full cure and at which temperature, not only to the touch; what is in it that can hurt, and the date of the sheet.',
            rules: [],
          } satisfies PaperToAskFor,
        ]
      : []),
    ...(wood
      ? [
          {
            id: 'wood-origin',
            from: 'wood yard',
            title: 'Name and past of the wood',
            says: 'The species, by its botanical name where there is doubt, and that it was not treated, fumigated or glued up of unknown stock.',
            rules: market === 'us' ? (['food-code-4-101-17', 'cfr-21-178-3800'] as const) : (['eu-1935-2004'] as const),
          } satisfies PaperToAskFor,
        ]
      : []),
  ];
}
