import { canonicalUnit } from '../../model/quantity/index.ts';
import { stepsOfPointer } from '../pointer.ts';
import { isReference, type LimitName, limitMeasures, type QuantityOrReference } from '../record/index.ts';
import type { Shop } from '../shop/index.ts';
import { lookUp, type Standing } from './look-up.ts';
import { quantityOf } from './parameters.ts';
import { shopToolOf } from './shop.ts';
import type { CaseQuantity, Gap, Path, WorkedMaterial, WorkedNeed, WorkedTool } from './types.ts';

/**
 * A quantity that is written or referred to.
 *
 * @returns undefined where nothing stands there, and a gap for it
 */
export function quantityAt(
  entry: QuantityOrReference,
  label: string,
  path: Path,
  standing: Standing,
  gaps: Gap[],
  step?: string,
): CaseQuantity | undefined {
  const inStep = step === undefined ? {} : { step };
  if (!isReference(entry)) {
    const read = quantityOf(label, entry);
    if (read.ok) return read.value;
    gaps.push({ path, pointer: '', message: `${label}: ${read.problem}.`, wayOut: read.wayOut, ...inStep });
    return undefined;
  }
  const there = lookUp(standing, entry.from);
  if (there.ok && there.value.kind === 'quantity') {
    const { value } = there;
    const { low = value.value, high = value.value } = value;
    if (entry.take === 'low') return { ...value, value: low };
    return entry.take === 'high' ? { ...value, value: high } : value;
  }
  const message = there.ok ? `${there.value.label} is no quantity.` : there.why;
  gaps.push({ path: [...path, 'from'], pointer: entry.from, message, ...inStep });
  return undefined;
}

/** A tool with its limits: where the shop record holds it, what limits it there stands before what the method says. */
export function toolOf(name: string, standing: Standing, shop: Shop | undefined, gaps: Gap[]): WorkedTool {
  const record = standing.record.tools[name] as WorkedTool['record'];
  const limits: Partial<Record<LimitName, CaseQuantity>> = {};
  for (const [limit, entry] of Object.entries(record.limits ?? {}) as [LimitName, QuantityOrReference][]) {
    const value = quantityAt(entry, `${record.what}, ${limit}`, ['tools', name, 'limits', limit], standing, gaps);
    if (value) limits[limit] = value;
  }
  const own = shop && shopToolOf(shop, record);
  for (const [limit, value] of Object.entries(own?.limits ?? {}) as [LimitName, number][]) {
    limits[limit] = {
      kind: 'quantity',
      value,
      unit: canonicalUnit[limitMeasures(limit)],
      label: `${record.what}, ${limit}`,
    };
  }
  const path: Path = ['tools', name];
  return { name, record, count: own?.count ?? record.count ?? 1, limits, from: own ? 'shop' : 'method', path };
}

/** A material with its needs for the whole batch. */
export function materialOf(name: string, standing: Standing, gaps: Gap[]): WorkedMaterial {
  const record = standing.record.materials[name] as WorkedMaterial['record'];
  const users = Object.entries(standing.record.steps).filter(([, step]) => step.uses?.includes(name));
  const needs = record.needs.flatMap((need, at): WorkedNeed[] => {
    const path: Path = ['materials', name, 'needs', at];
    const times = need.per === 'piece' ? standing.pieces : 1;
    const entry = 'amount' in need ? need.amount : { from: need.from, ...(need.take ? { take: need.take } : {}) };
    const value = quantityAt(entry, record.what, path, standing, gaps);
    if (!value) return [];
    const [branch, calculation = ''] = 'from' in need ? stepsOfPointer(need.from) : [];
    const step = branch === 'calculations' ? standing.calculations[calculation]?.step : users[0]?.[0];
    // A number alone counts things.
    const unit = value.unit === '1' ? '{count}' : value.unit;
    return [{ amount: value.value * times, unit, step, from: 'from' in need ? need.from : undefined }];
  });
  const share =
    record.spare === undefined
      ? undefined
      : quantityAt(record.spare, 'Spare', ['materials', name, 'spare'], standing, gaps);
  return { name, record, spare: (share?.value ?? 0) / 100, needs, path: ['materials', name] };
}
