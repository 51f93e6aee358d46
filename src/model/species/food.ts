import { type Citation, weakestBasis } from '../evidence/index.ts';
import type { FoodAssessment, FoodReason, Species, Statement } from './types.ts';

/** What the rules look at: a wood without its assessment. */
export type FoodInput = Omit<Species, 'food'>;

/** How far one rule lets a wood go; the strictest of all rules gives the level. */
type Verdict = FoodAssessment['level'];

/** A reason, what it does to the level, and the few words that it lends to the summary. */
export interface FoodFinding {
  reason: FoodReason;
  verdict: Verdict;
  words: string;
}

/** One rule: what it looks at, and what it finds in a wood, if anything. */
export interface FoodRule {
  id: string;
  looksAt: string;
  find(wood: FoodInput): FoodFinding | null;
}

/** Whose judgement this is, as the page of a wood says beside its assessment. */
export const foodScope =
  'A judgement of suitability, not a certificate. Its yardstick is FDA Food Code 4-101.17: “hard maple or an equally hard, close-grained wood”. The Code gives no number, so the limits are ours, from shop practice. It binds food establishments where a state adopts it; where food is sold or served to the public, the local code and its inspector decide.';

/** Side hardness of hard maple at 12 % moisture content, N (2021 Table 5-3a, Maple: Sugar). */
const hardMaple = 6400;
/** From here we call a wood as hard as hard maple, N: six sevenths of it, within the spread between boards. */
const asHard = 5500;
/** Below half of hard maple, a knife marks a board at once, N. */
const halfAsHard = hardMaple / 2;

const code: Citation = { source: 'fda-food-code', locator: '4-101.17 (B)', seen: 'quoted' };
const strictness: readonly Verdict[] = ['usual', 'with-care', 'not-enough-known', 'better-not'];

function isNamed(wood: FoodInput): boolean {
  return wood.namedByFoodCode === true;
}

function fromStatement(
  rule: string,
  speaks: FoodReason['speaks'],
  said: Statement,
  before: string,
  after: string,
): FoodReason {
  return {
    rule,
    speaks,
    text: `${before}${said.text}.${after}`,
    basis: said.basis,
    ...(said.citation ? { citation: said.citation } : {}),
  };
}

const named: FoodRule = {
  id: 'named-by-the-code',
  looksAt: 'whether the Food Code names the wood',
  find(wood) {
    if (!isNamed(wood)) return null;
    const text =
      'The FDA Food Code names hard maple for cutting boards, blocks, bakers’ tables and bowls; the trade sells this wood as hard maple.';
    return {
      reason: { rule: 'named-by-the-code', speaks: 'for', text, basis: 'published', citation: code },
      verdict: 'usual',
      words: '',
    };
  },
};

const hardness: FoodRule = {
  id: 'hard-enough',
  looksAt: 'side hardness at 12 % moisture content beside that of hard maple',
  find(wood) {
    const dry = wood.figures.sideHardness12;
    const green = wood.figures.sideHardnessGreen;
    // Wood hardens as it dries, so a green figure that is high enough settles the matter; a low one settles nothing.
    const figure = dry ?? (green && green.value >= halfAsHard ? green : null);
    const rule = 'hard-enough';
    if (figure === null) {
      const text = 'Its dry side hardness was not read in any source, so it cannot be set beside hard maple.';
      return {
        reason: { rule, speaks: 'unknown', text, basis: 'shop-practice' },
        verdict: 'not-enough-known',
        words: 'hardness not known',
      };
    }
    const share = Math.round((100 * figure.value) / hardMaple);
    const state = dry ? '' : ', even green';
    const basis = weakestBasis([figure.basis, 'shop-practice']);
    const give = (speaks: FoodReason['speaks'], rest: string, verdict: Verdict, words: string): FoodFinding => ({
      reason: {
        rule,
        speaks,
        text: `Side hardness is ${share} % of hard maple’s${state}: ${rest}`,
        basis,
        ...(figure.citation ? { citation: figure.citation } : {}),
      },
      verdict,
      words,
    });
    if (figure.value >= asHard)
      return give(
        'for',
        figure.value >= hardMaple ? 'at least as hard.' : 'nearly as hard, within the spread between boards.',
        'usual',
        '',
      );
    if (isNamed(wood)) return give('for', 'softer on average, yet sold as hard maple.', 'usual', '');
    if (figure.value >= halfAsHard) {
      return give(
        'against',
        'good to serve on, but a knife marks it sooner, so it needs resurfacing sooner.',
        'with-care',
        'softer than hard maple',
      );
    }
    return give(
      'against',
      'a knife scores it at once, and scored wood is hard to clean. Serve on it rather than cut on it.',
      'better-not',
      'soft under a knife',
    );
  },
};

