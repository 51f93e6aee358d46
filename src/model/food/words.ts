import { amount, listed } from '../quantity/index.ts';
import type { AllergenNote } from './allergens.ts';
import type { FinishPart, FoodKind, FoodLevel, ResinPart, WoodPart } from './standing.ts';
import type { Market } from './types.ts';
import { woodInSentence } from './wood-name.ts';

/** What a label is written from. */
export interface LabelFacts {
  market: Market;
  food: FoodKind;
  /** Each wood that is in it. */
  woods: readonly WoodPart[];
  resin?: ResinPart;
  finish?: FinishPart;
  /** True where the wood has no finish at all; not the same as a finish that is not told. */
  bare: boolean;
  allergens: readonly AllergenNote[];
  /** Levels of the parts, as they were found. */
  woodLevel?: FoodLevel;
  resinLevel?: FoodLevel;
  finishLevel?: FoodLevel;
}

/** Words that do not belong on a label, and why. */
export interface BarredWords {
  words: string;
  why: string;
}

const served: Readonly<Record<FoodKind, string>> = {
  dry: 'bread, biscuits and whole fruit',
  moist: 'bread, fruit and vegetables',
  fatty: 'bread, fruit, cheese and sausage',
  hot: 'food on a plate or a cloth',
};

const paperWords: Readonly<Record<Market, string>> = {
  us: 'letter on food contact',
  eu: 'declaration of compliance',
};

/** The woods in one line: in the United States, where there is one, with the one thing that a code says of it. */
function woodLine(woods: readonly [WoodPart, ...WoodPart[]], market: Market): string {
  const [wood, ...others] = woods;
  if (others.length > 0) return `Made of ${listed(woods.map(({ name }) => woodInSentence(name)))}.`;
  const named = wood.reasons.some(({ rule, speaks }) => rule === 'named-by-the-code' && speaks === 'for');
  return market === 'us' && named
    ? `Made of ${woodInSentence(wood.name)}, sold as hard maple, a wood that the FDA Food Code names for cutting boards.`
    : `Made of ${woodInSentence(wood.name)}.`;
}

/** The name of a reader's own data sheet may hold a brand or a promise: the label says what it is and no more. */
function resinLine({ place, coatedLength, declared }: ResinPart, market: Market, serves: boolean): string {
  // Beside a line that keeps food off the whole board, one that sends it to the wood would contradict.
  if (place === 'underside')
    return `The underside holds epoxy resin: ${serves ? 'food on the other face only' : 'keep food off it'}.`;
  const end =
    coatedLength === undefined
      ? 'The coated part is'
      : `The coated end, ${amount(coatedLength, 'mm')} of the length, is`;
  const what = place === 'coat' ? end : 'The inlay is';
  const wood = place === 'coat' ? 'keep food on the bare wood' : 'keep food on the wood';
  if (!declared) return `${what} epoxy resin: ${serves ? wood : 'keep food off it'}.`;
  return `${what} epoxy resin. Its maker’s ${paperWords[market]} can be seen at the shop.`;
}

function finishLine({ name, declared }: FinishPart, market: Market): string {
  if (!declared) return `Finished with ${lower(name)}.`;
  return `Finished with ${lower(name)}. Its maker’s ${paperWords[market]} can be seen at the shop.`;
}

/** The use in one line: the strictest part decides what may lie on it. */
function purposeLine(facts: LabelFacts): string {
  const against = (rule: string) =>
    facts.woodLevel === 'better-not' &&
    facts.woods.some(({ reasons }) => reasons.some((each) => each.rule === rule && each.speaks === 'against'));
  if (against('poison')) return 'For decoration. Not for food.';
  const coldResin = facts.resinLevel === 'better-not' && facts.food !== 'hot';
  if (coldResin || facts.finishLevel === 'better-not') return 'For decoration. Not for contact with food.';
  if (against('sensitiser')) return 'For serving on a plate or paper, not for food on the bare wood.';
  if (facts.woodLevel === 'not-enough-known') return 'For serving on a plate or paper.';
  const asking = facts.finishLevel === 'ask-the-maker' || facts.finishLevel === 'not-enough-known';
  if (facts.resinLevel === 'ask-the-maker') {
    if (facts.resin?.place === 'under-food') return 'For serving on a plate or paper, not for food on the resin.';
    if (facts.market === 'us' && !asking) return `For serving ${served.dry}, on the wood only.`;
  }
  if (asking || facts.resinLevel === 'ask-the-maker') return 'For serving on a plate or paper.';
  if (facts.woodLevel === 'better-not') return `For serving ${served[facts.food]}, not for cutting on.`;
  return `For serving ${served[facts.food]}.`;
}

