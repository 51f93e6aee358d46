import * as z from 'zod/mini';
import {
  amount,
  canonicalUnit,
  convert,
  type Dimension,
  defaultUnits,
  excerpt,
  type FieldProblem,
  formatNumber,
  formatQuantity,
  parseQuantity,
  type Read,
  type ReaderUnits,
  readerUnit,
  unitLabel,
} from '../../model/quantity/index.ts';
import type { WoodNames } from '../../model/species/find-woods.ts';
import { exampleWords } from './example.ts';
import { isTooLong, longestOf } from './limits.ts';
import type { ListRows } from './list-field.ts';

/** What sort of thing a field asks for: the kind says which control a form gives it. */
export type FieldKind =
  | 'quantity'
  | 'choice'
  | 'species'
  | 'climate'
  | 'readings'
  | 'resin'
  | 'drawing'
  | 'list'
  | 'text';

/** One of many to pick from by typing a part of its name. */
export interface PickOption {
  /** What goes into the address. */
  value: string;
  label: string;
  /** Other words to find it by, and shown small beside the label. */
  detail?: string;
  /** The wood that it stands for: it is then found by whatever finds woods. */
  wood?: WoodNames;
}

/** What a form, a help text and a published schema need to know of a field. All of it hangs on the field's zod schema. */
export interface FieldMeta {
  kind: FieldKind;
  label: string;
  help?: string;
  /** Heading under which the form gathers the field. */
  group?: string;
  /** For quantities: what is measured; a number without a unit is read in the canonical unit of it. */
  dimension?: Dimension;
  /**
   * A second unit (UCUM) that a bare number may be in. The number is read in it only where it is out of range in the
   * canonical unit, so the two ranges must not meet: 58.6 can only be kJ/mol, 58600 only J/mol. A time has no usual unit: its
   * bare number is read in this one, for a field whose label names the unit, or refused.
   */
  elseBare?: string;
  /** True where a bare number of a text has no usual unit, since sheets state it in either whatever their reader uses: it is refused. */
  unitAsked?: boolean;
  /** Allowed range of a quantity, in its canonical unit. */
  minimum?: number;
  maximum?: number;
  /** True where only whole numbers make sense, as with boards. */
  whole?: boolean;
  /** For choices. */
  options?: readonly { value: string; label: string }[];
  /** For woods and places: what the form lets pick from. It hangs on the field, so that a page loads what its fields name and no more. */
  pick?: readonly PickOption[];
  /** Texts that the field accepts, shown as an example and in the schema. */
  examples: readonly string[];
  /**
   * For lists: the text with the reader's unit behind every bare number, so that it means the same to every reader. A text without a
   * unit is read in the canonical one, as in a file.
   */
  explicit?: (text: string, reader: ReaderUnits) => string;
  /** For lists whose entries have the same parts: how the text stands in rows. */
  rows?: ListRows;
  /** Characters that a text may have; what the kind of field takes unless told. */
  longest?: number;
  /** The form shows the field only while this other field holds one of these values; '' means empty. */
  when?: { field: string; is: readonly string[] };
}

/** Metadata of every field, kept beside zod's own global registry so that a schema stays free of unknown keywords. */
export const fieldRegistry = z.registry<FieldMeta>();

/** The metadata of a field, also through `z.optional`. */
export function fieldMeta(schema: z.ZodMiniType): FieldMeta | undefined {
  const own = fieldRegistry.get(schema);
  if (own) return own;
  const inner = (schema as { _zod: { def: { innerType?: z.ZodMiniType } } })._zod.def.innerType;
  return inner ? fieldMeta(inner) : undefined;
}

/** The same field, shown by the form only while another field holds one of some values; its reading does not change. */
export function shownWhen<Schema extends z.ZodMiniType>(schema: Schema, when: NonNullable<FieldMeta['when']>): Schema {
  const meta = fieldMeta(schema);
  if (meta) fieldRegistry.add(schema, { ...meta, when });
  return schema;
}

/**
 * A field whose text (or number, or list, where a file gives one) is read by a function that never throws.
 *
 * @param accepts what may stand in a JSON file or an address, before it is read
 * @param read the reader; a refusal becomes the field's error
 * @param meta label, help, unit and examples
 */
