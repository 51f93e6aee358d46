import type { DataProblem } from '../../model/data/problem.ts';
import { calculatorsOf } from '../case/fit.ts';
import type { WorkedMethod } from '../case/types.ts';
import { workMethod } from '../case/work.ts';
import {
  type AdvisedPlan,
  advised,
  type CaseMoney,
  moneyOf,
  type Plan,
  planOf,
  type Timetable,
} from '../plan/index.ts';
import { studentBounds } from '../plan/student-bounds.ts';
import { type MethodReading, readMethod } from '../read.ts';
import { judge } from '../rules/judge.ts';
import type { Finding } from '../rules/rule.ts';
import { ProblemError } from '../schedule/index.ts';
import { readShop, type ShopReading } from '../shop/index.ts';
import { type CaseFault, type CaseTimes, timesOf } from './hours.ts';
import { ShortMemory } from './memo.ts';
import { type Beside, pageOf } from './page.ts';
import { shownTimetable } from './timetable.ts';
import type { MethodAnswer, MethodPage, MethodQuestion } from './types.ts';

/** Answers of calculators kept between questions: a method asks some fifteen, and a reader tries a dozen values. */
const mostKept = 400;

/** What is kept from one question to the next: the last readings of the two texts, and the answers of calculators. */
export class MethodMemory {
  readonly answers = new ShortMemory<string, unknown>(mostKept);
  readonly #methods = new ShortMemory<string, MethodReading>(4);
  readonly #shops = new ShortMemory<string, ShopReading>(2);
  #judged: { of: string; beside: Beside } | undefined;

  method(text: string, file: string): MethodReading {
    const key = `${file}\n${text}`;
    const read = this.#methods.get(key) ?? readMethod(text, file);
    this.#methods.set(key, read);
    return read;
  }

  shop(text: string): ShopReading {
    const read = this.#shops.get(text) ?? readShop(text);
    this.#shops.set(text, read);
    return read;
  }

  /** How the last case of the same method in the same shop was judged and priced. */
  judged(question: MethodQuestion): Beside | undefined {
    return this.#judged?.of === judgedBy(question) ? this.#judged.beside : undefined;
  }

  judge(question: MethodQuestion, beside: Beside): void {
    this.#judged = { of: judgedBy(question), beside };
  }
}

const judgedBy = ({ text, file, shop = '' }: MethodQuestion) => JSON.stringify([file, text, shop]);

const atHead = (file: string, { field, message }: CaseFault): DataProblem => ({
  file,
  line: 1,
  column: 1,
  field,
  message,
});

/** A case worked out as far as its numbers. */
interface Numbers {
  worked: WorkedMethod;
  times: CaseTimes;
}

/** The same, judged and priced. */
interface Judged extends Numbers {
  findings: readonly Finding[];
  money: CaseMoney;
  page: MethodPage;
}

type Refused = Extract<MethodAnswer, { ok: false }>;

async function numbersOf(question: MethodQuestion, memory: MethodMemory): Promise<Refused | ({ ok: true } & Numbers)> {
  const { file, set, pieces, measured } = question;
  const read = memory.method(question.text, file);
  const shopRead = question.shop === undefined ? undefined : memory.shop(question.shop);
  const shop = shopRead?.shop;
  const here = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const timed = timesOf(question, shop, here);
  const beside = [...(shopRead?.problems ?? []), ...(timed.ok ? [] : timed.faults.map((each) => atHead(file, each)))];
  if (!read.record) return { ok: false, problems: [...read.problems, ...beside] };
  const working = await workMethod(read, {
    memo: memory.answers,
    ...(pieces === undefined ? {} : { pieces }),
    ...(set ? { set } : {}),
    ...(shop ? { shop } : {}),
    ...(measured ? { measured } : {}),
  });
  if (!working.ok)
    return {
      ok: false,
      problems: [...working.problems, ...beside],
      ...(working.beyond ? { beyond: working.beyond } : {}),
    };
  if (!timed.ok || beside.length > 0) return { ok: false, problems: beside };
  return { ok: true, worked: working.worked, times: timed.times };
}

