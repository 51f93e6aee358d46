import { answer } from '../../calculators/kit/answer.ts';
import type { Calculator } from '../../calculators/kit/calculator.ts';
import { isCalculatorId, loadCalculator } from '../../calculators/registry.ts';
import type { Result } from '../../model/evidence/index.ts';
import { type Dimension, unitByCode, unitLabel } from '../../model/quantity/index.ts';
import { readAnyQuantity } from '../../model/quantity/read-any.ts';
import { pointerOf } from '../pointer.ts';
import { isGroup } from './outline.ts';
import type { EditContext } from './types.ts';

/** Something that a reference may lead to. */
export interface PointerOption {
  pointer: string;
  label: string;
  /** Unit, or what it is. */
  detail?: string;
  /** What it measures, where that is known; `text` where it is none. */
  measures?: Dimension | 'text';
  /** The step whose calculation it is. */
  step?: string;
}

interface Known {
  data: Readonly<Record<string, unknown>>;
  context: EditContext;
}

const textOf = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);
const groupsOf = (value: unknown): [string, Record<string, unknown>][] =>
  isGroup(value) ? Object.entries(value).map(([name, each]) => [name, isGroup(each) ? each : {}]) : [];

/** Every calculation of a method as far as it is written, by its name, with its step. */
export function calculationsIn(
  data: Readonly<Record<string, unknown>>,
): { name: string; step: string; use: string | undefined; inputs: unknown }[] {
  return groupsOf(data.steps).flatMap(([step, { calculations }]) =>
    groupsOf(calculations).map(([name, { use, with: inputs }]) => ({ name, step, use: textOf(use), inputs })),
  );
}

const quantityKinds: Readonly<Record<string, Dimension | 'text'>> = { count: 'count' };

function ofParameters(data: Known['data']): PointerOption[] {
  return groupsOf(data.parameters).flatMap(([name, { label, kind, default: usual }]) => {
    const words = textOf(label) ?? name;
    const option = (steps: string[], more: Partial<PointerOption> = {}): PointerOption => ({
      pointer: pointerOf(['parameters', name, ...steps]),
      label: [words, ...steps].join(', '),
      ...more,
    });
    if (kind === 'outline' && isGroup(usual))
      return Object.keys(usual).map((measure) =>
        option([measure], { measures: measure === 'shape' || measure === 'drawing' ? 'text' : 'length' }),
      );
    const read =
      kind === 'quantity' && (typeof usual === 'string' || typeof usual === 'number')
        ? readAnyQuantity(usual)
        : undefined;
    const dimension = read?.ok ? read.value[0].dimension : quantityKinds[String(kind)];
    return [
      option([], {
        measures: dimension ?? 'text',
        ...(textOf(usual) === undefined && typeof usual !== 'number' ? {} : { detail: String(usual) }),
      }),
    ];
  });
}

function ofThings(data: Known['data']): PointerOption[] {
  return [
    ...groupsOf(data.tools).flatMap(([name, { what, limits }]) => [
      ...Object.keys(isGroup(limits) ? limits : {}).map(
        (limit): PointerOption => ({
          pointer: pointerOf(['tools', name, limit]),
          label: `${textOf(what) ?? name}, ${limit}`,
        }),
      ),
      { pointer: pointerOf(['tools', name, 'what']), label: textOf(what) ?? name, measures: 'text' } as const,
    ]),
    ...groupsOf(data.materials).flatMap(([name, { what }]): PointerOption[] => [
      { pointer: pointerOf(['materials', name, 'need']), label: `${textOf(what) ?? name}, in all` },
      { pointer: pointerOf(['materials', name, 'what']), label: textOf(what) ?? name, measures: 'text' },
    ]),
  ];
}

type Named = Pick<Result, 'timeline' | 'uses'>;
const examples = new Map<string, Named>();

/** What a calculator tells of in its own worked example; one that takes long is not asked. */
function exampleOf(calculator: Calculator): Named {
  const before = examples.get(calculator.id);
  if (before) return before;
  const answered = calculator.heavy === 'always' ? undefined : answer(calculator, calculator.example.metric);
  const named: Named = answered?.ok ? answered.value.result : {};
  examples.set(calculator.id, named);
  return named;
}

async function ofCalculation(
  { name, step, use }: { name: string; step: string; use: string | undefined },
  { context }: Known,
): Promise<PointerOption[]> {
  if (use === undefined || !isCalculatorId(use)) return [];
  const calculator: Calculator = await loadCalculator(use);
  const option = (part: string[], label: string, unit?: string): PointerOption => {
    const known = unit === undefined ? undefined : unitByCode(unit);
    return {
      pointer: pointerOf(['calculations', name, ...part]),
      label,
      step,
      ...(unit === undefined ? {} : { detail: known?.dimension === 'time' ? 'time' : unitLabel(unit) }),
      ...(known ? { measures: known.dimension } : {}),
    };
  };
  const worked = context.worked?.calculations[name];
  const { timeline, uses } = worked?.use === use && worked.result ? worked.result : exampleOf(calculator);
  return [
    ...Object.entries(calculator.figures).map(([figure, { label, unit }]) => option(['figures', figure], label, unit)),
    ...(timeline?.events ?? []).map(({ id, label }) => option(['events', id], label, 's')),
    ...(uses ?? []).map(({ id, what, unit }) => option(['uses', id], what, unit)),
    { ...option(['verdict'], 'What the answer says'), measures: 'text' },
  ];
}

const found = new WeakMap<object, { worked: EditContext['worked']; all: Promise<PointerOption[]> }>();

/** Everything that a reference of a method may lead to, as far as the method is written; looked for once in the same data. */
export function pointersIn(data: Known['data'], context: EditContext): Promise<readonly PointerOption[]> {
  const before = found.get(data);
  if (before && before.worked === context.worked) return before.all;
  const all = allPointers(data, context);
  found.set(data, { worked: context.worked, all });
  // What could not be fetched is asked for again.
  all.catch(() => found.delete(data));
  return all;
}

async function allPointers(data: Known['data'], context: EditContext): Promise<PointerOption[]> {
  const calculations = await Promise.all(
    calculationsIn(data).map((calculation) => ofCalculation(calculation, { data, context })),
  );
  return [
    { pointer: '/makes/pieces', label: 'Pieces that are made', measures: 'count' },
    { pointer: '/makes/what', label: 'What is made', measures: 'text' },
    ...ofParameters(data),
    ...calculations.flat(),
    ...ofThings(data),
  ];
}
