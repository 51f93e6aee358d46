import { strFromU8, unzipSync } from 'fflate';
import Papa from 'papaparse';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { calculators } from '../../../src/calculators/index.ts';
import { answer } from '../../../src/calculators/kit/answer.ts';
import { csvOf, plainCell } from '../../../src/calculators/kit/csv.ts';
import { sheetNames, spreadsheetOf } from '../../../src/calculators/kit/spreadsheet.ts';
import { takenName, takenTables } from '../../../src/calculators/kit/take-away.ts';
import type { TakenTable } from '../../../src/calculators/kit/taken-tables.ts';
import { resinDoseCalculator } from '../../../src/calculators/resin-dose/calculator.ts';
import type { Result } from '../../../src/model/evidence/index.ts';
import { defaultUnits, holdsAmount, type ReaderUnits } from '../../../src/model/quantity/index.ts';
import { sample } from './sample.ts';

const inch: ReaderUnits = { ...defaultUnits, system: 'inch' };
const read = (csv: string) => Papa.parse<string[]>(csv.trimEnd(), { delimiter: ',' });

function tablesOf(
  calculator: (typeof calculators)[number],
  inputs: Readonly<Record<string, unknown>>,
  units = defaultUnits,
  change: (result: Result) => Result = (result) => result,
): TakenTable[] {
  const outcome = answer(calculator, inputs);
  if (!outcome.ok) throw new Error(outcome.errors.map(({ message }) => message).join(' '));
  return takenTables({
    calculator,
    inputs,
    result: change(outcome.value.result),
    units,
    day: '2026-11-29',
    address: 'https://boards.example/calculators/sample?width=300+mm',
  });
}

/** A row of the first table by what stands under `What`. */
const rowOf = (table: TakenTable | undefined, what: string) => {
  const found = table?.rows.find((row) => row[1] === what);
  return Object.fromEntries((table?.headings ?? []).map((heading, at) => [heading, found?.[at] ?? null]));
};

describe.each(calculators.map((calculator) => ({ id: calculator.id, calculator })))('$id', ({ calculator }) => {
  test.each([
    ['metric', defaultUnits],
    ['inch', inch],
  ] as const)(
    'its %s example: a reader of CSV gets every table back whole, one table a file',
    async (system, units) => {
      const tables = tablesOf(calculator, calculator.example[system], units);
      expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length);
      for (const { headings, rows } of tables) {
        const parsed = read(csvOf({ headings, rows }));
        expect(parsed.errors).toEqual([]);
        expect(new Set(headings).size).toBe(headings.length);
        const [first, ...others] = parsed.data;
        expect(first).toEqual([...headings]);
        expect(others).toHaveLength(rows.length);
        for (const [at, cells] of others.entries()) {
          expect(cells).toHaveLength(headings.length);
          for (const [place, text] of cells.entries()) {
            const value = rows[at]?.[place] ?? null;
            if (typeof value === 'number') expect(Number(text)).toBe(value);
            else expect(text).toBe(value === null ? '' : plainCell(value));
            expect(holdsAmount(text) || /NaN|Infinity|undefined|\[object/.test(text)).toBe(false);
            // Twelve digits are noise of arithmetic, not knowledge.
            if (typeof value === 'number')
              expect(text.replace(/^-?0*\.?0*|\.|0+$/g, '').length, text).toBeLessThanOrEqual(6);
          }
        }
      }
    },
  );
});

test('what was asked stands before what came of it: in words, with day and address', () => {
  const [table] = tablesOf(sample, { width: '30 cm', length: '600', face: 'both' });
  expect(table?.title).toBe('Sample');
  expect(rowOf(table, 'Day').Value).toBe('2026-11-29');
  expect(rowOf(table, 'Address of this answer').Value).toContain('https://boards.example/');
  expect(rowOf(table, 'Width')).toMatchObject({ Part: 'Question', Value: 300, Unit: 'mm', 'In words': '30 cm' });
  expect(rowOf(table, 'Length')).toMatchObject({ Value: 600, Unit: 'mm', 'In words': '600 mm' });
  expect(rowOf(table, 'Face')).toMatchObject({ Value: 'Both faces', 'In words': 'both' });
  expect(rowOf(table, 'Area')).toMatchObject({
    Part: 'Figure',
    Value: 3600,
    Unit: 'cm²',
    'Unit code (UCUM)': 'cm2',
    'How it is known': 'derived',
  });
});

