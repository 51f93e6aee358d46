import { unitByCode } from '../../model/quantity/index.ts';
import type { WorkedMethod, WorkedStep } from '../case/types.ts';
import type { ToolKind } from '../record/index.ts';
import { maskText } from '../text-marks.ts';
import type { Measurable } from './types.ts';
import { betweenMark, quantityMark } from './values.ts';

/** What a rule, a scale and a thermometer read. */
const readEverywhere: readonly (string | undefined)[] = ['length', 'mass', 'temperature'];
/** A share of a hundred is read by a meter, where one is at hand: many others are only worked out. */
const meters: readonly ToolKind[] = ['moisture-meter', 'thermometer'];

/** What is left over a figure, as the texts say it: `{0.5 mm} over {/parameters/thickness}`. */
const leftOver = /\{(\d+(?:\.\d+)?) mm\} over \{(\/[^}]+)\}/g;

/** What the texts of a step point at, and what they leave over it, by the step as it is written. */
interface Named {
  pointers: readonly string[];
  over: ReadonlyMap<string, number>;
}

const namedBefore = new WeakMap<WorkedStep['record'], Named>();

function namedIn(record: WorkedStep['record']): Named {
  const known = namedBefore.get(record);
  if (known) return known;
  const texts = [record.does, record.tell ?? '', record.wrong ?? ''];
  const named = {
    pointers: [...new Set(texts.flatMap((text) => maskText(text).pointers.map(({ pointer }) => pointer)))],
    over: new Map(
      texts.flatMap((text) => [...text.matchAll(leftOver)].map(([, left, pointer]) => [pointer ?? '', Number(left)])),
    ),
  };
  namedBefore.set(record, named);
  return named;
}

/**
 * Figures that the texts of a step name and that somebody can read off while it is done, each once, in the order of the texts: what a rule, a scale, a
 * thermometer or a meter at hand reads, and what is not foretold for the seasons after it.
 */
export function measuresOf(worked: Pick<WorkedMethod, 'at' | 'tools'>, { record }: WorkedStep): Measurable[] {
  const { pointers, over } = namedIn(record);
  const hasMeter = (record.tools ?? []).some((name) => {
    const kind = worked.tools[name]?.record.kind;
    return kind !== undefined && meters.includes(kind);
  });
  return pointers.flatMap((pointer): Measurable[] => {
    const value = worked.at(pointer);
    if (value?.kind !== 'quantity' || value.foretold) return [];
    const dimension = unitByCode(value.unit)?.dimension;
    if (!readEverywhere.includes(dimension) && !(dimension === 'percent' && hasMeter)) return [];
    const left = over.get(pointer);
    // What is left for a later step is on the piece when this one is measured.
    if (left !== undefined && value.unit === 'mm') {
      const expected = quantityMark({ ...value, digits: 4 }, value.value + left);
      return [{ label: `${value.label}, with what is left for later`, expected, pointer }];
    }
    const between = betweenMark(value);
    return [{ label: value.label, expected: quantityMark(value), pointer, ...(between ? { between } : {}) }];
  });
}
