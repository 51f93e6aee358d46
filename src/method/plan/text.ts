import {
  formatNumber,
  formatQuantity,
  inReaderUnits,
  type ReaderUnits,
  unitLabel,
} from '../../model/quantity/index.ts';
import { moneyWords } from '../cost/index.ts';
import { textWords } from '../show.ts';
import { freeWords } from './duties.ts';
import type { AdvisedPlan, Plan } from './index.ts';
import { changesOf } from './price.ts';
import { dutyWords, limitsWords, momentWords, timeWords } from './words.ts';

const levelWords = { stop: 'STOP', warn: 'Warning', note: 'Note' } as const;

/** Why there is no timetable, in the reader's units. */
export function impossibleAsText(impossible: Plan['impossible'], units: ReaderUnits) {
  return {
    why: inReaderUnits(impossible?.why ?? '', units),
    changes: (impossible?.changes ?? []).map((change) => inReaderUnits(change, units)),
  };
}

function findingLines({ findings }: Plan): string[] {
  return findings.map(
    ({ level, rule, message, wayOut, excepted }) =>
      `${excepted === undefined ? levelWords[level] : 'Excepted'} [${rule}] ${message} ${excepted === undefined ? wayOut : `Reason: ${excepted}`}`,
  );
}

function timeLines(plan: AdvisedPlan): string[] {
  const { worked, timetable, people, sessions, critical, limits, advice, impossible } = plan;
  if (!timetable.ok)
    return [
      `No timetable. ${impossible?.why ?? ''}`,
      ...(impossible?.changes ?? []).map((change) => `  Any of these would help: ${change}.`),
    ];
  const hands = timetable.steps.reduce((sum, step) => sum + step.hands, 0);
  const lines = [
    `From ${momentWords(timetable, timetable.start)} to ${momentWords(timetable, timetable.end)}; hands-on ${timeWords(hands)} in ${sessions.length} ${sessions.length === 1 ? 'session' : 'sessions'}.`,
    timetable.proved
      ? 'No plan is shorter with these hands, tools and hours.'
      : `Best found, not proved: no plan is shorter than ${timeWords(timetable.lowerBound)}, this one takes ${timeWords(timetable.end - timetable.start)}.`,
  ];
  for (const { start, end, work, free } of sessions) {
    const clock = (minutes: number) => timetable.momentAt(minutes).time;
    lines.push('', `${momentWords(timetable, start)} to ${clock(end)}`);
    lines.push(
      ...work.map((duty) => `  ${clock(duty.start)} to ${clock(duty.end)}  ${dutyWords(plan, duty)}`),
      ...[freeWords({ work, free }, people, clock) ?? []].flat().map((words) => `  ${words}`),
    );
  }
  lines.push('', 'What makes it so long:');
  lines.push(
    ...critical
      .filter(({ heldBy, waited, resource }) => heldBy !== 'wait' || waited > 0 || resource !== undefined)
      .map(({ words }) => `  ${words}`),
  );
  if (limits) lines.push(`  In all: ${limitsWords(worked, limits)}.`);
  lines.push(...advice.map(({ words }) => `  ${words}`));
  return lines;
}

function billLines({ bill, worked }: Plan, units: ReaderUnits): string[] {
  if (!bill.ok) return bill.errors.map(({ message }) => message);
  const { lines, bought, used, without, currency } = bill.value;
  const priced = lines.some(({ cost }) => cost !== null);
  const money = (sum: number) => moneyWords(sum, { code: currency });
  return [
    ...lines.map(({ what, need, unit, kept = false, buy, packs, cost, missing }) => {
      const shown = (value: number, code = unit) => formatQuantity(value, code, units, { digits: 3, kept });
      // A pack is named as the shop names it, in the unit on its label.
      const packed = packs.map(({ size, count }) =>
        `${count} × ${formatNumber(size.value, 4)} ${unitLabel(size.unit)}`.trim(),
      );
      const how = buy === 0 ? ', all on the shelf' : packed.length > 0 ? `, buy ${packed.join(' + ')}` : '';
      const price = buy === 0 || !worked.shop ? '' : `; ${cost === null ? (missing ?? 'no price') : money(cost)}`;
      return `  ${what}: ${shown(need)}${how}${price}`;
    }),
    ...(priced
      ? [`  To pay now ${money(bought)}; what is used is worth ${money(used)}, the shelf’s share included.`]
      : []),
    ...(without.bought.length > 0 && priced
      ? [`  Not in it, for want of a price: ${without.bought.length} of ${lines.length} lines.`]
      : []),
  ];
}

