import { fieldsOf } from '../../calculators/kit/answer.ts';
import { fieldMeta } from '../../calculators/kit/fields.ts';
import type { CalculatorId } from '../../calculators/registry.ts';
import { amount, canonicalUnit, type Dimension } from '../../model/quantity/index.ts';
import { type Calculators, calculatorsOf } from '../case/fit.ts';
import { orThese } from '../case/or-these.ts';
import type { WorkedLink, WorkedMethod, Working } from '../case/types.ts';
import { workMethod } from '../case/work.ts';
import { stepsOfPointer } from '../pointer.ts';
import { isReference, type MethodRecord } from '../record/index.ts';
import type { OpenedCase } from './case.ts';
import { clocksApart } from './moment.ts';
import type { BatchEntry, EntryOf } from './record.ts';
import type { BatchProblem } from './standing.ts';

type Reading = EntryOf<'reading'>;
type Measured = Record<string, Record<string, string>>;

/** Something that can be read off while a step is done: an input of a calculation that the step, or a wait after it, rests on. */
export interface ReadableInput {
  calculation: string;
  /** Id of its calculator. */
  use: CalculatorId;
  input: string;
  label: string;
  /** What it measures: a bare number is read in the reader’s unit of it. */
  dimension?: Dimension;
  /** What the method reckons with, a marked quantity. */
  planned?: string;
  /** True where a wait after this step rests on it: without it nobody knows when the next step may be done. */
  decides: boolean;
}

/** The method worked out with what was measured. */
export interface MeasuredMethod {
  /** As it was planned, with nothing measured. */
  planned: WorkedMethod;
  /** With every wait as it is by what was measured at the step that it counts from. */
  worked: WorkedMethod;
  /** Every way in which it was worked out: rules are asked of each, since one resin may have been poured warm and another cold. */
  all: readonly WorkedMethod[];
  /** As it is by what was read last, at whichever step: every calculation that takes the same parameter of the method is asked with it. */
  now: WorkedMethod;
  /** As it was measured at a step. */
  at(step: string): WorkedMethod;
  /** What can be read at each step. */
  readable: ReadonlyMap<string, readonly ReadableInput[]>;
  /** Whether an input of a calculation was read at a step. */
  wasRead(step: string, calculation: string, input: string): boolean;
  problems: readonly BatchProblem[];
}

const stepOfCalculation = (record: MethodRecord, calculation: string): string | undefined =>
  Object.entries(record.steps).find(([, { calculations = {} }]) => Object.hasOwn(calculations, calculation))?.[0];

/** Calculations that a wait or its window refers to. */
function restsOn(record: MethodRecord, { path }: WorkedLink): string[] {
  const [, step, , at] = path;
  const link = record.steps[String(step)]?.after?.[Number(at)];
  if (link === undefined || typeof link === 'string') return [];
  return [link.least, link.most].flatMap((entry) => {
    if (entry === undefined || !isReference(entry)) return [];
    const [branch, name = ''] = stepsOfPointer(entry.from);
    return branch === 'calculations' ? [name] : [];
  });
}

/**
 * Temperatures that a calculation about a resin was given: they decide how far it has cured, which can hurt somebody. Wood that comes to rest is
 * weighed, and waits for no thermometer.
 */
function temperaturesOf(worked: WorkedMethod, calculators: Calculators, calculation: string): string[] {
  const asked = worked.calculations[calculation];
  const calculator = asked && calculators.get(asked.use);
  if (!asked || !calculator) return [];
  const fields = fieldsOf(calculator);
  const metaOf = (input: string) => {
    const field = fields[input];
    return field && fieldMeta(field);
  };
  const given = Object.keys(asked.raw);
  if (!given.some((input) => metaOf(input)?.kind === 'resin')) return [];
  return given.filter((input) => metaOf(input)?.dimension === 'temperature');
}

/** Readings whose names lead somewhere, and what is wrong with the others. */
function usable(
  readings: readonly Reading[],
  record: MethodRecord,
  calculators: Calculators,
  now: number,
): { good: Reading[]; problems: BatchProblem[] } {
  const names = Object.values(record.steps).flatMap(({ calculations = {} }) => Object.keys(calculations));
  const problems: BatchProblem[] = [];
  const good = readings.filter((reading) => {
    const { id, step, calculation, input, value, when } = reading;
    const wrong = (text: string, wayOut: string) => {
      problems.push({ entries: [id], ...(Object.hasOwn(record.steps, step) ? { step } : {}), text, wayOut });
      return false;
    };
    if (!Object.hasOwn(record.steps, step))
      return wrong(
        `“${step}” is no step of this method, and its reading is left aside.`,
        'Strike it, and write it down at the step that was meant.',
      );
    if (Date.parse(when) > now + clocksApart)
      return wrong(
        `The reading “${value}” is written down for a time that is still to come, and is left aside until then.`,
        'If the time was mistyped, strike it and write it anew; if the clock of this device is wrong, set it.',
      );
    if (!names.includes(calculation))
      return wrong(
        `“${calculation}” is no calculation of this method, and its reading is left aside.`,
        orThese(calculation, names, 'calculation'),
      );
    const owner = stepOfCalculation(record, calculation) ?? '';
    const calculator = calculators.get(record.steps[owner]?.calculations?.[calculation]?.use as CalculatorId);
    const known = calculator ? Object.keys(fieldsOf(calculator)) : [];
    if (!known.includes(input))
      return wrong(
        `“${calculation}” has no input “${input}”, and its reading is left aside.`,
        orThese(input, known, 'input'),
      );
    return true;
  });
  return { good, problems };
}

