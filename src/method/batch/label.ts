import { answer } from '../../calculators/kit/answer.ts';
import type { CalculatorId } from '../../calculators/registry.ts';
import { loadCalculator } from '../../calculators/registry.ts';
import type { ResultDocument, Verdict } from '../../model/evidence/index.ts';
import type { WorkedCalculation, WorkedStep } from '../case/types.ts';
import { answerFor, askedOf, figureOf, finishesOf, isResinCoat, layersOfResin, woodsOf } from '../rules/kit.ts';
import { type BatchLabelWords, batchLabelDocument } from '../sale/batch-label.ts';
import { woodWords } from '../sale/facts.ts';
import { unreadAt } from './measured.ts';
import { isDone, type WorkedBatch } from './state.ts';
import { waitOf } from './waits.ts';

/** What may be said of a batch and food, and what is printed to go with it. */
export interface BatchLabel {
  verdict: Verdict;
  /** What stands in the way, a sentence each; empty where a label may be written. */
  inTheWay: readonly string[];
  /** What the calculations of label and card were told, by name of the calculation. */
  facts: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  /** None while anything stands in the way. */
  documents: readonly ResultDocument[];
}

const day = 86_400_000;

/** Acts that lay a finish on. */
const finishing: readonly string[] = ['oil', 'wax', 'coat'];

/** Steps that lay on something that must cure: resin, oil, wax, film. */
export function layersOf({ measured: { worked } }: WorkedBatch): { resin: WorkedStep[]; finish: WorkedStep[] } {
  const resin = layersOfResin(worked);
  return {
    resin,
    finish: worked.steps.filter((step) => finishing.includes(step.act.id) && !isResinCoat(worked, step)),
  };
}

/** The last end of a step over all its pieces, ms; undefined while one is not done. */
export function lastEnd(batch: WorkedBatch, step: string): number | undefined {
  if (!isDone(batch.done, batch.measured.worked, step)) return undefined;
  const ends = batch.done.runs.flatMap((run) => (run.step === step && run.end !== undefined ? [run.end] : []));
  return ends.length > 0 ? Math.max(...ends) : undefined;
}

/**
 * When the resin of a layer may come near food, by the clock at the temperature that was measured as it was laid: the slow end of its band.
 *
 * @returns an instant, ms, or why there is none
 */
export function servesFrom(batch: WorkedBatch, layer: WorkedStep): number | { why: string } {
  const { measured } = batch;
  const title = `“${layer.record.title}”`;
  const end = lastEnd(batch, layer.id);
  if (end === undefined) return { why: notDone(batch, layer) };
  const clock = answerFor(measured.at(layer.id), layer, 'cure-clock');
  if (!clock) return { why: `The method asks no cure clock for the resin of ${title}.` };
  if (unreadAt(measured, layer.id).some(({ calculation }) => calculation === clock.name))
    return { why: `No temperature was written down at ${title}: nobody knows how far its resin has cured.` };
  const figure = figureOf(clock, 'foodService');
  if (!figure)
    return {
      why: `${title}: ${clock.errors?.[0]?.message ?? clock.result?.verdict.text ?? 'the cure clock gives no day.'}`,
    };
  return end + (figure.high ?? figure.value) * 1000;
}

/** What the record tells the calculations of the label: how long ago, and how warm. */
function factsOf(batch: WorkedBatch, now: number): Record<string, unknown> {
  const { resin, finish } = layersOf(batch);
  const since = (steps: readonly WorkedStep[]) => {
    const ends = steps.flatMap(({ id }) => lastEnd(batch, id) ?? []);
    return ends.length > 0 ? Math.floor(((now - Math.max(...ends)) / day) * 100) / 100 : undefined;
  };
  const [pour, coat] = [since(resin), since(finish)];
  const top = resin.at(-1);
  const clock = top && answerFor(batch.measured.at(top.id), top, 'cure-clock');
  const told = (name: string) => clock?.inputs?.[name];
  const room = told('dayTemperature') ?? told('shopTemperature');
  const night = told('nightTemperature');
  return {
    ...(coat === undefined ? {} : { daysSinceCoat: coat }),
    ...(pour === undefined ? {} : { daysSincePour: pour }),
    ...(typeof room === 'number' ? { roomTemperature: room } : {}),
    ...(typeof night === 'number' ? { nightTemperature: night } : {}),
  };
}

/** What the record knows of the pieces, for the label of the batch; what it does not know stays a line to write on. */
function wordsOf(batch: WorkedBatch, title: string): BatchLabelWords {
  const { measured, standing, momentText } = batch;
  const { worked } = measured;
  const { resin, finish } = layersOf(batch);
  const dayOf = (instants: readonly number[]) =>
    instants.length > 0 ? /\d{4}-\d\d-\d\d/.exec(momentText(Math.max(...instants)))?.[0] : undefined;
  const made = dayOf([...finish, ...resin].flatMap(({ id }) => lastEnd(batch, id) ?? []));
  const cured = dayOf(
    resin.flatMap((layer) => {
      const from = servesFrom(batch, layer);
      return typeof from === 'number' ? [from] : [];
    }),
  );
  const lots = standing.holding.flatMap((entry) =>
    entry.kind === 'lot' && entry.material !== undefined && worked.materials[entry.material]?.record.kind === 'resin'
      ? [entry.lot]
      : [],
  );
  const names = resin.flatMap((layer) => {
    const kind = answerFor(worked, layer, 'cure-clock')?.inputs?.['resin'] as { name?: unknown } | undefined;
    return typeof kind?.name === 'string' ? [kind.name] : [];
  });
  return {
    what: worked.record.makes.what,
    woods: woodsOf(worked).map(({ thing: { name, botanical } }) =>
      woodWords(botanical ? { name, botanical } : { name }),
    ),
    ...(resin.length > 0 ? { resin: [...new Set(names)].join(', ') || 'resin' } : {}),
    finishes: finishesOf(worked).map(({ thing: { name } }) => name),
    ...(made === undefined ? {} : { made }),
    ...(cured === undefined ? {} : { cured }),
    batch: title,
    ...(lots.length > 0 ? { resinLot: [...new Set(lots)].join(', ') } : {}),
  };
}

