import { fieldsOf } from '../../calculators/kit/answer.ts';
import type { Calculator } from '../../calculators/kit/calculator.ts';
import { type FieldMeta, fieldMeta } from '../../calculators/kit/fields.ts';
import { type CalculatorId, loadCalculator } from '../../calculators/registry.ts';
import { type Dimension, unitByCode } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { stepsOfPointer } from '../pointer.ts';
import type { Calculation, MethodRecord, Parameter } from '../record/index.ts';
import { aOrAn } from './article.ts';
import { bareFor, bareInputs, bareSizes } from './bare.ts';
import type { Fault } from './named.ts';
import { orThese } from './or-these.ts';
import { type Mention, mentionsOf } from './references.ts';

/** Calculators of a method by id. */
export type Calculators = ReadonlyMap<CalculatorId, Calculator>;

/** Calculators that were fetched: asking for a module again takes longer than working out what it does. */
const fetched = new Map<CalculatorId, Calculator>();

export async function fetchOnce(id: CalculatorId): Promise<Calculator> {
  const before = fetched.get(id);
  if (before) return before;
  const calculator = await loadCalculator(id);
  fetched.set(id, calculator);
  return calculator;
}

/** Fetch the calculators that a method names, and no other. */
export async function calculatorsOf(record: MethodRecord): Promise<Calculators> {
  const ids = new Set(
    Object.values(record.steps).flatMap(({ calculations = {} }) =>
      Object.values(calculations).map(({ use }) => use as CalculatorId),
    ),
  );
  return new Map(await Promise.all([...ids].map(async (id) => [id, await fetchOnce(id)] as const)));
}

/** What a reference will hand on, as far as it can be told before anything is worked out. */
type Promised =
  | { kind: 'quantity'; dimensions: readonly Dimension[] }
  | { kind: Exclude<Parameter['kind'], 'quantity' | 'count'> }
  | { kind: 'text' }
  /** What a calculator names only as it answers: an event, something used up. */
  | { kind: 'open' };

type Told = { ok: true; value: Promised } | { ok: false; message: string };
const told = (value: Promised): Told => ({ ok: true, value });
const bad = (message: string): Told => ({ ok: false, message });

const parts = ['figures', 'events', 'uses', 'verdict'];

function ofParameter(parameter: Parameter, rest: readonly string[]): Told {
  if (parameter.kind === 'outline') {
    const [measure, ...more] = rest;
    if (measure === undefined) return bad('an outline is referred to measure by measure: add /shape or /length.');
    if (more.length > 0) return bad('an outline has measures and nothing below them.');
    if (measure === 'shape' || measure === 'drawing') return told({ kind: 'text' });
    const known = Object.keys(parameter.default);
    if (!known.includes(measure)) return bad(`the outline has no “${measure}”. ${orThese(measure, known, 'measure')}`);
    return told({ kind: 'quantity', dimensions: ['length'] });
  }
  if (rest.length > 0) return bad(`a parameter has nothing below it: take “/${rest.join('/')}” away.`);
  if (parameter.kind === 'count') return told({ kind: 'quantity', dimensions: ['count', 'number'] });
  if (parameter.kind !== 'quantity') return told({ kind: parameter.kind });
  const read = readAnyQuantity(parameter.default);
  return told(
    read.ok ? { kind: 'quantity', dimensions: read.value.map(({ dimension }) => dimension) } : { kind: 'open' },
  );
}

