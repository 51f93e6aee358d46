import { isCalculatorId, loadCalculator } from '../../calculators/registry.ts';
import { calculatorAt, type InputOption, inputsOf } from './inputs.ts';
import { kindOfRecord, looseData } from './outline.ts';
import type { PointerOption } from './pointers.ts';
import { shapeOf, shapesAt, wordsOf } from './shape.ts';
import type { Completion, EditContext } from './types.ts';
import { referencesAt, type Surroundings, valuesAt } from './values.ts';

type Path = readonly (string | number)[];

function around(text: string, context: EditContext): Surroundings {
  return { root: shapeOf(context.kind ?? kindOfRecord(text)), data: looseData(text), context };
}

/** What a form may offer as the value at a path of a record. */
export async function valuesFor(text: string, path: Path, context: EditContext = {}): Promise<readonly Completion[]> {
  return valuesAt(path, around(text, context), context.kind ?? kindOfRecord(text));
}

/** What a value at a path of a method may be taken from, what fits it best first. */
export async function referencesFor(
  text: string,
  path: Path,
  context: EditContext = {},
): Promise<readonly PointerOption[]> {
  return referencesAt(path, around(text, context));
}

/** The inputs of the calculation at a path of a method; none where no calculator is named yet. */
export async function inputsFor(text: string, path: Path): Promise<readonly InputOption[]> {
  const calculator = await calculatorAt(path, looseData(text));
  return calculator ? inputsOf(calculator) : [];
}

/** What the schema says of the value at a path. */
export function fieldWords(text: string, path: Path, context: EditContext = {}): string | undefined {
  const { root, data } = around(text, context);
  return wordsOf(shapesAt(root, path, data));
}

/** What a calculator is called; undefined where there is none of that id. */
export async function calculatorTitle(use: string): Promise<string | undefined> {
  return isCalculatorId(use) ? (await loadCalculator(use)).title : undefined;
}

/** What the schema says of a field: its label, what helps, texts that it takes. */
export interface FieldSaying {
  label?: string;
  help?: string;
  examples: readonly string[];
}

/** What the schema says of the field at a path, in parts. */
export function fieldSaying(text: string, path: Path, context: EditContext = {}): FieldSaying {
  const { root, data } = around(text, context);
  const shapes = shapesAt(root, path, data);
  const label = shapes.find(({ title }) => title !== undefined)?.title;
  const help = shapes.find(({ description }) => description !== undefined)?.description;
  const examples = shapes.find((shape) => shape.examples)?.examples?.map(String) ?? [];
  return { ...(label === undefined ? {} : { label }), ...(help === undefined ? {} : { help }), examples };
}
