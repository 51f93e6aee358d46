import { fieldsOf } from '../../calculators/kit/answer.ts';
import { type FieldMeta, fieldMeta } from '../../calculators/kit/fields.ts';
import { resinField } from '../../calculators/kit/resin-field.ts';
import { fieldUnitLeftOut, unitLeftOut } from '../../calculators/kit/unit-left-out.ts';
import type { CalculatorId } from '../../calculators/registry.ts';
import { type Dimension, type FieldProblem, parseQuantity } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { isReference, type LimitName, limitMeasures, type MethodRecord, type Parameter } from '../record/index.ts';
import type { Calculators } from './fit.ts';
import type { Fault } from './named.ts';
import type { Path } from './types.ts';

/*
 * Numbers of a method that stand without a unit, though they may be meant in several. A method is handed on, and whoever follows it may
 * measure in other units than its writer: 40 by day is a warm shop, or a cold one.
 */

/** What is wrong and the way out, as a sentence about something. */
export const saidOf = (label: string, { problem, wayOut }: FieldProblem) => `${label}: ${problem}. ${wayOut}`;

/** A value with every reference in it left out: what it hands on has a unit of its own. */
function withoutReferences(value: unknown): unknown {
  if (isReference(value)) return '';
  if (Array.isArray(value)) return value.map(withoutReferences);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withoutReferences(inner)]));
}

/** Inputs of calculations without their units. */
export function bareInputs(record: MethodRecord, calculators: Calculators): Fault[] {
  return Object.entries(record.steps).flatMap(([id, step]) =>
    Object.entries(step.calculations ?? {}).flatMap(([name, { use, with: inputs }]) => {
      const calculator = calculators.get(use as CalculatorId);
      const fields = calculator ? fieldsOf(calculator) : {};
      return Object.entries(inputs).flatMap(([input, entry]): Fault[] => {
        const schema = Object.hasOwn(fields, input) ? fields[input] : undefined;
        const meta = schema && fieldMeta(schema);
        const found = meta && fieldUnitLeftOut(meta, withoutReferences(entry));
        return found
          ? [{ path: ['steps', id, 'calculations', name, 'with', input], message: saidOf(meta.label, found) }]
          : [];
      });
    }),
  );
}

/** Limits of tools and sizes of pieces without their units. */
export function bareSizes(record: MethodRecord): Fault[] {
  const at = (path: Path, label: string, entry: unknown, dimension: Dimension): Fault[] => {
    const found = typeof entry === 'string' || typeof entry === 'number' ? unitLeftOut(entry, dimension) : undefined;
    return found ? [{ path, message: saidOf(label, found) }] : [];
  };
  return [
    ...Object.entries(record.tools).flatMap(([name, { what, limits = {} }]) =>
      (Object.entries(limits) as [LimitName, unknown][]).flatMap(([limit, entry]) =>
        at(['tools', name, 'limits', limit], `${what}, ${limit}`, entry, limitMeasures(limit)),
      ),
    ),
    ...Object.entries(record.steps).flatMap(([id, { piece = {} }]) =>
      Object.entries(piece).flatMap(([size, entry]) =>
        at(['steps', id, 'piece', size], `The ${size} of the piece`, entry, 'length'),
      ),
    ),
  ];
}

/** A measure of an outline that has no unit. */
export function bareMeasure(
  outline: Readonly<Record<string, unknown>>,
): (FieldProblem & { measure: string }) | undefined {
  for (const [measure, entry] of Object.entries(outline)) {
    if (measure === 'shape' || measure === 'drawing') continue;
    const found = typeof entry === 'string' || typeof entry === 'number' ? unitLeftOut(entry, 'length') : undefined;
    if (found) return { ...found, measure };
  }
  return undefined;
}

/** A field that takes a whole data sheet, as calculators have it. */
const sheetField = fieldMeta(resinField({ label: 'Resin' }));

/** The parts of a quantity that have no unit where another of them has one. */
function ofQuantity(name: string, parameter: Extract<Parameter, { kind: 'quantity' }>): Fault[] {
  const parts = (['default', 'least', 'most'] as const).map((part) => ({ part, text: parameter[part] }));
  const [told] = parts.flatMap(({ text }) => {
    const read = readAnyQuantity(text);
    return read.ok && read.value[0].dimension !== 'number' ? [{ text: String(text), ...read.value[0] }] : [];
  });
  if (!told) return [];
  const { dimension, unit } = told;
  const typed = parseQuantity(told.text, { dimension, bareUnit: unit });
  return parts.flatMap(({ part, text }): Fault[] => {
    const found = unitLeftOut(text, dimension, typed.ok && dimension !== 'time' ? typed.unit : undefined);
    return found ? [{ path: ['parameters', name, part], message: saidOf(parameter.label, found) }] : [];
  });
}

/** Parameters of which a number stands without its unit, as far as they tell it themselves. */
export function bareParameters(record: MethodRecord): Fault[] {
  return Object.entries(record.parameters).flatMap(([name, parameter]): Fault[] => {
    if (parameter.kind === 'quantity') return ofQuantity(name, parameter);
    if (parameter.kind === 'outline') {
      const found = bareMeasure(parameter.default);
      return found
        ? [
            {
              path: ['parameters', name, 'default', found.measure],
              message: saidOf(`${parameter.label}, ${found.measure}`, found),
            },
          ]
        : [];
    }
    const found = parameter.kind === 'resin' && sheetField && fieldUnitLeftOut(sheetField, parameter.default);
    return found ? [{ path: ['parameters', name, 'default'], message: saidOf(parameter.label, found) }] : [];
  });
}

/** What a parameter lacks for a field that refers to it, which alone knows what its numbers measure. */
export function bareFor(
  name: string,
  parameter: Parameter,
  asked: FieldMeta | Dimension | undefined,
): Fault | undefined {
  if (asked === undefined) return undefined;
  const found =
    parameter.kind === 'quantity' && typeof asked === 'string'
      ? unitLeftOut(parameter.default, asked)
      : parameter.kind === 'readings' && typeof asked === 'object'
        ? fieldUnitLeftOut(asked, parameter.default)
        : undefined;
  return found && { path: ['parameters', name, 'default'], message: saidOf(parameter.label, found) };
}
