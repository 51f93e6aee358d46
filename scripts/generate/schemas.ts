import type * as z from 'zod/mini';
import { calculators } from '../../src/calculators/index.ts';
import { fieldsOf } from '../../src/calculators/kit/answer.ts';
import type { Calculator } from '../../src/calculators/kit/calculator.ts';
import { fieldMeta } from '../../src/calculators/kit/fields.ts';
import { type JsonSchema, jsonSchemaOf } from '../../src/calculators/kit/json-schema.ts';
import { resinSheetInputs } from '../../src/calculators/kit/resin-sheet-entries.ts';
import { batchRecord } from '../../src/method/batch/record.ts';
import { methodRecord } from '../../src/method/record/index.ts';
import { shopSchema } from '../../src/method/shop/index.ts';
import { recordKinds } from '../../src/store/records.ts';
import { tableDefinitions } from '../../src/store/tables.ts';
import { reportShape, rowShape, sourcesShape, speciesShape } from './shapes.ts';

export type { JsonSchema };

/** Base of every `$id`: a name, not a place from which anything is fetched. */
export const schemaBase = 'https://kerf-and-cure.example/schemas/';

/** A list of types becomes alternatives: strict validators refuse the list. */
function withoutTypeLists(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(withoutTypeLists);
  if (typeof node !== 'object' || node === null) return node;
  const copy = Object.fromEntries(Object.entries(node).map(([key, value]) => [key, withoutTypeLists(value)]));
  if (!Array.isArray(copy.type)) return copy;
  const { type, ...rest } = copy as { type: string[] };
  return { ...rest, anyOf: type.map((each) => ({ type: each })) };
}

function published(name: string, title: string, description: string, schema: z.ZodMiniType): JsonSchema {
  const made = jsonSchemaOf(schema);
  const { $schema, ...body } = withoutTypeLists(made) as JsonSchema;
  return { $schema, $id: `${schemaBase}${name}.json`, title, description, ...body };
}

/** JSON Schema of a calculator's inputs, with labels, ranges and an example. */
function inputsSchema(calculator: Calculator): JsonSchema {
  const schema = published(
    `calculator-${calculator.id}`,
    `Inputs of ${calculator.title.toLowerCase()}`,
    calculator.summary,
    calculator.inputs,
  );
  for (const [name, field] of Object.entries(fieldsOf(calculator))) {
    if (!fieldMeta(field))
      throw new Error(`${calculator.id}: the input ${name} has no label; make it with the kit’s fields`);
  }
  return {
    ...schema,
    ...constraints(calculator),
    additionalProperties: false,
    examples: [calculator.example.metric, calculator.example.inch],
  };
}

/** Which inputs exclude each other, and which say nothing without each other. */
function constraints({ inputs, alternatives = [], together = [] }: Calculator): JsonSchema {
  // By field: those of the other ways to say the same, none of which may stand beside it, but for a text that yields to it.
  const apart = new Map<string, Record<string, JsonSchema | false>>();
  for (const { sets } of alternatives) {
    // A pair is written once, at the field that never yields.
    const ordered = [...sets].sort(
      (one, other) => Object.keys(one.yields ?? {}).length - Object.keys(other.yields ?? {}).length,
    );
    ordered.forEach((one, at) => {
      for (const field of one.deciding ?? one.fields) {
        for (const other of ordered.slice(at + 1)) {
          for (const name of other.deciding ?? other.fields) {
            const yielding = other.yields?.[name];
            apart.set(field, { ...apart.get(field), [name]: yielding === undefined ? false : { const: yielding } });
          }
        }
      }
    });
  }
  const barred = [...apart].map(([field, properties]) => [field, { type: 'object', properties }] as const);
  const others = (fields: readonly string[]) =>
    Object.fromEntries(fields.map((field) => [field, fields.filter((other) => other !== field)]));
  const whenOf = (fields: readonly string[]) =>
    fields.flatMap((name) => {
      const field = fieldsOf({ inputs })[name];
      return (field && fieldMeta(field)?.when) ?? [];
    })[0];
  const whole = together.filter(({ fields }) => !whenOf(fields)).map(({ fields }) => others(fields));
  // Groups that one kind of work asks for say nothing of another.
  const ofWork = together.flatMap(({ fields }) => {
    const when = whenOf(fields);
    if (!when) return [];
    const chosen = { type: 'object', properties: { [when.field]: { enum: when.is.filter(Boolean) } } };
    return {
      if: when.is.includes('') ? chosen : { ...chosen, required: [when.field] },
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema
      then: { type: 'object', dependentRequired: others(fields) },
    };
  });
  return {
    ...(barred.length > 0 ? { dependentSchemas: Object.fromEntries(barred) } : {}),
    ...(whole.length > 0 ? { dependentRequired: Object.assign({}, ...whole) } : {}),
    ...(ofWork.length > 0 ? { allOf: ofWork } : {}),
  };
}

/** Every published schema, by the name of its file. */
export function publishedSchemas(): Map<string, JsonSchema> {
  const schemas = new Map<string, JsonSchema>([
    ...recordKinds.map(
      ({ name, title, description, schema }) => [name, published(name, title, description, schema)] as const,
    ),
    [
      'species',
      published(
        'species',
        'Species',
        'A wood with its figures resolved from the tables; a figure that is not published is null.',
        speciesShape,
      ),
    ],
    [
      'result',
      published(
        'result',
        'Result',
        'What every calculator gives: figures, series, cautions and what the answer rests on.',
        reportShape,
      ),
    ],
    [
      'species-list',
      {
        $schema: 'https://json-schema.org/draft/2020-12/schema',
        $id: `${schemaBase}species-list.json`,
        title: 'Species list',
        description: 'Every wood, as downloaded from the site.',
        type: 'array',
        items: { $ref: 'species.json' },
      },
    ],
    [
      'resin-sheet',
      published(
        'resin-sheet',
        'Data sheet of a resin',
        'What a maker’s data sheet says of a two-part resin. Every entry but the name may be left out.',
        resinSheetInputs,
      ),
    ],
    [
      'method.schema',
      published(
        'method.schema',
        'Shop method',
        'A shop method: what is made, of what, in which steps, with the calculations that each step asks for.',
        methodRecord,
      ),
    ],
    [
      'shop.schema',
      published(
        'shop.schema',
        'Shop record',
        'A shop: its machines and what limits them, tools, air, hours, materials, prices. What is not stated is left out.',
        shopSchema,
      ),
    ],
    [
      'batch.schema',
      published(
        'batch.schema',
        'Record of a batch',
        'What was made: the method, the case and the shop record as they were, and what was written down as the work went on. Entries are only added; what was wrong is struck, and stays. Photographs are left out.',
        batchRecord,
      ),
    ],
    ['sources', published('sources', 'Sources', 'The source list, in CSL-JSON.', sourcesShape)],
  ]);
  for (const definition of tableDefinitions) {
    const name = `table-${definition.name}`;
    schemas.set(
      name,
      published(
        name,
        `Row of ${definition.title}`,
        definition.notes.join(' ') || definition.title,
        rowShape(definition),
      ),
    );
  }
  for (const calculator of calculators) schemas.set(`calculator-${calculator.id}`, inputsSchema(calculator));
  return schemas;
}
