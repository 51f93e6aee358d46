import { checks as abrasiveChecks } from './abrasive/checks.ts';
import type { CheckException, CheckSet } from './evidence/index.ts';
import { checks as finishChecks, exceptions as finishExceptions } from './finish/checks.ts';
import { foodChecks } from './food/checks.ts';
import { checks as moistureChecks } from './moisture/checks.ts';
import { diffusionChecks } from './moisture/diffusion-checks.ts';
import { checks as movementChecks } from './movement/checks.ts';
import { checks as outlineChecks } from './outline/checks.ts';
import { channelChecks } from './resin/channel-checks.ts';
import { cureChecks } from './resin/cure-checks.ts';
import { doseChecks } from './resin/dose-checks.ts';
import { pourChecks } from './resin/pour-checks.ts';
import { checks as speciesChecks, exceptions as speciesExceptions } from './species/checks.ts';
import { checks as stockChecks } from './stock/checks.ts';

/** Every set of published values of every room, in the order in which they are shown. */
export const checkSets: readonly CheckSet[] = [
  ...speciesChecks,
  ...moistureChecks,
  ...diffusionChecks,
  ...movementChecks,
  ...stockChecks,
  ...abrasiveChecks,
  ...outlineChecks,
  ...doseChecks,
  ...pourChecks,
  ...channelChecks,
  ...cureChecks,
  ...foodChecks,
  ...finishChecks,
];

/** Published values known to differ from ours, and why. */
export const checkExceptions: readonly CheckException[] = [...speciesExceptions, ...finishExceptions];