/** What stands at a pointer of a method. */
export function promisedAt(record: MethodRecord, calculators: Calculators, pointer: string): Told {
  const [branch = '', name = '', ...rest] = stepsOfPointer(pointer);
  if (branch === 'makes') {
    if (rest.length === 0 && name === 'pieces') return told({ kind: 'quantity', dimensions: ['count', 'number'] });
    if (rest.length === 0 && name === 'what') return told({ kind: 'text' });
    return bad('under /makes there are pieces and what.');
  }
  if (branch === 'parameters') {
    const parameter = Object.hasOwn(record.parameters, name) ? record.parameters[name] : undefined;
    if (!parameter)
      return bad(`“${name}” is not a parameter. ${orThese(name, Object.keys(record.parameters), 'parameter')}`);
    return ofParameter(parameter, rest);
  }
  if (branch === 'tools') {
    const tool = Object.hasOwn(record.tools, name) ? record.tools[name] : undefined;
    if (!tool) return bad(`“${name}” is not a tool. ${orThese(name, Object.keys(record.tools), 'tool')}`);
    const [limit = '', ...more] = rest;
    if (limit === 'what' && more.length === 0) return told({ kind: 'text' });
    if (more.length > 0 || !Object.hasOwn(tool.limits ?? {}, limit))
      return bad(
        `“${name}” has no limit “${rest.join('/')}”. ${orThese(limit, Object.keys(tool.limits ?? {}), 'limit')}`,
      );
    return told({ kind: 'open' });
  }
  if (branch === 'materials') {
    if (!Object.hasOwn(record.materials, name))
      return bad(`“${name}” is not a material. ${orThese(name, Object.keys(record.materials), 'material')}`);
    const [what = '', ...more] = rest;
    if (more.length > 0 || (what !== 'need' && what !== 'what'))
      return bad('under a material there are need and what.');
    return told(what === 'what' ? { kind: 'text' } : { kind: 'open' });
  }
  if (branch === 'calculations') return ofCalculation(record, calculators, name, rest);
  return bad(
    'a reference begins with /makes, /parameters, /calculations, /tools or /materials, such as /calculations/heat/figures/peakRise.',
  );
}

const calculationsIn = new WeakMap<MethodRecord, ReadonlyMap<string, Calculation>>();

/** Every calculation of a method by its name; where two have one name, which is a fault, the first. */
function calculationsOf(record: MethodRecord): ReadonlyMap<string, Calculation> {
  const before = calculationsIn.get(record);
  if (before) return before;
  const all = new Map<string, Calculation>();
  for (const { calculations = {} } of Object.values(record.steps))
    for (const [name, calculation] of Object.entries(calculations)) if (!all.has(name)) all.set(name, calculation);
  calculationsIn.set(record, all);
  return all;
}

function ofCalculation(record: MethodRecord, calculators: Calculators, name: string, rest: readonly string[]): Told {
  const all = calculationsOf(record);
  const found = all.get(name);
  if (!found)
    return bad(`“${name}” is not a calculation of this method. ${orThese(name, [...all.keys()], 'calculation')}`);
  const calculator = calculators.get(found.use as CalculatorId);
  const [part = '', which, ...more] = rest;
  if (part === 'verdict' && which === undefined) return told({ kind: 'text' });
  if (!parts.includes(part) || which === undefined || more.length > 0)
    return bad(`under /calculations/${name} there are /figures/…, /events/…, /uses/… and /verdict.`);
  if (part !== 'figures' || !calculator) return told({ kind: 'open' });
  const declared = Object.hasOwn(calculator.figures, which) ? calculator.figures[which] : undefined;
  if (!declared)
    return bad(`${found.use} gives no figure “${which}”. ${orThese(which, Object.keys(calculator.figures), 'figure')}`);
  const dimension = unitByCode(declared.unit)?.dimension ?? 'number';
  return told({ kind: 'quantity', dimensions: dimension === 'count' ? ['count', 'number'] : [dimension] });
}

const dimensionNoun = (dimensions: readonly Dimension[]) => dimensions[0]?.replaceAll('-', ' ') ?? 'number';

/** Kinds of parameters that a field of each kind takes. */
const taken: Readonly<Record<Exclude<FieldMeta['kind'], 'quantity' | 'list'>, readonly string[]>> = {
  choice: ['choice', 'finish', 'text'],
  species: ['wood'],
  climate: ['place'],
  readings: ['readings'],
  resin: ['resin'],
  drawing: ['text'],
  text: ['text', 'choice'],
};

function misfit(meta: FieldMeta, promised: Promised): string | undefined {
  if (promised.kind === 'open') return undefined;
  if (meta.kind === 'quantity') {
    const dimension = meta.dimension ?? 'number';
    if (promised.kind !== 'quantity')
      return `“${meta.label}” asks for ${aOrAn(dimension)}, and this is no quantity. Refer to a figure or a parameter that measures it.`;
    return promised.dimensions.includes(dimension)
      ? undefined
      : `“${meta.label}” asks for ${aOrAn(dimension)}, and this is ${aOrAn(dimensionNoun(promised.dimensions))}. Refer to one that measures it.`;
  }
  if (meta.kind === 'list') return undefined;
  return promised.kind !== 'quantity' && taken[meta.kind].includes(promised.kind)
    ? undefined
    : `“${meta.label}” takes ${taken[meta.kind].map(aOrAn).join(' or ')}, and this is ${aOrAn(promised.kind)}.`;
}

