import { readPlace } from '../../calculators/kit/climate-field.ts';
import { readResin } from '../../calculators/kit/resin-field.ts';
import { readSpecies } from '../../calculators/kit/species-field.ts';
import { finishes } from '../../model/finish/kinds.ts';
import { amount, canonicalUnit, excerpt, parseQuantity, type Read, unitLabel } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import type { MethodRecord, Parameter } from '../record/index.ts';
import { bareMeasure } from './bare.ts';
import { idOfKind, isAmong } from './kinds.ts';
import { limitWrittenAs, rangeWords } from './limits.ts';
import type { Fault } from './named.ts';
import { orThese } from './or-these.ts';
import { shopAt } from './shop.ts';
import type { CaseOptions, CaseQuantity, CaseValue, ShopBeyond, WorkedParameter } from './types.ts';

/** What stands for a parameter: as a calculator takes it, and as a reference hands it on. */
interface Standing {
  raw: unknown;
  value: CaseValue;
}

const no = (problem: string, wayOut: string): Read<never> => ({ ok: false, problem, wayOut });

/** A quantity as typed: its number in the canonical unit, and the text for whoever reads it again. */
export function quantityOf(label: string, entry: string | number): Read<CaseQuantity> {
  const read = readAnyQuantity(entry);
  if (!read.ok) return read;
  const [first] = read.value;
  return {
    ok: true,
    value: {
      kind: 'quantity',
      value: first.value,
      unit: first.unit,
      label,
      typed: String(entry),
      dimensions: read.value.map(({ dimension }) => dimension),
    },
  };
}

function quantity(parameter: Extract<Parameter, { kind: 'quantity' }>, raw: unknown): Read<Standing> {
  const read = quantityOf(parameter.label, raw as string | number);
  const usual = quantityOf(parameter.label, parameter.default);
  if (!read.ok) {
    const dimension = usual.ok ? usual.value.dimensions?.[0] : undefined;
    // Of a temperature it is said that it is no temperature: what was meant is known here.
    const meant = dimension && parseQuantity(String(raw), { dimension, bareUnit: canonicalUnit[dimension] });
    return meant && !meant.ok
      ? no(meant.problem, `Write it as its default is written, such as ${parameter.default}.`)
      : read;
  }
  if (usual.ok && usual.value.unit !== read.value.unit)
    return no(
      `“${excerpt(String(raw))}” ${read.value.unit === '1' ? 'has no unit' : 'does not measure the same as its default'}`,
      `Write it as its default is written, such as ${parameter.default}.`,
    );
  const [least, most] = [parameter.least, parameter.most].map((end) => quantityOf(parameter.label, end));
  for (const end of [least, most]) {
    if (!end?.ok) return no(`the range cannot be read: ${end?.problem}`, end?.wayOut ?? '');
    if (end.value.unit !== read.value.unit)
      return no(
        `${excerpt(String(raw))} and the range ${parameter.least} to ${parameter.most} do not measure the same`,
        'Write all three with units of one kind.',
      );
  }
  const [low, high] = [least, most].map((end) => (end?.ok ? end.value.value : Number.NaN)) as [number, number];
  const { value, unit } = read.value;
  if (low > high)
    return no(
      `its range runs from ${parameter.least} to ${parameter.most}, which is backwards`,
      'Write the smaller one as least, the larger one as most.',
    );
  if (value < low || value > high) {
    const [limit, written] = value < low ? [least, parameter.least] : [most, parameter.most];
    if (limit?.ok && limitWrittenAs(raw as string | number, value, limit.value.value, unit))
      return { ok: true, value: { raw: written, value: limit.value } };
    return no(
      `${excerpt(String(raw))} is ${value < low ? 'less' : 'more'} than the method allows, ${rangeWords(low, high, unit)}`,
      'Give a value in that range, or widen it where you know that the method holds there.',
    );
  }
  return { ok: true, value: { raw, value: read.value } };
}

function count(parameter: Extract<Parameter, { kind: 'count' }>, raw: unknown): Read<Standing> {
  const value = typeof raw === 'number' ? raw : /^\s*\d{1,6}\s*$/.test(String(raw)) ? Number(raw) : Number.NaN;
  if (!Number.isInteger(value)) return no(`“${excerpt(String(raw))}” is not a whole number`, 'Give one, such as 12.');
  if (value < parameter.least || value > parameter.most)
    return no(
      `${value} is not within ${parameter.least} to ${parameter.most}, which the method allows`,
      'Give a number in that range.',
    );
  return {
    ok: true,
    value: {
      raw: value,
      value: { kind: 'quantity', value, unit: '{count}', label: parameter.label, dimensions: ['count', 'number'] },
    },
  };
}

