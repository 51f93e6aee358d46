import { parametricOutline, parametricOutlines } from '../../model/outline/parametric.ts';
import { nameOfKind } from '../case/kinds.ts';
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

/** Names of what may be chosen. A shape is offered where its measures stand: the form has a field for those alone. */
function namesOf({ record, raw, value }: WorkedParameter): Record<string, string> | undefined {
  const { kind } = record;
  if (kind === 'wood' || kind === 'finish' || kind === 'resin') {
    const ids = [...(record.among ?? []), ...(typeof raw === 'string' ? [raw] : [])];
    return Object.fromEntries([...new Set(ids)].map((id) => [id, nameOfKind(kind, id)]));
  }
  if (kind === 'place' && typeof raw === 'string') return { [raw]: valueText(value) };
  if (kind !== 'outline') return undefined;
  const given = raw as Record<string, unknown>;
  const shape = String(given['shape'] ?? '');
  const can = parametricOutlines.filter(
    ({ id, parameters }) => id === shape || parameters.every(({ name }) => name in given),
  );
  const measures = parametricOutline(shape)?.parameters ?? [];
  return Object.fromEntries([
    ...can.map(({ id, title }) => [id, title]),
    ...measures.map(({ name, label }) => [name, label]),
  ]);
}

function wordsOf({ record, raw, value }: WorkedParameter): string {
  if (record.kind !== 'outline') return `${record.label}: ${valueText(value)}`;
  const measures = Object.entries(raw as Record<string, unknown>).map(([measure, entry]) =>
    measure === 'shape' || measure === 'drawing'
      ? (parametricOutline(String(entry))?.title.toLowerCase() ?? textOf(entry))
      : `${measure.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`)} ${textOf(entry)}`,
  );
  return `${record.label}: ${measures.join(', ')}`;
}

/** The parameters of a case as a form needs them, in the order of the file. */
export const shownParameters = ({ parameters }: Pick<WorkedMethod, 'parameters'>): ShownParameter[] =>
  Object.values(parameters).map((parameter) => {
    const names = namesOf(parameter);
    return {
      name: parameter.name,
      record: parameter.record,
      texts: fieldTexts(parameter),
      from: parameter.from,
      ...(names ? { names } : {}),
      words: wordsOf(parameter),
    };
  });
