import type { Basis } from '../evidence/index.ts';
import type { FoodFinding } from './standing.ts';

/** How far one part of the board has cured. */
export interface CurePart {
  /** What cures, in sentence case, for example `Tung oil`. */
  name: string;
  /** Days since it was last put on or poured; absent where it is not known. */
  daysSince?: number;
  /** Days from then until full cure, by its sheet or its kind; absent where nothing says it. */
  fullCureDays?: number;
  /** Where those days hold, for a sentence: ‘at 20 °C’. */
  where?: string;
  /** Why there are none, a sentence without the name and without a full stop; absent where `fullCureDays` says all. */
  unknown?: string;
  /** Why the days are more than its sheet says for food, a clause without a full stop; absent where they are not. */
  later?: string;
  /** True where it does not cure in this room however long it waits. */
  never?: boolean;
  /** How the days until full cure are known. */
  basis: Basis;
}

/** What is left to wait for one part. */
export interface Wait {
  name: string;
  /** Days left, 0 or more; null where the days since or the days until full cure are not known. */
  daysLeft: number | null;
  fullCureDays: number | null;
  text: string;
  /** Why the days are more than its sheet says for food, a sentence; it ends `text` too. Absent where they are not. */
  later?: string;
  /** True where it does not cure in this room however long it waits. */
  never: boolean;
  basis: Basis;
}

/** To the hundredth of a day, rounded up: a wait is none too short. */
const days = (count: number) => {
  const whole = Math.ceil(100 * count - 1e-6) / 100;
  return whole === 1 ? '1 day' : `${whole} days`;
};

/** Whole days left until a part has cured through, rounded up. */
export function waitFor(part: CurePart): Wait {
  const wait = plainWait(part);
  if (part.later === undefined || wait.fullCureDays === null || wait.daysLeft === 0) return wait;
  const later = `${part.later.charAt(0).toUpperCase()}${part.later.slice(1)}.`;
  return { ...wait, text: `${wait.text} ${later}`, later };
}

function plainWait({ name, daysSince, fullCureDays, where = '', unknown, never = false, basis }: CurePart): Wait {
  if (never) {
    const text = `${name}: in this room it never cures as far as its sheet means. Warm it for a day once it has gelled through and is cold again, then count its days.`;
    return { name, daysLeft: null, fullCureDays: null, text, never, basis };
  }
  if (unknown !== undefined) {
    return { name, daysLeft: null, fullCureDays: null, text: `${name}: ${unknown}.`, never, basis };
  }
  const takes = (count: number) => `${days(count)}${where ? ` ${where}` : ''}`;
  if (fullCureDays === undefined) {
    const text = `${name}: nothing here says how long it takes to full cure. Its data sheet does.`;
    return { name, daysLeft: null, fullCureDays: null, text, never, basis };
  }
  if (daysSince === undefined) {
    const text = `${name}: full cure takes ${takes(fullCureDays)}; count them from the last coat or pour.`;
    return { name, daysLeft: null, fullCureDays, text, never, basis };
  }
  const daysLeft = Math.max(0, Math.ceil(fullCureDays - daysSince));
  const text =
    daysLeft > 0
      ? `${name}: full cure takes ${takes(fullCureDays)}, so ${days(daysLeft)} more.${where ? '' : ' A cold room takes longer.'}`
      : `${name}: the ${takes(fullCureDays)} to full cure have passed.`;
  return { name, daysLeft, fullCureDays, text, never, basis };
}

/** What the waits say of the board: not yet while one runs, not enough known where one cannot be told. */
export function cureFindings(waits: readonly Wait[]): FoodFinding[] {
  return waits.flatMap(({ daysLeft, never, text, basis }): FoodFinding[] => {
    if (daysLeft === 0) return [];
    const level = daysLeft === null && !never ? 'not-enough-known' : 'not-yet';
    return [{ part: 'cure', level, text, rules: [], basis }];
  });
}

/** The longest wait left, days; null where one is not known. 0 where nothing cures. */
export function longestWait(waits: readonly Wait[]): number | null {
  if (waits.some(({ daysLeft }) => daysLeft === null)) return null;
  return waits.reduce((longest, { daysLeft }) => Math.max(longest, daysLeft ?? 0), 0);
}
