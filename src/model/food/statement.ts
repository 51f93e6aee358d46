import { listed } from '../../model/quantity/index.ts';
import { type AllergenNote, allergenNotes, type OilOrigin } from './allergens.ts';
import { type CurePart, cureFindings, longestWait, type Wait, waitFor } from './cure.ts';
import { type PaperToAskFor, papersToAskFor } from './papers.ts';
import { rulesOfMarket } from './rules.ts';
import {
  type FinishPart,
  type FoodFinding,
  type FoodKind,
  type FoodLevel,
  finishFinding,
  foodLevelWords,
  hotFinding,
  type ResinPart,
  resinFinding,
  strictestLevel,
  type WoodPart,
  woodFinding,
} from './standing.ts';
import type { FoodRuleRecord, Market } from './types.ts';
import { type BarredWords, barredWords, type LabelWords, labelWords } from './words.ts';

/** A board as it is about to be sold. A part that is absent is not in it, or not told. */
export interface BoardForFood {
  market: Market;
  food: FoodKind;
  wood?: WoodPart & { nutTree: boolean };
  /** A wood beside the first, as in a panel of two: the stricter of them counts, and the label names both. */
  secondWood?: WoodPart & { nutTree: boolean };
  resin?: ResinPart & { cure: Omit<CurePart, 'name'> };
  /** `cure` is absent for an oil that never dries. */
  finish?: FinishPart & { origin: OilOrigin; cure?: Omit<CurePart, 'name'> };
  /** True where the wood is left without a finish. */
  bare?: boolean;
  /** Parts that may be in it and were not told: nothing can then be said of the board. */
  untold?: readonly UntoldPart[];
}

/** A part that decides about food, and has to be told. */
export type UntoldPart = 'wood' | 'resin' | 'finish';

const untoldWords: Readonly<Record<UntoldPart, string>> = {
  wood: 'Which wood it is was not told.',
  resin: 'Whether resin was poured into it, and where, was not told.',
  finish: 'Which finish is on it, or none, was not told.',
};

/** What can be said of a board and food, and what cannot. It certifies nothing and is not legal advice. */
export interface FoodStatement {
  /** The strictest of all findings. */
  level: FoodLevel;
  /** The level in words, and which parts gave it; no full stop. */
  summary: string;
  findings: readonly FoodFinding[];
  /** Words for the label, by what they speak of. */
  label: LabelWords;
  /** The same as sentences in the order of a label; none where a part was not told. */
  maySay: readonly string[];
  mustNotSay: readonly BarredWords[];
  papers: readonly PaperToAskFor[];
  waits: readonly Wait[];
  /** Days left until everything has cured through; null where one part's days are not known. */
  daysLeft: number | null;
  allergens: readonly AllergenNote[];
  /** Rules of the market that the findings and papers rest on. */
  rules: readonly FoodRuleRecord[];
}

const partWords: Readonly<Record<FoodFinding['part'], string>> = {
  wood: 'the wood',
  resin: 'the resin',
  finish: 'the finish',
  cure: 'the days of cure',
  use: 'the hot food',
};

/**
 * Judge a board for food from its parts, in one market.
 *
 * The strictest part gives the level. The words for the label follow from the parts and claim no more than is known.
 *
 * @param board its wood with its own assessment, its resin and where it lies, its finish with its standing, days in whole days
 */
