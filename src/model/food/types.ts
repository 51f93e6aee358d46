import type { Basis, Citation, Figure } from '../evidence/index.ts';

/** Ids of the rules on food contact that the site speaks of. */
export const foodRuleIds = [
  'food-code-4-101-11',
  'food-code-4-101-17',
  'food-code-4-202-11',
  'food-code-4-501-12',
  'cfr-21-175-300',
  'cfr-21-178-3620',
  'cfr-21-172-878',
  'cfr-21-178-3710',
  'cfr-21-184-1973',
  'cfr-21-184-1978',
  'cfr-21-172-890',
  'cfr-21-178-3800',
  'eu-1935-2004',
  'eu-10-2011',
  'eu-1895-2005',
  'eu-2024-3190',
] as const;

/** The id of a rule on food contact: one of `foodRuleIds`. */
export type FoodRuleId = (typeof foodRuleIds)[number];

/** Where a board is sold: rules, and so the words on a label, differ. */
export const markets = ['us', 'eu'] as const;

/** Where a board is sold: one of `markets`. */
export type Market = (typeof markets)[number];

/** What a rule speaks of in a board. */
export type FoodRuleSubject = 'board' | 'wood' | 'resin' | 'oil' | 'wax';

/** A rule on food contact in plain words: what it asks, of whom, and where it says nothing of wood. Not its text. */
export interface FoodRuleRecord {
  id: FoodRuleId;
  market: Market;
  /** What it is called in a line, for example `21 CFR 175.300`. */
  short: string;
  title: string;
  subject: FoodRuleSubject;
  /** What it asks, a sentence each. */
  asks: readonly string[];
  /** What it says of wood, or that it says nothing. */
  onWood: string;
  /** Whom it binds. */
  binds: string;
  /** Which copy was read, and what of it was not. */
  edition: string;
  /** Its numbers, each with its unit. */
  figures: readonly Figure[];
  basis: Basis;
  citation: Citation;
}

/**
 * Where a resin or finish stands with food, judged with reasons. It never says that something is safe.
 *
 * - `listed`: a rule lists the substance for a use that fits, under conditions.
 * - `ask-the-maker`: it depends on the recipe; only the maker's written declaration can say.
 * - `silent`: the rules that were read do not speak of this use.
 * - `better-not`: a rule or its absence speaks against food on it.
 */
export interface FoodStanding {
  level: 'listed' | 'ask-the-maker' | 'silent' | 'better-not';
  /** One line for a list, no full stop. */
  summary: string;
  /** What must be true for the summary to hold, a sentence each. */
  conditions: readonly string[];
  /** Those of them that hold in use, whatever papers its maker gives: a film that is whole, no knives, nothing hot. */
  inUse?: readonly string[];
  /** Rules that it rests on. */
  rules: readonly FoodRuleId[];
  basis: Basis;
  citation?: Citation;
}