function named(label: string, id: string, text = id): Standing {
  return { raw: id, value: { kind: 'text', text, label, id } };
}

function wood(parameter: Extract<Parameter, { kind: 'wood' }>, raw: unknown): Read<Standing> {
  const read = readSpecies(String(raw));
  if (!read.ok) return read;
  const { id, name } = read.value;
  if (parameter.among && !isAmong('wood', id, parameter.among))
    return no(`the method is not written for ${name.toLowerCase()}`, `It is for ${parameter.among.join(', ')}.`);
  return { ok: true, value: named(parameter.label, id, name.toLowerCase()) };
}

function finish(parameter: Extract<Parameter, { kind: 'finish' }>, raw: unknown): Read<Standing> {
  const found = idOfKind('finish', String(raw));
  if (!found.ok) return found;
  const id = found.value;
  if (parameter.among && !isAmong('finish', id, parameter.among))
    return no(`the method is not written for ${id}`, `It is for ${parameter.among.join(', ')}.`);
  const name = finishes.find((kind) => kind.id === id)?.name ?? 'no finish';
  return { ok: true, value: named(parameter.label, id, name.toLowerCase()) };
}

function resin(parameter: Extract<Parameter, { kind: 'resin' }>, entry: unknown): Read<Standing> {
  const isSheet = typeof entry !== 'string' || entry.trim().startsWith('{');
  const kind = isSheet ? undefined : idOfKind('resin', entry);
  const raw = kind?.ok ? kind.value : entry;
  const read = readResin(raw as string | Record<string, unknown>);
  if (!read.ok) return read;
  const { among } = parameter;
  if (among && kind?.ok && !isAmong('resin', kind.value, among))
    return no(`the method is not written for ${read.value.name.toLowerCase()}`, `It is for ${among.join(', ')}.`);
  return {
    ok: true,
    value: { raw, value: { kind: 'data', data: raw, text: read.value.name.toLowerCase(), label: parameter.label } },
  };
}

function place(parameter: Parameter, raw: unknown): Read<Standing> {
  const read = readPlace(String(raw));
  if (!read.ok) return read;
  if (!read.value) return no('“own” is no place', 'Name a place of the climate tables, or ask for readings.');
  return { ok: true, value: named(parameter.label, read.value.id, read.value.place) };
}

function choice(parameter: Extract<Parameter, { kind: 'choice' }>, raw: unknown): Read<Standing> {
  const wanted = String(raw).trim();
  const option = parameter.options.find(({ value }) => value === wanted);
  if (!option)
    return no(
      `“${excerpt(wanted)}” is not one of the options`,
      orThese(
        wanted,
        parameter.options.map(({ value }) => value),
        'option',
      ),
    );
  return { ok: true, value: named(parameter.label, option.value, option.label.toLowerCase()) };
}

function outline(parameter: Parameter, raw: unknown): Read<Standing> {
  if (typeof raw !== 'object' || raw === null)
    return no(`“${excerpt(String(raw))}” is not an outline`, 'Set its measures one by one, such as outline.length.');
  const bare = bareMeasure(raw as Readonly<Record<string, unknown>>);
  if (bare) return no(`${bare.measure}: ${bare.problem}`, bare.wayOut);
  return { ok: true, value: { raw, value: { kind: 'data', data: raw, label: parameter.label } } };
}

/** What an entry stands for as this parameter; the reader's, the shop's or the method's own. */
function standing(parameter: Parameter, raw: unknown): Read<Standing> {
  switch (parameter.kind) {
    case 'quantity':
      return typeof raw === 'string' || typeof raw === 'number'
        ? quantity(parameter, raw)
        : no('this is no quantity', 'Write a number and its unit.');
    case 'count':
      return count(parameter, raw);
    case 'wood':
      return wood(parameter, raw);
    case 'finish':
      return finish(parameter, raw);
    case 'resin':
      return resin(parameter, raw);
    case 'place':
      return place(parameter, raw);
    case 'choice':
      return choice(parameter, raw);
    case 'outline':
      return outline(parameter, raw);
    case 'readings':
      return { ok: true, value: { raw, value: { kind: 'text', text: String(raw), label: parameter.label } } };
  }
}

/** What each parameter stood for last: of a case one changes, and the others stay. */
const stoodLast = new WeakMap<Parameter, { raw: unknown; read: Read<Standing> }>();

