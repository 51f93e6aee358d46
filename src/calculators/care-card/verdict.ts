import type { Verdict } from '../../model/evidence/index.ts';
import { type FoodStatement, interval, promiseIn } from '../../model/food/index.ts';
import type { Card, CardInputs } from './card.ts';

/** The promise that the maker’s own words on a card make, if any. */
export function promiseOn({ shop, note }: Pick<Card, 'shop' | 'note'>): string | undefined {
  return promiseIn(shop) ?? promiseIn(note);
}

const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

/** What the card comes to, in a sentence: whether it may be handed out, when, and how often the finish is renewed. */
export function verdictOf(card: Card, { finish }: CardInputs, { waits, findings }: FoodStatement): Verdict {
  const promise = promiseOn(card);
  const never = waits.find((wait) => wait.never);
  if (never) return { level: 'stop', text: `Do not hand it over. ${never.text}` };
  const untold = waits.find(({ fullCureDays }) => fullCureDays === null);
  if (untold) return { level: 'unknown', text: `Not enough known for a day to hand it over. ${untold.text}` };
  const handOver = waits.map(({ name, fullCureDays }) =>
    name === finish?.name
      ? `${days(fullCureDays ?? 0)} after the last coat`
      : `${days(fullCureDays ?? 0)} after the last pour`,
  );
  const upkeep = finish?.wiped ? finish.figures.upkeep : null;
  const parts = [
    handOver.length > 0 ? `Hand it over ${handOver.join(' and ')}` : 'Nothing in it has to cure',
    ...(upkeep ? [`renew it ${interval(upkeep)} in a home`] : []),
  ];
  const text = `${parts.join('; ')}. ${card.purpose}`;
  if (promise) return { level: 'care', text: `Leave out “${promise}”, which nobody has shown. ${text}` };
  // Days still to come are counted by whoever hands it over; the parts themselves must have nothing against them.
  const usual = findings.every((finding) => finding.part === 'cure' || finding.level === 'usual');
  return { level: usual ? 'good' : 'care', text };
}