const pores: FoodRule = {
  id: 'close-grained',
  looksAt: 'whether pores are closed, plugged or open on a planed face',
  find(wood) {
    if (wood.kind === 'softwood') return null;
    const rule = 'close-grained';
    const { openness, statements } = wood.pores;
    const said = wood.tyloses && openness !== 'closed' ? wood.tyloses : statements[0];
    const basis = said?.basis ?? 'shop-practice';
    const cited = said?.citation ? { citation: said.citation } : {};
    switch (openness) {
      case 'closed':
        return {
          reason: {
            rule,
            speaks: 'for',
            text: 'Its pores are small: close-grained, as the Code asks.',
            // A source gives the arrangement or size of the pores; that this is “close-grained” is the trade's word.
            basis: weakestBasis([basis, 'shop-practice']),
            ...cited,
          },
          verdict: 'usual',
          words: '',
        };
      case 'plugged':
        return {
          reason: {
            rule,
            speaks: 'against',
            text: 'Its pores are large. In heartwood they are usually plugged by tyloses, which keeps liquids out; sapwood is open. It is not close-grained.',
            basis,
            ...cited,
          },
          verdict: 'with-care',
          words: 'large pores, plugged in the heartwood',
        };
      case 'open':
        return {
          reason: {
            rule,
            speaks: 'against',
            text: 'Its pores are large and open: they hold food and moisture. It is not close-grained.',
            basis,
            ...cited,
          },
          verdict: 'with-care',
          words: 'open pores',
        };
      default:
        return {
          reason: {
            rule,
            speaks: 'unknown',
            text: 'Nothing was read on whether its pores are open or closed.',
            basis: 'shop-practice',
          },
          verdict: 'not-enough-known',
          words: 'pores not known',
        };
    }
  },
};

const softwood: FoodRule = {
  id: 'softwood',
  looksAt: 'whether the wood is a softwood',
  find(wood) {
    if (wood.kind !== 'softwood') return null;
    const text =
      'A softwood: soft bands of earlywood between hard ones, often with resin or a strong smell that food takes up. Some state codes allow single-use cedar planks for cooking seafood.';
    return {
      reason: { rule: 'softwood', speaks: 'against', text, basis: 'shop-practice' },
      verdict: 'better-not',
      words: 'softwood, for serving at most',
    };
  },
};

/** TRGS 906 lists nearly every hardwood, hard maple too: it is about dust in the lungs and says nothing of a board. */
function isOfDustAtWork(effect: Statement): boolean {
  return effect.citation?.source === 'trgs-906';
}

const sensitiser: FoodRule = {
  id: 'sensitiser',
  looksAt: 'whether a source calls the wood a possible cause of allergy',
  find(wood) {
    const sensitising = wood.effects.filter((effect) => effect.sensitising);
    const effect = sensitising.find((each) => each.citation?.source === 'trgs-907') ?? sensitising[0];
    if (!effect) return null;
    const after =
      ' That is about working it; nothing was read on a finished board. A wood without such a record is the kinder choice for strangers.';
    return {
      reason: fromStatement('sensitiser', 'against', effect, 'A source says: ', after),
      verdict: 'better-not',
      words: 'a possible sensitiser',
    };
  },
};

const irritant: FoodRule = {
  id: 'irritant',
  looksAt: 'other published effects of dust, splinters or dyestuff',
  find(wood) {
    const effect = wood.effects.find((each) => !each.sensitising && !isOfDustAtWork(each));
    if (!effect) return null;
    return {
      reason: fromStatement('irritant', 'against', effect, 'A source says: ', ''),
      verdict: 'with-care',
      words: 'its dust or colour can trouble',
    };
  },
};

const unread: FoodRule = {
  id: 'effects-unread',
  looksAt: 'whether any source on effects was read',
  find(wood) {
    if (wood.effects.some((each) => !isOfDustAtWork(each))) return null;
    const text =
      'No statement on sensitising or irritation was read for this wood. That is not a statement that there is none.';
    return {
      reason: { rule: 'effects-unread', speaks: 'unknown', text, basis: 'shop-practice' },
      verdict: 'usual',
      words: '',
    };
  },
};

const taste: FoodRule = {
  id: 'taste',
  looksAt: 'what a source says of the taste that the wood gives',
  find(wood) {
    if (wood.taste === null) return null;
    const gives = wood.taste.flavours === true;
    return {
      reason: fromStatement('taste', gives ? 'against' : 'for', wood.taste, 'A source says of its taste: ', ''),
      verdict: gives ? 'with-care' : 'usual',
      words: gives ? 'gives a flavour' : '',
    };
  },
};

const poison: FoodRule = {
  id: 'poison',
  looksAt: 'genera known as poisonous to eat from',
  find(wood) {
    if (!/^Taxus\b/.test(wood.botanical ?? '')) return null;
    const text = 'Yew is poisonous; it does not belong near food.';
    return {
      reason: { rule: 'poison', speaks: 'against', text, basis: 'memory' },
      verdict: 'better-not',
      words: 'poisonous',
    };
  },
};

/** The rules, in the order in which their reasons are shown. */
export const foodRules: readonly FoodRule[] = [
  named,
  hardness,
  pores,
  softwood,
  poison,
  sensitiser,
  irritant,
  taste,
  unread,
];

const openings: Readonly<Record<Verdict, string>> = {
  usual: 'Usual kind of wood for a food surface: hard and close-grained',
  'with-care': 'With care',
  'not-enough-known': 'Not enough known',
  'better-not': 'Better not',
};

/**
 * Judge a wood for contact with food by the rules: the strictest finding gives the level.
 *
 * @param wood a resolved wood
 * @returns level, one line and every reason; it never says that a wood is safe
 */
export function assessFoodContact(wood: FoodInput): FoodAssessment {
  const findings = foodRules.flatMap((rule) => rule.find(wood) ?? []);
  const level = findings.reduce<Verdict>(
    (strictest, each) => (strictness.indexOf(each.verdict) > strictness.indexOf(strictest) ? each.verdict : strictest),
    'usual',
  );
  const words = findings.filter((each) => each.verdict === level && each.words !== '').map((each) => each.words);
  const summary = words.length === 0 ? openings[level] : `${openings[level]}: ${words.join('; ')}`;
  return { level, summary, reasons: findings.map((each) => each.reason) };
}
