import { describe, expect, test } from 'vitest';
import { typedAgain } from '../../../src/model/abrasive/checks.ts';
import { equivalents, gradeOf, grades, readGrade, usualGrits, wetGrits } from '../../../src/model/abrasive/grades.ts';
import { tables } from '../../../src/model/abrasive/tables.ts';
import { readTable } from '../../../src/store/index.ts';

const [sizes, _pairs] = tables.map(readTable) as [ReturnType<typeof readTable>, ReturnType<typeof readTable>];

describe('two copies made in two ways', () => {
  test.each(typedAgain.map((text) => [`${text.grading}, ${text.words}`, text] as const))(
    '%s: the same rows',
    (_, { grading, source, rows }) => {
      const system = grading === 'P' ? 'FEPA P' : 'ANSI B74.18';
      const inTable = sizes.rows
        .filter(({ cells }) => cells.system === system && cells.source === source && cells.seen !== 'memory')
        .map(({ cells }) => [Number(String(cells.grade).replace('P', '')), cells.micrometres]);
      expect(inTable).toEqual(rows);
    },
  );
  test('no row that was read is left out of the second', () => {
    const read = sizes.rows.filter(({ cells }) => cells.seen !== 'memory' && cells.system !== 'JIS R 6001');
    expect(typedAgain.reduce((sum, { rows }) => sum + rows.length, 0)).toBe(read.length);
  });
});

describe('grades', () => {
  test('finer grades have smaller grains, in each grading', () => {
    for (const grading of ['P', 'ANSI'] as const) {
      const own = grades.filter((grade) => grade.grading === grading);
      for (const [at, grade] of own.entries()) {
        const next = own[at + 1];
        if (next) expect(next.micrometres).toBeLessThan(grade.micrometres);
        expect(grade.low).toBeLessThan(grade.micrometres);
        expect(grade.high).toBeGreaterThan(grade.micrometres);
      }
    }
  });
  test('what was never read says so', () => {
    expect(gradeOf('ANSI', 1200)).toMatchObject({ basis: 'memory', texts: 0 });
    expect(gradeOf('P', 120)).toMatchObject({ basis: 'published', seen: 'quoted' });
    expect(gradeOf('P', 5000)).toBeUndefined();
  });
  test('to 220 the gradings agree, above it P is the coarser of a number', () => {
    for (const number of [180, 220]) {
      expect(gradeOf('P', number)?.micrometres).toBeCloseTo(gradeOf('ANSI', number)?.micrometres as number, 6);
    }
    for (const number of [320, 400, 600]) {
      expect(gradeOf('P', number)?.micrometres).toBeGreaterThan(1.3 * (gradeOf('ANSI', number)?.micrometres as number));
    }
  });
  test('both printed pairs are kept where texts disagree', () => {
    const printed = equivalents(gradeOf('ANSI', 400) as (typeof grades)[number]).printed;
    expect(printed.map((pair) => pair.grade).sort((a, b) => a - b)).toEqual([600, 800]);
  });
  test('usual and wet grits are grades', () => {
    for (const number of [...usualGrits, ...wetGrits]) expect(gradeOf('P', number)).toBeDefined();
  });
  test.each([
    ['P120', 'P', 'P120'],
    ['p 120', 'ANSI', 'P120'],
    ['120', 'P', 'P120'],
    [' 120 ', 'ANSI', 'ANSI 120'],
    ['ANSI 400', 'P', 'ANSI 400'],
    ['us-400', 'P', 'ANSI 400'],
  ] as const)('%j is read', (text, bare, id) => {
    expect(readGrade(text, bare)).toMatchObject({ ok: true, value: { id } });
  });
  test.each(['', 'fine', 'P', 'P121', '-5', 'P99999', '0'])('%j is refused with the nearest or a form', (text) => {
    const read = readGrade(text, 'P');
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.wayOut).toMatch(/P\d+/);
  });
});
