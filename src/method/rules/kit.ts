import type { CalculatorId } from '../../calculators/registry.ts';
import { type Finish, finishById } from '../../model/finish/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type Species, speciesById } from '../../model/species/index.ts';
import type { ActId } from '../acts/index.ts';
import type { WorkedCalculation, WorkedMaterial, WorkedMethod, WorkedStep, WorkedTool } from '../case/types.ts';
import type { MaterialKind, ToolKind } from '../record/index.ts';
import type { Found } from './rule.ts';

/*
 * What the rules ask of a worked method, once for all of them: its calculations, what lies at hand in a step, what comes before what.
 */

/** The calculations that ask one calculator, in the order of the file. */
export const askedOf = (worked: WorkedMethod, ...uses: readonly CalculatorId[]): WorkedCalculation[] =>
  worked.steps.flatMap(({ calculations }) => calculations).filter(({ use }) => uses.includes(use));

/** Where a calculation stands, or something inside it. */
export const placeOf = ({ step, name }: WorkedCalculation, ...inside: string[]): Pick<Found, 'path' | 'step'> => ({
  path: ['steps', step, 'calculations', name, ...inside],
  step,
});

/** Where a step stands, or something inside it. */
export const atStep = ({ id, path }: WorkedStep, ...inside: (string | number)[]): Pick<Found, 'path' | 'step'> => ({
  path: [...path, ...inside],
  step: id,
});

/** A figure of an answer. */
export const figureOf = ({ result }: WorkedCalculation, name: string) => result?.figures[name];

/** A number that a calculation was told, in its canonical unit. */
export function numberTold({ inputs }: WorkedCalculation, name: string): number | undefined {
  const value = inputs?.[name];
  return typeof value === 'number' ? value : undefined;
}

/** A word that a calculation was told: a choice, the id of a finish. */
export function wordTold({ inputs }: WorkedCalculation, name: string): string | undefined {
  const value = inputs?.[name];
  return typeof value === 'string' ? value : undefined;
}

/** Whether a caution of this very case stands beside an answer. */
export const hasOwnCaution = ({ result }: WorkedCalculation, id: string): boolean =>
  result?.cautions.some((caution) => caution.own === true && caution.id === id) ?? false;

/** The steps that do one of some acts, in the order of the file. */
export const stepsThat = (worked: WorkedMethod, ...acts: readonly ActId[]): WorkedStep[] =>
  worked.steps.filter(({ act }) => acts.includes(act.id));

/** What is asked of a worked method again and again, by step: many rules ask it of every pair of steps. */
interface Order {
  byId: ReadonlyMap<string, WorkedStep>;
  /** Place in the file, from 0. */
  at: ReadonlyMap<string, number>;
  before: Map<string, ReadonlySet<string>>;
  tools: Map<string, readonly WorkedTool[]>;
  kinds: Map<string, ReadonlySet<ToolKind | MaterialKind>>;
  kindsBefore: Map<string, ReadonlySet<ToolKind | MaterialKind>>;
}

const orders = new WeakMap<WorkedMethod, Order>();

function orderOf(worked: WorkedMethod): Order {
  const known = orders.get(worked);
  if (known) return known;
  const order: Order = {
    byId: new Map(worked.steps.map((step) => [step.id, step])),
    at: new Map(worked.steps.map(({ id }, at) => [id, at])),
    before: new Map(),
    tools: new Map(),
    kinds: new Map(),
    kindsBefore: new Map(),
  };
  orders.set(worked, order);
  return order;
}

/** What was told of a step before, or what is told of it now. */
function onceOf<Told>(known: Map<string, Told>, id: string, tell: () => Told): Told {
  const before = known.get(id);
  if (before !== undefined) return before;
  const told = tell();
  known.set(id, told);
  return told;
}

/** The tools of a step, those included that it takes and keeps. */
export const toolsOf = (worked: WorkedMethod, { id, record }: WorkedStep): readonly WorkedTool[] =>
  onceOf(orderOf(worked).tools, id, () => {
    const names = [...(record.tools ?? []), ...(record.holds ?? []).map(({ tool }) => tool)];
    return [...new Set(names)].flatMap((name) => worked.tools[name] ?? []);
  });

