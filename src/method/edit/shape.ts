import { type JsonSchema, jsonSchemaOf } from '../../calculators/kit/json-schema.ts';
import { methodRecord } from '../record/index.ts';
import { shopSchema } from '../shop/index.ts';
import { isGroup } from './outline.ts';
import type { RecordKind } from './types.ts';

/** A part of a JSON Schema, as far as the services read it. */
export interface Shape extends JsonSchema {
  type?: string;
  title?: string;
  description?: string;
  examples?: unknown[];
  const?: unknown;
  enum?: unknown[];
  default?: unknown;
  properties?: Record<string, Shape>;
  required?: string[];
  additionalProperties?: Shape | boolean;
  propertyNames?: Shape;
  items?: Shape;
  prefixItems?: Shape[];
  anyOf?: Shape[];
  oneOf?: Shape[];
  allOf?: Shape[];
  maxLength?: number;
}

const made = new Map<RecordKind, Shape>();

/** The schema of a record; made when it is first asked for. */
export function shapeOf(kind: RecordKind): Shape {
  const before = made.get(kind);
  if (before) return before;
  const fresh = jsonSchemaOf(kind === 'method' ? methodRecord : shopSchema) as Shape;
  made.set(kind, fresh);
  return fresh;
}

/** What of a group contradicts a branch: a word that the branch allows alone and the group has otherwise. */
function contradicts({ properties = {} }: Shape, data: unknown): boolean {
  if (!isGroup(data)) return false;
  return Object.entries(properties).some(
    ([name, shape]) =>
      Object.hasOwn(shape, 'const') &&
      Object.hasOwn(data, name) &&
      typeof data[name] === typeof shape.const &&
      data[name] !== '' &&
      data[name] !== shape.const,
  );
}

/** The plain shapes that a shape allows; what it says of itself stands for each of its branches that says nothing. */
function branches(shape: Shape, data: unknown): Shape[] {
  const inner = [...(shape.anyOf ?? []), ...(shape.oneOf ?? []), ...(shape.allOf ?? [])];
  if (inner.length === 0) return [shape];
  const words = shape.description === undefined ? {} : { description: shape.description };
  const all = inner.flatMap((each) => branches({ ...each, ...words }, data));
  const fitting = all.filter((each) => !contradicts(each, data));
  return shape.properties ? [shape, ...fitting] : fitting.length > 0 ? fitting : all;
}

/** One step further: what may stand under a name or at a number. */
function below(shape: Shape, step: string | number): Shape[] {
  if (typeof step === 'number') {
    const item = shape.prefixItems?.[step] ?? shape.items;
    return shape.type === 'array' && item ? [item] : [];
  }
  const own = shape.properties && Object.hasOwn(shape.properties, step) ? shape.properties[step] : undefined;
  if (own) return [own];
  const { additionalProperties: rest } = shape;
  return typeof rest === 'object' && Object.keys(rest).length > 0 ? [rest] : [];
}

const partOf = (data: unknown, step: string | number): unknown =>
  typeof data === 'object' && data !== null && Object.hasOwn(data, step)
    ? (data as Record<string | number, unknown>)[step]
    : undefined;

/** What stands at a path of loose data. */
export const valueAt = (data: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>(partOf, data);

/** Every plain shape that may stand at the end of a path, given what is written so far. */
export function shapesAt(root: Shape, path: readonly (string | number)[], data: unknown): Shape[] {
  let shapes = branches(root, data);
  let value = data;
  for (const step of path) {
    value = partOf(value, step);
    shapes = shapes.flatMap((shape) => below(shape, step)).flatMap((shape) => branches(shape, value));
  }
  return shapes;
}

/** A field that may be written in a group. */
export interface FieldOfShape {
  name: string;
  shapes: Shape[];
  /** In every kind of group that is still possible. */
  needed: boolean;
}

/** The fields that may stand in the group at the end of a path, in the order of the schema, those that are needed first. */
export function fieldsAt(root: Shape, path: readonly (string | number)[], data: unknown): FieldOfShape[] {
  const shapes = shapesAt(root, path, data).filter(({ type, properties }) => type === 'object' || properties);
  const fields = new Map<string, FieldOfShape & { times: number }>();
  for (const shape of shapes) {
    const named = shape.propertyNames?.enum?.map((name) => [String(name), shape.additionalProperties] as const) ?? [];
    for (const [name, inner] of [...Object.entries(shape.properties ?? {}), ...named]) {
      const known = fields.get(name) ?? { name, shapes: [], needed: true, times: 0 };
      if (typeof inner === 'object') known.shapes.push(inner);
      known.needed &&= shape.required?.includes(name) ?? false;
      known.times += 1;
      fields.set(name, known);
    }
  }
  const all = [...fields.values()].map(({ times, ...field }) => ({
    ...field,
    needed: field.needed && times === shapes.length,
  }));
  return [...all.filter(({ needed }) => needed), ...all.filter(({ needed }) => !needed)];
}

/** What a schema says of a value, and an example where it has one. */
export function wordsOf(shapes: readonly Shape[]): string | undefined {
  const words = shapes.find(({ description }) => description !== undefined)?.description;
  const examples = shapes.find((shape) => shape.examples)?.examples;
  return (
    [words, examples && `For example ${examples.map(String).join(' or ')}.`].filter(Boolean).join(' ') || undefined
  );
}
