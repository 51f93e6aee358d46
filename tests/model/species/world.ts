import type { Table } from '../../../src/model/evidence/index.ts';
import { resolveSpecies } from '../../../src/model/species/resolve.ts';
import { indexRows } from '../../../src/model/species/rows.ts';
import { tables as definitions } from '../../../src/model/species/tables.ts';
import type { SpeciesDossier } from '../../../src/model/species/types.ts';
import { readRecords, readTable, speciesRecords } from '../../../src/store/index.ts';

/** The tables, records and dossiers as they stand on disk, read once for all tests of the room. */
export const tables: ReadonlyMap<string, Table> = new Map(
  definitions.map((definition) => [definition.name, readTable(definition)]),
);
export const records = readRecords(speciesRecords);
export const index = indexRows(tables);
export const dossiers = resolveSpecies(records, tables);

export function tableNamed(name: string): Table {
  const table = tables.get(name);
  if (!table) throw new Error(`no table ${name}`);
  return table;
}

export function dossier(id: string): SpeciesDossier {
  const found = dossiers.find((each) => each.id === id);
  if (!found) throw new Error(`no wood ${id}`);
  return found;
}
