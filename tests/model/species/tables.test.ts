import { describe, expect, test } from 'vitest';
import { sourceOfDocument } from '../../../src/model/species/documents.ts';
import { joinTables } from '../../../src/model/species/record.ts';
import { missingRows } from '../../../src/model/species/rows.ts';
import { labelColumn, tables } from '../../../src/model/species/tables.ts';
import { index, records, tableNamed } from './world.ts';

/**
 * Rows by how they were read, and [sum, cells filled] of each column of numbers. The counts are those that came with the
 * table as copied; the sums were taken from it by another program than ours, in decimal arithmetic.
 */
const expected: Record<string, { seen: [number, number, number]; sums?: Record<string, [number, number]> }> = {
  'shrinkage-domestic': {
    seen: [66, 17, 32],
    sums: { radial_pct: [513.8, 115], tangential_pct: [936.1, 114], volumetric_pct: [1492.7, 115] },
  },
  'shrinkage-imported': {
    seen: [27, 0, 54],
    sums: { radial_pct: [358.5, 81], tangential_pct: [617.6, 81], volumetric_pct: [988.3, 81] },
  },
  'dimensional-change-coefficients': {
    seen: [55, 9, 61],
    sums: { cr_per_pct_mc: [0.18943, 125], ct_per_pct_mc: [0.35225, 125], shrinkage_start_mc_pct: [3710, 125] },
  },
  'hardness-domestic': {
    seen: [12, 101, 0],
    sums: {
      sg_green: [52.91, 113],
      sg_12pct: [56.47, 111],
      side_hardness_green_N: [77850, 36],
      side_hardness_12pct_N: [119550, 39],
      side_hardness_green_lbf: [64550, 99],
      side_hardness_12pct_lbf: [85200, 98],
    },
  },
  'hardness-imported': {
    seen: [11, 134, 0],
    sums: { specific_gravity: [47.9, 80], side_hardness_N: [46000, 15], side_hardness_lbf: [193120, 140] },
  },
  'porosity-table-16-1': { seen: [35, 0, 0], sums: { sg_green: [15.21, 35], sg_dry: [16.61, 35] } },
  'pores-and-tyloses': { seen: [66, 1, 1] },
  'oak-pores-mo-312': { seen: [3, 0, 0] },
  'decay-resistance': { seen: [27, 53, 22] },
  'other-sources': { seen: [860, 80, 7] },
  'queensland-timber': { seen: [44, 0, 0] },
  'wood-density-database': { seen: [172, 0, 0], sums: { specific_gravity: [101.258, 172] } },
  'cirad-wood-density': {
    seen: [116, 0, 0],
    sums: {
      trees_density: [1128, 116],
      density_12pct_kg_m3: [82362, 116],
      density_12pct_low_kg_m3: [73950, 116],
      density_12pct_high_kg_m3: [91170, 116],
      trees_coefficient: [1122, 116],
      volumetric_coefficient_pct_per_pct_mc: [50.793, 116],
      volumetric_coefficient_low_pct_per_pct_mc: [41.7, 116],
      volumetric_coefficient_high_pct_per_pct_mc: [59.12, 116],
      trees_shrinkage: [1089, 116],
      fibre_saturation_pct_mc: [3146.1, 115],
      fibre_saturation_low_pct_mc: [2803, 115],
      fibre_saturation_high_pct_mc: [3596, 115],
      volumetric_pct: [1374.8, 115],
      volumetric_low_pct: [1186.88, 115],
      volumetric_high_pct: [1580.25, 115],
    },
  },
  'species-toxicity': { seen: [33, 2, 2] },
  'trgs-907': { seen: [18, 0, 0] },
  'trgs-906': { seen: [31, 0, 0] },
  'machining-quality-1999': {
    seen: [0, 0, 28],
    sums: {
      planing_perfect_pct: [1695, 28],
      shaping_good_to_excellent_pct: [847, 28],
      turning_fair_to_excellent_pct: [2152, 27],
      boring_good_to_excellent_pct: [2398, 27],
      mortising_fair_to_excellent_pct: [1906, 27],
      sanding_good_to_excellent_pct: [822, 19],
      steam_bending_unbroken_pct: [1409, 22],
      nail_splitting_free_pct: [1377, 22],
      screw_splitting_free_pct: [1450, 22],
    },
  },
};

test('every table is counted, and a record can join to every table', () => {
  expect(tables.map((table) => table.name).sort()).toEqual(Object.keys(expected).sort());
  expect([...joinTables].sort()).toEqual(Object.keys(expected).sort());
});

describe.each(Object.entries(expected).map(([name, counts]) => ({ name, ...counts })))(
  '$name',
  ({ name, seen, sums }) => {
    const { rows, definition } = tableNamed(name);

    test(`has ${seen.join(' / ')} rows read in the work, quoted, from memory`, () => {
      const count = (mark: string) => rows.filter((row) => row.cells.seen === mark).length;
      expect([count('source-text'), count('quoted'), count('memory')]).toEqual(seen);
    });

    test.each(Object.entries(sums ?? { none: [0, 0] as const }))('column %s adds up', (column, [sum, filled]) => {
      const values = rows.flatMap((row) => (typeof row.cells[column] === 'number' ? [row.cells[column]] : []));
      expect(values.length).toBe(filled);
      expect(values.reduce((total, value) => total + value, 0)).toBeCloseTo(sum, 6);
      const numbers = definition.columns.filter((each) => each.kind === 'number').map((each) => each.name);
      expect(sums ? Object.keys(sums) : []).toEqual(numbers);
    });

    test('names its source once, or each row names a document that is in the source list', () => {
      const documents = rows.flatMap((row) => [row.cells.document ?? row.cells.source ?? []].flat());
      if (definition.source) expect(documents).toEqual([]);
      else {
        expect(documents.length).toBe(rows.length);
        // What is from memory may name none.
        const nameless = rows.filter(
          ({ cells }) => cells.seen !== 'memory' && !sourceOfDocument(String(cells.document ?? cells.source)),
        );
        expect(nameless.map(({ line }) => line)).toEqual([]);
      }
    });
  },
);