function costLines({ cost, worked }: Plan): string[] {
  if (!cost.ok) return cost.errors.map(({ message }) => `  ${message}`);
  const { pricing, batches, request } = cost.value;
  const money = (sum: number) => moneyWords(sum, request.currency);
  const line = (what: string, batch: number, piece: number) => `  ${what}: ${money(batch)}, ${money(piece)} a piece`;
  const isWork = ({ id }: { id: string }) => request.hands.some((hands) => `hands-${hands.id}` === id);
  const work = pricing.parts.filter(isWork);
  const sum = (of: 'batch' | 'piece') => work.reduce((all, part) => all + part[of], 0);
  const unpriced = 'At least: what has no price in the shop record is not in it.';
  const dearest = [...work].sort((one, two) => two.batch - one.batch).slice(0, 3);
  return [
    ...pricing.parts
      .filter((part) => part.batch > 0 && !isWork(part))
      .map(({ what, batch, piece }) => line(what, batch, piece)),
    ...pricing.fees.map(({ what, piece }) => `  ${what}: ${money(piece)} a piece`),
    line(`Hands-on work, ${timeWords(pricing.hours * 60)}`, sum('batch'), sum('piece')),
    `    most of it: ${dearest.map(({ what, batch }) => `${what} ${money(batch)}`).join('; ')}`,
    ...pricing.words.map((sentence) => `  ${sentence.startsWith('At least') ? unpriced : sentence}`),
    '  What moves the price most. Each of these a fifth lower, then a fifth higher:',
    ...changesOf(cost.value)
      .filter(({ atLow, atHigh }) => atLow !== null && atHigh !== null)
      .slice(0, 5)
      .map(({ label, atLow, atHigh }) => `    ${label}: ${money(atLow ?? 0)}, then ${money(atHigh ?? 0)}`),
    ...(worked.record.makes.pieces.most > worked.record.makes.pieces.least
      ? [`  By hands-on time and consumables alone, ${batches.words.charAt(0).toLowerCase()}${batches.words.slice(1)}`]
      : []),
  ];
}

/** The dangers of a step: in full where they first come up, by their number of step after that. */
function dangerLines(worked: Plan['worked']): string[][] {
  const first = new Map<string, number>();
  return worked.steps.map(({ cautions }, at) => {
    const fresh: string[] = [];
    const before = new Set<number>();
    for (const { id, level, text } of cautions) {
      if (level !== 'danger') continue;
      const seen = first.get(id);
      if (seen === undefined) {
        first.set(id, at + 1);
        fresh.push(`   Danger. ${text}`);
      } else before.add(seen);
    }
    const told = [...before].sort((one, two) => one - two).join(', ');
    return before.size === 0 ? fresh : [...fresh, `   Dangers as in step ${told} too.`];
  });
}

/** What a student and a teacher need beside what is done: time, tools, why, how to tell, what goes wrong. */
function besideLines(
  worked: Plan['worked'],
  { record, hands }: Plan['worked']['steps'][number],
  units: ReaderUnits,
  said: Set<string>,
): string[] {
  const { why, tell, wrong, tools = [], uses = [] } = record;
  const minutes = [
    ...(hands.setUp > 0 ? [`${timeWords(hands.setUp)} to set up`] : []),
    ...(hands.each > 0 ? [`${timeWords(hands.each)} for each piece`] : []),
  ];
  const things = [
    ...tools.flatMap((name) => worked.tools[name]?.record.what ?? []),
    ...uses.flatMap((name) => worked.materials[name]?.record.what ?? []),
  ];
  const told = (word: string, text: string | undefined) =>
    text === undefined ? [] : [`${word} ${textWords(worked, text, units, said)}`];
  return [
    ...(minutes.length > 0 ? [`Time: ${minutes.join(', ')}.`] : []),
    ...(things.length > 0 ? [`At hand: ${things.join('; ')}.`] : []),
    ...told('Why:', why),
    ...told('It is right when:', tell),
    ...told('What goes wrong:', wrong),
  ].flatMap((text) => text.split('\n').map((each) => `   ${each}`));
}

/** A plan to read in a terminal: what is wrong first, then times, then each step with its numbers, then what to buy. */
export function planText(plan: AdvisedPlan, units: ReaderUnits): string {
  const { worked } = plan;
  const { record, pieces, steps } = worked;
  const dangers = dangerLines(worked);
  const lines = [
    `${record.title}: ${pieces} × ${record.makes.what}`,
    '',
    ...findingLines(plan),
    ...(plan.findings.length > 0 ? [''] : []),
    ...timeLines(plan),
    '',
    'Steps',
    ...steps.flatMap((one, at) => {
      const { record: step } = one;
      // Each step is read by itself, so that each tells its figures in full once.
      const said = new Set<string>();
      return [
        `${at + 1}. ${step.title}`,
        ...textWords(worked, step.does, units, said)
          .split('\n')
          .map((line) => `   ${line}`),
        ...besideLines(worked, one, units, said),
        ...(dangers[at] ?? []),
      ];
    }),
    '',
    'To buy',
    ...billLines(plan, units),
    '',
    'Cost and price',
    ...costLines(plan),
  ];
  return `${lines.map((line) => inReaderUnits(line, units)).join('\n')}\n`;
}
