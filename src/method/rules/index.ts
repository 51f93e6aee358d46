import { bitTooLarge } from './bit-too-large.ts';
import { calculationCare } from './calculation-care.ts';
import { calculationRefuses } from './calculation-refuses.ts';
import { calculationStops } from './calculation-stops.ts';
import { calculationUnknown } from './calculation-unknown.ts';
import { claimWithoutPapers } from './claim-without-papers.ts';
import { cutterTooShort } from './cutter-too-short.ts';
import { dustWithoutExtraction } from './dust-without-extraction.ts';
import { glovesAtBlade } from './gloves-at-blade.ts';
import { glueUpClamps } from './glue-up-clamps.ts';
import { grainNotRaised } from './grain-not-raised.ts';
import { gritsSkipped } from './grits-skipped.ts';
import { holeNearEdge } from './hole-near-edge.ts';
import { insideCorner } from './inside-corner.ts';
import { lastGritForFinish } from './last-grit-for-finish.ts';
import { machineLength } from './machine-length.ts';
import { machineThickness } from './machine-thickness.ts';
import { machineWidth } from './machine-width.ts';
import { missingToolOrMaterial } from './missing-tool-or-material.ts';
import { movementOfInlay } from './movement-of-inlay.ts';
import { nothingThere } from './nothing-there.ts';
import { pieceSizeUnsaid } from './piece-size-unsaid.ts';
import { planedTooSoon } from './planed-too-soon.ts';
import { promiseInWords } from './promise-in-words.ts';
import { ragsWithoutCan } from './rags-without-can.ts';
import { rimSpeedRule } from './rim-speed.ts';
import type { Rule } from './rule.ts';
import { salvagedNotSearched } from './salvaged-not-searched.ts';
import { shortGrainNeck } from './short-grain-neck.ts';
import { stepBetweenStaves } from './step-between-staves.ts';
import { stockMoisture } from './stock-moisture.ts';
import { throughWithoutBacking } from './through-without-backing.ts';
import { unsafeAnswer } from './unsafe-answer.ts';
import { unusedMaterial } from './unused-material.ts';
import { unusedTool } from './unused-tool.ts';
import { withoutProtection } from './without-protection.ts';
import { woodForFood } from './wood-for-food.ts';
import { workedBeforeSettled } from './worked-before-settled.ts';

/** Every rule, in the order of the work, one a line; `judge.ts` asks them all. */
export const rules: readonly Rule[] = [
  stockMoisture,
  workedBeforeSettled,
  salvagedNotSearched,
  woodForFood,
  claimWithoutPapers,
  promiseInWords,
  movementOfInlay,
  stepBetweenStaves,
  machineWidth,
  machineLength,
  machineThickness,
  pieceSizeUnsaid,
  glueUpClamps,
  planedTooSoon,
  insideCorner,
  cutterTooShort,
  rimSpeedRule,
  bitTooLarge,
  shortGrainNeck,
  holeNearEdge,
  throughWithoutBacking,
  glovesAtBlade,
  dustWithoutExtraction,
  withoutProtection,
  gritsSkipped,
  grainNotRaised,
  lastGritForFinish,
  ragsWithoutCan,
  missingToolOrMaterial,
  unusedMaterial,
  unusedTool,
  calculationRefuses,
  nothingThere,
  unsafeAnswer,
  calculationUnknown,
  calculationStops,
  calculationCare,
];