export function foodStatement(board: BoardForFood): FoodStatement {
  const { market, food, wood, secondWood, resin, finish, untold = [] } = board;
  const woods = [wood, secondWood].flatMap((each) => each ?? []);
  const waits: Wait[] = [
    ...(resin ? [waitFor({ name: resin.name, ...resin.cure })] : []),
    ...(finish?.cure ? [waitFor({ name: finish.name, ...finish.cure })] : []),
  ];
  const own = {
    woods: woods.map((each) => woodFinding(each, market)),
    resin: resin ? resinFinding(resin, market, food) : undefined,
    finish: finish ? finishFinding(finish, market, food) : undefined,
  };
  const findings: FoodFinding[] = [
    ...own.woods,
    ...[own.resin, own.finish].flatMap((finding) => finding ?? []),
    ...untold.map(
      (part): FoodFinding => ({
        part,
        level: 'not-enough-known',
        text: untoldWords[part],
        rules: [],
        basis: 'shop-practice',
      }),
    ),
    ...cureFindings(waits),
    ...hotFinding(food),
  ];
  const level = strictestLevel(findings.map((finding) => finding.level));
  const allergens = allergenNotes({
    resin: resin !== undefined || finish?.epoxy === true,
    woods,
    ...(finish ? { finish } : {}),
  });
  const papers = papersToAskFor({
    market,
    food,
    wood: woods.length > 0,
    resin: resin !== undefined,
    ...(finish ? { finish: finish.epoxy ? 'epoxy' : finish.cure ? 'other' : 'oil' } : {}),
  });
  const facts = {
    market,
    food,
    allergens,
    bare: board.bare === true,
    woods,
    ...(resin ? { resin } : {}),
    ...(finish ? { finish } : {}),
    ...(woods.length > 0 ? { woodLevel: strictestLevel(own.woods.map((finding) => finding.level)) } : {}),
    ...(own.resin ? { resinLevel: own.resin.level } : {}),
    ...(own.finish ? { finishLevel: own.finish.level } : {}),
  };
  const label = labelWords(facts);
  const ids = [...findings, ...papers].flatMap(({ rules }) => rules);
  return {
    level,
    summary: summaryOf(level, findings, {
      wood: woodNames(woods, own.woods, level),
      resin: resin?.name,
      finish: finish?.name,
    }),
    findings,
    label,
    maySay: untold.length > 0 ? [] : [...label.made, label.purpose, ...label.allergies, label.avoid, label.closing],
    mustNotSay: barredWords(facts),
    papers,
    waits,
    daysLeft: untold.length > 0 ? null : longestWait(waits),
    allergens,
    rules: rulesOfMarket(ids, market),
  };
}

/** The woods that a level comes from; all of them where it comes from none. */
function woodNames(woods: readonly WoodPart[], found: readonly FoodFinding[], level: FoodLevel): string | undefined {
  const behind = woods.filter((_, at) => found[at]?.level === level);
  const names = (behind.length > 0 ? behind : woods).map(({ name }) => name);
  return names.length === 0 ? undefined : listed(names);
}

/** In a sentence, with the parts that it rests on by their names, so that it can stand in a text that has not told them. */
function summaryOf(
  level: FoodLevel,
  findings: readonly FoodFinding[],
  names: Readonly<Partial<Record<FoodFinding['part'], string | undefined>>>,
): string {
  if (level === 'usual') return `${foodLevelWords.usual}; nobody certifies a board`;
  const partsAt = (at: FoodLevel) =>
    listed([
      ...new Set(
        findings
          .filter((finding) => finding.level === at)
          .map(({ part }) => (names[part] === undefined ? partWords[part] : `${partWords[part]} (${names[part]})`)),
      ),
    ]);
  const untold = (finding: FoodFinding) => finding.part === 'cure' && finding.level === 'not-enough-known';
  const onlyDays = level === 'not-enough-known' && findings.every((each) => each.level !== level || untold(each));
  if (level !== 'not-yet' && !onlyDays) return `${foodLevelWords[level]}, because of ${partsAt(level)}`;
  // A wait ends by itself, and days that nobody told can be counted: what stays after them is said too.
  const words = onlyDays ? 'Not before full cure' : foodLevelWords[level];
  const after = strictestLevel(findings.map((finding) => finding.level).filter((each) => each !== level));
  return after === 'usual'
    ? words
    : `${words}. After that: ${foodLevelWords[after].toLowerCase()}, because of ${partsAt(after)}`;
}
