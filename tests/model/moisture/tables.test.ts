import { describe, expect, test } from 'vitest';
import { basisOfSeen } from '../../../src/model/evidence/index.ts';
import { months } from '../../../src/model/moisture/index.ts';
import { tables } from '../../../src/model/moisture/tables.ts';
import { readTable } from '../../../src/store/index.ts';
import { recommendedMoisture } from './recommended.ts';

const byMonth = (prefix: string, sums: readonly number[]) =>
  Object.fromEntries(months.map((month, index) => [`${prefix}${month.toLowerCase()}`, sums[index] as number]));

/** Rows and column sums of the sheets that the files were copied from, added up there by two other programs. */
const sums: Record<string, { rows: number; columns: Record<string, number> }> = {
  'emc-table-4-2': {
    rows: 361,
    columns: { temp_C: 17649.1, temp_F: 43320, rh_pct: 18050, emc_pct: 3215.1 },
  },
  'emc-outdoor-us': {
    rows: 49,
    columns: byMonth('', [660.4, 629.7, 600.6, 563.7, 569.8, 566.2, 572.5, 593.6, 609.5, 605.9, 644.9, 675.5]),
  },
  'recommended-moisture-content': {
    rows: 6,
    columns: { average_pct: 58, individual_low_pct: 43, individual_high_pct: 72 },
  },
  'climate-monthly': {
    rows: 96,
    columns: {
      latitude: 3949.838,
      longitude: -9215.174,
      elevation_m: 31963,
      pressure_Pa: 9359424,
      ...byMonth('t_', [-63.5, 106, 571.1, 1071, 1571.8, 1988.5, 2219.4, 2126.6, 1766.5, 1168.2, 615.6, 115.6]),
      ...byMonth(
        'rh_',
        [6794.9, 6510.7, 6183.7, 5941.4, 6088.6, 6227.8, 6320.6, 6481.8, 6612.1, 6649.4, 6744.1, 6826.2],
      ),
      ...byMonth('td_', [-553.9, -453.2, -102.8, 287.3, 785.5, 1206.9, 1464.2, 1422.3, 1112.2, 562.9, 74.2, -383.4]),
    },
  },
  'climate-reports': {
    rows: 270,
    columns: {
      latitude: 6158.24,
      longitude: 6528.46,
      elevation_m: 67127,
      pressure_Pa: 26594147,
      ...byMonth('t_', [3081.9, 3254.4, 3710, 4285.5, 4792, 5280.3, 5563.1, 5564.5, 5108.7, 4474.8, 3801.7, 3265.9]),
      ...byMonth(
        'rh_',
        [20723.8, 20236, 19293, 18672.5, 18951, 19159.9, 19068.6, 19145, 19644, 20333.8, 20823.6, 20912.4],
      ),
      ...byMonth('td_', [1947.1, 2011.6, 2254, 2665.3, 3202.1, 3702.4, 3938.8, 3953.8, 3641.2, 3201.8, 2662.9, 2151.8]),
      years_min: 4118,
      years_max: 4802,
      reports_dropped: 624,
    },
  },
};

describe.each(Object.entries(sums))('table %s', (name, { rows, columns }) => {
  const definition = tables.find((candidate) => candidate.name === name);
  if (!definition) throw new Error(`${name} is not defined`);
  const table = readTable(definition);

  test(`has ${rows} rows`, () => {
    expect(table.rows).toHaveLength(rows);
  });

  test.each(Object.entries(columns))('column %s adds up to %d', (column, sum) => {
    const ours = table.rows.reduce((total, { cells }) => total + Number(cells[column]), 0);
    expect(ours).toBeCloseTo(sum, 6);
  });

  test('tells what it is and how it is known', () => {
    expect(definition.notes.length).toBeGreaterThan(0);
    for (const column of definition.columns.filter(({ kind }) => kind === 'number')) {
      expect(column.unit, column.name).toBeTruthy();
    }
    expect(definition.columns.at(-1)?.kind).toBe('seen');
  });
});

describe('recommended moisture content', () => {
  const definition = tables.find(({ name }) => name === 'recommended-moisture-content');
  if (!definition) throw new Error('not defined');
  const all = recommendedMoisture(readTable(definition));

  test('is a figure with its band and the basis of its row', () => {
    const coast = all.find(({ area, use }) => area.startsWith('Damp') && use.startsWith('interior'));
    expect(coast?.figure).toMatchObject({ value: 11, low: 8, high: 13, unit: '%', basis: basisOfSeen('memory') });
    expect(all).toHaveLength(6);
  });

  test('averages lie within the range of single pieces', () => {
    for (const { figure } of all) {
      expect(figure.value).toBeGreaterThan(figure.low as number);
      expect(figure.value).toBeLessThan(figure.high as number);
    }
  });
});
