export { type AllergenNote, allergenNotes, type OilOrigin, oilOrigins } from './allergens.ts';
export {
  type BoardForCare,
  type CareLine,
  type CareSection,
  careSections,
  inMonths,
  interval,
  type Upkeep,
} from './care.ts';
export { type CurePart, longestWait, type Wait, waitFor } from './cure.ts';
export { handOverFromLastWork, handOverFromToday } from './hand-over.ts';
export { type HygieneFinding, hygieneFindings } from './hygiene.ts';
export { type PaperToAskFor, papersToAskFor, testConditions } from './papers.ts';
export { promisesIn } from './promises.ts';
export { foodRuleById, foodRuleRecords, limitsDoNotCompare, notLegalAdvice, rulesOfMarket } from './rules.ts';
export {
  type FinishPart,
  type FoodFinding,
  type FoodKind,
  type FoodLevel,
  foodKinds,
  foodLevels,
  foodLevelWords,
  type ResinPart,
  type ResinPlace,
  resinPlaces,
  strictestLevel,
  type WoodPart,
} from './standing.ts';
export { type BoardForFood, type FoodStatement, foodStatement, type UntoldPart } from './statement.ts';
export {
  type FoodRuleId,
  type FoodRuleRecord,
  type FoodStanding,
  foodRuleIds,
  type Market,
  markets,
} from './types.ts';
export { woodInSentence } from './wood-name.ts';
export { type BarredWords, barredWords, type LabelWords, labelWords } from './words.ts';
