import { answer, fieldsOf } from '../../calculators/kit/answer.ts';
import type { Calculator } from '../../calculators/kit/calculator.ts';
import { type FieldMeta, fieldMeta } from '../../calculators/kit/fields.ts';
import type { CalculatorId } from '../../calculators/registry.ts';
import type { FieldError, Outcome, Result } from '../../model/evidence/index.ts';
import { canonicalUnit, convert, unitByCode, unitLabel } from '../../model/quantity/index.ts';
import { stepsOfPointer } from '../pointer.ts';
import { type MethodReading, problemsAt } from '../read.ts';
import { type Calculation, isReference, type MethodRecord, type Reference } from '../record/index.ts';
import type { Shop } from '../shop/index.ts';
import { aOrAn } from './article.ts';
import { bareParameters } from './bare.ts';
import { orderByNeed } from './circles.ts';
import { type Calculators, calculatorsOf, fitFaults } from './fit.ts';
import { lookUp, type Standing } from './look-up.ts';
import { measuredFaults } from './measured.ts';
import type { Fault } from './named.ts';
import { parametersOf } from './parameters.ts';
import { type Mention, mentionsOf } from './references.ts';
import { stepsOf } from './steps.ts';
import { materialOf, toolOf } from './things.ts';
import type { CaseOptions, CaseValue, Gap, WorkedCalculation, WorkedMaterial, WorkedTool, Working } from './types.ts';

/** A value as an input takes it, or why it does not fit. */
type Laid = { ok: true; value: unknown } | { ok: false; why: string };

/** The end of a band that a reference takes; the value itself where there is no band. */
export function taken({ value, low, high }: { value: number; low?: number; high?: number }, take: Reference['take']) {
  if (take === 'low') return low ?? value;
  if (take === 'high') return high ?? value;
  return value;
}

/** What a reference reaches, in the form in which an input with this description takes it. */
function layInto(value: CaseValue, take: Reference['take'], meta: FieldMeta | undefined): Laid {
  if (value.kind === 'text') return { ok: true, value: value.id ?? value.text };
  if (value.kind === 'data') return { ok: true, value: value.data };
  if (value.typed !== undefined) return { ok: true, value: value.typed };
  const number = taken(value, take);
  // In a list each entry is a text of its own, which needs its unit.
  if (meta?.kind !== 'quantity') {
    const label = unitLabel(value.unit);
    return { ok: true, value: label === '' ? number : `${number} ${label}` };
  }
  const wanted = meta.dimension ?? 'number';
  const dimension = unitByCode(value.unit)?.dimension;
  if (dimension === 'count' && wanted === 'number') return { ok: true, value: number };
  if (dimension !== wanted)
    return {
      ok: false,
      why: `${value.label} is ${aOrAn(dimension ?? 'number')}, and “${meta.label}” asks for ${aOrAn(wanted)}.`,
    };
  return { ok: true, value: convert(number, value.unit, canonicalUnit[wanted]) };
}

/** An entry with every reference in it put in its place. */
function laid(entry: unknown, standing: Standing, meta: FieldMeta | undefined): Laid {
  if (isReference(entry)) {
    const there = lookUp(standing, entry.from);
    return there.ok ? layInto(there.value, entry.take, meta) : { ok: false, why: there.why };
  }
  if (Array.isArray(entry)) {
    const items = entry.map((item) => laid(item, standing, undefined));
    const wrong = items.find((item) => !item.ok);
    return wrong ?? { ok: true, value: items.map((item) => (item.ok ? item.value : undefined)) };
  }
  if (typeof entry !== 'object' || entry === null) return { ok: true, value: entry };
  const values: Record<string, unknown> = {};
  for (const [key, item] of Object.entries(entry)) {
    const inner = laid(item, standing, undefined);
    if (!inner.ok) return inner;
    Object.defineProperty(values, key, { value: inner.value, enumerable: true, configurable: true, writable: true });
  }
  return { ok: true, value: values };
}

type Answered = Outcome<{ inputs: unknown; result: Result }>;

function ask(calculator: Calculator, raw: Readonly<Record<string, unknown>>, memo: Map<string, unknown>): Answered {
  const key = `${calculator.id} ${JSON.stringify(raw)}`;
  const kept = memo.get(key) as Answered | undefined;
  if (kept) return kept;
  const fresh = answer(calculator, raw);
  memo.set(key, fresh);
  return fresh;
}