/** Why a step has no end to count from. */
function notDone({ done }: WorkedBatch, { id, record }: WorkedStep): string {
  return done.runs.some(({ step, doubt }) => step === id && doubt !== undefined)
    ? `The times written down for “${record.title}” contradict each other.`
    : `“${record.title}” is not done.`;
}

const asksDays = 'food-contact';

/**
 * Label and care card of a batch, by the calculations of its method told what the record knows. While a layer has not cured, by what was measured,
 * or anything that decides is missing or in doubt, there is neither: no claim about food is made. Beside them stands the label that tells this batch
 * from another, with its days and lots.
 *
 * @param title what the shop calls the batch
 */
export async function batchLabel(batch: WorkedBatch, title: string): Promise<BatchLabel> {
  const { measured, done, state, momentText } = batch;
  const { worked } = measured;
  const now = Date.parse(state.now);
  const { resin, finish } = layersOf(batch);
  const inTheWay = [
    ...finish.filter(({ id }) => lastEnd(batch, id) === undefined).map((step) => notDone(batch, step)),
    ...resin.flatMap((layer) => {
      const from = servesFrom(batch, layer);
      if (typeof from !== 'number') return [from.why];
      return from > now
        ? [
            `The resin of “${layer.record.title}” has not cured: by what was measured it may come near food from ${momentText(from)} on.`,
          ]
        : [];
    }),
    ...handOverWaits(batch, now),
    ...state.problems.filter(({ mayStay }) => !mayStay).map(({ text }) => text),
  ];
  const asked = askedOf(worked, 'food-contact', 'care-card');
  const facts = factsOf(batch, now);
  const told = await Promise.all(asked.map((calculation) => toldOf(calculation, facts)));
  const refusals = told.flatMap(({ calculation, raw: _, outcome }) => {
    if (!outcome.ok) return outcome.errors.map(({ message }) => message);
    const { verdict, figures } = outcome.value.result;
    const left = figures['daysLeft']?.value ?? 0;
    if (verdict.level === 'stop' || verdict.level === 'unknown') return [verdict.text];
    return calculation.use === asksDays && left > 0 ? [verdict.text] : [];
  });
  const all = [...new Set([...inTheWay, ...refusals])];
  const documents = [
    ...told.flatMap(({ outcome }) => (outcome.ok ? (outcome.value.result.documents ?? []) : [])),
    batchLabelDocument(wordsOf(batch, title)),
  ];
  return {
    verdict: verdictOf(all, asked.length, done.runs.length),
    inTheWay: all,
    facts: Object.fromEntries(told.map(({ calculation, raw }) => [calculation.name, raw])),
    documents: all.length > 0 ? [] : documents,
  };
}

function verdictOf(inTheWay: readonly string[], asked: number, runs: number): Verdict {
  if (asked === 0)
    return {
      level: 'unknown',
      text: 'The method asks for no label and no care card: nothing is said of this batch and food.',
    };
  if (runs === 0)
    return { level: 'unknown', text: 'Nothing is written down as done yet: nothing is said of this batch and food.' };
  if (inTheWay.length > 0)
    return { level: 'stop', text: `No label yet: nothing may be said of this batch and food. ${inTheWay[0]}` };
  return {
    level: 'care',
    text: 'By the record every layer has had its time to cure. Look and smell all the same; the sheets of the makers come first.',
  };
}

/** Waits of the hand-over that are not over. */
function handOverWaits({ measured, done, momentText }: WorkedBatch, now: number): string[] {
  const { worked } = measured;
  return worked.steps
    .filter(({ act }) => act.id === 'hand-over')
    .flatMap((step) =>
      step.after.flatMap((link) =>
        Array.from({ length: worked.pieces }, (_, at) => waitOf(measured, done, link, at + 1)).flatMap((wait) => {
          if (wait.kind === 'unknown') return [wait.why];
          if (wait.kind === 'times' && wait.opens > now)
            return [`“${step.record.title}” waits until ${momentText(wait.opens)}.`];
          return [];
        }),
      ),
    );
}

async function toldOf(calculation: WorkedCalculation, facts: Record<string, unknown>) {
  const calculator = await loadCalculator(calculation.use as CalculatorId);
  const { daysSinceCoat: _, daysSincePour: __, ...room } = facts;
  const inlaid = calculation.raw['resinPlace'] !== undefined && calculation.raw['resinPlace'] !== 'none';
  const days = { ...facts };
  if (!inlaid) {
    delete days['daysSincePour'];
    delete days['roomTemperature'];
    delete days['nightTemperature'];
  }
  const raw = { ...calculation.raw, ...(calculation.use === asksDays ? days : inlaid ? room : {}) };
  return { calculation, raw, outcome: answer(calculator, raw) };
}
