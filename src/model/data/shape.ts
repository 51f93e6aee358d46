import type * as z from 'zod/mini';

type Shape = Readonly<Record<string, z.core.$ZodType>>;

/** A schema with all that is known of how it is made. */
function definition(schema: z.core.$ZodType) {
  return (schema as z.core.$ZodTypes)._zod.def;
}

/** Whether a group may be meant by a shape: none of the words that a field of it allows alone is written otherwise. */
function mayBe(shape: Shape, data: unknown): boolean {
  if (typeof data !== 'object' || data === null) return true;
  return Object.entries(shape).every(([name, schema]) => {
    const made = definition(schema);
    const written = Object.hasOwn(data, name) ? (data as Record<string, unknown>)[name] : undefined;
    return made.type !== 'literal' || written === undefined || made.values.includes(written as never);
  });
}

/** The part of a value that a step of a path leads to; nothing is taken from a prototype. */
export function partOf(data: unknown, step: PropertyKey): unknown {
  if (typeof data !== 'object' || data === null || !Object.hasOwn(data, step)) return undefined;
  return (data as Record<PropertyKey, unknown>)[step];
}

/** The shapes of the groups that a schema allows at the end of a path. */
function shapesAt(schema: z.core.$ZodType, path: readonly PropertyKey[], data: unknown): Shape[] {
  const made = definition(schema);
  switch (made.type) {
    case 'optional':
    case 'nullable':
    case 'default':
    case 'prefault':
    case 'nonoptional':
    case 'readonly':
    case 'catch':
      return shapesAt(made.innerType, path, data);
    case 'pipe':
      return shapesAt(made.in, path, data);
    case 'lazy':
      return shapesAt(made.getter(), path, data);
    case 'union':
      return made.options.flatMap((option) => shapesAt(option, path, data));
    case 'intersection':
      return [...shapesAt(made.left, path, data), ...shapesAt(made.right, path, data)];
    case 'object': {
      if (!mayBe(made.shape, data)) return [];
      const [step, ...rest] = path;
      if (step === undefined) return [made.shape];
      const field = partOf(made.shape, step) as z.core.$ZodType | undefined;
      return field ? shapesAt(field, rest, partOf(data, step)) : [];
    }
    default: {
      const [step, ...rest] = path;
      const inner =
        made.type === 'array'
          ? made.element
          : made.type === 'record'
            ? made.valueType
            : made.type === 'tuple'
              ? (made.items[Number(step)] ?? made.rest)
              : undefined;
      return inner && step !== undefined ? shapesAt(inner, rest, partOf(data, step)) : [];
    }
  }
}

/**
 * Names of the fields that a schema allows in the group at the end of a path, in its order; of several kinds of group, those that what is
 * written there does not contradict.
 */
export function fieldNames(schema: z.core.$ZodType, path: readonly PropertyKey[], data: unknown): string[] {
  return [...new Set(shapesAt(schema, path, data).flatMap((shape) => Object.keys(shape)))];
}