/** The materials of a step. */
export const materialsOf = (worked: WorkedMethod, { record }: WorkedStep): WorkedMaterial[] =>
  (record.uses ?? []).flatMap((name) => worked.materials[name] ?? []);

/** Kinds of all that a step lists, tools and materials. */
export const kindsAt = (worked: WorkedMethod, step: WorkedStep): ReadonlySet<ToolKind | MaterialKind> =>
  onceOf(
    orderOf(worked).kinds,
    step.id,
    () =>
      new Set([
        ...toolsOf(worked, step).map(({ record }) => record.kind),
        ...materialsOf(worked, step).map(({ record }) => record.kind),
      ]),
  );

/** Ids of every step that is done before this one, since something waits for it. */
export function stepsBefore(worked: WorkedMethod, { id }: Pick<WorkedStep, 'id'>): ReadonlySet<string> {
  const { byId, before: known } = orderOf(worked);
  return onceOf(known, id, () => {
    const before = new Set<string>();
    const toVisit = [id];
    for (let at = toVisit.pop(); at !== undefined; at = toVisit.pop()) {
      for (const link of byId.get(at)?.after ?? []) {
        if (before.has(link.step)) continue;
        before.add(link.step);
        toVisit.push(link.step);
      }
    }
    return before;
  });
}

/** Kinds of all that the steps list which are done before this one. */
export const kindsBefore = (worked: WorkedMethod, step: WorkedStep): ReadonlySet<ToolKind | MaterialKind> =>
  onceOf(orderOf(worked).kindsBefore, step.id, () => {
    const before = stepsBefore(worked, step);
    return new Set(worked.steps.filter(({ id }) => before.has(id)).flatMap((earlier) => [...kindsAt(worked, earlier)]));
  });

/** Whether a step lays resin on as a coat: it lists no finish, and resin itself or a mix of it that was made before. */
export function isResinCoat(worked: WorkedMethod, step: WorkedStep): boolean {
  const at = kindsAt(worked, step);
  return step.act.id === 'coat' && !at.has('finish') && (at.has('resin') || kindsBefore(worked, step).has('resin'));
}

/** Steps that lay resin where it stays: seal coats, pours, coats of resin; in the order of the file. */
export const layersOfResin = (worked: WorkedMethod): WorkedStep[] =>
  worked.steps.filter((step) => ['seal', 'pour'].includes(step.act.id) || isResinCoat(worked, step));

/**
 * The calculation that speaks of a step: its own, else the last one that is written at or before it, else the first of all. A method that
 * names two resins has one in the step of each.
 */
export function answerFor(worked: WorkedMethod, { id }: WorkedStep, use: CalculatorId): WorkedCalculation | undefined {
  const asked = askedOf(worked, use);
  if (asked.length < 2) return asked[0];
  const { at: order } = orderOf(worked);
  const here = order.get(id) ?? 0;
  return asked.findLast(({ step }) => (order.get(step) ?? 0) <= here) ?? asked[0];
}

/** Minutes of a figure in s, rounded to the minute; undefined where the answer does not have it. */
export function minutesOf(calculation: WorkedCalculation | undefined, name: string): number | undefined {
  const value = calculation && figureOf(calculation, name)?.value;
  return typeof value === 'number' ? Math.round(value / 60) : undefined;
}

/** Minutes as a sentence says them. */
export const span = (minutes: number): string => amount(minutes * 60, 's', 3);

/** Whether a wait is as long as a figure asks, which is known to two digits: a hundredth less is the same. */
export const isLongEnough = (minutes: number, needed: number): boolean => minutes >= 0.99 * needed;

/**
 * Minutes that certainly lie between the end of one step and the start of a later one, for every piece: the longest chain of waits from the
 * one to the other. Undefined where the later does not wait for the earlier at all. A wait that counts from the start of a step runs while the
 * step is done: of the first step, the time that its own work on a piece takes lies before its end and is taken off.
 */
export function leastBetween(worked: WorkedMethod, from: string, to: string): number | undefined {
  const { byId } = orderOf(worked);
  const known = new Map<string, number | undefined>([[from, 0]]);
  const visit = (id: string): number | undefined => {
    if (known.has(id)) return known.get(id);
    known.set(id, undefined);
    const waits = (byId.get(id)?.after ?? []).flatMap(({ step, counts, least = 0 }) => {
      const before = visit(step);
      if (before === undefined) return [];
      const own = step === from && counts === 'start' ? (byId.get(from)?.hands.each ?? 0) : 0;
      return [before + Math.max(0, least - own)];
    });
    const longest = waits.length > 0 ? Math.max(...waits) : undefined;
    known.set(id, longest);
    return longest;
  };
  return visit(to);
}

