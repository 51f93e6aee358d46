import type { Verdict } from '../../model/evidence/index.ts';
import type { FoodFinding, FoodLevel, FoodStatement } from '../../model/food/index.ts';

const levels: Readonly<Record<FoodLevel, Verdict['level']>> = {
  usual: 'good',
  'with-care': 'care',
  'ask-the-maker': 'care',
  'not-enough-known': 'care',
  'not-yet': 'stop',
  'better-not': 'stop',
};

const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);

/**
 * What has to be known before anything is said of the board, and is not. Days that can still be counted, since only the date of the last
 * coat or pour is missing, are no such thing.
 */
export function unknownsOf({ findings, waits }: FoodStatement): readonly FoodFinding[] {
  const countable = new Set(waits.filter(({ fullCureDays }) => fullCureDays !== null).map(({ text }) => text));
  return findings.filter(
    ({ part, level, text }) => level === 'not-enough-known' && !(part === 'cure' && countable.has(text)),
  );
}

/** Why the days of a part are more than its sheet says for food, as sentences that go on; empty where they are not. */
function whyLater({ waits }: Pick<FoodStatement, 'waits'>): string {
  return waits.map(({ later }) => (later ? ` ${later}` : '')).join('');
}

/** What may be said of the board and when, in a sentence: what is missing, the wait, and the line of use of its label. */
export function verdictOf(statement: FoodStatement): Verdict {
  const { level, summary, findings, waits, daysLeft, label } = statement;
  const unknown = unknownsOf(statement);
  const never = waits.find((wait) => wait.never);
  if (never) return { level: 'stop', text: `Do not hand it over for food. ${never.text}` };
  if (findings.some((finding) => finding.level === 'better-not')) {
    const against = findings.filter((finding) => finding.level === 'better-not').map(({ text }) => text);
    return { level: 'stop', text: `${summary}. ${against[0]}${unknown.length > 0 ? '' : ` Label: ${label.purpose}`}` };
  }
  if (unknown.length > 0) {
    return { level: 'unknown', text: `No label yet. ${unknown.map(({ text }) => text).join(' ')}` };
  }
  if (daysLeft !== null && daysLeft > 0) {
    // The summary begins with the wait, which is said here with its days.
    const after = summary.replace(/^Not yet cured(?:\. )?/, '');
    const text = `Not yet: ${days(daysLeft)} more until everything has cured.${whyLater(statement)}${after ? ` ${after}.` : ''} Label then: ${label.purpose}`;
    return { level: 'stop', text };
  }
  const open = waits.filter((wait) => wait.daysLeft === null).map(({ text }) => text);
  if (open.length > 0) {
    return { level: 'care', text: `${summary}. ${open.join(' ')} Label then: ${label.purpose}` };
  }
  return { level: levels[level], text: `${summary}. Label: ${label.purpose}` };
}
