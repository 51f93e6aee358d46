import type { Figure } from '../../model/evidence/index.ts';
import { stepsOfPointer } from '../pointer.ts';
import type { MethodRecord } from '../record/index.ts';
import { remembered } from '../remembered.ts';
import { orThese } from './or-these.ts';
import { quantityOf } from './parameters.ts';
import type {
  CaseQuantity,
  CaseValue,
  WorkedCalculation,
  WorkedMaterial,
  WorkedParameter,
  WorkedTool,
} from './types.ts';

/** What stands at a pointer, or why nothing does in this case. */
export type Found = { ok: true; value: CaseValue } | { ok: false; why: string };

/** As much of a case as is worked out so far. */
export interface Standing {
  record: MethodRecord;
  pieces: number;
  parameters: Readonly<Record<string, WorkedParameter>>;
  calculations: Readonly<Record<string, WorkedCalculation>>;
  materials: Readonly<Record<string, WorkedMaterial>>;
  tools: Readonly<Record<string, WorkedTool>>;
}

const found = (value: CaseValue): Found => ({ ok: true, value });
const nothing = (why: string): Found => ({ ok: false, why });
const own = <T>(map: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(map, name) ? map[name] : undefined;

function figureValue(figure: Figure): CaseQuantity {
  const { value, low, high, unit, label, basis, band, digits, kept, foretold, limit } = figure;
  return {
    kind: 'quantity',
    value,
    unit,
    label,
    basis,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    ...(band === undefined ? {} : { band }),
    ...(digits === undefined ? {} : { digits }),
    ...(kept === undefined ? {} : { kept }),
    ...(foretold === undefined ? {} : { foretold }),
    ...(limit === undefined ? {} : { limit }),
  };
}

/** The middle, and the ends where there are any. */
const spread = ({ low, high }: { low?: number; high?: number }) => ({
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
});

function inCalculation({ name, result, errors }: WorkedCalculation, part: string, which: string | undefined): Found {
  if (!result) return nothing(`“${name}” has no answer: ${errors?.[0]?.message ?? 'it could not be asked.'}`);
  if (part === 'verdict') return found({ kind: 'text', text: result.verdict.text, label: 'Verdict' });
  const says = `The answer says: ${result.verdict.text}`;
  if (part === 'figures') {
    const figure = own(result.figures, which ?? '');
    return figure ? found(figureValue(figure)) : nothing(`“${name}” gives no ${which} in this case. ${says}`);
  }
  const list = part === 'events' ? (result.timeline?.events ?? []) : (result.uses ?? []);
  const ids = list.map(({ id }) => id);
  const item = list.find(({ id }) => id === which);
  if (!item) {
    const kind = part === 'events' ? 'event' : 'use';
    return nothing(`“${name}” tells of no ${kind} “${which}” in this case. ${orThese(which ?? '', ids, kind)} ${says}`);
  }
  return found(
    'at' in item
      ? { kind: 'quantity', value: item.at, unit: 's', label: item.label, basis: item.basis, ...spread(item) }
      : { kind: 'quantity', value: item.amount, unit: item.unit, label: item.what, basis: item.basis, ...spread(item) },
  );
}

function inParameter({ record, raw, value }: WorkedParameter, rest: readonly string[]): Found {
  const [measure] = rest;
  if (measure === undefined) return found(value);
  const entry = own(raw as Record<string, unknown>, measure);
  if (entry === undefined) return nothing(`the outline has no ${measure} in this case.`);
  if (measure === 'shape' || measure === 'drawing')
    return found({ kind: 'text', text: String(entry), label: `${record.label}, ${measure}` });
  const read = quantityOf(`${record.label}, ${measure}`, entry as string | number);
  return read.ok ? found(read.value) : nothing(`${read.problem}. ${read.wayOut}`);
}

function inMaterial({ record, needs }: WorkedMaterial, what: string | undefined): Found {
  if (what === 'what') return found({ kind: 'text', text: record.what, label: record.what });
  const [first] = needs;
  if (!first || needs.some(({ unit }) => unit !== first.unit))
    return nothing(`the needs of “${record.what}” have several units, and no sum.`);
  const value = needs.reduce((sum, { amount }) => sum + amount, 0);
  return found({ kind: 'quantity', value, unit: first.unit, label: record.what });
}

/** A case is asked some hundred times for what its texts refer to, and the next case for the same. */
const partsOf = remembered(stepsOfPointer, 1000);

/** What stands at a pointer in a case, as far as it is worked out. */
export function lookUp(standing: Standing, pointer: string): Found {
  const [branch = '', name = '', ...rest] = partsOf(pointer);
  switch (branch) {
    case 'makes': {
      const { what } = standing.record.makes;
      if (name === 'what') return found({ kind: 'text', text: what, label: 'What is made' });
      return found({
        kind: 'quantity',
        value: standing.pieces,
        unit: '{count}',
        label: 'Pieces',
        dimensions: ['count', 'number'],
      });
    }
    case 'parameters': {
      const parameter = own(standing.parameters, name);
      return parameter ? inParameter(parameter, rest) : nothing(`there is no parameter “${name}”.`);
    }
    case 'calculations': {
      const calculation = own(standing.calculations, name);
      return calculation
        ? inCalculation(calculation, rest[0] ?? '', rest[1])
        : nothing(`there is no calculation “${name}”.`);
    }
    case 'materials': {
      const material = own(standing.materials, name);
      return material ? inMaterial(material, rest[0]) : nothing(`there is no material “${name}”.`);
    }
    case 'tools': {
      const tool = own(standing.tools, name);
      const [limit = ''] = rest;
      if (tool && limit === 'what') return found({ kind: 'text', text: tool.record.what, label: tool.record.what });
      const value = tool && own(tool.limits, limit);
      return value ? found(value) : nothing(`the tool “${name}” has no limit ${limit} in this case.`);
    }
    default:
      return nothing(`“${pointer}” points into no part of a case.`);
  }
}