function fitOf(mention: Mention, promised: Promised, field: FieldMeta | undefined): string | undefined {
  const { purpose } = mention;
  if (purpose.kind === 'input') {
    if (!field || purpose.nested) return undefined;
    return misfit(field, promised);
  }
  if (promised.kind === 'open' || purpose.kind === 'text') return undefined;
  if (purpose.kind === 'time' || purpose.kind === 'length') {
    if (promised.kind === 'quantity' && promised.dimensions.includes(purpose.kind)) return undefined;
    const what = promised.kind === 'quantity' ? dimensionNoun(promised.dimensions) : promised.kind;
    return `${aOrAn(purpose.kind)} is needed here, and this is ${aOrAn(what)}. Refer to one that measures it.`;
  }
  return promised.kind === 'quantity' ? undefined : `a quantity is needed here, and this is ${aOrAn(promised.kind)}.`;
}

/** Inputs that a calculator does not have. */
function unknownInputs(record: MethodRecord, calculators: Calculators): Fault[] {
  return Object.entries(record.steps).flatMap(([id, step]) =>
    Object.entries(step.calculations ?? {}).flatMap(([name, { use, with: inputs }]) => {
      const calculator = calculators.get(use as CalculatorId);
      if (!calculator) return [];
      const known = Object.keys(fieldsOf(calculator));
      return Object.keys(inputs)
        .filter((input) => !known.includes(input))
        .map(
          (input): Fault => ({
            path: ['steps', id, 'calculations', name, 'with', input],
            key: true,
            message: `${use} has no input “${input}”. ${orThese(input, known, 'input')}`,
          }),
        );
    }),
  );
}

function faultOf({ path, pointer, within }: Mention, message: string): Fault {
  return { path, message: `${pointer}: ${message}`, ...(within ? { within } : {}) };
}

/** What a mention asks for, where that may have a unit. */
function askedOf({ purpose }: Mention, field: FieldMeta | undefined): FieldMeta | Dimension | undefined {
  if (purpose.kind === 'time' || purpose.kind === 'length') return purpose.kind;
  if (purpose.kind !== 'input' || purpose.nested) return undefined;
  return field?.kind === 'quantity' ? field.dimension : field;
}

/** The parameter that a mention leads to, with nothing below it. */
function parameterAt({ pointer }: Mention): string | undefined {
  const [branch, name, ...rest] = stepsOfPointer(pointer);
  return branch === 'parameters' && rest.length === 0 ? name : undefined;
}

/** What every reference of a method leads to, judged before anything is worked out: that it is there, and fits where it is used. */
export function fitFaults(record: MethodRecord, calculators: Calculators): Fault[] {
  const faults = [...unknownInputs(record, calculators), ...bareInputs(record, calculators), ...bareSizes(record)];
  const bareOnes = new Map<string, Fault>();
  for (const mention of mentionsOf(record)) {
    const promised = promisedAt(record, calculators, mention.pointer);
    if (!promised.ok) {
      faults.push(faultOf(mention, promised.message));
      continue;
    }
    const { purpose } = mention;
    let field: FieldMeta | undefined;
    if (purpose.kind === 'input') {
      const use = record.steps[mention.step ?? '']?.calculations?.[purpose.calculation]?.use as CalculatorId;
      const calculator = calculators.get(use);
      const schema = calculator && fieldsOf(calculator)[purpose.input];
      field = schema && fieldMeta(schema);
    }
    const name = parameterAt(mention);
    const parameter = name === undefined ? undefined : record.parameters[name];
    const bare = name !== undefined && parameter && bareFor(name, parameter, askedOf(mention, field));
    // However many refer to it, the fault is its own.
    if (bare) bareOnes.set(name, bare);
    const wrong = bare ? undefined : fitOf(mention, promised.value, field);
    if (wrong) faults.push({ ...faultOf(mention, wrong), ...(name === undefined ? {} : { follows: name }) });
  }
  return [...bareOnes.values(), ...faults];
}
