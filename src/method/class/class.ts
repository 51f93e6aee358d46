import type { WorkedMethod } from '../case/types.ts';
import { timeFindings } from '../plan/findings.ts';
import { type NoTimetable, type Timetable, timetableOf, withWays } from '../plan/index.ts';
import { studentBounds } from '../plan/student-bounds.ts';
import { impossibleWords } from '../plan/words.ts';
import { readMethod } from '../read.ts';
import { judge } from '../rules/judge.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { readShop } from '../shop/index.ts';
import { asClassFinding, mixesOf, mixingRuleIds } from './mixes.ts';
import { orderOf } from './order.ts';
import { type ClassCase, type WorkedPlace, workPlaces } from './places.ts';
import type { ClassRecord } from './record.ts';
import { hoursOfClass, type SessionHours } from './sessions.ts';
import { placeFaults } from './sheet.ts';
import { classSessions, wholeClass } from './timetable.ts';
import type { ClassAnswer, ClassFinding, ClassProblem, ClassQuestion, ClassSession, PlacePage } from './types.ts';

/** A class worked out, with what a question about one of its places needs again. */
export interface WorkedClass {
  record: ClassRecord;
  one: ClassCase;
  /** The class as one method, as its timetable has it. */
  whole: WorkedMethod;
  hours?: OpeningHours;
  start?: string;
  /** Sessions that the teacher marked as without students. */
  alone: SessionHours['alone'];
  /** Those of them that come after the class has begun, as typed: nothing is planned in them. */
  unused: SessionHours['unused'];
  timetable?: Timetable | NoTimetable;
  sessions: readonly ClassSession[];
  people: number;
}

/** How far the working out has come. */
export interface ClassProgress {
  /** Places that are done, of how many. */
  done: number;
  of: number;
  /** What is done after them. */
  now: 'places' | 'mixes' | 'order' | 'timetable';
}

function readAll({ record, text, file, zone }: ClassQuestion) {
  const problems: ClassProblem[] = [];
  const at = (where: 'method' | 'shop', found: ReturnType<typeof readMethod>['problems']) =>
    problems.push(
      ...found.map(
        ({ field, message, ...place }): ClassProblem => ({
          where,
          field,
          message,
          place: { file: place.file, line: place.line, column: place.column },
        }),
      ),
    );
  const read = readMethod(text, file);
  at('method', read.problems);
  const shopText = record.common.shop;
  const shop = shopText ? readShop(shopText.text, shopText.file) : undefined;
  if (shop) at('shop', shop.problems);
  if (read.record)
    problems.push(
      ...placeFaults(read.record, record.common.set, shop?.shop).map(
        ({ key, message }): ClassProblem => ({
          where: 'common',
          field: key,
          message,
        }),
      ),
    );
  const hours = hoursOfClass(record.common.sessions, record.common.zone || shop?.shop?.zone || zone);
  if (!hours.ok) problems.push(...hours.problems);
  if (record.places.length === 0)
    problems.push({
      where: 'places',
      field: '',
      message: 'The class has no place yet. Add one for each student, or open a list of places (CSV).',
    });
  return { read, shop: shop?.shop, hours, problems };
}

const gravity = { stop: 0, warn: 1, note: 2 } as const;

/** What is found at places, each once with all the places it is found at; the same at every place is about the class. */
function findingsOf(places: readonly WorkedPlace[], more: readonly ClassFinding[]): ClassFinding[] {
  const found = new Map<string, ClassFinding>();
  const add = (finding: ClassFinding) => {
    const key = JSON.stringify([finding.rule, finding.step, finding.message]);
    const before = found.get(key);
    found.set(key, before ? { ...before, places: [...new Set([...before.places, ...finding.places])] } : finding);
  };
  for (const { id, worked } of places) {
    for (const finding of judge(worked)) {
      if (finding.excepted !== undefined || mixingRuleIds.includes(finding.rule)) continue;
      add(asClassFinding(worked, finding, [id]));
    }
  }
  for (const finding of more) add(finding);
  return [...found.values()]
    .map((finding) => (finding.places.length === places.length ? { ...finding, places: [] } : finding))
    .sort((one, other) => gravity[one.level] - gravity[other.level]);
}