/**
 * What a reading says of other calculations at its step: those whose input is the same parameter of the method. The thermometer is read once, for the
 * heat of the pour and for its cure alike.
 */
function alsoRead(
  reading: Reading,
  told: readonly Reading[],
  { calculations }: WorkedMethod,
  readable: ReadonlyMap<string, readonly ReadableInput[]>,
): Reading[] {
  const pointer = calculations[reading.calculation]?.refers[reading.input];
  if (pointer === undefined) return [];
  const isTold = (calculation: string, input: string) =>
    told.some((each) => each.step === reading.step && each.calculation === calculation && each.input === input);
  return (readable.get(reading.step) ?? [])
    .filter(
      ({ calculation, input }) => calculations[calculation]?.refers[input] === pointer && !isTold(calculation, input),
    )
    .map(({ calculation, input }) => ({ ...reading, calculation, input }));
}

/** Readings as the last of each input says. */
function lastOf(readings: readonly Reading[]): Measured {
  const measured: Measured = {};
  const inTime = [...readings].sort((one, other) => Date.parse(one.when) - Date.parse(other.when));
  for (const { calculation, input, value } of inTime)
    measured[calculation] = { ...measured[calculation], [input]: value };
  return measured;
}

const laidOver = (below: Measured, above: Measured): Measured => ({
  ...below,
  ...Object.fromEntries(Object.entries(above).map(([name, inputs]) => [name, { ...below[name], ...inputs }])),
});

/**
 * Work a method out with what was measured. A reading at the step in which its calculation stands changes that calculation for all; a reading at
 * another step changes the waits that count from that step alone, since a seal coat may have been laid at one temperature and the pour at another.
 *
 * @param instant ms: what was read later than that was not read yet
 */
export async function workMeasured(
  { read, options }: OpenedCase,
  entries: readonly BatchEntry[],
  memo: Map<string, unknown>,
  instant: number,
): Promise<{ ok: true; measured: MeasuredMethod } | Extract<Working, { ok: false }>> {
  const planned = await workMethod(read, { ...options, memo });
  if (!planned.ok) return planned;
  const { record } = planned.worked;
  const calculators = await calculatorsOf(record);
  const readable = readableOf(planned.worked, calculators);
  const { good: told, problems } = usable(
    entries.filter((entry): entry is Reading => entry.kind === 'reading'),
    record,
    calculators,
    instant,
  );
  const good = [...told, ...told.flatMap((reading) => alsoRead(reading, told, planned.worked, readable))];
  const isOwn = ({ step, calculation }: Reading) => stepOfCalculation(record, calculation) === step;
  const base = lastOf(good.filter(isOwn));
  const whole = await workMethod(read, { ...options, memo, measured: base });
  if (!whole.ok) return whole;
  const foreign = good.filter((reading) => !isOwn(reading));
  const apart = new Map<string, WorkedMethod>();
  for (const step of new Set(foreign.map((reading) => reading.step))) {
    const measured = laidOver(base, lastOf(foreign.filter((reading) => reading.step === step)));
    const working = await workMethod(read, { ...options, memo, measured });
    if (!working.ok) return working;
    apart.set(step, working.worked);
  }
  const now = await workedNow({ read, options }, good, planned.worked, memo);
  if (!now.ok) return now;
  const worked: WorkedMethod = {
    ...whole.worked,
    steps: whole.worked.steps.map((step, at) => ({
      ...step,
      after: step.after.map((link, place) =>
        notLonger(
          apart.get(link.step)?.steps[at]?.after[place] ?? link,
          planned.worked.steps[at]?.after[place] ?? link,
        ),
      ),
    })),
  };
  const all = [whole.worked, ...apart.values()];
  return {
    ok: true,
    measured: {
      planned: planned.worked,
      worked,
      all,
      now: now.worked,
      at: (step) => apart.get(step) ?? whole.worked,
      readable,
      wasRead: (step, calculation, input) =>
        good.some((each) => each.step === step && each.calculation === calculation && each.input === input),
      problems: [...problems, ...refused(told, all, apart)],
    },
  };
}

/** A mixed cup gets no more time by a cold reading than the plan gave it: cold resin is slow, and a cup warms itself. */
const notLonger = (link: WorkedLink, planned: WorkedLink): WorkedLink =>
  link.counts === 'start' && link.most !== undefined && planned.most !== undefined
    ? { ...link, most: Math.min(link.most, planned.most) }
    : link;