/** The words of a label, by what they speak of; sentences. */
export interface LabelWords {
  /** Wood, resin and finish. */
  made: readonly string[];
  /** What may lie on it. */
  purpose: string;
  allergies: readonly string[];
  avoid: string;
  /** What the market asks for at the end. */
  closing: string;
}

/**
 * Words for a label that claim no more than is known. They promise nothing about health and quote no mark of a rule;
 * where the parts do not allow food, they say so.
 */
export function labelWords(facts: LabelFacts): LabelWords {
  const { market, resin, finish, allergens } = facts;
  const [wood, ...others] = facts.woods;
  const purpose = purposeLine(facts);
  const serves = !/^For decoration|on a plate/.test(purpose);
  return {
    made: [
      ...(wood ? [woodLine([wood, ...others], market)] : []),
      ...(resin ? [resinLine(resin, market, serves)] : []),
      ...(finish ? [finishLine(finish, market)] : []),
      ...(facts.bare ? ['No finish: bare wood.'] : []),
    ],
    purpose,
    allergies: allergens.flatMap(({ label }) => (label ? [label] : [])),
    avoid:
      resin || finish?.epoxy
        ? 'No hot pans, no flame, no dishwasher, no soaking.'
        : 'No dishwasher, no soaking, no hot pans.',
    closing:
      market === 'us'
        ? 'Not tested or certified by any authority. Where food is sold or served to the public, the local food code decides.'
        : 'Maker: (name and address). Made on: (date or batch).',
  };
}

const always: readonly BarredWords[] = [
  { words: 'food safe', why: 'No rule gives a board these words, and nobody has tested this one.' },
  { words: 'non-toxic', why: 'A promise about every dose and every person; nobody here can show it.' },
  {
    words: 'antibacterial, hygienic, germ-free',
    why: 'Research on wooden boards is mixed, and oil changed its results.',
  },
  { words: 'dishwasher safe, heat-proof', why: 'Wood moves and cracks when it is soaked and heated.' },
  { words: 'allergen-free', why: 'Nothing was read that could show it of any wood, oil or resin.' },
];

const byMarket: Readonly<Record<Market, readonly BarredWords[]>> = {
  us: [
    {
      words: 'FDA approved, FDA certified',
      why: 'The agency lists substances with conditions of use. It approves no board, no wood and no finished inlay.',
    },
    {
      words: 'meets the FDA Food Code',
      why: 'The Code binds food establishments where a state adopts it; an inspector there decides.',
    },
  ],
  eu: [
    {
      words: 'EU approved',
      why: 'No authority of the Union approves boards; the maker answers for Article 3 of (EC) 1935/2004.',
    },
  ],
};

/** Words that the label must not carry, and why, for this market and these parts. */
export function barredWords({ market, resin, finish }: Pick<LabelFacts, 'market' | 'resin' | 'finish'>): BarredWords[] {
  const epoxy = resin !== undefined || finish?.epoxy === true;
  const papers = [resin, finish].every((part) => part === undefined || part.declared);
  return [
    ...always,
    ...byMarket[market],
    ...(epoxy
      ? [
          {
            words: 'BPA-free',
            why: 'Usual epoxy is made with bisphenol A. Only its maker’s full statement on bisphenols can say otherwise, and then in the maker’s words.',
          },
          {
            words: market === 'us' ? 'FDA compliant epoxy' : 'food-grade epoxy',
            why:
              market === 'us'
                ? '21 CFR 175.300 looks at a recipe, a cure and a test. A name on a can is none of them.'
                : 'There is no such grade in the Union’s rules.',
          },
        ]
      : []),
    ...(market === 'eu'
      ? [
          {
            words: 'for food contact, the glass-and-fork sign',
            why: papers
              ? 'With them you declare that Article 3 is met. Hold every paper of the list, and ask your authority, before you use them.'
              : 'With them you declare that Article 3 is met, and the papers that could show it are not in your hands.',
          },
        ]
      : []),
  ];
}

function lower(text: string): string {
  return `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}
