import type { Basis, Citation } from '../evidence/index.ts';
import { rulesOfMarket } from './rules.ts';
import type { FoodRuleId, FoodStanding, Market } from './types.ts';

/**
 * How far a board, or one part of it, goes with food; from the freest to the strictest. None of them says that it is safe.
 *
 * - `usual`: of the usual materials, in their usual use.
 * - `with-care`: as usual, within limits that the label must give.
 * - `ask-the-maker`: only a written declaration of the resin's or finish's maker can say.
 * - `not-enough-known`: neither rules nor sources that were read speak of it.
 * - `not-yet`: not cured through.
 * - `better-not`: a rule or a source speaks against it.
 */
export const foodLevels = ['usual', 'with-care', 'ask-the-maker', 'not-enough-known', 'not-yet', 'better-not'] as const;

/** How far a board may be used with food: one of `foodLevels`. */
export type FoodLevel = (typeof foodLevels)[number];

/** A level in the words that head a list. */
export const foodLevelWords: Readonly<Record<FoodLevel, string>> = {
  usual: 'Usual materials for food',
  'with-care': 'With care',
  'ask-the-maker': 'Ask the maker first',
  'not-enough-known': 'Not enough known',
  'not-yet': 'Not yet cured',
  'better-not': 'Better not',
};

/** The strictest of some levels; `usual` where there are none. */
export function strictestLevel(levels: readonly FoodLevel[]): FoodLevel {
  return levels.reduce<FoodLevel>(
    (strictest, each) => (foodLevels.indexOf(each) > foodLevels.indexOf(strictest) ? each : strictest),
    'usual',
  );
}

/** What lies on the board. */
export const foodKinds = ['dry', 'moist', 'fatty', 'hot'] as const;

/** What lies on the board: one of `foodKinds`. */
export type FoodKind = (typeof foodKinds)[number];

/**
 * Where resin lies in a board: in the face where food lies, in that face but apart from food, over a part of the board as a coat that food is kept
 * off, or in the underside only.
 */
export const resinPlaces = ['under-food', 'beside-food', 'coat', 'underside'] as const;

/** Where resin lies in a board: one of `resinPlaces`. */
export type ResinPlace = (typeof resinPlaces)[number];

/** What one part of a board says of the whole. */
export interface FoodFinding {
  part: 'wood' | 'resin' | 'finish' | 'cure' | 'use';
  level: FoodLevel;
  /** What was found, one or two sentences. */
  text: string;
  /** Rules of the market that it rests on. */
  rules: readonly FoodRuleId[];
  basis: Basis;
  citation?: Citation;
}

/** What a wood's own assessment says, as far as it is looked at here. */
export interface WoodPart {
  /** Common name in sentence case, for example `Sugar maple`. */
  name: string;
  level: 'usual' | 'with-care' | 'not-enough-known' | 'better-not';
  summary: string;
  reasons: readonly {
    rule: string;
    speaks: 'for' | 'against' | 'unknown';
    text: string;
    basis: Basis;
    citation?: Citation | undefined;
  }[];
}

/** A cast resin in the board. */
export interface ResinPart {
  /** Sentence case, for example `Slow casting epoxy, 2:1 by volume`. */
  name: string;
  place: ResinPlace;
  /** How much of the board's length is coated, mm; for a coat whose length was told. */
  coatedLength?: number;
  /** True where its maker has declared in writing that it may be used so, for this food and market, bisphenols included. */
  declared: boolean;
}

/** A finish on the board. */
export interface FinishPart {
  /** Sentence case, for example `Mineral oil`. */
  name: string;
  standing: FoodStanding;
  /** True for a film of epoxy, which stands as resin where food lies. */
  epoxy: boolean;
  /** True for a finish that lies on the wood as a film. */
  film: boolean;
  /** False where hot water and soap go through it. */
  washable: boolean;
  /** True where its maker has declared in writing that it may be used so, for this food and market. */
  declared: boolean;
}

