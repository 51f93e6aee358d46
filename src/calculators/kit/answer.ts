import type * as z from 'zod/mini';
import { cautionsInOrder, type FieldError, type Outcome, type Result } from '../../model/evidence/index.ts';
import { excerpt, listed, nearest } from '../../model/quantity/index.ts';
import type { Answer, Asking, Calculator, FigureDeclaration } from './calculator.ts';
import { exampleWords } from './example.ts';
import { fieldMeta } from './fields.ts';
import { rowsProblem } from './list-field.ts';

/** The fields of a calculator by name, in the order of the form. */
export function fieldsOf(calculator: Pick<Asking, 'inputs'>): Record<string, z.ZodMiniType> {
  const shape = (calculator.inputs as { _zod: { def: { shape?: Record<string, z.ZodMiniType> } } })._zod.def.shape;
  return shape ?? {};
}

/** Whether a field may be left empty. */
export function isOptional(calculator: Pick<Asking, 'inputs'>, name: string): boolean {
  const schema = fieldsOf(calculator)[name];
  return schema !== undefined && schema._zod.def.type === 'optional';
}

/**
 * Read and validate raw inputs: texts from an address or a form, or values of a JSON file.
 *
 * An empty text counts as not given. A name that the calculator does not know is an error with the nearest name.
 *
 * @returns the inputs in canonical units, or one error a field
 */
export function readInputs<Schema extends z.ZodMiniType>(
  calculator: Pick<Asking<Schema>, 'inputs' | 'alternatives' | 'together'>,
  raw: Readonly<Record<string, unknown>>,
): Outcome<z.output<Schema>> {
  const fields = fieldsOf(calculator as unknown as Asking);
  const unknown = Object.keys(raw).filter((name) => !Object.hasOwn(fields, name));
  if (unknown.length > 0) {
    return { ok: false, errors: unknown.map((name) => unknownField(name, Object.keys(fields))) };
  }
  const given = Object.fromEntries(
    Object.entries(raw).filter(([, value]) => value !== undefined && value !== null && !isBlank(value)),
  );
  const parsed = calculator.inputs.safeParse(given);
  const apart = broken(calculator, given);
  if (parsed.success) return apart.length > 0 ? { ok: false, errors: apart } : { ok: true, value: parsed.data };
  const errors = new Map<string, FieldError>();
  for (const issue of parsed.error.issues) {
    // What is wrong deep in a list of a file is told at the input that holds it.
    const field = String(issue.path[0] ?? '');
    if (errors.has(field)) continue;
    errors.set(field, { field, message: issueMessage(issue, fields, given) });
  }
  return { ok: false, errors: [...errors.values()] };
}

/** Read the inputs and compute: an answer, or the field errors. */
export function answer<Schema extends z.ZodMiniType, Name extends string>(
  calculator: Calculator<Schema, Name>,
  raw: Readonly<Record<string, unknown>>,
): Outcome<{ inputs: z.output<Schema>; result: Result }> {
  const inputs = readInputs(calculator, raw);
  if (!inputs.ok) return inputs;
  const result = calculator.compute(inputs.value);
  if (!result.ok) return result;
  return { ok: true, value: { inputs: inputs.value, result: declared(calculator, result.value) } };
}

/**
 * A result whose figures carry what the calculator declares of them, in the order in which it declares them, its cautions as they are said. What is
 * made only when it is looked at, as a drawing, is not looked at here.
 */
function declared<Name extends string>(
  { figures }: Pick<Calculator<z.ZodMiniType, Name>, 'figures'>,
  computed: Answer<Name>,
): Result {
  const named = Object.entries<FigureDeclaration>(figures).flatMap(([name, declaration]) => {
    const value = computed.figures[name as Name];
    return value ? [[name, { ...declaration, ...value }] as const] : [];
  });
  const own = { figures: Object.fromEntries(named), cautions: cautionsInOrder(computed.cautions) };
  const parts = { ...Object.getOwnPropertyDescriptors(computed), ...Object.getOwnPropertyDescriptors(own) };
  return Object.defineProperties({}, parts) as Result;
}

/** What is given twice though one of it answers, and what is given without the rest of it. */
function broken(
  calculator: Pick<Asking, 'inputs' | 'alternatives' | 'together'>,
  given: Readonly<Record<string, unknown>>,
): FieldError[] {
  const fields = fieldsOf(calculator);
  const label = (name: string) => {
    const schema = fields[name];
    return `“${(schema && fieldMeta(schema)?.label) ?? name}”`;
  };
  const errors: FieldError[] = [];
  for (const { sets } of calculator.alternatives ?? []) {
    const firsts = sets.flatMap(
      (set) => (set.deciding ?? set.fields).find((name) => name in given && given[name] !== set.yields?.[name]) ?? [],
    );
    const [first, second] = firsts;
    if (first === undefined || second === undefined) continue;
    errors.push({
      field: second,
      message: `Both ${label(first)} and ${label(second)} were given, and one of them is enough. Leave one of them empty.`,
    });
  }
  const isAsked = (name: string) => {
    const when = fields[name] && fieldMeta(fields[name])?.when;
    return (
      !when ||
      when.is.includes(
        String(given[when.field] ?? '')
          .trim()
          .toLowerCase(),
      )
    );
  };
  for (const { fields: group, why } of calculator.together ?? []) {
    // What belongs to another kind of work is not asked, and says nothing.
    if (!group.every(isAsked)) continue;
    const missing = group.filter((name) => !(name in given));
    if (missing.length === 0 || missing.length === group.length) continue;
    errors.push(
      ...missing.map((field) => ({
        field,
        message: `${why}. Give ${label(field)} too, or leave ${listed(group.filter((name) => name in given).map(label))} empty.`,
      })),
    );
  }
  return errors;
}

function isBlank(value: unknown): boolean {
  return typeof value === 'string' && value.trim() === '';
}

function issueMessage(
  issue: z.core.$ZodIssue,
  fields: Record<string, z.ZodMiniType>,
  given: Readonly<Record<string, unknown>>,
): string {
  if (issue.code === 'custom') return issue.message;
  const name = String(issue.path[0] ?? '');
  const field = fields[name];
  const meta = field ? fieldMeta(field) : undefined;
  const words = meta && exampleWords(meta);
  const example = words ? ` Give it as, for example, ${words}.` : '';
  if (!(name in given)) return `Nothing was given for ${meta ? meta.label.toLowerCase() : name}.${example}`;
  const inRows = meta?.rows && rowsProblem(given[name], meta.rows);
  if (inRows) return inRows;
  return `${excerpt(JSON.stringify(given[name]) ?? 'this')} cannot be read as ${meta ? meta.label.toLowerCase() : name}.${example}`;
}

function unknownField(name: string, known: readonly string[]): FieldError {
  const near = nearest(name, known);
  return {
    field: excerpt(name),
    message: `There is no input of this name; the inputs are ${known.join(', ')}. ${
      near ? `Did you mean ${near}?` : 'Leave it out or pick one of these.'
    }`,
  };
}

/** Read the inputs and compute: what the page shows. */
export function answerTo(calculator: Calculator, asked: Readonly<Record<string, unknown>>): Outcome<Result> {
  const outcome = answer(calculator, asked);
  return outcome.ok ? { ok: true, value: outcome.value.result } : outcome;
}