/** A refusal of a value that nobody gave: it begins with the label of an input left out and a quantity, which is the calculator's own. */
function withUsual(
  error: FieldError,
  raw: Readonly<Record<string, unknown>>,
  fields: ReturnType<typeof fieldsOf>,
): FieldError {
  const { field, message } = error;
  const schema = Object.hasOwn(raw, field) ? undefined : fields[field];
  const label = schema && fieldMeta(schema)?.label;
  if (label === undefined || !message.startsWith(`${label} `)) return error;
  if (!/^\W*\d/.test(message.slice(label.length))) return error;
  return {
    ...error,
    message: `${message} The method gives no ${field}, so the calculator took its usual value.`,
  };
}

/** What a shop record answers where the method says nothing: whose card it is, as far as the card has room for the name. */
function ofShop(calculator: Calculator, shop: Shop | undefined): Calculation['with'] {
  const field = calculator.id === 'care-card' ? fieldsOf(calculator)['shop'] : undefined;
  return field && shop && field.safeParse(shop.name).success ? { shop: shop.name } : {};
}

function calculate(
  name: string,
  step: string,
  record: Calculation,
  calculator: Calculator,
  standing: Standing,
  {
    measured,
    memo,
    shop,
  }: { measured: Readonly<Record<string, string>> | undefined; memo: Map<string, unknown>; shop: Shop | undefined },
): WorkedCalculation {
  const raw: Record<string, unknown> = {};
  const refers: Record<string, string> = {};
  const errors: FieldError[] = [];
  const fields = fieldsOf(calculator);
  for (const [input, entry] of Object.entries({ ...ofShop(calculator, shop), ...record.with, ...measured })) {
    if (isReference(entry)) refers[input] = entry.from;
    const schema = fields[input];
    const value = laid(entry, standing, schema && fieldMeta(schema));
    if (value.ok) raw[input] = value.value;
    else errors.push({ field: input, message: value.why });
  }
  const asked = { name, step, record, use: calculator.id as CalculatorId, raw, refers };
  if (errors.length > 0) return { ...asked, errors };
  const outcome = ask(calculator, raw, memo);
  if (!outcome.ok) return { ...asked, errors: outcome.errors.map((error) => withUsual(error, raw, fields)) };
  const { inputs, result } = outcome.value;
  return { ...asked, inputs: inputs as Record<string, unknown>, result };
}

/** The thing that a pointer needs worked out before it: `calculations/heat`, `tools/bit`. */
const nodeOf = (pointer: string) => stepsOfPointer(pointer).slice(0, 2).join('/');

/** The thing in which a mention stands, where its value decides about that thing. */
function ownerOf({ purpose }: Mention): string | undefined {
  if (purpose.kind === 'input') return `calculations/${purpose.calculation}`;
  if (purpose.kind === 'limit') return `tools/${purpose.tool}`;
  return purpose.kind === 'need' ? `materials/${purpose.material}` : undefined;
}

function resolutionOrder(record: MethodRecord, mentions: readonly Mention[]) {
  const calculations = Object.values(record.steps).flatMap((step) => Object.keys(step.calculations ?? {}));
  const nodes = [
    ...Object.keys(record.tools).map((name) => `tools/${name}`),
    ...calculations.map((name) => `calculations/${name}`),
    ...Object.keys(record.materials).map((name) => `materials/${name}`),
  ];
  const needs = new Map<string, string[]>();
  for (const mention of mentions) {
    const owner = ownerOf(mention);
    if (owner) needs.set(owner, [...(needs.get(owner) ?? []), nodeOf(mention.pointer)]);
  }
  return orderByNeed(nodes, (node) => needs.get(node) ?? []);
}

/** What follows from a method alone, whatever its case: what its texts and inputs name, in which order that is worked out, and what does not fit. */
interface OfRecord {
  mentions: readonly Mention[];
  sorted: ReturnType<typeof resolutionOrder>;
  faults: readonly Fault[];
  /** Parameters whose numbers have no unit. */
  bare: readonly Fault[];
}

/** A reader tries a dozen values of one method: it is looked through once. */
const known = new WeakMap<MethodRecord, OfRecord>();

function ofRecord(record: MethodRecord, calculators: Calculators): OfRecord {
  const before = known.get(record);
  if (before) return before;
  const mentions = mentionsOf(record);
  const found = {
    mentions,
    sorted: resolutionOrder(record, mentions),
    faults: fitFaults(record, calculators),
    bare: bareParameters(record),
  };
  known.set(record, found);
  return found;
}

/** Names of the parameters that some faults are of. */
const parametersIn = (faults: readonly Fault[]) =>
  new Set(faults.flatMap(({ path: [branch, name] }) => (branch === 'parameters' && name !== undefined ? [name] : [])));

/** Faults without those that only follow from a parameter which is at fault itself, or say of it again what is said. */
function besides(faults: readonly Fault[], told: readonly Fault[]): Fault[] {
  const atFault = parametersIn(told);
  return faults.filter((fault) => !atFault.has(fault.follows ?? fault.path[1] ?? '') || !isOfParameter(fault));
}

