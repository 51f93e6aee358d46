import { bitTooLarge } from './bit-too-large.ts';
import { calculationCare } from './calculation-care.ts';
import { calculationRefuses } from './calculation-refuses.ts';
import { calculationStops } from './calculation-stops.ts';
import { calculationUnknown } from './calculation-unknown.ts';
import { claimWithoutPapers } from './claim-without-papers.ts';
import { coatedTooSoon } from './coated-too-soon.ts';
import { cureNeverAsked } from './cure-never-asked.ts';
import { cutterTooShort } from './cutter-too-short.ts';
import { dustWithoutExtraction } from './dust-without-extraction.ts';
import { fewerInTheShop } from './fewer-in-the-shop.ts';
import { finishOnResin } from './finish-on-resin.ts';
import { foodNotAsked } from './food-not-asked.ts';
import { glovesAtBlade } from './gloves-at-blade.ts';
import { glueUpClamps } from './glue-up-clamps.ts';
import { grainNotRaised } from './grain-not-raised.ts';
import { gritsSkipped } from './grits-skipped.ts';
import { holeNearEdge } from './hole-near-edge.ts';
import { insideCorner } from './inside-corner.ts';
import { labelBeyondClaim } from './label-beyond-claim.ts';
import { lastGritForFinish } from './last-grit-for-finish.ts';
import { machineLength } from './machine-length.ts';
import { machineThickness } from './machine-thickness.ts';
import { machineWidth } from './machine-width.ts';
import { missingToolOrMaterial } from './missing-tool-or-material.ts';
import { mixTooSmall } from './mix-too-small.ts';
import { mixedTooMuch } from './mixed-too-much.ts';
import { moistureForResin } from './moisture-for-resin.ts';
import { movementOfInlay } from './movement-of-inlay.ts';
import { noDryRun } from './no-dry-run.ts';
import { noSealCoat } from './no-seal-coat.ts';
import { nothingThere } from './nothing-there.ts';
import { pieceSizeUnsaid } from './piece-size-unsaid.ts';
import { planedTooSoon } from './planed-too-soon.ts';
import { pourNeverAsked } from './pour-never-asked.ts';
import { pourTooDeep } from './pour-too-deep.ts';
import { promiseInWords } from './promise-in-words.ts';
import { ragsThrownAway } from './rags-thrown-away.ts';
import { ragsWithoutCan } from './rags-without-can.ts';
import { recoatWindow } from './recoat-window.ts';
import { resinWithoutStop } from './resin-without-stop.ts';
import { rimSpeedRule } from './rim-speed.ts';
import type { Rule } from './rule.ts';
import { salvagedNotSearched } from './salvaged-not-searched.ts';
import { shortGrainNeck } from './short-grain-neck.ts';
import { solventNearHeat } from './solvent-near-heat.ts';
import { stepBetweenStaves } from './step-between-staves.ts';
import { stockMoisture } from './stock-moisture.ts';
import { throughWithoutBacking } from './through-without-backing.ts';
import { toolNamedNotListed } from './tool-named-not-listed.ts';
import { unsafeAnswer } from './unsafe-answer.ts';
import { unusedMaterial } from './unused-material.ts';
import { unusedTool } from './unused-tool.ts';
import { usedBeforeDry } from './used-before-dry.ts';
import { withoutProtection } from './without-protection.ts';
import { woodForFood } from './wood-for-food.ts';
import { wordsBeside } from './words-beside.ts';
import { wordsDiffer } from './words-differ.ts';
import { workedBeforeCure } from './worked-before-cure.ts';
import { workedBeforeSettled } from './worked-before-settled.ts';

const wood: readonly Rule[] = [stockMoisture, workedBeforeSettled, salvagedNotSearched];

const food: readonly Rule[] = [woodForFood, claimWithoutPapers, foodNotAsked, labelBeyondClaim, promiseInWords];

const movement: readonly Rule[] = [movementOfInlay, stepBetweenStaves];

const machinesAndPieces: readonly Rule[] = [machineWidth, machineLength, machineThickness, pieceSizeUnsaid];

const gluingUp: readonly Rule[] = [glueUpClamps, planedTooSoon];

const outlineAndCutters: readonly Rule[] = [
  insideCorner,
  cutterTooShort,
  rimSpeedRule,
  bitTooLarge,
  shortGrainNeck,
  holeNearEdge,
  throughWithoutBacking,
];

const people: readonly Rule[] = [glovesAtBlade, dustWithoutExtraction, withoutProtection];

const resin: readonly Rule[] = [
  moistureForResin,
  noDryRun,
  noSealCoat,
  pourNeverAsked,
  pourTooDeep,
  mixTooSmall,
  mixedTooMuch,
  resinWithoutStop,
  cureNeverAsked,
  recoatWindow,
  workedBeforeCure,
  solventNearHeat,
];

const sandingAndFinish: readonly Rule[] = [
  gritsSkipped,
  grainNotRaised,
  lastGritForFinish,
  finishOnResin,
  coatedTooSoon,
  usedBeforeDry,
  ragsWithoutCan,
  ragsThrownAway,
];

const lists: readonly Rule[] = [missingToolOrMaterial, unusedMaterial, unusedTool, toolNamedNotListed, fewerInTheShop];

const words: readonly Rule[] = [wordsDiffer, wordsBeside];

const calculations: readonly Rule[] = [
  calculationRefuses,
  nothingThere,
  unsafeAnswer,
  calculationUnknown,
  calculationStops,
  calculationCare,
];

/** Rules that concern the same thing. */
export interface RuleGroup {
  id: string;
  title: string;
  rules: readonly Rule[];
}

/** Every rule by what it concerns, in the order of the work, each in one group. */
export const ruleGroups: readonly RuleGroup[] = [
  { id: 'wood', title: 'Wood', rules: wood },
  { id: 'food', title: 'Food', rules: food },
  { id: 'movement', title: 'Movement', rules: movement },
  { id: 'machines', title: 'Machines', rules: machinesAndPieces },
  { id: 'glue', title: 'Gluing up', rules: gluingUp },
  { id: 'cutters', title: 'Outline and cutters', rules: outlineAndCutters },
  { id: 'people', title: 'Blades, dust and protection', rules: people },
  { id: 'resin', title: 'Resin', rules: resin },
  { id: 'surface', title: 'Sanding and finish', rules: sandingAndFinish },
  { id: 'lists', title: 'Lists of tools and materials', rules: lists },
  { id: 'words', title: 'Numbers in words', rules: words },
  { id: 'calculations', title: 'Calculations', rules: calculations },
];

/** Every rule, in the order of the work; `judge.ts` asks them all. */
export const rules: readonly Rule[] = ruleGroups.flatMap((group) => group.rules);
