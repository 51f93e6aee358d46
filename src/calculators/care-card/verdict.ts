import type { Verdict } from '../../model/evidence/index.ts';
import { type FoodStatement, interval } from '../../model/food/index.ts';
import { listed } from '../../model/quantity/index.ts';
import type { Card, CardInputs } from './card.ts';

/** ‘“safe for food” and “no bpa”’. */
const quoted = (promises: readonly string[]) => listed(promises.map((promise) => `“${promise}”`));

/** Which of the maker’s own lines the card is printed without, and why; undefined where none is held back. */
export function heldBackWords({ heldBack: { lines, promises } }: Pick<Card, 'heldBack'>): string | undefined {
  if (lines.length === 0) return undefined;
  return `The ${lines.join(' and the ')} ${lines.length === 1 ? 'is' : 'are'} not printed: nobody has shown ${quoted(promises)}.`;
}

const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

/** What the card comes to, in a sentence: whether it may be handed out, when, and how often the finish is renewed. */
export function verdictOf(card: Card, { finish }: CardInputs, { waits, findings }: FoodStatement): Verdict {
  const heldBack = heldBackWords(card);
  const never = waits.find((wait) => wait.never);
  if (never) return { level: 'stop', text: `Do not hand the board over. ${never.text}` };
  const untold = waits.find(({ fullCureDays }) => fullCureDays === null);
  if (untold) return { level: 'unknown', text: `Not enough known for a day to hand the board over. ${untold.text}` };
  const handOver = waits.map(({ name, fullCureDays }) =>
    name === finish?.name
      ? `${days(fullCureDays ?? 0)} after the last coat`
      : `${days(fullCureDays ?? 0)} after the last pour`,
  );
  const upkeep = finish?.wiped ? finish.figures.upkeep : null;
  const parts = [
    handOver.length > 0 ? `Hand the board over ${listed(handOver)}` : 'Nothing in the board has to cure',
    ...(upkeep ? [`renew the finish ${interval(upkeep)} in a home`] : []),
  ];
  const whyLater = waits.map(({ later }) => (later ? ` ${later}` : '')).join('');
  const text = `${parts.join('; ')}.${whyLater} ${card.purpose}`;
  if (heldBack) return { level: 'care', text: `${heldBack} ${text}` };
  // Days still to come are counted by whoever hands it over; the parts themselves must have nothing against them.
  const usual = findings.every((finding) => finding.part === 'cure' || finding.level === 'usual');
  return { level: usual ? 'good' : 'care', text };
}