/** Whether a fault is of a parameter, or comes from the value of one. */
const isOfParameter = ({ path: [branch], follows }: Fault) => branch === 'parameters' || follows !== undefined;

/** Where to point for a circle: at a reference that is part of it. */
function circleFault(circle: readonly string[], mentions: readonly Mention[]): Fault {
  const [first = '', second = first] = circle;
  const mention = mentions.find((each) => ownerOf(each) === first && nodeOf(each.pointer) === second);
  return {
    path: mention?.path ?? ['steps'],
    message: `${[...circle, first].join(' → ')} need each other in a circle, and none can be worked out. Write one of the values instead of referring to it.`,
  };
}

/** Pieces of the case, within what the method allows; of what is taught to a class a student has one, whatever the class makes. */
function piecesOf(record: MethodRecord, asked: number | undefined): { pieces: number; faults: Fault[] } {
  const { default: usual, least, most } = record.makes.pieces;
  const pieces = asked ?? usual;
  const isStudents = pieces === 1 && record.taught !== undefined;
  if (isStudents || (Number.isInteger(pieces) && pieces >= least && pieces <= most)) return { pieces, faults: [] };
  return {
    pieces,
    faults: [
      {
        path: ['makes', 'pieces'],
        message: `${pieces} pieces were asked for, and the method is written for ${least} to ${most}${record.taught && least > 1 ? ', or 1 for a student of a class' : ''}. Give a whole number in that range.`,
      },
    ],
  };
}

/**
 * Work a method out for one case: put every reference in its place, ask every calculator, in the order that the references give.
 *
 * What a calculator refuses is not a problem of the file: the calculation then holds its errors, and a rule tells of them.
 *
 * @param read a method without problems
 * @returns the worked method, or every reference that leads nowhere, does not fit or runs in a circle, and every parameter that cannot be read
 */
export async function workMethod(read: MethodReading, options: CaseOptions = {}): Promise<Working> {
  const { file, record, spanOf } = read;
  if (!record) return { ok: false, problems: read.problems };
  const calculators: Calculators = await calculatorsOf(record);
  const { mentions, sorted, faults: misfits, bare } = ofRecord(record, calculators);
  const { parameters, faults, beyond } = parametersOf(record, options);
  const { pieces, faults: wrongPieces } = piecesOf(record, options.pieces);
  const ofParameters = [...bare, ...besides(faults, bare)];
  const all = [
    ...wrongPieces,
    ...ofParameters,
    ...besides(misfits, ofParameters),
    ...measuredFaults(record, calculators, options.measured),
  ];
  if ('circle' in sorted) all.push(circleFault(sorted.circle, mentions));
  if ('circle' in sorted || all.length > 0)
    return { ok: false, problems: problemsAt(read, all), ...(beyond ? { beyond } : {}) };

  const calculations: Record<string, WorkedCalculation> = {};
  const materials: Record<string, WorkedMaterial> = {};
  const tools: Record<string, WorkedTool> = {};
  const standing: Standing = { record, pieces, parameters, calculations, materials, tools };
  const gaps: Gap[] = [];
  const memo = options.memo ?? new Map<string, unknown>();
  const steps = Object.entries(record.steps);
  for (const node of sorted.order) {
    const [branch, name = ''] = node.split('/');
    if (branch === 'tools') tools[name] = toolOf(name, standing, options.shop, gaps);
    else if (branch === 'materials') materials[name] = materialOf(name, standing, gaps);
    else {
      const [id, step] = steps.find(([, each]) => Object.hasOwn(each.calculations ?? {}, name)) ?? [];
      const calculation = step?.calculations?.[name];
      const calculator = calculation && calculators.get(calculation.use as CalculatorId);
      if (id !== undefined && calculation && calculator)
        calculations[name] = calculate(name, id, calculation, calculator, standing, {
          measured: options.measured?.[name],
          memo,
          shop: options.shop,
        });
    }
  }
  const worked = stepsOf(standing, gaps);
  for (const { pointer, path, step, purpose } of mentions) {
    if (purpose.kind !== 'text') continue;
    const there = lookUp(standing, pointer);
    if (!there.ok) gaps.push({ path, pointer, message: there.why, ...(step === undefined ? {} : { step }) });
  }
  return {
    ok: true,
    worked: {
      file,
      record,
      spanOf,
      pieces,
      parameters,
      calculations,
      materials,
      tools,
      steps: worked,
      exceptions: record.exceptions ?? [],
      gaps,
      ...(options.shop ? { shop: options.shop } : {}),
      at: (pointer) => {
        const there = lookUp(standing, pointer);
        return there.ok ? there.value : undefined;
      },
    },
  };
}
