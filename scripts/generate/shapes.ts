import * as z from 'zod/mini';
import type { Report } from '../../src/calculators/kit/report.ts';
import {
  type Block,
  type Caution,
  type CslItem,
  cautionWords,
  type EvidenceNote,
  type Figure,
  type ResultDocument,
  type ResultTable,
  type Series,
  seenMarks,
  type TableDefinition,
  type Timeline,
  type Use,
  type Verdict,
  verdictWords,
} from '../../src/model/evidence/index.ts';
import { basisShape, citationShape, named } from '../../src/model/evidence/shape.ts';
import { speciesRecordSchema } from '../../src/model/species/record.ts';
import { type FoodAssessment, figureNames, type Species, type Statement } from '../../src/model/species/types.ts';
import { shapeOf } from './shape-of.ts';

// Shapes of what the project gives away, as zod schemas from which JSON Schema is made. The model declares the same shapes as
// TypeScript types, which a program cannot read: `shapeOf` makes the compiler refuse a schema that is not just that type.

/** The keys of a record, as an enumeration. */
const keysOf = <Key extends string>(record: Readonly<Record<Key, unknown>>) =>
  z.enum(Object.keys(record) as [Key, ...Key[]]);

const unit = named('unit', z.string().check(z.describe('UCUM code; 1 where there is no unit')));

const figure = shapeOf<Figure>()(
  named(
    'figure',
    z.strictObject({
      label: z.string(),
      value: z.number(),
      unit,
      low: z.exactOptional(z.number()),
      high: z.exactOptional(z.number()),
      band: z.exactOptional(z.string().check(z.describe('What low and high mean'))),
      basis: basisShape,
      citation: z.exactOptional(citationShape),
      note: z.exactOptional(z.string()),
      help: z.exactOptional(z.string().check(z.describe('What the figure means'))),
      minor: z.exactOptional(z.boolean().check(z.describe('True where it stands behind the tables'))),
      digits: z.exactOptional(z.int().check(z.minimum(1), z.maximum(15))),
      kept: z.exactOptional(z.boolean().check(z.describe('True where every reader gets this unit'))),
      foretold: z.exactOptional(
        z.boolean().check(z.describe('True where only the seasons show it: nobody can measure it on the day')),
      ),
      limit: z.exactOptional(
        z.boolean().check(z.describe('True of a length that must not be passed: it is shown rounded down')),
      ),
    }),
  ),
);

const series = shapeOf<Series>()(
  z.strictObject({
    id: z.string(),
    title: z.string(),
    axis: z.strictObject({
      label: z.string(),
      unit: z.exactOptional(unit),
      values: z.array(z.union([z.string(), z.number()])),
    }),
    lines: z.array(
      z.strictObject({
        id: z.string(),
        label: z.string(),
        unit,
        values: z.array(z.number()),
        low: z.exactOptional(z.array(z.number())),
        high: z.exactOptional(z.array(z.number())),
      }),
    ),
    description: z.string(),
  }),
);

const resultTable = shapeOf<ResultTable>()(
  named(
    'table',
    z.strictObject({
      id: z.string(),
      title: z.string(),
      columns: z.array(
        z.strictObject({
          id: z.string(),
          label: z.string(),
          unit: z.exactOptional(unit),
          digits: z.exactOptional(z.int().check(z.minimum(1), z.maximum(15))),
          kept: z.exactOptional(z.boolean().check(z.describe('True where every reader gets this unit'))),
        }),
      ),
      rows: z.array(z.array(z.nullable(z.union([z.string(), z.number()])))),
      basis: basisShape,
    }),
  ),
);

const caution = shapeOf<Caution>()(
  named(
    'caution',
    z.strictObject({
      id: z.string(),
      level: keysOf(cautionWords),
      text: z.string(),
      why: z.exactOptional(z.string()),
      own: z.exactOptional(z.boolean()),
      basis: basisShape,
      citation: z.exactOptional(citationShape),
    }),
  ),
);

