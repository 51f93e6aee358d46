import { gradeData, gradesJson } from '../../src/model/abrasive/grade-data.ts';
import type { Table } from '../../src/model/evidence/index.ts';
import { excludingJson, excludingRows } from '../../src/model/finish/excluding-data.ts';
import { climatesJson } from '../../src/model/moisture/climate-rows.ts';
import { comparisonsJson } from '../../src/model/moisture/comparisons.ts';
import { checkRows, checkRowsJson } from '../../src/model/species/check-rows.ts';
import { serialiseSpecies, toLines } from '../../src/model/species/compact.ts';
import { resolveSpecies } from '../../src/model/species/resolve.ts';
import { lumberData, lumberJson } from '../../src/model/stock/lumber-data.ts';
import {
  abrasiveRecords,
  finishRecords,
  readAllTables,
  readRecords,
  resinRecords,
  speciesRecords,
} from '../../src/store/index.ts';

function tableNamed(tables: ReadonlyMap<string, Table>, name: string): Table {
  const table = tables.get(name);
  if (!table) throw new Error(`There is no table ${name}; it is named in scripts/generate/model-files.ts`);
  return table;
}

/** One record a line. */
function recordsJson(records: readonly object[]): string {
  return `[\n${records.map((record) => JSON.stringify(record)).join(',\n')}\n]\n`;
}

// Nothing that is imported here may load one of these files: on a fresh clone there are none. tests/house/fresh-clone.test.ts holds it.

/** The files that the model loads in place of tables and records, by path from the project folder. */
export function modelFiles(): Map<string, string> {
  const tables = readAllTables();
  const records = readRecords(speciesRecords);
  const table = (name: string) => tableNamed(tables, name);
  return new Map([
    ['src/model/species/resolved.json', toLines(serialiseSpecies(resolveSpecies(records, tables)))],
    ['src/model/species/check-rows.json', checkRowsJson(checkRows(records, tables))],
    ['src/model/moisture/climates.json', climatesJson(table('climate-monthly'), table('climate-reports'))],
    [
      'src/model/moisture/comparisons.json',
      comparisonsJson(
        table('emc-table-4-2'),
        table('emc-outdoor-us'),
        table('climate-monthly'),
        table('climate-reports'),
      ),
    ],
    ['src/model/abrasive/grades.json', gradesJson(gradeData(table('grain-sizes'), table('grit-equivalents')))],
    ['src/model/abrasive/sanding.json', recordsJson(readRecords(abrasiveRecords))],
    ['src/model/finish/finishes.json', recordsJson(readRecords(finishRecords))],
    ['src/model/resin/kinds.json', recordsJson(readRecords(resinRecords))],
    ['src/model/finish/excluding.json', excludingJson(excludingRows(table('moisture-excluding')))],
    ['src/model/stock/lumber.json', lumberJson(lumberData(table('hardwood-thickness'), table('hardwood-grades')))],
  ]);
}