export function readField<In extends z.ZodMiniType, Out>(
  accepts: In,
  read: (value: z.output<In>) => Read<Out>,
  meta: FieldMeta,
): z.ZodMiniType<Out, z.input<In>> {
  const schema = z.pipe(
    accepts,
    z.transform((value, context) => {
      const outcome =
        typeof value === 'string' && isTooLong(meta, value) ? tooLong(meta, value) : read(value as z.output<In>);
      if (outcome.ok) return outcome.value;
      context.issues.push({ code: 'custom', input: value, message: sentence(outcome) });
      return z.NEVER;
    }),
  );
  fieldRegistry.add(schema as unknown as z.ZodMiniType, meta);
  return schema as unknown as z.ZodMiniType<Out, z.input<In>>;
}

function tooLong(meta: FieldMeta, text: string): { ok: false } & FieldProblem {
  return {
    ok: false,
    problem: `“${excerpt(text.slice(0, 200))}” has ${text.length} characters; at most ${longestOf(meta)} are read here`,
    wayOut: `Write it shorter, such as ${exampleWords(meta, 80)}.`,
  };
}

/** The words of a field error: what was read, then the way out where the problem does not hold it already. */
function sentence({ problem, wayOut }: FieldProblem): string {
  return wayOut ? `${problem}. ${wayOut}` : `${problem}.`;
}

const textOrNumber = z.union([z.string(), z.number()]);

/** Whether a text is a number without a unit, or empty. */
export const isBare = (text: string): boolean => /^[\s\d.,/+\-−]*$/.test(text);

const within = (value: number, { minimum = Number.NEGATIVE_INFINITY, maximum = Number.POSITIVE_INFINITY }: FieldMeta) =>
  value >= minimum && value <= maximum;

/**
 * The unit (UCUM) in which a field reads a bare number.
 *
 * @param text as typed
 * @param usual the unit that the dimension takes: the reader's, or the canonical one in a file
 * @returns undefined for a time of which nothing says the unit, and for what must name it: it is never guessed, 30 may be minutes or hours
 */
function bareUnitOf(meta: FieldMeta, text: string, usual: string): string | undefined {
  const { dimension, elseBare } = meta;
  if (!dimension) return undefined;
  if (dimension === 'time') return elseBare;
  if (meta.unitAsked) return undefined;
  if (!elseBare) return usual;
  const readIn = (bareUnit: string) => {
    const parsed = parseQuantity(text, { dimension, bareUnit });
    return parsed.ok && within(parsed.value, meta);
  };
  return !readIn(usual) && readIn(elseBare) ? elseBare : usual;
}

/** The unit (UCUM) in which a field reads a bare number of a reader with these units; undefined where it takes none. */
export function bareUnitFor(meta: FieldMeta, text: string, reader: ReaderUnits): string | undefined {
  return meta.dimension && bareUnitOf(meta, text, readerUnit(meta.dimension, reader));
}

/**
 * A quantity with a unit, as `250 mm`, `9 7/8 in` or a bare number in the canonical unit of its dimension.
 * A time written as text must name its unit. The value comes out in the canonical unit.
 */
export function quantityField(
  meta: Omit<FieldMeta, 'kind' | 'dimension'> & { dimension: Dimension; minimum: number; maximum: number },
): z.ZodMiniType<number, string | number> {
  const full: FieldMeta = { ...meta, kind: 'quantity' };
  return readField(
    textOrNumber,
    (value) => {
      const text = String(value);
      // A number in a file comes from a program, which reads the schema; a text comes from a person.
      const told = typeof value === 'number' && (meta.dimension === 'time' || meta.unitAsked);
      const bareUnit = told ? canonicalUnit[meta.dimension] : bareUnitOf(full, text, canonicalUnit[meta.dimension]);
      if (bareUnit === undefined && meta.unitAsked && isBare(text) && text.trim() !== '')
        return eitherUnit(text.trim(), meta.dimension);
      if (bareUnit === undefined && isBare(text)) {
        return {
          ok: false,
          problem: `${excerpt(text)} has no unit, and may be minutes, hours or days`,
          wayOut: `Write it behind the number, such as ${exampleWords(full)}.`,
        };
      }
      const parsed = parseQuantity(text, {
        dimension: meta.dimension,
        bareUnit: bareUnit ?? canonicalUnit[meta.dimension],
      });
      if (!parsed.ok) return parsed;
      if (parsed.noScale) return withoutScale(parsed, text, full);
      if (parsed.value < meta.minimum || parsed.value > meta.maximum) {
        return {
          ok: false,
          problem: `${excerpt(text)} is ${parsed.value < meta.minimum ? 'less' : 'more'} than this takes: ${rangeForReader(meta)}`,
          wayOut: `Give a value in that range.${otherScale(parsed, full)}`,
        };
      }
      if (meta.whole && !Number.isInteger(parsed.value)) {
        return {
          ok: false,
          problem: `${excerpt(text)} is not a whole number`,
          wayOut: `Give one, such as ${exampleWords(full)}.`,
        };
      }
      return parsed;
    },
    full,
  );
}