/** The value of a parameter as a line says it. */
function differsWords({ own, worked }: WorkedPlace): string[] {
  const names = [...new Set(Object.keys(own).map((key) => key.split('.')[0] ?? key))];
  return names.flatMap((name) => {
    const parameter = worked.parameters[name];
    if (!parameter) return [];
    const { value, raw } = parameter;
    const measures = Object.entries(own).filter(([key]) => key.startsWith(`${name}.`));
    const text =
      measures.length > 0
        ? measures.map(([key, measure]) => `${key.slice(name.length + 1)} ${measure}`).join(', ')
        : 'text' in value && value.text
          ? value.text
          : String(raw);
    return [`${parameter.record.label}: ${text}`];
  });
}

function placePages(one: ClassCase, record: ClassRecord, findings: readonly ClassFinding[]): PlacePage[] {
  return record.places.map((place): PlacePage => {
    const named = place.name ? { name: place.name } : {};
    const worked = one.places.find(({ id }) => id === place.id);
    if (!worked) {
      const problems = one.faulty.find((each) => each.place.id === place.id)?.problems ?? [];
      return { id: place.id, ...named, differs: [], problems, uses: [], stops: 0, warnings: 0 };
    }
    const own = findings.filter(({ places }) => places.length === 0 || places.includes(place.id));
    const count = (level: string) => own.filter((finding) => finding.level === level).length;
    return {
      id: place.id,
      ...named,
      differs: differsWords(worked),
      problems: [],
      uses: Object.values(worked.worked.materials).flatMap(({ record: { what }, needs }) =>
        needs.map(({ amount, unit }) => ({ what, amount: amount / one.alone, unit })),
      ),
      stops: count('stop'),
      warnings: count('warn'),
    };
  });
}

function notesOf({ one, record, timetable, alone, unused, hours }: WorkedClass, mixes: number): string[] {
  const { least, most } = one.read.record.makes.pieces;
  const count = one.places.length;
  const notes: string[] = [];
  if (hours && alone.length === 0)
    notes.push(
      'Everybody is taken to be there in every session. Write “teacher only” behind the time of those without students: what students must hear is then said in no such session.',
    );
  if (alone.length > 0)
    notes.push(
      'In a session without students the time of a step is reckoned as if all hands of the class were there: it takes the teacher longer where several could work at once.',
    );
  if (unused.length > 0)
    notes.push(
      `Nothing is planned without students once the class has begun: ${unused.map((text) => `“${text}”`).join(', ')} ${unused.length === 1 ? 'is' : 'are'} not used.`,
    );
  if (count < least || count > most)
    notes.push(
      `The method is written for ${least} to ${most} pieces, and this class makes ${count}: look whether room, machines and teacher bear it.`,
    );
  if (one.faulty.length > 0)
    notes.push(
      `${one.faulty.length} of ${record.places.length} places cannot be worked out yet; they stand in no order, mix or timetable.`,
    );
  if (timetable?.ok && mixes > 1)
    notes.push(
      `The timetable has the time of one mix. This class has ${mixes}, one after another by resin and colour: plan the setting up of the mix ${mixes} times.`,
    );
  return notes;
}

/** How many mixes the dose that fills has, which is the one with most. */
const mixesAtOnce = (mixes: readonly { calculation: string }[]) =>
  Math.max(0, ...mixes.map(({ calculation }) => mixes.filter((mix) => mix.calculation === calculation).length));

/**
 * Work a class out: each place by the method's own calculators, one order, resin by colour, a timetable with who stands at which machine.
 *
 * @param tell called as it goes on
 * @param memo answers of calculators from an earlier time: a change at one place then costs that place alone
 * @returns the answer, and what a question about a missed session needs
 */
