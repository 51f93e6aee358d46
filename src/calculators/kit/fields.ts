import * as z from 'zod/mini';
import { canonicalUnit, type Dimension, formatQuantity, parseQuantity } from '../../model/quantity/index.ts';

/** What a form, a help text and a published schema need to know of a field. All of it hangs on the field's zod schema. */
export interface FieldMeta {
  kind: 'quantity' | 'choice' | 'species' | 'climate' | 'staves' | 'readings' | 'resin' | 'list' | 'text';
  label: string;
  help?: string;
  /** Heading under which the form gathers the field. */
  group?: string;
  /** For quantities: what is measured; a number without a unit is read in the canonical unit of it. */
  dimension?: Dimension;
  /**
   * A second unit (UCUM) that a bare number may be in. The number is read in it only where it is out of range in the
   * canonical unit, so the two ranges must not meet: 58.6 can only be kJ/mol, 58600 only J/mol.
   */
  elseBare?: string;
  /** Allowed range of a quantity, in its canonical unit. */
  minimum?: number;
  maximum?: number;
  /** For choices. */
  options?: readonly { value: string; label: string }[];
  /** Texts that the field accepts, shown as an example and in the schema. */
  examples: readonly string[];
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

/** What is wrong with a text and what to do instead; the words of a field error without its name. */
export interface FieldProblem {
  problem: string;
  wayOut: string;
}

type Read<T> = { ok: true; value: T } | ({ ok: false } & FieldProblem);

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
      const outcome = read(value as z.output<In>);
      if (outcome.ok) return outcome.value;
      context.issues.push({ code: 'custom', input: value, message: sentence(outcome) });
      return z.NEVER;
    }),
  );
  fieldRegistry.add(schema as unknown as z.ZodMiniType, meta);
  return schema as unknown as z.ZodMiniType<Out, z.input<In>>;
}

/** The words of a field error: what was read, then the way out where the problem does not hold it already. */
function sentence({ problem, wayOut }: FieldProblem): string {
  return wayOut ? `${problem}. ${wayOut}` : `${problem}.`;
}

const textOrNumber = z.union([z.string(), z.number()]);

/**
 * A quantity with a unit, as `250 mm`, `9 7/8 in` or a bare number in the canonical unit of its dimension.
 * Its value comes out in that canonical unit.
 */
export function quantityField(
  meta: Omit<FieldMeta, 'kind' | 'dimension'> & { dimension: Dimension; minimum: number; maximum: number },
): z.ZodMiniType<number, string | number> {
  const unit = canonicalUnit[meta.dimension];
  return readField(
    textOrNumber,
    (value) => {
      const read = (bareUnit: string) => parseQuantity(String(value), { dimension: meta.dimension, bareUnit });
      const inCanonical = read(unit);
      if (!inCanonical.ok) return inCanonical;
      const inRange = ({ value: read }: { value: number }) => read >= meta.minimum && read <= meta.maximum;
      const other = meta.elseBare && !inRange(inCanonical) ? read(meta.elseBare) : undefined;
      const parsed = other?.ok && inRange(other) ? other : inCanonical;
      if (parsed.value < meta.minimum || parsed.value > meta.maximum) {
        return {
          ok: false,
          problem: `${value} is ${parsed.value < meta.minimum ? 'less' : 'more'} than this takes: ${allowedWords(meta)}`,
          wayOut: `Give a value in that range, such as ${meta.examples[0]}.`,
        };
      }
      return parsed;
    },
    { ...meta, kind: 'quantity' },
  );
}

/** The range in the words of an error: times in minutes, hours and days, since nobody counts those in seconds. */
function allowedWords(meta: { dimension: Dimension; minimum: number; maximum: number }): string {
  if (meta.dimension !== 'time') return rangeWords(meta);
  return `${formatQuantity(meta.minimum, 's')} to ${formatQuantity(meta.maximum, 's')}`;
}

/** The range of a quantity field in words, for example `1 to 2000 mm`. */
export function rangeWords(meta: Pick<FieldMeta, 'dimension' | 'minimum' | 'maximum'>): string {
  const unit = meta.dimension ? canonicalUnit[meta.dimension] : '';
  const words: Record<string, string> = { Cel: '°C', deg: '°', '1': '', mm2: 'mm²' };
  return `${meta.minimum} to ${meta.maximum} ${words[unit] ?? unit}`.trim();
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

/** A text cut to a length that an error message can bear. */
export function excerpt(text: string, length = 40): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > length ? `${line.slice(0, length - 1)}…` : line;
}