function standingOf(parameter: Parameter, raw: unknown): Read<Standing> {
  const last = stoodLast.get(parameter);
  if (last && Object.is(last.raw, raw)) return last.read;
  const read = standing(parameter, raw);
  stoodLast.set(parameter, { raw, read });
  return read;
}

/** A number of the shop record, which is in canonical units, with the unit that the parameter's own default has. */
function withItsUnit(parameter: Parameter, held: unknown): unknown {
  if (typeof held !== 'number' || parameter.kind !== 'quantity') return held;
  const read = readAnyQuantity(parameter.default);
  return read.ok && read.value[0].unit !== '1' ? `${held} ${unitLabel(read.value[0].unit)}` : held;
}

/**
 * Why the method does not hold in the shop as its record says it, in quantities that follow the reader's units; undefined where it is not the range
 * that stands in the way.
 */
function shopBeyond(parameter: Parameter, held: unknown): { problem: string; wayOut: string } | undefined {
  if (parameter.kind !== 'quantity' || (typeof held !== 'string' && typeof held !== 'number')) return undefined;
  const [read, least, most] = [held, parameter.least, parameter.most].map((each) => quantityOf(parameter.label, each));
  if (!read?.ok || !least?.ok || !most?.ok) return undefined;
  const { value, unit } = read.value;
  const [low, high] = [least.value.value, most.value.value];
  if (value >= low && value <= high) return undefined;
  const [word, limit, keep] = value < low ? (['less', low, 'or more'] as const) : (['more', high, 'or less'] as const);
  const than = unit === 'Cel' ? (value < low ? 'colder' : 'warmer') : word;
  return {
    problem: `${amount(value, unit)} is ${than} than the method allows, ${rangeWords(low, high, unit)}, and its times do not hold there`,
    wayOut: `Keep it at ${amount(limit, unit)} ${keep} for as long as you follow the method, and give here what you keep it at. Where you cannot, do not begin.`,
  };
}

/** What the reader set of an outline, `outline.length`, laid over what stands. */
function measuresSet(name: string, raw: unknown, set: Readonly<Record<string, string>>): unknown {
  const begin = `${name}.`;
  const given = Object.entries(set).filter(([key]) => key.startsWith(begin));
  if (given.length === 0 || typeof raw !== 'object' || raw === null) return raw;
  return { ...raw, ...Object.fromEntries(given.map(([key, value]) => [key.slice(begin.length), value])) };
}

/**
 * The parameters of a case: what the reader set, else what the shop record holds, else the method's own.
 *
 * What cannot be read is a fault at the parameter's default, which names who said it.
 *
 * @returns `beyond` where the method does not take what the shop record holds
 */
export function parametersOf(
  record: MethodRecord,
  { set = {}, shop }: Pick<CaseOptions, 'set' | 'shop'>,
): { parameters: Record<string, WorkedParameter>; faults: Fault[]; beyond?: ShopBeyond } {
  const faults: Fault[] = [];
  const refused: Record<string, string> = {};
  const known = Object.keys(record.parameters);
  for (const name of Object.keys(set)) {
    const [first = ''] = name.split('.');
    if (known.includes(name) || (known.includes(first) && record.parameters[first]?.kind === 'outline')) continue;
    faults.push({
      path: ['parameters'],
      message: `“${name}” was set, and is not a parameter of this method. ${orThese(name, known, 'parameter')}`,
    });
  }
  const parameters: Record<string, WorkedParameter> = {};
  for (const [name, parameter] of Object.entries(record.parameters)) {
    const held = parameter.shop && shop ? withItsUnit(parameter, shopAt(shop, parameter.shop)) : undefined;
    const from = Object.hasOwn(set, name) ? 'reader' : held === undefined ? 'method' : 'shop';
    const entry = from === 'reader' ? set[name] : (held ?? parameter.default);
    const raw = measuresSet(name, entry, set);
    const read = standingOf(parameter, raw);
    if (read.ok) {
      parameters[name] = { name, record: parameter, ...read.value, from };
      continue;
    }
    const because = (from === 'shop' ? shopBeyond(parameter, raw) : undefined) ?? read;
    // What the reader set in its place and cannot stand either makes the shop no better.
    if (held !== undefined && !standing(parameter, held).ok) refused[name] = String(held);
    const who = { method: '', shop: ', from the shop record', reader: ', as set' }[from];
    faults.push({
      path: ['parameters', name, 'default'],
      message: `${parameter.label}${who}: ${because.problem}. ${because.wayOut}`,
    });
  }
  const beyond = shop && Object.keys(refused).length > 0 ? { shop: shop.name, held: refused } : undefined;
  return { parameters, faults, ...(beyond ? { beyond } : {}) };
}