const evidence = shapeOf<EvidenceNote>()(
  z.strictObject({
    equation: z.exactOptional(z.string()),
    text: z.string(),
    basis: basisShape,
    citation: z.exactOptional(citationShape),
  }),
);

const verdict = shapeOf<Verdict>()(
  z.strictObject({
    level: keysOf(verdictWords),
    text: z.string(),
  }),
);

const timeline = shapeOf<Timeline>()(
  z.strictObject({
    zero: z.string().check(z.describe('What the times are counted from')),
    events: z.array(
      z.strictObject({
        id: z.string(),
        label: z.string(),
        at: z.number().check(z.describe('s from zero')),
        low: z.exactOptional(z.number()),
        high: z.exactOptional(z.number()),
        after: z.exactOptional(z.string().check(z.describe('Id of the event that it waits for'))),
        basis: basisShape,
        note: z.exactOptional(z.string()),
      }),
    ),
  }),
);

const use = shapeOf<Use>()(
  z.strictObject({
    id: z.string(),
    what: z.string(),
    amount: z.number(),
    unit,
    low: z.exactOptional(z.number()),
    high: z.exactOptional(z.number()),
    within: z.exactOptional(
      z
        .array(z.string())
        .check(z.describe('Ids of the uses that count the same stuff already: a bill takes one or the other')),
    ),
    basis: basisShape,
    note: z.exactOptional(z.string()),
  }),
);

const words = z.array(z.string());

/** Blocks of a document but for its drawings, which a report leaves out. */
const block: z.ZodMiniType<Block> = shapeOf<Exclude<Block, { kind: 'drawing' }>>()(
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('heading'), text: z.string() }),
    z.strictObject({
      kind: z.literal('text'),
      text: z.string(),
      large: z.exactOptional(z.boolean()),
      strong: z.exactOptional(z.boolean()),
      small: z.exactOptional(z.boolean()),
      lead: z.exactOptional(z.string().check(z.describe('Words before it that say what it is about'))),
    }),
    z.strictObject({ kind: z.literal('list'), items: words, heading: z.exactOptional(z.string()) }),
    z.strictObject({ kind: z.literal('ticks'), items: words }),
    z.strictObject({ kind: z.literal('blanks'), labels: words }),
    z.strictObject({ kind: z.literal('warning'), level: keysOf(cautionWords), text: z.string() }),
    z.strictObject({
      kind: z.literal('table'),
      table: resultTable,
      ticks: z.exactOptional(words.check(z.describe('Ids of columns with a box to tick'))),
      large: z.exactOptional(words),
      write: z.exactOptional(words.check(z.describe('Names of empty columns to write in'))),
    }),
  ]),
);

const document = shapeOf<ResultDocument>()(
  z.strictObject({
    id: z.string(),
    title: z.string(),
    form: z.enum(['sheet', 'card', 'labels', 'true-size']),
    help: z.exactOptional(z.string()),
    folded: z.exactOptional(z.boolean()),
    blocks: z.array(block),
  }),
);

/** What every calculator gives on the command line and as a download. */
export const reportShape = shapeOf<Report>()(
  z.strictObject({
    calculator: z.string(),
    inputs: z.record(z.string(), z.unknown()),
    verdict,
    figures: z.record(z.string(), figure),
    series: z.exactOptional(z.array(series)),
    tables: z.exactOptional(z.array(resultTable)),
    timeline: z.exactOptional(timeline),
    uses: z.exactOptional(z.array(use)),
    documents: z.exactOptional(z.array(document)),
    cautions: z.array(caution),
    evidence: z.array(evidence),
  }),
);

const statement = shapeOf<Statement>()(
  named(
    'statement',
    z.strictObject({
      text: z.string(),
      basis: basisShape,
      citation: z.exactOptional(citationShape),
      sensitising: z.exactOptional(
        z.literal(true).check(z.describe('Where it says that somebody may become allergic')),
      ),
      flavours: z.exactOptional(z.literal(true).check(z.describe('Where it says that the wood gives food a flavour'))),
    }),
  ),
);

