import { describe, expect, test } from 'vitest';
import { poresOf } from '../../../src/model/species/pores.ts';
import type { SpeciesRecord } from '../../../src/model/species/record.ts';
import type { JoinedRow } from '../../../src/model/species/rows.ts';
import { tableNamed } from './world.ts';

const names = ['pores-and-tyloses', 'oak-pores-mo-312'] as const;
const wood = { kind: 'hardwood' } as SpeciesRecord;
const rowsOf = (table: (typeof names)[number] | 'porosity-table-16-1'): JoinedRow[] =>
  tableNamed(table).rows.map(({ cells, line }) => ({ table, label: 'A wood', line, group: false, cells }));
const traitsOf = (row: JoinedRow) => {
  const { arrangement, openness } = poresOf(wood, [row]).pores;
  return { arrangement, openness };
};

describe.each(names)('%s', (name) => {
  const rows = rowsOf(name);

  test('what a statement says of the pores stands in columns, in the words of the assessment', () => {
    for (const { cells } of rows) {
      expect([null, 'ring-porous', 'semi-ring-porous', 'diffuse-porous'], String(cells.value)).toContain(
        cells.arrangement,
      );
      expect([null, 'closed', 'plugged', 'open'], String(cells.value)).toContain(cells.openness);
      // A statement of the size of pores without its column would be lost.
      if (cells.trait === 'pore size' || cells.trait === 'pores')
        expect(cells.openness, String(cells.value)).not.toBeNull();
    }
  });

  test('other words in a statement change nothing of it', () => {
    for (const row of rows) {
      const reworded = { ...row, cells: { ...row.cells, value: 'larger pores, plugged, open, ring-porous' } };
      expect(traitsOf(reworded)).toEqual(traitsOf(row));
    }
  });

  test('the columns say what the words say', () => {
    for (const { cells } of rows) {
      const words = String(cells.value);
      if (cells.openness === 'plugged') expect(words).toMatch(/plugged/);
      if (cells.openness === 'open') expect(words).toMatch(/open|large/);
      if (cells.openness === 'closed') expect(words).toMatch(/small|medium|fine|no larger/);
      if (cells.arrangement !== null)
        expect(words).toMatch(cells.arrangement === 'semi-ring-porous' ? /semi-ring|intermediate/ : /porous/);
    }
  });
});

test('the letters of Table 16-1 give the arrangement, and those of softwoods none', () => {
  const codes = new Map(
    rowsOf('porosity-table-16-1').map((row) => [row.cells.transition_code, traitsOf(row).arrangement]),
  );
  expect(Object.fromEntries(codes)).toEqual({
    A: null,
    G: null,
    'G/A': null,
    R: 'ring-porous',
    SR: 'semi-ring-porous',
    D: 'diffuse-porous',
  });
});