export async function workClass(
  question: ClassQuestion,
  tell: (progress: ClassProgress) => void = () => {},
  memo?: Map<string, unknown>,
): Promise<{ answer: ClassAnswer; state?: WorkedClass }> {
  const { record } = question;
  const { read, shop, hours, problems } = readAll(question);
  if (problems.length > 0 || !read.record || !hours.ok) return { answer: { ok: false, problems } };
  const of = record.places.length;
  const one = await workPlaces(
    read as ClassCase['read'],
    record,
    shop,
    (done) => tell({ done, of, now: 'places' }),
    memo,
  );
  const people = record.people.teachers + record.people.helpers + one.places.length;
  const { makes, title } = read.record;
  const base = {
    name: record.name,
    method: { title, makes: makes.what, least: makes.pieces.least, most: makes.pieces.most },
  };
  if (one.places.length === 0) {
    const empty = { currency: 'XXX', lines: [], bought: 0, without: [], errors: [] };
    const page = {
      ...base,
      places: placePages(one, record, []),
      findings: [],
      order: empty,
      mixes: [],
      sessions: [],
      notes: ['No place can be worked out yet: mend what is said beside each.'],
      people,
      zone: hours.hours?.zone ?? question.zone,
    };
    return { answer: { ok: true, page } };
  }
  tell({ done: of, of, now: 'mixes' });
  const mixes = await mixesOf(one);
  tell({ done: of, of, now: 'order' });
  const order = await orderOf(one);
  tell({ done: of, of, now: 'timetable' });
  const whole = await wholeClass(one);
  const within = await studentBounds(hours, whole);
  const timetable =
    hours.hours && hours.start !== undefined
      ? await timetableOf(whole, { start: hours.start, hours: hours.hours, people, ...(within ? { within } : {}) })
      : undefined;
  const sessions = timetable?.ok ? classSessions(whole, timetable, one.places, hours.alone) : [];
  const state: WorkedClass = {
    record,
    one,
    whole,
    alone: hours.alone,
    unused: hours.unused,
    ...(hours.hours ? { hours: hours.hours } : {}),
    ...(hours.start === undefined ? {} : { start: hours.start }),
    ...(timetable ? { timetable } : {}),
    sessions,
    people,
  };
  const timed = timetable?.ok ? timeFindings(whole, timetable) : [];
  const everybody = one.places.map(({ id }) => id);
  const findings = findingsOf(one.places, [
    ...mixes.flatMap((mix) => mix.findings),
    ...timed.map((finding) => asClassFinding(whole, finding, everybody)),
  ]);
  return {
    answer: {
      ok: true,
      page: {
        ...base,
        places: placePages(one, record, findings),
        findings,
        order,
        mixes,
        sessions,
        ...timelessOf(state),
        notes: notesOf(state, mixesAtOnce(mixes)),
        people,
        zone: hours.hours?.zone ?? question.zone,
      },
    },
    state,
  };
}

function timelessOf({ timetable, whole, alone }: WorkedClass): {
  timeless?: { why: string; changes: readonly string[] };
} {
  if (timetable?.ok) return {};
  if (!timetable)
    return {
      timeless: {
        why: 'Nobody has said yet when the class meets.',
        changes: ['its sessions, one a line: 2027-02-09 18:30-21:00'],
      },
    };
  if (alone.length > 0 && timetable.why.constraints.some(({ kind }) => kind === 'latest'))
    return {
      timeless: {
        why: 'What is done before students hear what can hurt does not fit into the sessions without students.',
        changes: ['more or longer sessions of the teacher before the first of the class'],
      },
    };
  return { timeless: impossibleWords(whole, withWays(timetable)) };
}

/** The answer alone, as plain data. */
export const answerClass = async (question: ClassQuestion, memo?: Map<string, unknown>): Promise<ClassAnswer> =>
  (await workClass(question, undefined, memo)).answer;
