import { fieldsOf, isOptional } from '../../calculators/kit/answer.ts';
import type { Calculator } from '../../calculators/kit/calculator.ts';
import { type FieldMeta, fieldMeta } from '../../calculators/kit/fields.ts';
import { isCalculatorId, loadCalculator } from '../../calculators/registry.ts';
import { canonicalUnit, type Dimension, unitLabel } from '../../model/quantity/index.ts';
import { valueAt } from './shape.ts';

/** An input of a calculator, as an editor tells of it. */
export interface InputOption {
  name: string;
  meta: FieldMeta;
  needed: boolean;
  /** Unit or kind, in a word. */
  detail: string;
  /** Label, help and an example. */
  info: string;
}

const kindWords: Readonly<Record<FieldMeta['kind'], string>> = {
  quantity: 'number',
  choice: 'choice',
  species: 'wood',
  climate: 'place',
  readings: 'readings',
  resin: 'resin',
  drawing: 'drawing',
  list: 'list',
  text: 'text',
};

function detailOf({ kind, dimension }: FieldMeta): string {
  const unit = kind === 'quantity' && dimension ? unitLabel(canonicalUnit[dimension]) : '';
  return unit || kindWords[kind];
}

/** The inputs of a calculator, those that it cannot do without first. */
export function inputsOf(calculator: Calculator): InputOption[] {
  const all = Object.entries(fieldsOf(calculator)).flatMap(([name, schema]): InputOption[] => {
    const meta = fieldMeta(schema);
    if (!meta) return [];
    const example = meta.examples[0];
    const info = [
      `${meta.label}.`,
      meta.help,
      example === undefined || example.includes('\n') || example.length > 80 ? undefined : `For example ${example}.`,
    ];
    return [
      {
        name,
        meta,
        needed: !isOptional(calculator, name),
        detail: detailOf(meta),
        info: info.filter(Boolean).join(' '),
      },
    ];
  });
  return [...all.filter(({ needed }) => needed), ...all.filter(({ needed }) => !needed)];
}

type Path = readonly (string | number)[];

/** The calculation that a path leads into: `steps/<step>/calculations/<name>`, and what follows. */
export function calculationOfPath(path: Path): { above: Path; rest: Path } | undefined {
  if (path[0] !== 'steps' || path[2] !== 'calculations' || path.length < 4) return undefined;
  return { above: path.slice(0, 4), rest: path.slice(4) };
}

/** The calculator that a path leads into the inputs of. */
export async function calculatorAt(path: Path, data: unknown): Promise<Calculator | undefined> {
  const found = calculationOfPath(path);
  const use = found && valueAt(data, [...found.above, 'use']);
  return typeof use === 'string' && isCalculatorId(use) ? loadCalculator(use) : undefined;
}

/** The input whose value stands at a path. */
export async function inputAt(path: Path, data: unknown): Promise<InputOption | undefined> {
  const rest = calculationOfPath(path)?.rest;
  if (rest?.[0] !== 'with') return undefined;
  const calculator = await calculatorAt(path, data);
  return calculator && inputsOf(calculator).find(({ name }) => name === rest[1]);
}

/** What a quantity at a path measures, as far as its place tells. */
export async function measuredAt(path: Path, data: unknown): Promise<readonly (Dimension | 'text')[] | undefined> {
  const input = await inputAt(path, data);
  if (input) {
    const { kind, dimension } = input.meta;
    if (kind === 'list') return undefined;
    if (kind !== 'quantity') return ['text'];
    return dimension === undefined || dimension === 'number' || dimension === 'count'
      ? ['number', 'count']
      : [dimension];
  }
  if (path[0] !== 'steps') return undefined;
  if (path[2] === 'hands' || path[2] === 'after') return ['time'];
  return path[2] === 'piece' ? ['length'] : undefined;
}
