import { describe, expect, test } from 'vitest';
import { hardwoodGrades, nominalThicknesses } from '../../../src/model/stock/nominal.ts';
import { tables } from '../../../src/model/stock/tables.ts';
import { readTable } from '../../../src/store/index.ts';

const table = (name: string) => {
  const definition = tables.find((candidate) => candidate.name === name);
  if (!definition) throw new Error(`no table ${name}`);
  return readTable(definition);
};

describe('the tables of lumber', () => {
  test('thicknesses rise, and surfacing leaves less the more faces it takes', () => {
    for (const [at, nominal] of nominalThicknesses.entries()) {
      expect(nominal.rough).toBeGreaterThan(nominalThicknesses[at - 1]?.rough ?? 0);
      expect(nominal.s2s).toBeLessThan(nominal.s1s ?? nominal.rough);
      expect(nominal.s1s ?? 0).toBeLessThan(nominal.rough);
    }
  });
  test('the name of a thickness in quarters is its thickness', () => {
    for (const { name, rough } of nominalThicknesses) {
      const quarters = /^(\d+)\/4$/.exec(name)?.[1];
      if (quarters) expect(rough).toBeCloseTo((Number(quarters) * 25.4) / 4, 9);
    }
  });
  test('the yield printed for a grade is its cutting units in twelfths of the face', () => {
    for (const { cells } of table('hardwood-grades').rows) {
      if (cells.clear_yield === null) continue;
      const [whole = '', top = '0', bottom = '1'] = String(cells.clear_yield).split(/[ /%]+/);
      const printed = Number(whole) + (top === '' ? 0 : Number(top) / Number(bottom));
      expect(printed).toBeCloseTo((Number(cells.units_per_measure) / 12) * 100, 9);
    }
  });
  test('no grade promises more clear wood than a better one', () => {
    const shares = hardwoodGrades.map((grade) => grade.clearPoorer);
    expect([...shares].sort((a, b) => b - a)).toEqual(shares);
  });
  test('dressed softwood is thinner and narrower than its name', () => {
    for (const { cells } of table('softwood-dressed').rows) {
      const [, thick, wide] = /^(\d+)×(\d+)$/.exec(String(cells.nominal)) ?? [];
      const inches = (text: string) =>
        text.split(' ').reduce((sum, part) => {
          const [top = '0', bottom = '1'] = part.split('/');
          return sum + Number(top) / Number(bottom);
        }, 0);
      if (thick) expect(inches(String(cells.thickness_dry))).toBeLessThan(Number(thick));
      if (wide) expect(inches(String(cells.width_dry))).toBeLessThan(Number(wide));
    }
  });
});