/** A bare number that must name its unit, with both ways out. */
function eitherUnit(text: string, dimension: Dimension): { ok: false } & FieldProblem {
  const [metric, inch] = (['metric', 'inch'] as const).map((system) =>
    unitLabel(readerUnit(dimension, { ...defaultUnits, system })),
  );
  return {
    ok: false,
    problem: `“${excerpt(text)}” has no unit, and may be ${metric} or ${inch}`,
    wayOut: `Write ${excerpt(text)} ${metric}, or ${excerpt(text)} ${inch}, as the sheet has it.`,
  };
}

/** A temperature as typed, in each scale, and whether the field takes it so. */
function inBothScales({ value, unit }: { value: number; unit: string }, meta: FieldMeta) {
  const number = convert(value, canonicalUnit.temperature, unit);
  const [celsius, fahrenheit] = (['Cel', '[degF]'] as const).map((code) => {
    const read = convert(number, code, canonicalUnit.temperature);
    return { code, value: read, words: `${formatNumber(number, 6)} ${unitLabel(code)}`, taken: within(read, meta) };
  }) as [Scale, Scale];
  return { celsius, fahrenheit };
}

interface Scale {
  code: string;
  value: number;
  words: string;
  taken: boolean;
}

/**
 * A temperature with a degree sign and no scale in a file, where no reader's own unit stands: °C, as every bare number there, unless it may be
 * meant as °F.
 */
function withoutScale(read: { value: number; unit: string }, text: string, meta: FieldMeta): Read<number> {
  const { celsius, fahrenheit } = inBothScales(read, meta);
  if (!fahrenheit.taken && celsius.taken) return { ok: true, value: celsius.value };
  return {
    ok: false,
    problem: `“${excerpt(text)}” does not say whether it is °C or °F`,
    wayOut:
      fahrenheit.taken && !celsius.taken
        ? `Write ${fahrenheit.words}, since ${celsius.words} is not taken here.`
        : `Write ${celsius.words} or ${fahrenheit.words}.`,
  };
}

/** What a temperature that is out of range may have been meant as: the same number in the other scale; nothing where that is out of range too. */
function otherScale(read: { value: number; unit: string }, meta: FieldMeta): string {
  if (meta.dimension !== 'temperature') return '';
  const { celsius, fahrenheit } = inBothScales(read, meta);
  const other = read.unit === celsius.code ? fahrenheit : celsius;
  return other.taken ? ` Or write ${other.words}, if that is meant.` : '';
}

/** The range of a quantity field in words, for example `1 to 2000 mm`; times in the units in which they are counted. */
export function rangeWords(meta: Pick<FieldMeta, 'dimension' | 'minimum' | 'maximum'>): string {
  const { dimension, minimum = 0, maximum = 0 } = meta;
  if (dimension === 'time') return `${formatQuantity(minimum, 's')} to ${formatQuantity(maximum, 's')}`;
  const unit = dimension ? unitLabel(canonicalUnit[dimension]) : '';
  return `${minimum} to ${maximum} ${unit}`.trim().replace(' °', unit === '°' ? '°' : ' °');
}

/** The range of a quantity field for a message: each reader gets it in their own units. */
function rangeForReader(meta: { dimension: Dimension; minimum: number; maximum: number }): string {
  const { dimension, minimum, maximum } = meta;
  // What the readers of both systems count in one unit is written as it is.
  if (dimension === 'time' || dimension === 'number') return rangeWords(meta);
  const unit = canonicalUnit[dimension];
  return `${amount(minimum, unit)} to ${amount(maximum, unit)}`;
}

/** One of a few named values. Upper and lower case and outer spaces do not matter. */
export function choiceField<const Value extends string>(
  meta: Omit<FieldMeta, 'kind' | 'options'> & { options: readonly { value: Value; label: string }[] },
): z.ZodMiniType<Value, string> {
  return readField(
    z.string(),
    (text): Read<Value> => {
      const wanted = text.trim().toLowerCase();
      const option = meta.options.find((candidate) => candidate.value === wanted);
      if (option) return { ok: true, value: option.value };
      return {
        ok: false,
        problem: `“${excerpt(text)}” is not one of ${meta.options.map((candidate) => candidate.value).join(', ')}`,
        wayOut: 'Pick one of them.',
      };
    },
    { ...meta, kind: 'choice' },
  );
}
