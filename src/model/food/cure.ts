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
  basis: Basis;
}

const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

/** Whole days left until a part has cured through, rounded up. */
export function waitFor({ name, daysSince, fullCureDays, basis }: CurePart): Wait {
  if (fullCureDays === undefined) {
    const text = `${name}: nothing here says how long it takes to full cure. Its data sheet does.`;
    return { name, daysLeft: null, fullCureDays: null, text, basis };
  }
  if (daysSince === undefined) {
    const text = `${name}: full cure takes ${days(fullCureDays)}; count them from the last coat or pour.`;
    return { name, daysLeft: null, fullCureDays, text, basis };
  }
  const daysLeft = Math.max(0, Math.ceil(fullCureDays - daysSince));
  const text =
    daysLeft > 0
      ? `${name}: full cure takes ${days(fullCureDays)}, so ${days(daysLeft)} more. A cold room takes longer.`
      : `${name}: the ${days(fullCureDays)} to full cure have passed.`;
  return { name, daysLeft, fullCureDays, text, basis };
}

/** What the waits say of the board: not yet while one runs, not enough known where one cannot be told. */
export function cureFindings(waits: readonly Wait[]): FoodFinding[] {
  return waits.flatMap(({ daysLeft, text, basis }): FoodFinding[] => {
    if (daysLeft === 0) return [];
    const level = daysLeft === null ? 'not-enough-known' : 'not-yet';
    return [{ part: 'cure', level, text, rules: [], basis }];
  });
}

/** The longest wait left, days; null where one is not known. 0 where nothing cures. */
export function longestWait(waits: readonly Wait[]): number | null {
  if (waits.some(({ daysLeft }) => daysLeft === null)) return null;
  return waits.reduce((longest, { daysLeft }) => Math.max(longest, daysLeft ?? 0), 0);
}