/** A thing of a method and where it was named: a wood, a finish. */
export interface Named<Thing> extends Pick<Found, 'path' | 'step'> {
  thing: Thing;
}

function once<Thing extends { id: string }>(all: readonly Named<Thing>[]): Named<Thing>[] {
  return all.filter(({ thing }, at) => all.findIndex((other) => other.thing.id === thing.id) === at);
}

/** The inputs of a calculation that hold woods. */
interface WoodInputs {
  species?: Species;
  secondSpecies?: Species;
  staves?: readonly { species: Species }[];
}

/** Every wood of the case: of parameters, then of calculations, each once. */
export function woodsOf(worked: WorkedMethod): Named<Species>[] {
  const asked = Object.values(worked.parameters).flatMap(({ name, record, raw }) => {
    const thing = record.kind === 'wood' && typeof raw === 'string' ? speciesById(raw) : undefined;
    return thing ? [{ thing, path: ['parameters', name] }] : [];
  });
  const told = worked.steps
    .flatMap(({ calculations }) => calculations)
    .flatMap((calculation) => {
      const { species, secondSpecies, staves = [] } = (calculation.inputs ?? {}) as WoodInputs;
      return [
        ...(species ? [{ thing: species, ...placeOf(calculation, 'with', 'species') }] : []),
        ...(secondSpecies ? [{ thing: secondSpecies, ...placeOf(calculation, 'with', 'secondSpecies') }] : []),
        ...staves.map((stave) => ({ thing: stave.species, ...placeOf(calculation, 'with', 'staves') })),
      ];
    });
  return once([...asked, ...told]);
}

/** Every finish of the case: of parameters, then of calculations, each once. Sanding knows finishes by other names and is not asked. */
export function finishesOf(worked: WorkedMethod): Named<Finish>[] {
  const asked = Object.values(worked.parameters).flatMap(({ name, record, raw }) => {
    const thing = record.kind === 'finish' && typeof raw === 'string' ? finishById(raw) : undefined;
    return thing ? [{ thing, path: ['parameters', name] }] : [];
  });
  const told = askedOf(worked, 'finish-coats', 'finish-and-moisture', 'food-contact', 'care-card').flatMap(
    (calculation) => {
      const thing = finishById(wordTold(calculation, 'finish') ?? 'none');
      return thing ? [{ thing, ...placeOf(calculation, 'with', 'finish') }] : [];
    },
  );
  return once([...asked, ...told]);
}

/** Words in a row: `metal, old paint and treatment`. */
export const listed = (words: readonly string[], last = 'and'): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

/** A name within a sentence: `Thickness planer` becomes `thickness planer`, `P80 discs` stay. */
export const inSentence = (name: string): string =>
  /^[A-Z][a-z]/.test(name) ? `${name.charAt(0).toLowerCase()}${name.slice(1)}` : name;

/** A kind of tool or material as it is said: `a dust extractor`. */
export function withArticle(kind: ToolKind | MaterialKind): string {
  const words = spoken[kind];
  if (words) return words;
  const plain = kind.replaceAll('-', ' ');
  return `${/^[aeiou]/.test(plain) ? 'an' : 'a'} ${plain}`;
}

/** Kinds that take no article, or that are said otherwise than they are written. */
const spoken: Readonly<Partial<Record<ToolKind | MaterialKind, string>>> = {
  gloves: 'gloves',
  wood: 'wood',
  resin: 'resin',
  glue: 'glue',
  finish: 'a finish',
  cloth: 'a cloth',
  packing: 'packing',
  abrasive: 'abrasive paper',
  'eye-protection': 'eye protection',
  'hearing-protection': 'hearing protection',
  ventilation: 'moving air',
  respirator: 'a respirator or mask',
  'mask-filter': 'a mask',
  'rag-can': 'a metal can with water for rags',
  'sheet-stock': 'sheet stock',
  'dam-and-tape': 'a dam or tape',
  'cup-and-stick': 'cups and sticks',
  scale: 'a scale',
};
