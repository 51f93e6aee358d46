import type { WorkedMethod, WorkedParameter } from '../case/types.ts';
import type { ShownParameter } from './types.ts';
import { valueText } from './values.ts';

const textOf = (value: unknown): string =>
  typeof value === 'object' && value !== null ? JSON.stringify(value) : String(value ?? '');

/** What stands in the fields of a parameter, by the names that an address has for them: its own, or `name.measure` for each measure of an outline. */
function fieldTexts({ name, record, raw }: WorkedParameter): Record<string, string> {
  if (record.kind !== 'outline') return { [name]: textOf(raw) };
  return Object.fromEntries(
    Object.entries(raw as Record<string, unknown>).map(([measure, value]) => [`${name}.${measure}`, textOf(value)]),
  );
}

function wordsOf({ record, raw, value }: WorkedParameter): string {
  if (record.kind !== 'outline') return `${record.label}: ${valueText(value)}`;
  const measures = Object.entries(raw as Record<string, unknown>).map(([measure, entry]) =>
    measure === 'shape' || measure === 'drawing' ? textOf(entry) : `${measure} ${textOf(entry)}`,
  );
  return `${record.label}: ${measures.join(', ')}`;
}

/** The parameters of a case as a form needs them, in the order of the file. */
export const shownParameters = ({ parameters }: Pick<WorkedMethod, 'parameters'>): ShownParameter[] =>
  Object.values(parameters).map((parameter) => ({
    name: parameter.name,
    record: parameter.record,
    texts: fieldTexts(parameter),
    from: parameter.from,
    words: wordsOf(parameter),
  }));
