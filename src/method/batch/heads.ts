import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import type { WorkedCalculation, WorkedMethod, WorkedStep } from '../case/types.ts';
import { stepsOfPointer } from '../pointer.ts';
import { type MeasuredMethod, restsOn } from './measured.ts';

/** What the calculations of a step say since something was measured, before any time of it: marked quantities. */
export interface CardHead {
  level: 'stop' | 'unknown' | 'care';
  text: string;
}

/**
 * What stands at the head of a step's card: the calculations of the step and of the waits after it, asked with what was read last, and those that its
 * own waits rest on, asked with what was read at the step before. What the plan says already is not said again.
 */
export function headOf(measured: MeasuredMethod, step: WorkedStep): CardHead | undefined {
  const asked = askedAt(measured, step).flatMap(({ name, method }) => {
    const [before, now] = [measured.planned.calculations[name], method.calculations[name]];
    return before && now && JSON.stringify(before.raw) !== JSON.stringify(now.raw) ? [{ before, now, method }] : [];
  });
  const verdicts = (level: 'stop' | 'unknown') =>
    asked.flatMap(({ now: { result } }) => (result?.verdict.level === level ? [result.verdict.text] : []));
  const worse = asked.flatMap(({ before, now, method }) => [
    ...outsideWords(method, before, now),
    ...addedWords(before, now),
  ]);
  const stops = verdicts('stop');
  const fitting = (texts: readonly string[]) => once(texts.flatMap((text) => fitTo(measured.worked, step, text)));
  if (stops.length > 0) return { level: 'stop', text: fitting(stops) };
  const unsure = [...asked.flatMap(({ now: { errors } }) => errors?.[0]?.message ?? []), ...verdicts('unknown')];
  if (unsure.length > 0) return { level: 'unknown', text: fitting(unsure) };
  const text = fitting(worse);
  return text === '' ? undefined : { level: 'care', text };
}

const once = (texts: readonly string[]): string => [...new Set(texts)].join(' ');

/** Whether something is mixed at a step: it mixes, or takes resin of its own. */
const mixes = ({ materials }: WorkedMethod, { act, record }: WorkedStep): boolean =>
  act.id === 'mix' || (record.uses ?? []).some((name) => materials[name]?.record.kind === 'resin');

/** A calculation speaks as before the mixing; where nothing is mixed any more, what it says is of the resin that lies there, or is over. */
function fitTo(worked: WorkedMethod, step: WorkedStep, text: string): string[] {
  if (mixes(worked, step) || !/ before you mix\b/.test(text)) return [text];
  return / before you mix it\b/.test(text) ? [] : [text.replace(/,? before you mix\b/, ', until the resin has cured')];
}

/** What warmth or cold beyond a method does to resin. */
const warmer = 'Warmer, resin sets sooner and grows hotter: there is less time to work, and its windows close sooner.';
const colder = 'Colder, resin cures later, or not through: go by what its sheet says of the cold.';

function askedAt({ worked, now, at }: MeasuredMethod, step: WorkedStep): { name: string; method: WorkedMethod }[] {
  const { record } = worked;
  const later = worked.steps.flatMap(({ after }) => after.filter((link) => link.step === step.id));
  const entries = [
    ...step.calculations.map(({ name }) => ({ name, method: now })),
    ...later.flatMap((link) => restsOn(record, link)).map((name) => ({ name, method: now })),
    ...step.after.flatMap((link) => restsOn(record, link).map((name) => ({ name, method: at(link.step) }))),
  ];
  return entries.filter(
    ({ name, method }, place) => entries.findIndex((other) => other.name === name && other.method === method) === place,
  );
}

/** Says a wait that the cards of later steps say with their days. */
const saidByWaits = 'cures-late';

/** Dangers and warnings of the case that the plan did not have; else the verdict, where it was good and no longer is. */
function addedWords(before: WorkedCalculation, { result }: WorkedCalculation): string[] {
  if (!result || !before.result) return [];
  const known = new Set(before.result.cautions.map(({ id }) => id));
  const added = result.cautions.filter(
    ({ id, level, own }: Caution) => own && level !== 'note' && id !== saidByWaits && !known.has(id),
  );
  if (added.length > 0) return added.map(({ text }) => text);
  return result.verdict.level === 'care' && before.result.verdict.level === 'good' ? [result.verdict.text] : [];
}

/** What was read outside the range for which the method is written. */
function outsideWords(
  { parameters }: WorkedMethod,
  { refers }: WorkedCalculation,
  { inputs = {}, raw }: WorkedCalculation,
): string[] {
  return Object.entries(refers).flatMap(([input, pointer]) => {
    const [branch, name = ''] = stepsOfPointer(pointer);
    const record = branch === 'parameters' ? parameters[name]?.record : undefined;
    const value = inputs[input];
    if (record?.kind !== 'quantity' || typeof value !== 'number') return [];
    const [least, most] = [readAnyQuantity(record.least), readAnyQuantity(record.most)];
    if (!least.ok || !most.ok) return [];
    const [low, high] = [least.value[0], most.value[0]];
    if (value >= low.value && value <= high.value) return [];
    const text = (number: number) => amount(number, low.unit);
    const ofResin = low.unit === 'Cel' && raw['resin'] !== undefined;
    return [
      `${record.label}: ${text(value)}, and this method is written for ${text(low.value)} to ${text(high.value)}.`,
      ...(ofResin ? [value > high.value ? warmer : colder] : []),
    ];
  });
}
