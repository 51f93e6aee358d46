import { answer } from '../../calculators/kit/answer.ts';
import type { FieldError, Result } from '../../model/evidence/index.ts';
import { amount, listed } from '../../model/quantity/index.ts';
import { calculatorsOf } from '../case/fit.ts';
import type { WorkedCalculation, WorkedMethod } from '../case/types.ts';
import type { ClassCase, WorkedPlace } from './places.ts';

/** Places for which a calculation is asked once. */
export interface Together {
  calculation: string;
  places: readonly WorkedPlace[];
  /** The method as it stands with the answer for all of them: for so many pieces. */
  worked: WorkedMethod;
  asked: 'alike' | 'shapes' | 'mass';
  /** Whose each of the shapes of a dose is, in their order; empty where it is not asked by shapes. */
  whose: readonly string[];
}

/** Inputs of a dose that say how it is mixed, and not how much: places that have them in common are mixed at once. */
const mixing: readonly string[] = [
  'resin',
  'colours',
  'shopTemperature',
  'greatestDepth',
  'measureBy',
  'scaleDivision',
  'volumeDivision',
  'cupMass',
  'timeFor100g',
  'mixRatio',
  'mixRatioBy',
  'densityA',
  'densityB',
];

const part = (raw: WorkedCalculation['raw'], keep: (name: string) => boolean) =>
  Object.fromEntries(Object.entries(raw).filter(([name]) => keep(name)));

/** Places by what a text says of each, in their order. */
export function grouped<T>(all: readonly T[], keyOf: (one: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one]);
  return [...groups.values()];
}

/** A worked method in which one calculation has another answer. */
function withAnswer(
  worked: WorkedMethod,
  name: string,
  change: Pick<WorkedCalculation, 'raw'> & Partial<Pick<WorkedCalculation, 'result' | 'errors' | 'inputs'>>,
): WorkedMethod {
  const old = worked.calculations[name] as WorkedCalculation;
  const { result: _result, errors: _errors, inputs: _inputs, ...rest } = old;
  const calculation: WorkedCalculation = { ...rest, ...change };
  return {
    ...worked,
    calculations: { ...worked.calculations, [name]: calculation },
    steps: worked.steps.map((step) => ({
      ...step,
      calculations: step.calculations.map((each) => (each.name === name ? calculation : each)),
    })),
  };
}

/** How a place stands beside a cup: `place 3`, `place 3 (A. B.)`. */
const labelOf = ({ id, name }: WorkedPlace) => `place ${id}${name ? ` (${name})` : ''}`;

/**
 * Whose each shape of a dose is that is asked for places which are alike. Shapes that are the same stand next to each other, as many for one place as
 * for the other; of what is no multiple of the places nobody can say whose it is.
 */
function whoseShapes(worked: WorkedMethod, calculation: string, places: readonly WorkedPlace[]): string[] {
  const { shapes } = (worked.calculations[calculation]?.inputs ?? {}) as { shapes?: readonly unknown[] };
  if (!Array.isArray(shapes)) return [];
  const texts = shapes.map((shape) => JSON.stringify(shape));
  const single = texts.length === places.length;
  const given = new Map<string, number>();
  const next = (whose: string) => {
    given.set(whose, (given.get(whose) ?? 0) + 1);
    return given.get(whose) as number;
  };
  return grouped([...texts.keys()], (at) => texts[at] as string)
    .flatMap((same) =>
      same.map((at, index) => {
        const each = same.length / places.length;
        const place = Number.isInteger(each) ? places[Math.floor(index / each)] : undefined;
        if (place && single) return { at, whose: labelOf(place) };
        const whose = place ? labelOf(place) : `not of one place, ${placesWords(places)}:`;
        return { at, whose: `${whose} inlay ${next(whose)}` };
      }),
    )
    .sort((one, other) => one.at - other.at)
    .map(({ whose }) => whose);
}

/** The same question with the names of those whose pieces it is about, so that no cup is told by a number that is no place's. */
export async function withNames({ worked, calculation, whose }: Together): Promise<WorkedCalculation | undefined> {
  const asked = worked.calculations[calculation];
  const calculator = (await calculatorsOf(worked.record)).get('resin-dose');
  if (whose.length === 0 || !asked || !calculator) return asked;
  const outcome = answer(calculator, { ...asked.raw, pieceNames: whose.map((name) => ({ name })) });
  // Names change no figure: what could be answered without them is answered with them.
  if (!outcome.ok) throw new Error(outcome.errors.map(({ message }) => message).join(' '));
  return { ...asked, result: outcome.value.result as Result };
}

