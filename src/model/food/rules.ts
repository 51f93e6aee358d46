import { euRules } from './rules-eu.ts';
import { usRules } from './rules-us.ts';
import type { FoodRuleId, FoodRuleRecord, Market } from './types.ts';

/** Every rule on food contact that the site speaks of, the United States first. */
export const foodRuleRecords: readonly FoodRuleRecord[] = [...usRules, ...euRules];

const byId = new Map<FoodRuleId, FoodRuleRecord>(foodRuleRecords.map((rule) => [rule.id, rule]));

/** The rule with this id; every id has one, and a test holds it. */
export function foodRuleById(id: FoodRuleId): FoodRuleRecord {
  return byId.get(id) as FoodRuleRecord;
}

/** Those of some rules that hold in a market, each once, in the order of the list. */
export function rulesOfMarket(ids: readonly FoodRuleId[], market: Market): FoodRuleRecord[] {
  return foodRuleRecords.filter((rule) => rule.market === market && ids.includes(rule.id));
}

/** Whose reading this is; to be shown wherever rules or labels are shown. */
export const notLegalAdvice =
  'Plain words for what we read, not the text of the law and not legal advice. Editions change: read the current one, and ask your food authority before you sell.';

/** Why a limit of the one market says nothing about the other. */
export const limitsDoNotCompare =
  'The Union’s 10 mg/dm² and the American 18 mg/in² (279 mg/dm²) cannot be set beside each other as numbers. The first counts all that passes into test liquids set by the kind of food; the second only what chloroform then takes up of an extract made with other liquids, at other times and temperatures. A resin may pass either and fail the other.';
