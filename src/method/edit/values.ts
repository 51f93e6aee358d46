import { calculatorIds, loadCalculator } from '../../calculators/registry.ts';
import { acts } from '../acts/index.ts';
import { rules } from '../rules/index.ts';
import { inputAt, inputsOf, measuredAt } from './inputs.ts';
import { isGroup } from './outline.ts';
import { type PointerOption, pointersIn } from './pointers.ts';
import { type Shape, shapesAt, valueAt, wordsOf } from './shape.ts';
import type { Completion, EditContext, NamedOption, NameLoaders } from './types.ts';

type Path = readonly (string | number)[];

/** What is known of the record that a value stands in. */
export interface Surroundings {
  root: Shape;
  data: Readonly<Record<string, unknown>>;
  context: EditContext;
}

/** A text as it can stand without quotes, or in quotes where it cannot. */
export function spelled(value: string): string {
  const plain =
    /^[A-Za-z0-9][\w .%°/+-]*$/.test(value) && !/^(true|false|null)$/i.test(value) && Number.isNaN(Number(value));
  return plain && value.trim() === value ? value : JSON.stringify(value);
}

function value(text: string, more: Partial<Completion> = {}): Completion {
  return { label: text, insert: spelled(text), sort: 'value', ...more };
}

const fromNames = (names: readonly NamedOption[]): Completion[] =>
  names.map(({ value: id, label, detail }) =>
    value(id, { ...(label === id ? {} : { detail: label }), ...(detail === undefined ? {} : { info: detail }) }),
  );

async function named(kind: keyof NameLoaders, { names }: EditContext): Promise<Completion[]> {
  const load = names?.[kind];
  return load ? fromNames(await load()) : [];
}

/** Names that the record gives to its own parts, each with what it is. */
function ownNames(group: unknown, field: 'title' | 'what' | 'label', without?: string | number): Completion[] {
  if (!isGroup(group)) return [];
  return Object.entries(group)
    .filter(([name]) => name !== without)
    .map(([name, entry]) => {
      const words = isGroup(entry) ? entry[field] : undefined;
      return value(name, typeof words === 'string' ? { detail: words } : {});
    });
}

/** Kinds of parameters whose values are names from a list. */
const listedKinds: Readonly<Record<string, keyof NameLoaders>> = {
  wood: 'wood',
  resin: 'resin',
  finish: 'finish',
  place: 'place',
};

async function ofParameter(path: Path, { data, context }: Surroundings): Promise<Completion[] | undefined> {
  const [, name = '', field, part] = path;
  const parameter = valueAt(data, ['parameters', name]);
  if (!isGroup(parameter)) return undefined;
  const kind = String(parameter.kind);
  if (field === 'shop') return shopPointers(context);
  if (field === 'among' || (field === 'default' && part === undefined)) {
    const list = listedKinds[kind];
    if (list) return named(list, context);
    const { options } = parameter;
    if (kind !== 'choice' || !Array.isArray(options)) return undefined;
    return options.flatMap((option) =>
      isGroup(option) && typeof option.value === 'string'
        ? [value(option.value, typeof option.label === 'string' ? { detail: option.label } : {})]
        : [],
    );
  }
  if (field === 'default' && part === 'shape' && kind === 'outline') {
    const shape = inputsOf(await loadCalculator('template-fit')).find((input) => input.name === 'shape');
    return shape?.meta.options?.map((option) => value(option.value, { detail: option.label }));
  }
  return undefined;
}

/** Where a shop record has what a parameter may ask for. */
const shopPlaces: readonly (readonly [pointer: string, words: string])[] = [
  ['/air/day', 'Temperature of the shop by day'],
  ['/air/night', 'Temperature of the shop by night'],
  ['/air/humidity', 'Humidity of the shop'],
  ['/air/place', 'Climate at the shop'],
];

function shopPointers({ shop }: EditContext): Completion[] {
  return shopPlaces.map(([pointer, words]) => {
    const there = shop && valueAt(shop, pointer.slice(1).split('/'));
    return value(pointer, {
      insert: pointer,
      detail: words,
      ...(shop
        ? { info: there === undefined ? 'Your shop record does not say it.' : 'Your shop record says it.' }
        : {}),
    });
  });
}

/** Ids of a shop record for a tool or material. */
function shopItems(branch: 'tools' | 'materials', { shop }: EditContext): Completion[] {
  if (!shop) return [];
  const lists: readonly (readonly unknown[])[] =
    branch === 'materials' ? [shop.materials] : [shop.machines, shop.moulds, shop.clamps, shop.scales, shop.bits];
  return lists.flat().flatMap((entry) => {
    if (!isGroup(entry) || typeof entry.id !== 'string') return [];
    const words = entry.name ?? entry.what ?? entry.kind;
    return [value(entry.id, typeof words === 'string' ? { detail: words } : {})];
  });
}

