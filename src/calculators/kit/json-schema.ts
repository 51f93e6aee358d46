import * as z from 'zod/mini';
import { defaultUnits, inReaderUnits } from '../../model/quantity/index.ts';
import { fieldRegistry, rangeWords } from './fields.ts';

/** A JSON Schema document or a part of one. */
export type JsonSchema = { [keyword: string]: unknown };

const sheetWords = 'A data sheet, after resin-sheet.json.';

/** A schema as JSON Schema 2020-12 of what may be written, in which each field of the kit has its label, help, range, examples and options. */
export function jsonSchemaOf(schema: z.ZodMiniType): JsonSchema {
  return z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      const meta = fieldRegistry.get(zodSchema as unknown as z.ZodMiniType);
      if (!meta) return;
      const range =
        meta.kind === 'quantity' && meta.minimum !== undefined
          ? `Range: ${rangeWords(meta)}; ${meta.dimension === 'time' ? 'a text needs its unit, a number is in seconds' : meta.unitAsked ? 'a text needs its unit, a number is in that unit' : 'a number without a unit is in that unit'}.`
          : '';
      jsonSchema.title = meta.label;
      const words = [meta.help && inReaderUnits(meta.help, defaultUnits), range].filter(Boolean).join(' ');
      if (words) jsonSchema.description = words;
      if (meta.examples.length > 0) jsonSchema.examples = [...meta.examples];
      if (meta.kind === 'resin') jsonSchema.anyOf = [{ type: 'string' }, { type: 'object', description: sheetWords }];
      if (meta.whole) {
        jsonSchema.anyOf = [{ type: 'string' }, { type: 'integer' }];
        delete jsonSchema.type;
      }
      if (meta.options) jsonSchema.enum = meta.options.map((option) => option.value);
    },
  }) as JsonSchema;
}