/** The method worked out with what was read last: what was read of a parameter is told to every calculation that takes it. */
async function workedNow(
  { read, options }: Pick<OpenedCase, 'read' | 'options'>,
  readings: readonly Reading[],
  planned: WorkedMethod,
  memo: Map<string, unknown>,
): Promise<Working> {
  const calculations = Object.values(planned.calculations);
  const measured = lastOf(
    readings.flatMap((reading) => {
      const pointer = planned.calculations[reading.calculation]?.refers[reading.input];
      const others = calculations.flatMap(({ name, refers }) =>
        Object.keys(refers)
          .filter((input) => pointer !== undefined && refers[input] === pointer)
          .map((input) => ({ ...reading, calculation: name, input })),
      );
      return [reading, ...others];
    }),
  );
  const working = await workMethod(read, { ...options, memo, measured });
  if (!working.ok) return working;
  // No night is warmer than the day that was read, nor a day that nobody read colder than the night: what was read may be of two days.
  let changed = false;
  for (const { name, raw, inputs = {} } of Object.values(working.worked.calculations)) {
    const { dayTemperature: day, nightTemperature: night } = inputs;
    if (typeof day !== 'number' || typeof night !== 'number' || night <= day) continue;
    const told = measured[name] ?? {};
    const byNight = Object.hasOwn(told, 'nightTemperature') && !Object.hasOwn(told, 'dayTemperature');
    const [from, to] = byNight ? ['nightTemperature', 'dayTemperature'] : ['dayTemperature', 'nightTemperature'];
    measured[name] = { ...told, [to as string]: String(raw[from as string]) };
    changed = true;
  }
  return changed ? workMethod(read, { ...options, memo, measured }) : working;
}

/** Readings that their calculation does not take: outside what it holds for, or no quantity at all. */
function refused(
  good: readonly Reading[],
  all: readonly WorkedMethod[],
  apart: ReadonlyMap<string, WorkedMethod>,
): BatchProblem[] {
  return good.flatMap(({ id, step, calculation, input, value }): BatchProblem[] => {
    const worked = apart.get(step) ?? all[0];
    const error = worked?.calculations[calculation]?.errors?.find(({ field }) => field === input);
    if (!error) return [];
    return [
      {
        entries: [id],
        step,
        text: `The reading “${value}” cannot be used: ${error.message}`,
        wayOut:
          'If it was mistyped, strike it and write it anew. If it was so, nothing is worked out from it: go by the maker’s data sheet, or ask its maker.',
      },
    ];
  });
}

/** What can be read at each step: the quantities that its calculations are given, and the temperatures that the waits after it rest on. */
function readableOf(worked: WorkedMethod, calculators: Calculators): Map<string, ReadableInput[]> {
  const { record } = worked;
  const all = new Map<string, ReadableInput[]>(worked.steps.map(({ id }) => [id, []]));
  const add = (step: string, calculation: string, input: string, decides: boolean) => {
    const asked = worked.calculations[calculation];
    const field = asked && fieldsOf(calculators.get(asked.use) ?? { inputs: undefined as never })[input];
    const meta = field && fieldMeta(field);
    const list = all.get(step);
    if (!asked || !meta || !list || meta.kind !== 'quantity') return;
    const before = list.find((each) => each.calculation === calculation && each.input === input);
    if (before) before.decides ||= decides;
    else {
      const value = asked.inputs?.[input];
      const { label, dimension } = meta;
      const planned = typeof value === 'number' && dimension ? amount(value, canonicalUnit[dimension]) : undefined;
      list.push({
        calculation,
        use: asked.use,
        input,
        label,
        ...(dimension ? { dimension } : {}),
        ...(planned === undefined ? {} : { planned }),
        decides,
      });
    }
  };
  for (const { after } of worked.steps)
    for (const link of after)
      for (const calculation of restsOn(record, link))
        for (const input of temperaturesOf(worked, calculators, calculation)) add(link.step, calculation, input, true);
  for (const { id, calculations } of worked.steps)
    for (const { name, raw } of calculations) for (const input of Object.keys(raw)) add(id, name, input, false);
  return all;
}

/**
 * Temperatures that decide how long the work after a step waits, and that nobody read at it: each calculation with those that are missing. A day tells
 * nothing of its night.
 */
export function unreadAt(
  { readable, wasRead }: MeasuredMethod,
  step: string,
): { calculation: string; inputs: readonly ReadableInput[] }[] {
  const missing = (readable.get(step) ?? []).filter(
    ({ decides, calculation, input }) => decides && !wasRead(step, calculation, input),
  );
  return [...new Set(missing.map(({ calculation }) => calculation))].map((calculation) => ({
    calculation,
    inputs: missing.filter((each) => each.calculation === calculation),
  }));
}

export { restsOn };
