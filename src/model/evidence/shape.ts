import * as z from 'zod/mini';
import { bases, seenMarks } from './basis.ts';
import type { Citation } from './figure.ts';
import { type SourceId, sources } from './sources/index.ts';

/** Give a shape the name under which every published schema that holds it defines it once. */
export function named<Schema extends z.ZodMiniType>(id: string, schema: Schema): Schema {
  z.globalRegistry.add(schema, { ...z.globalRegistry.get(schema), id });
  return schema;
}

/** How a figure is known. */
export const basisShape = named('basis', z.enum(bases));

const source = named('source', z.enum(sources.map(({ id }) => id) as [SourceId, ...SourceId[]]));

/** Where something is printed, and how it was read there. */
export const citationShape: z.ZodMiniType<Citation> = named(
  'citation',
  z.strictObject({
    source,
    locator: z.exactOptional(z.string()),
    seen: z.exactOptional(z.enum(seenMarks)),
  }),
);