/** Groups of places whose dose differs in its amount alone, asked as one: by a list of all their shapes, else by their sum. */
async function mixedAtOnce(one: ClassCase, name: string, alike: readonly Together[]): Promise<Together[]> {
  const rawOf = ({ worked }: Together) => (worked.calculations[name] as WorkedCalculation).raw;
  const merged: Together[] = [];
  for (const groups of grouped(alike, (each) => JSON.stringify(part(rawOf(each), (input) => mixing.includes(input))))) {
    const [first, ...others] = groups as [Together, ...Together[]];
    if (others.length === 0) {
      merged.push(first);
      continue;
    }
    const places = one.places.filter((place) => groups.some((group) => group.places.includes(place)));
    const worked = await one.work(places[0] as WorkedPlace, places.length);
    const calculator = (await calculatorsOf(worked.record)).get('resin-dose');
    if (!calculator) continue;
    const asked = askedAs(groups, name, rawOf);
    if ('errors' in asked) {
      merged.push({
        calculation: name,
        places,
        worked: withAnswer(worked, name, { raw: rawOf(first), errors: asked.errors }),
        asked: 'mass',
        whose: [],
      });
      continue;
    }
    const outcome = answer(calculator, asked.raw);
    const told = outcome.ok
      ? { inputs: outcome.value.inputs as Record<string, unknown>, result: outcome.value.result as Result }
      : { errors: outcome.errors };
    merged.push({
      calculation: name,
      // A list of shapes counts its pieces in its own order.
      places: asked.by === 'shapes' ? groups.flatMap((group) => group.places) : places,
      worked: withAnswer(worked, name, { raw: asked.raw, ...told }),
      asked: asked.by,
      whose: asked.by === 'shapes' ? groups.flatMap(({ whose }) => whose) : [],
    });
  }
  return merged;
}

type Asked = { by: 'shapes' | 'mass'; raw: Record<string, unknown> } | { errors: FieldError[] };

function askedAs(
  groups: readonly Together[],
  name: string,
  rawOf: (each: Together) => WorkedCalculation['raw'],
): Asked {
  const raws = groups.map(rawOf);
  const rest = new Set(raws.map((raw) => JSON.stringify(part(raw, (input) => input !== 'shapes'))));
  const lists = raws.map(({ shapes }) => shapes);
  if (rest.size === 1 && lists.every(Array.isArray)) return { by: 'shapes', raw: { ...raws[0], shapes: lists.flat() } };
  // What each takes holds its own losses and spare already.
  const masses = groups.map(({ worked }) => worked.calculations[name]?.result?.figures['mass']?.value);
  if (masses.some((mass) => mass === undefined)) {
    const refusal = groups.flatMap(({ worked, places }) => {
      const { result, errors } = worked.calculations[name] ?? {};
      if (result?.figures['mass']) return [];
      const who = places.map(({ id }) => id).join(', ');
      return [`Place ${who}: ${errors?.[0]?.message ?? result?.verdict.text ?? 'there is no answer.'}`];
    });
    return { errors: refusal.map((message) => ({ field: 'mass', message })) };
  }
  const sum = masses.reduce<number>((total, mass) => total + (mass ?? 0), 0);
  return {
    by: 'mass',
    raw: { ...part(raws[0] ?? {}, (input) => mixing.includes(input)), mass: `${Number(sum.toPrecision(9))} g` },
  };
}

/**
 * The places of a class by what a calculation is asked for them: those that ask the same are asked once, for as many pieces as they are, so that what
 * is rounded or spared is so once. Doses of one resin and colour are mixed at once, whatever their sizes.
 *
 * @param among the places to look at
 */
export async function askedTogether(
  one: ClassCase,
  calculation: string,
  among: readonly WorkedPlace[] = one.places,
): Promise<Together[]> {
  const alike: Together[] = [];
  for (const places of grouped(among, ({ worked }) => JSON.stringify(worked.calculations[calculation]?.raw))) {
    const worked = await one.work(places[0] as WorkedPlace, places.length);
    alike.push({ calculation, places, worked, asked: 'alike', whose: whoseShapes(worked, calculation, places) });
  }
  const use = alike[0]?.worked.calculations[calculation]?.use;
  return use === 'resin-dose' ? mixedAtOnce(one, calculation, alike) : alike;
}

/** How the places of a group are told: `place 3`, `places 1, 4 and 5`. */
export function placesWords(places: readonly { id: string }[]): string {
  const ids = places.map(({ id }) => id);
  return `${ids.length === 1 ? 'place' : 'places'} ${listed(ids)}`;
}

/** Grams as a sentence says them. */
export const gramsWords = (value: number) => amount(value, 'g', 3, true);