test('a reader in inches gets inches, and resin in grams that can be added up', () => {
  const [table] = tablesOf(sample, { width: '300 mm', length: '600 mm' }, inch);
  expect(rowOf(table, 'Width')).toMatchObject({ Value: 11.811, Unit: 'in', 'Unit code (UCUM)': '[in_i]' });
  const tables = tablesOf(resinDoseCalculator, resinDoseCalculator.example.inch, inch);
  const [dose] = tables;
  const masses = ['Mix in all', 'Part A, resin', 'Part B, hardener'].map((what) => rowOf(dose, what));
  expect(masses.map(({ Unit }) => Unit)).toEqual(['g', 'g', 'g']);
  const [all, partA, partB] = masses.map(({ Value }) => Number(Value));
  expect(Math.abs((all ?? 0) - (partA ?? 0) - (partB ?? 0))).toBeLessThan(1);
  const uses = tables.find(({ id }) => id === 'uses');
  expect(uses?.rows.filter((row) => /lb|oz/.test(`${row[2]}`))).toEqual([]);
});

test.each([
  [952.9537500000002, 4, 953],
  [1234567, 3, 1230000],
  [0.000123456, 2, 0.00012],
  [0, 3, 0],
  [-0.4, 1, -0.4],
])('%d to %d digits is written %d', (value, digits, expected) => {
  const change = (result: Result): Result => ({
    ...result,
    figures: { area: { label: 'Area', unit: '1', basis: 'derived', value, digits } },
  });
  const [table] = tablesOf(sample, { width: '300 mm', length: '600 mm' }, defaultUnits, change);
  expect(rowOf(table, 'Area').Value).toBe(expected);
});

/** Texts that a spreadsheet would work out, or that would break out of a cell. */
const hostile = [
  '=HYPERLINK("https://evil.example","look")',
  '+1+cmd|calc!A0',
  '-2+3',
  '@SUM(1)',
  '\t=1+1',
  '\r=1+1',
  ' =1+1',
  '＝1+1',
  'a","=1+1","b',
  'line one\r\n=1+1',
  '<script>alert(1)</script>',
  '\u0000\u001b[31m',
  '\ud800',
];

test.each(hostile)('a text that was typed is never a formula: %j', async (text) => {
  const change = (result: Result): Result => ({
    ...result,
    verdict: { level: 'care', text },
    tables: [{ id: 't', title: text, columns: [{ id: 'c', label: text }], rows: [[text], [-5]], basis: 'derived' }],
  });
  const tables = tablesOf(sample, { width: '300 mm', length: '600 mm' }, defaultUnits, change);
  for (const table of tables) {
    const { data, errors } = read(csvOf(table));
    expect(errors).toEqual([]);
    expect(data).toHaveLength(table.rows.length + 1);
    for (const cell of data.flat()) expect(cell).not.toMatch(/^\s*[=+@＝]|^\s*-(?!\d+(\.\d+)?$)/);
  }
  const numbers = read(csvOf(tables[1] as TakenTable)).data.at(-1);
  expect(numbers?.[0]).toBe('-5');
  const sheets = unzipSync(await spreadsheetOf(tables));
  for (const [name, bytes] of Object.entries(sheets)) {
    if (!name.endsWith('.xml')) continue;
    const xml = strFromU8(bytes);
    expect(xml).not.toMatch(/<f[ >]|<script/);
    expect(() => new SaxesParser({ xmlns: true }).write(xml).close(), name).not.toThrow();
  }
});

test('a spreadsheet has a sheet for each table, numbers as numbers', async () => {
  const tables = tablesOf(resinDoseCalculator, resinDoseCalculator.example.metric);
  const files = unzipSync(await spreadsheetOf(tables));
  const text = (name: string) => strFromU8(files[name] ?? new Uint8Array());
  const sheets = [...text('xl/workbook.xml').matchAll(/<sheet [^>]*name="([^"]+)"/g)].map(([, name]) => name);
  expect(sheets).toEqual(sheetNames(tables.map(({ title }) => title)).map((name) => name.replaceAll('&', '&amp;')));
  const first = text('xl/worksheets/sheet1.xml');
  expect([...first.matchAll(/<row /g)]).toHaveLength((tables[0]?.rows.length ?? 0) + 1);
  const mix = rowOf(tables[0], 'Mix in all').Value;
  expect(first).toMatch(new RegExp(`<c [^>]*><v>${mix}</v></c>`));
});

test('names of sheets and files', () => {
  const names = sheetNames(['Cups', 'cups', 'A/B: [x]*?', 'x'.repeat(60), `${'x'.repeat(60)}y`, '']);
  expect(names).toEqual(['Cups', 'cups 2', 'A B x', 'x'.repeat(31), `${'x'.repeat(29)} 2`, 'Sheet']);
  expect(takenName('resin-dose', '2026-11-29', 'answer', 'csv')).toBe('resin-dose-2026-11-29.csv');
  expect(takenName('resin-dose', '2026-11-29', 'cups', 'csv')).toBe('resin-dose-2026-11-29-cups.csv');
});
