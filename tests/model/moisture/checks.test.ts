import katex from 'katex';
import { describe, expect, test } from 'vitest';
import { runChecks } from '../../../src/model/evidence/index.ts';
import { checks } from '../../../src/model/moisture/checks.ts';
import { equations } from '../../../src/model/moisture/equations.ts';

const reports = checks.map((set) => runChecks(set, []));
const reportOf = (id: string) => {
  const report = reports.find(({ set }) => set.id === id);
  if (!report) throw new Error(`there is no set ${id}`);
  return report;
};

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
