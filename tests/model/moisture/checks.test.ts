import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { runChecks } from '../../../src/model/evidence/index.ts';
import { checks } from '../../../src/model/moisture/checks.ts';
import { comparisonsJson } from '../../../src/model/moisture/comparisons.ts';
import { equations } from '../../../src/model/moisture/equations.ts';
import { tables } from '../../../src/model/moisture/tables.ts';
import { readTable, root } from '../../../src/store/index.ts';

const tableNamed = (wanted: string) => {
  const definition = tables.find(({ name }) => name === wanted);
  if (!definition) throw new Error(`${wanted} is not defined`);
  return readTable(definition);
};
const reports = checks.map((set) => runChecks(set, []));
const reportOf = (id: string) => {
  const report = reports.find(({ set }) => set.id === id);
  if (!report) throw new Error(`there is no set ${id}`);
  return report;
};

test('the moisture contents from memory that the comparisons load are those of the tables (npm run generate writes them)', () => {
  const committed = readFileSync(join(root, 'src/model/moisture/comparisons.json'), 'utf8');
  expect(committed).toBe(
    comparisonsJson(tableNamed('emc-table-4-2'), tableNamed('emc-outdoor-us'), tableNamed('climate-reports')),
  );
});

test('every value that was read is reproduced within its tolerance', () => {
  const read = reports.filter(({ set }) => set.kind === 'check');
  expect(read.flatMap(({ outcomes }) => outcomes).length).toBeGreaterThan(10);
  expect(read.map(({ set, failures }) => [set.id, failures])).toEqual(read.map(({ set }) => [set.id, 0]));
});

describe('comparisons', () => {
  test('Table 4-2 from memory: 334 cells, the worst 0.056 % MC at 150 °F and 95 %', () => {
    const { worst, outcomes } = reportOf('moisture-table-4-2-memory');
    expect(outcomes).toHaveLength(19);
    expect(worst?.value.id).toBe('at-150');
    expect(worst?.value.what).toContain('at 95 %');
    expect(worst?.difference).toBeCloseTo(0.056, 3);
  });

  test('constants for °F: within 0.013 % MC', () => {
    expect(Math.abs(reportOf('moisture-fahrenheit-form').worst?.difference as number)).toBeLessThan(0.013);
  });

  test.each(['moisture-newer-model', 'moisture-year-ranges', 'moisture-january-indoors', 'moisture-magnus'])(
    '%s: every value within its tolerance',
    (id) => {
      const out = reportOf(id).outcomes.filter(({ within }) => !within);
      expect(out.map(({ value, ours }) => [value.id, value.published, ours])).toEqual([]);
    },
  );

  test('Table 13-1 from memory: 43 places, Juneau furthest away, by 4.3 % MC', () => {
    const { worst, outcomes } = reportOf('moisture-outdoors-memory');
    expect(outcomes).toHaveLength(43);
    expect(worst?.value.id).toBe('juneau-ak');
    expect(worst?.difference).toBeCloseTo(-4.25, 2);
  });
});

describe.each(equations.map(({ record }) => record))('equation $id', ({ tex, symbols, validity }) => {
  test('is typeset without a warning', () => {
    for (const formula of [tex, ...symbols.map((symbol) => symbol.tex)]) {
      expect(() =>
        katex.renderToString(formula, { displayMode: true, strict: 'error', throwOnError: true }),
      ).not.toThrow();
    }
    expect(validity.length).toBeGreaterThan(10);
  });
});