async function calculatorsToUse({ names }: EditContext): Promise<Completion[]> {
  const load = names?.calculator;
  return load ? fromNames(await load()) : calculatorIds.map((id) => value(id));
}

/** Values of an input of a calculation, by what the calculator says of it. */
async function ofInput(path: Path, { data, context }: Surroundings): Promise<Completion[] | undefined> {
  const input = path.length === 6 ? await inputAt(path, data) : undefined;
  if (!input) return undefined;
  const { kind, options, examples, label } = input.meta;
  if (options) return options.map((option) => value(option.value, { detail: option.label }));
  const list = { species: 'wood', climate: 'place', resin: 'resin' } as const;
  if (kind === 'species' || kind === 'climate' || kind === 'resin') return named(list[kind], context);
  return examples
    .filter((example) => !example.includes('\n') && example.length < 80)
    .map((example) => value(example, { detail: 'example', info: label }));
}

/** What the places of a method may hold that its schema does not know. */
async function ofMethod(path: Path, around: Surroundings): Promise<Completion[] | undefined> {
  const { data, context } = around;
  const [branch, name, field, at, part] = path;
  const steps = () => ownNames(data.steps, 'title', branch === 'steps' ? name : undefined);
  if (branch === 'parameters') return ofParameter(path, around);
  if ((branch === 'tools' || branch === 'materials') && field === 'item') return shopItems(branch, context);
  if (branch === 'exceptions') {
    if (field === 'rule')
      return rules
        .filter(({ neverExcepted }) => neverExcepted === undefined)
        .map(({ id, title, looksAt }) => value(id, { detail: title, info: looksAt }));
    return field === 'step' ? steps() : undefined;
  }
  if (branch !== 'steps') return undefined;
  if (field === 'act') return acts.map(({ id, label, about }) => value(id, { detail: label, info: about }));
  if (field === 'after' && typeof at === 'number' && (part === undefined || part === 'step')) return steps();
  if (field === 'uses' && typeof at === 'number') return ownNames(data.materials, 'what');
  if (field === 'tools' && typeof at === 'number') return ownNames(data.tools, 'what');
  if (field === 'holds' && part === 'tool') return ownNames(data.tools, 'what');
  if (field === 'holds' && part === 'until') return steps();
  if (field !== 'calculations') return undefined;
  return part === 'use' ? calculatorsToUse(context) : ofInput(path, around);
}

async function ofShop(path: Path, { context }: Surroundings): Promise<Completion[] | undefined> {
  const [branch, field] = path;
  if (branch === 'zone' || (branch === 'calendar' && field === 'zone')) return named('zone', context);
  return branch === 'air' && field === 'place' ? named('place', context) : undefined;
}

/** Words that a schema allows alone. */
function ofShapes(shapes: readonly Shape[]): Completion[] {
  const words = wordsOf(shapes);
  const info = words === undefined ? {} : { info: words };
  const allowed = shapes.flatMap((shape) => {
    if (Object.hasOwn(shape, 'const')) return [shape.const];
    return shape.enum ?? (shape.type === 'boolean' ? [true, false] : []);
  });
  return [...new Set(allowed)].map((each) => {
    const text = String(each);
    return typeof each === 'string' ? value(text, info) : { ...value(text, info), insert: text };
  });
}

/** What may be written as the value at a path, without its references. */
export async function valuesAt(path: Path, around: Surroundings, kind: 'method' | 'shop'): Promise<Completion[]> {
  const own = await (kind === 'method' ? ofMethod(path, around) : ofShop(path, around));
  return own ?? ofShapes(shapesAt(around.root, path, around.data));
}

/** References that fit a place: those that measure what it asks for first, then those of which it is not known. */
export async function referencesAt(path: Path, { data, context }: Surroundings): Promise<readonly PointerOption[]> {
  const all = await pointersIn(data, context);
  if (path[0] === 'materials') {
    const needs = all.filter(({ measures }) => measures !== 'text');
    const isUse = ({ pointer }: PointerOption) => /^\/calculations\/[^/]+\/uses\//.test(pointer);
    return [...needs.filter(isUse), ...needs.filter((option) => !isUse(option))];
  }
  const asked = await measuredAt(path, data);
  if (!asked) return all;
  const fits = ({ measures }: PointerOption) => measures !== undefined && asked.includes(measures);
  return [...all.filter(fits), ...all.filter(({ measures }) => measures === undefined)];
}
