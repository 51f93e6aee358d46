import { readResinSheet, tidySheet } from '../../calculators/kit/resin-sheet.ts';
import type { DataProblem } from '../../model/data/problem.ts';
import { readYamlRecord, type YamlReading } from '../../model/data/yaml.ts';
import { defaultUnits, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { shopFaults } from './faults.ts';
import { type ParsedShop, type Shop, type ShopResin, shopSchema } from './shop.ts';

/** A shop record as read, or everything wrong with it. */
export interface ShopReading {
  shop: Shop | undefined;
  problems: DataProblem[];
  /** The text as data, with the place of every path in it. */
  reading: YamlReading;
}

/**
 * Read a shop record, `shop.yaml`.
 *
 * @param text the whole file
 * @param file its path, for problems
 * @param units of whoever reads the problems
 * @returns the shop, or problems as file, line, column, field, and what was read, what is allowed, a way out. Whether its place is one of
 *   the climate tables is asked of `shopClimate`, which loads them.
 */
export function readShop(text: string, file = 'shop.yaml', units: ReaderUnits = defaultUnits): ShopReading {
  const { record, reading, problems } = readYamlRecord(text, shopSchema, file);
  const worded = problems.map((problem) => ({ ...problem, message: inReaderUnits(problem.message, units) }));
  if (!record) return { shop: undefined, problems: worded, reading };
  const raw = (reading.data as { resins?: { id: string; sheet: Record<string, unknown> }[] }).resins ?? [];
  const resins: ShopResin[] = [];
  const faults = shopFaults(record);
  for (const [at, { id, sheet }] of raw.entries()) {
    const read = readResinSheet(sheet);
    if (read.ok) resins.push({ id, sheet: read.value, entries: tidySheet(sheet) as Record<string, string> });
    else {
      for (const { field, message } of read.errors) faults.push({ path: ['resins', at, 'sheet', field], message });
    }
  }
  const found = faults.map(
    ({ path, message }): DataProblem => ({
      file,
      ...reading.positionOf(path),
      field: path.join('.'),
      message: inReaderUnits(message, units),
    }),
  );
  return found.length > 0
    ? { shop: undefined, problems: found, reading }
    : { shop: { ...withHours(record), resins }, problems: [], reading };
}

/** The record with the zone of its opening hours named. */
function withHours({ calendar, ...record }: ParsedShop): Omit<ParsedShop, 'calendar'> & Pick<Shop, 'calendar'> {
  return calendar ? { ...record, calendar: { ...calendar, zone: record.zone } as OpeningHours } : record;
}
