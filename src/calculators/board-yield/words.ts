import type { YieldBlank, YieldPlan } from '../../model/stock/index.ts';

/** Sum of counts. */
export const total = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
/** A count and what is counted. */
export const several = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`;
/** A name no longer than a sentence bears. */
export const shortName = (name: string) => name.slice(0, 40);

/** What the plan lacks, in words: `2 × tray, 1 × paddle`. */
export function missingWords(plan: YieldPlan, blanks: readonly YieldBlank[]): string {
  const missing = blanks.flatMap((blank, at) =>
    (plan.missing[at] as number) > 0 ? [`${plan.missing[at]} × ${shortName(blank.name)}`] : [],
  );
  return missing.length > 8 ? `${missing.slice(0, 8).join(', ')} and others` : missing.join(', ');
}