async function judgedOf({ worked, times }: Numbers, question: MethodQuestion, memory: MethodMemory): Promise<Judged> {
  const money = moneyOf(worked);
  const findings = judge(worked);
  const beside = { findings, ...money };
  memory.judge(question, beside);
  return { worked, times, findings, money, page: pageOf(worked, await calculatorsOf(worked.record), beside) };
}

/** The page of a plan, with its advice or still without. */
async function pageOfPlan({ worked, times, page: judged }: Judged, plan: Plan | AdvisedPlan): Promise<MethodPage> {
  const { zone, relative, assumedHours, assumedPeople } = times;
  const { timetable, impossible, findings, bill, cost } = plan;
  const page = pageOf(worked, await calculatorsOf(worked.record), { findings, bill, cost });
  const toCome = 'advice' in plan ? {} : { toCome: 'advice' as const };
  if (!timetable.ok) return { ...page, ...(impossible ? { impossible } : {}), ...toCome };
  return {
    ...page,
    brief: { ...judged.brief, ...page.brief, lasts: timetable.end - timetable.start },
    timetable: shownTimetable(
      { ...plan, timetable: timetable as Timetable },
      {
        zone,
        relative,
        assumedHours,
        ...(assumedPeople === undefined ? {} : { assumedPeople }),
      },
    ),
    ...toCome,
  };
}

/**
 * Answer a question in goes, for a reader who waits: first the page with its numbers, judged and priced, then the same with its timetable, then with
 * what further plannings say of it; `toCome` names what follows. What is wrong with the file, the shop record or the case is the only answer.
 *
 * @param early true to have the numbers before they are judged, where a case of the same method was judged before: how that was judged stands meanwhile
 */
export async function* answersTo(
  question: MethodQuestion,
  memory: MethodMemory = new MethodMemory(),
  early = false,
): AsyncGenerator<MethodAnswer, void, undefined> {
  const numbers = await numbersOf(question, memory);
  if (!numbers.ok) {
    yield numbers;
    return;
  }
  const { worked } = numbers;
  const before = early ? memory.judged(question) : undefined;
  if (before) {
    const page = pageOf(worked, await calculatorsOf(worked.record), before);
    yield { ok: true, page: { ...page, toCome: 'judgement' } };
  }
  const judged = await judgedOf(numbers, question, memory);
  yield { ok: true, page: { ...judged.page, toCome: 'timetable' } };
  try {
    const { zone: _, relative, assumedHours: __, assumedPeople: ___, ...options } = numbers.times;
    const within = await studentBounds({ ...options, ...(question.first ? { first: question.first } : {}) }, worked);
    const { money, findings } = judged;
    const plan = await planOf(worked, { ...options, relative, ...(within ? { within } : {}) }, money, findings);
    yield { ok: true, page: await pageOfPlan(judged, plan) };
    yield { ok: true, page: await pageOfPlan(judged, await advised(plan)) };
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    yield { ok: false, problems: [atHead(question.file, { field: 'start', message: error.message })] };
  }
}

/** The whole answer to a question: the method worked out for its case, with its timetable; or everything that is wrong, each with its place. */
export async function answerMethod(question: MethodQuestion, memory?: MethodMemory): Promise<MethodAnswer> {
  let last: MethodAnswer | undefined;
  for await (const answer of answersTo(question, memory)) last = answer;
  return last as MethodAnswer;
}

/** The same without a timetable: quick enough to follow somebody who types. */
export async function answerNumbers(
  question: MethodQuestion,
  memory: MethodMemory = new MethodMemory(),
): Promise<MethodAnswer> {
  const numbers = await numbersOf(question, memory);
  return numbers.ok ? { ok: true, page: (await judgedOf(numbers, question, memory)).page } : numbers;
}