const food = shapeOf<FoodAssessment>()(
  z.strictObject({
    level: z.enum(['usual', 'with-care', 'better-not', 'not-enough-known']),
    summary: z.string(),
    reasons: z.array(
      z.strictObject({
        rule: z.string(),
        speaks: z.enum(['for', 'against', 'unknown']),
        text: z.string(),
        basis: basisShape,
        citation: z.exactOptional(citationShape),
      }),
    ),
  }),
);

const figures = z.strictObject(
  Object.fromEntries(figureNames.map((name) => [name, z.nullable(figure)])),
) as unknown as z.ZodMiniType<Species['figures']>;

const record = speciesRecordSchema.shape;

/** A wood with its figures resolved; a figure that is not published is null. */
export const speciesShape = shapeOf<Species>()(
  z.strictObject({
    id: z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)),
    name: z.string(),
    tradeNames: z.array(z.string()),
    botanical: z.nullable(z.string()),
    botanicalBasis: basisShape,
    namedByFoodCode: z.exactOptional(z.literal(true)),
    kind: record.kind,
    origin: z.enum(record.origin.options),
    figures,
    otherMovement: z.array(
      z.strictObject({
        by: z.enum(['coefficients', 'trees']),
        radial: z.number(),
        tangential: z.number(),
        basis: basisShape,
        citation: citationShape,
        note: z.exactOptional(z.string()),
      }),
    ),
    pores: z.strictObject({
      arrangement: z.nullable(z.enum(['ring-porous', 'semi-ring-porous', 'diffuse-porous', 'none'])),
      openness: z.nullable(z.enum(['closed', 'open', 'plugged', 'none'])),
      statements: z.array(statement),
    }),
    tyloses: z.nullable(statement),
    decay: z.nullable(
      z.strictObject({
        text: z.string(),
        basis: basisShape,
        citation: z.exactOptional(citationShape),
        group: z.nullable(z.enum(['resistant or very resistant', 'moderately resistant', 'slightly or nonresistant'])),
      }),
    ),
    effects: z.array(statement),
    taste: z.nullable(statement),
    food,
  }),
);

const name = z.union([
  z.strictObject({ family: z.string(), given: z.exactOptional(z.string()) }),
  z.strictObject({ literal: z.string() }),
]);

/** The source list: items of CSL-JSON with the fields that are used here. */
export const sourcesShape = z.array(
  z.strictObject({
    id: z.string(),
    type: z.enum([
      'report',
      'book',
      'chapter',
      'article-journal',
      'regulation',
      'legislation',
      'standard',
      'dataset',
      'webpage',
    ] satisfies CslItem['type'][]),
    title: z.string(),
    'title-short': z.exactOptional(z.string()),
    author: z.exactOptional(z.array(name)),
    publisher: z.exactOptional(z.string()),
    'container-title': z.exactOptional(z.string()),
    number: z.exactOptional(z.string()),
    volume: z.exactOptional(z.string()),
    page: z.exactOptional(z.string()),
    issued: z.exactOptional(z.strictObject({ 'date-parts': z.array(z.array(z.int())) })),
    note: z.exactOptional(z.string()),
  }),
);

/** A row of a table: its columns by name. */
export function rowShape(definition: TableDefinition): z.ZodMiniType {
  const cells = definition.columns.map((column) => {
    const kind = { text: z.string(), number: z.number(), seen: z.enum(seenMarks) }[column.kind] as z.ZodMiniType;
    const words = column.unit ? `${column.title} (${column.unit})` : column.title;
    return [column.name, (column.required ? kind : z.nullable(kind)).check(z.describe(words))] as const;
  });
  return z.strictObject(Object.fromEntries(cells));
}
