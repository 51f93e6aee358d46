import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, expect, test } from 'vitest';
import { kerf } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'kerf-take-'));
afterAll(() => rmSync(folder, { recursive: true }));

const dose = ['calc', 'resin-dose', '--json', '{"resin":"slow-casting-2-1","volume":"250 ml","depth":"6 mm"}'] as const;

test('a table of an answer is printed as CSV, in the units that were asked for', async () => {
  const { code, out } = await kerf(...dose, '--table', 'answer', '--units', 'inch');
  expect(code).toBe(0);
  expect(out).toMatch(/^Part,What,Value,Unit,/);
  expect(out).toMatch(/\r\nQuestion,Depth,0\.23622,in,,,\[in_i\],given,6 mm\r\n/);
});

test('-o writes a table or a spreadsheet', async () => {
  const csv = join(folder, 'cups.csv');
  expect(await kerf(...dose, '--table', 'uses', '-o', csv)).toMatchObject({ code: 0, err: '' });
  expect(readFileSync(csv, 'utf8')).toMatch(/^\ufeffWhat,Amount,Unit,/);
  const xlsx = join(folder, 'dose.xlsx');
  const { out } = await kerf(...dose, '-o', xlsx);
  expect(out).toBe(`${xlsx}: Resin dose\n`);
  expect(strFromU8(unzipSync(readFileSync(xlsx))['xl/workbook.xml'] ?? new Uint8Array())).toContain('Resin dose');
});

test.each([
  [['--table', 'cupz'], /--table “cupz”: this answer has no such table; it has answer, .*uses\. Did you mean cups\?/],
  [['-o', 'dose.pdf'], /-o dose\.pdf does not end in \.csv or \.xlsx/],
  [['--table', 'answer', '--units', 'cubits'], /“cubits” is not a system of units/],
  [['-o', join('no', 'such', 'folder', 'a.csv')], /a\.csv cannot be written: .* Name another file with -o\./],
])('%j is refused in words', async (args, words) => {
  const { code, err } = await kerf(...dose, ...args);
  expect(code).toBe(2);
  expect(err).toMatch(words);
});