test('the pounds of the hardness table have their own marks, and none that is printed is from memory', () => {
  const { rows } = tableNamed('hardness-domestic');
  const printed = rows.filter(
    ({ cells }) => cells.side_hardness_green_lbf !== null || cells.side_hardness_12pct_lbf !== null,
  );
  const marks = (mark: string) => printed.filter(({ cells }) => cells.seen_lbf === mark).length;
  expect([marks('source-text'), marks('quoted'), marks('memory')]).toEqual([8, 91, 0]);
});

test('the numbers of the other documents add up', () => {
  const values = tableNamed('other-sources').rows.flatMap((row) => /^[\d.]+/.exec(String(row.cells.value)) ?? []);
  expect(values.length).toBe(898);
  expect(values.reduce((sum, value) => sum + Number(value), 0)).toBeCloseTo(248529.09, 6);
});

describe('records and rows', () => {
  /** Rows that no wood can claim, and why. */
  const unjoined: Record<string, string> = {
    'hardness-imported: Sucupira (Bowdichia)': 'no record of this wood; the record is of Diplotropis',
    'pores-and-tyloses: Kentucky coffeetree': 'no record of this wood',
    'other-sources: Any wood, Burlington, Vermont': 'about a place, not a wood',
    'other-sources: Cedars, western': 'a lumber group whose members the text read does not name',
    'other-sources: Maple, mixed': 'a lumber group whose members the text read does not name',
    'other-sources: Oak, mixed': 'a lumber group whose members the text read does not name',
    'other-sources: Pine, Engelmann (as printed)': 'as printed it is no wood that we know; it may be Engelmann spruce',
    'other-sources: Pine, mixed southern': 'a lumber group whose members the text read does not name',
    'other-sources: Turkey oak': 'no figure of this wood was read, only its class of decay',
  };

  test('every row is joined to a wood, except those listed with a reason', () => {
    const claimed = new Set(
      records.flatMap((record) =>
        [record.rows, record.groupRows ?? {}].flatMap((joins) =>
          joinTables.flatMap((table) => (joins[table] ?? []).map((label) => `${table}: ${label}`)),
        ),
      ),
    );
    const all = tables.flatMap((table) =>
      tableNamed(table.name).rows.map((row) => `${table.name}: ${row.cells[labelColumn(table.name)]}`),
    );
    const loose = [...new Set(all.filter((label) => !claimed.has(label)))].sort();
    expect(loose).toEqual(Object.keys(unjoined).sort());
  });

  test('no record names a row that no table has', () => {
    expect(records.flatMap((record) => missingRows(record, index))).toEqual([]);
  });

  test('no record names a row both as its own and as its group’s', () => {
    const both = records.flatMap((record) =>
      joinTables.flatMap((table) =>
        (record.rows[table] ?? [])
          .filter((label) => record.groupRows?.[table]?.includes(label))
          .map((label) => `${record.id}: ${label}`),
      ),
    );
    expect(both).toEqual([]);
  });

  test('a row of shrinkage or hardness belongs to one wood alone', () => {
    const owners = new Map<string, string[]>();
    for (const record of records) {
      for (const table of [
        'shrinkage-domestic',
        'shrinkage-imported',
        'hardness-domestic',
        'hardness-imported',
      ] as const) {
        for (const label of record.rows[table] ?? []) {
          owners.set(`${table}: ${label}`, [...(owners.get(`${table}: ${label}`) ?? []), record.id]);
        }
      }
    }
    expect([...owners].filter(([, ids]) => ids.length > 1)).toEqual([]);
  });

  test('ids and names are each used once', () => {
    expect(new Set(records.map((record) => record.id)).size).toBe(records.length);
    expect(new Set(records.map((record) => record.name)).size).toBe(records.length);
  });

  test('botanical names printed by a table are taken from it', () => {
    const wrong = records.filter((record) => {
      const label = record.rows['shrinkage-imported']?.[0];
      const row = label ? index.get('shrinkage-imported')?.get(label)?.[0] : undefined;
      return row !== undefined && row.cells.botanical_name !== record.botanical;
    });
    expect(wrong.map((record) => record.id)).toEqual([]);
  });

  test('origin follows Table 4-4, except azobe, printed as American', () => {
    const places = { AF: 'Africa', AM: 'tropical America', AS: 'Asia and Oceania' } as const;
    const wrong = records.filter((record) => {
      const label = record.rows['shrinkage-imported']?.[0];
      const row = label ? index.get('shrinkage-imported')?.get(label)?.[0] : undefined;
      return row !== undefined && places[row.cells.location as keyof typeof places] !== record.origin;
    });
    expect(wrong.map((record) => record.id)).toEqual(['azobe']);
  });
});
