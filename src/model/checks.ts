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

/** The sets of one part of the work, which have a page of their own. */
export interface CheckRoom {
  /** Ends the address of its page. */
  id: string;
  title: string;
  sets: readonly CheckSet[];
}

/** Every set of check values, by room, in the order in which they are shown. */
export const checkRooms: readonly CheckRoom[] = [
  { id: 'woods', title: 'Woods', sets: speciesChecks },
  { id: 'moisture', title: 'Moisture and air', sets: [...moistureChecks, ...diffusionChecks] },
  { id: 'movement', title: 'Movement', sets: movementChecks },
  { id: 'stock', title: 'Stock and machines', sets: stockChecks },
  { id: 'abrasives', title: 'Abrasives', sets: abrasiveChecks },
  { id: 'outlines', title: 'Outlines and templates', sets: outlineChecks },
  { id: 'resin', title: 'Resin', sets: [...doseChecks, ...pourChecks, ...channelChecks, ...cureChecks] },
  { id: 'food', title: 'Food contact', sets: foodChecks },
  { id: 'finishes', title: 'Finishes', sets: finishChecks },
];

/** Every set of every room. */
export const checkSets: readonly CheckSet[] = checkRooms.flatMap((room) => room.sets);

/** Published values known to differ from ours, and why. */
export const checkExceptions: readonly CheckException[] = [...speciesExceptions, ...finishExceptions];