const woodRules: Readonly<Record<Market, readonly FoodRuleId[]>> = {
  us: ['food-code-4-101-17', 'food-code-4-101-11', 'food-code-4-501-12'],
  eu: ['eu-1935-2004'],
};

const resinRules: Readonly<Record<Market, readonly FoodRuleId[]>> = {
  us: ['cfr-21-175-300', 'food-code-4-101-11', 'food-code-4-202-11'],
  eu: ['eu-2024-3190', 'eu-1895-2005', 'eu-10-2011', 'eu-1935-2004'],
};

/** What the wood says: its own assessment, as it stands. */
export function woodFinding(wood: WoodPart, market: Market): FoodFinding {
  return {
    part: 'wood',
    level: wood.level,
    text:
      market === 'us'
        ? `${wood.name}: ${lower(wood.summary)}.`
        : `${wood.name}: ${lower(wood.summary)}. The yardstick is American; the Union names no wood.`,
    rules: woodRules[market],
    basis: 'shop-practice',
  };
}

const declaredResin =
  'Its maker’s written declaration covers it. The joint stays: food works into any gap between wood and resin.';

const resinWords: Readonly<Record<Market, Readonly<Record<ResinPlace, string>>>> = {
  us: {
    coat: 'It lies as a coat over a part of the board. What runs or rolls over that part touches resin: 21 CFR 175.300 then speaks of it as under food.',
    'under-food':
      'Food lies on cast resin. 21 CFR 175.300 lists substances for a film, describes no thick casting, and its list was not found to hold the usual slow hardeners. Only the maker of this resin can say.',
    'beside-food':
      'Resin lies in the same face as food. What runs or rolls over it touches resin: 21 CFR 175.300 then speaks of it as under food.',
    underside:
      'Resin lies in the underside. A board is turned over sooner or later: the label says which face is for food.',
  },
  eu: {
    coat: 'It lies as a coat over a part of the board, so food can foreseeably touch it: Regulation (EC) 1935/2004 and the ban on bisphenol A, which names coatings, reach it. Only the maker of this resin can say.',
    'under-food':
      'Food lies on cast resin. Regulation (EU) 2024/3190 forbids bisphenol A in the making of resins for food, and usual epoxy starts from it. Without its maker’s declaration that this one does not, no food on it.',
    'beside-food':
      'Resin lies in the same face as food, so it can foreseeably touch it: Regulation (EC) 1935/2004 and the ban on bisphenol A reach it. Only the maker of this resin can say.',
    underside:
      'Resin lies in the underside. A board is turned over sooner or later: the label says which face is for food. Whether the rules on resin reach it there is for your authority.',
  },
};

/** What a cast resin says, by where it lies, the market and the food. */
export function resinFinding(resin: ResinPart, market: Market, food: FoodKind): FoodFinding {
  const found = (level: FoodLevel, text: string, basis: Basis): FoodFinding => ({
    part: 'resin',
    level,
    text: `${resin.name}: ${text}`,
    rules: resinRules[market],
    basis,
  });
  if (resin.place === 'under-food' && food === 'hot') {
    return found(
      'better-not',
      'hot food softens most epoxy, and warmth drives more out of it. No hot food on resin, whatever its papers say of cold.',
      'shop-practice',
    );
  }
  if (resin.place === 'beside-food' && food === 'hot') {
    return found(
      'better-not',
      'a hot dish slides onto resin in the same face sooner or later, softens it and drives more out of it. A trivet that covers the inlay, or no hot food.',
      'shop-practice',
    );
  }
  if (resin.place === 'coat' && food === 'hot') {
    return found(
      'better-not',
      'a hot dish slides onto the coat sooner or later, softens it and drives more out of it. A trivet that stays on the bare wood, or no hot food.',
      'shop-practice',
    );
  }
  if (resin.place === 'underside') return found('with-care', lower(resinWords[market].underside), 'shop-practice');
  if (resin.declared) return found('with-care', lower(declaredResin), 'supplier-sheet');
  const text = lower(resinWords[market][resin.place]);
  if (market === 'eu' && resin.place === 'under-food') return found('better-not', text, 'published');
  const apart = resin.place === 'beside-food' || resin.place === 'coat';
  if (market === 'us' && apart && food === 'dry') return found('with-care', text, 'published');
  return found('ask-the-maker', text, 'published');
}

