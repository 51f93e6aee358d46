import type { ClassRecord } from '../../method/class/record.ts';
import { mostPlaces } from '../../method/class/record.ts';
import { addressNames, reservedNames } from '../../method/record/address-names.ts';

/** Names in the address of a method's case that are no parameter of it. */
const beside: readonly string[] = [...reservedNames, ...addressNames];

/**
 * What a class begins with where an address names a method and a case: `?method=first-tray&pieces=6&wood=white-ash`. As many places as pieces.
 *
 * @returns undefined where the address names no method
 */
export function classOfAddress(search: string): (Partial<ClassRecord> & { calendar?: string }) | undefined {
  const asked = new URLSearchParams(search);
  const id = asked.get('method') ?? '';
  if (!/^[a-z0-9-]{1,80}$/.test(id)) return undefined;
  const pieces = Number(asked.get('pieces'));
  const count = Number.isInteger(pieces) && pieces > 0 ? Math.min(pieces, mostPlaces) : 0;
  const calendar = asked.get('calendar');
  const own = [...asked].filter(([name]) => !beside.includes(name) && name.length <= 80);
  return {
    method: { id },
    ...(calendar === null || !/^[a-z0-9-]{1,60}$/.test(calendar) ? {} : { calendar }),
    common: { set: Object.fromEntries(own.map(([name, text]) => [name, text.slice(0, 4000)])), sessions: '' },
    places: Array.from({ length: count }, (_, at) => ({ id: String(at + 1), set: {} })),
  };
}
