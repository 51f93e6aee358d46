import { formatQuantity, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { moneyWords } from '../cost/index.ts';
import { textWords } from '../show.ts';
import type { Plan } from './index.ts';
import { momentWords, resourceWords, timeWords } from './words.ts';

const levelWords = { stop: 'STOP', warn: 'Warning', note: 'Note' } as const;

/** Why there is no timetable, in the reader's units. */
export function impossibleAsText(impossible: Plan['impossible'], units: ReaderUnits) {
  return {
    why: inReaderUnits(impossible?.why ?? '', units),
    changes: (impossible?.changes ?? []).map((change) => inReaderUnits(change, units)),
  };
}

const piecesWords = ([first, last]: readonly [number, number], all: number): string => {
  if (first === 1 && last === all) return '';
  return first === last ? ` (piece ${first})` : ` (pieces ${first} to ${last})`;
};

function findingLines({ findings }: Plan): string[] {
  return findings.map(
    ({ level, rule, message, wayOut, excepted }) =>
      `${excepted === undefined ? levelWords[level] : 'Excepted'} [${rule}] ${message} ${excepted === undefined ? wayOut : `Reason: ${excepted}`}`,
  );
}

function timeLines(plan: Plan): string[] {
  const { worked, timetable, sessions, critical, limits, impossible } = plan;
  if (!timetable.ok)
    return [
      `No timetable. ${impossible?.why ?? ''}`,
      ...(impossible?.changes ?? []).map((change) => `  Any of these would help: ${change}.`),
    ];
  const titles = new Map(worked.steps.map(({ id, record }) => [id, record.title]));
  const hands = timetable.steps.reduce((sum, step) => sum + step.hands, 0);
  const lines = [
    `From ${momentWords(timetable, timetable.start)} to ${momentWords(timetable, timetable.end)}; hands-on ${timeWords(hands)} in ${sessions.length} ${sessions.length === 1 ? 'session' : 'sessions'}.`,
    timetable.proved
      ? 'No plan is shorter with these hands, tools and hours.'
      : `Best found, not proved: no plan is shorter than ${timeWords(timetable.lowerBound)}, this one takes ${timeWords(timetable.end - timetable.start)}.`,
    ...timetable.secondWays.map(
      ({ step, do: way }) => `The window before “${titles.get(step)}” cannot be kept. ${way}.`,
    ),
  ];
  for (const { start, end, work } of sessions) {
    lines.push('', `${momentWords(timetable, start)} to ${timetable.momentAt(end).time}`);
    for (const { step, pieces, start: from } of work)
      lines.push(`  ${timetable.momentAt(from).time}  ${titles.get(step)}${piecesWords(pieces, worked.pieces)}`);
  }
  lines.push('', 'What makes it so long:');
  lines.push(
    ...critical
      .filter(({ heldBy, waited, resource }) => heldBy !== 'wait' || waited > 0 || resource !== undefined)
      .map(({ words }) => `  ${words}`),
  );
  if (limits) {
    const queues = Object.entries(limits.resources).map(
      ([resource, minutes]) => `${timeWords(minutes)} behind others at the ${resourceWords(worked, resource)}`,
    );
    lines.push(
      `  In all: ${[`${timeWords(limits.work)} of work`, `${timeWords(limits.waits)} of waiting for wood and resin`, `${timeWords(limits.closed)} of closed hours`, ...queues].join(', ')}.`,
    );
  }
  return lines;
}

function billLines({ bill }: Plan, units: ReaderUnits): string[] {
  if (!bill.ok) return bill.errors.map(({ message }) => message);
  const { lines, bought, used, without, currency } = bill.value;
  const priced = lines.some(({ cost }) => cost !== null);
  const money = (sum: Parameters<typeof moneyWords>[0]) => moneyWords(sum, { code: currency });
  return [
    ...lines.map(({ what, need, unit, buy, packs, cost, missing }) => {
      const shown = (value: number) => formatQuantity(value, unit, units, { digits: 3 });
      const packed = packs.map(
        ({ size, count }) => `${count} × ${formatQuantity(size.value, size.unit, units, { digits: 3 })}`,
      );
      const price = cost === null ? (missing ?? 'no price') : money(cost);
      return `  ${what}: ${shown(need)}${buy === need ? '' : `, buy ${shown(buy)}`}${packed.length > 0 ? ` (${packed.join(' + ')})` : ''}; ${price}`;
    }),
    ...(priced ? [`  In all to pay ${money(bought)}; of it used ${money(used)}.`] : []),
    ...(without.bought.length > 0 && priced ? [`  Without: ${without.bought.join('; ')}.`] : []),
  ];
}

/** A plan to read in a terminal: what is wrong first, then times, then each step with its numbers, then what to buy. */
export function planText(plan: Plan, units: ReaderUnits): string {
  const { worked } = plan;
  const { record, pieces, steps } = worked;
  const lines = [
    `${record.title}: ${pieces} × ${record.makes.what}`,
    '',
    ...findingLines(plan),
    ...(plan.findings.length > 0 ? [''] : []),
    ...timeLines(plan),
    '',
    'Steps',
    ...steps.flatMap(({ record: step, cautions }, at) => [
      `${at + 1}. ${step.title}`,
      ...textWords(worked, step.does, units)
        .split('\n')
        .map((line) => `   ${line}`),
      ...cautions.filter(({ level }) => level === 'danger').map(({ text }) => `   Danger. ${text}`),
    ]),
    '',
    'To buy',
    ...billLines(plan, units),
  ];
  return `${lines.map((line) => inReaderUnits(line, units)).join('\n')}\n`;
}