const fromStanding: Readonly<Record<FoodStanding['level'], FoodLevel>> = {
  listed: 'usual',
  'ask-the-maker': 'ask-the-maker',
  silent: 'not-enough-known',
  'better-not': 'better-not',
};

/** What a finish says: where it stands by the rules of this market, or its maker's declaration. */
export function finishFinding(finish: FinishPart, market: Market, food: FoodKind): FoodFinding {
  const { standing, name } = finish;
  const own = rulesOfMarket(standing.rules, market).map(({ id }) => id);
  const frame: readonly FoodRuleId[] = market === 'eu' ? [...new Set<FoodRuleId>(['eu-1935-2004', ...own])] : own;
  const found = (level: FoodLevel, text: string, rest: Partial<FoodFinding> = {}): FoodFinding => ({
    part: 'finish',
    level,
    text: `${name}: ${text}`,
    rules: frame,
    basis: standing.basis,
    ...(standing.citation ? { citation: standing.citation } : {}),
    ...rest,
  });
  if (standing.level === 'better-not') return found('better-not', sentence(standing.summary));
  if (finish.film && food === 'hot') {
    return found(
      'better-not',
      'hot food softens a film and goes through it. A plate or a cloth between, whatever its papers say of cold.',
      {
        basis: 'shop-practice',
      },
    );
  }
  if (!finish.washable && food !== 'dry') {
    return found(
      'better-not',
      'hot water and soap go through it, and a board for such food is washed. For dry food only.',
      {
        basis: 'shop-practice',
      },
    );
  }
  if (finish.declared) {
    const inUse = standing.inUse ?? [];
    return {
      part: 'finish',
      level: inUse.length > 0 ? 'with-care' : 'usual',
      text: [`${name}: its maker’s written declaration covers it.`, ...inUse].join(' '),
      rules: frame,
      basis: 'supplier-sheet',
    };
  }
  if (finish.epoxy && market === 'eu') {
    return found('better-not', lower(resinWords.eu['under-food']), { rules: resinRules.eu, basis: 'published' });
  }
  const level = fromStanding[standing.level];
  // The frame of the Union lists no substance: a finish that only American rules list is not listed there.
  const listedHere = market === 'us' || own.some((id) => id !== 'eu-1935-2004');
  if (listedHere || level !== 'usual') return found(level, sentence(standing.summary));
  return {
    part: 'finish',
    level: 'ask-the-maker',
    text: `${name}: American rules list it under conditions; no measure of the Union’s own was found. Article 3 and national law decide, so ask its maker for a declaration.`,
    rules: frame,
    basis: standing.basis,
  };
}

/** What hot food says of any board. */
export function hotFinding(food: FoodKind): FoodFinding[] {
  if (food !== 'hot') return [];
  return [
    {
      part: 'use',
      level: 'with-care',
      text: 'Hot food: it softens oil, wax and film, dries one face of the board and asks for hotter tests. A plate or a cloth between, and no pans from the stove.',
      rules: [],
      basis: 'shop-practice',
    },
  ];
}

/** A summary, which has no full stop of its own, as a sentence. */
function sentence(text: string): string {
  return lower(/[.!?]$/.test(text) ? text : `${text}.`);
}

/** A sentence that goes on after a colon; a name in capitals, a rule's number or a proper name keeps its letter. */
function lower(text: string): string {
  return /^(?:[A-Z]{2}|\d|Regulation)/.test(text) ? text : `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}
