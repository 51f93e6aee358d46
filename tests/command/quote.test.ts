import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { afterAll, expect, test } from 'vitest';
import { kerf } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'kerf-quote-'));
afterAll(() => rmSync(folder, { recursive: true }));

const tray = ['sheet', 'methods/first-tray.yaml', '--shop', 'methods/shop.yaml', '--start', '2027-01-12'] as const;
const from = ['--maker', 'Lakeside workshop; 1 Pier Road', '--customer', 'A. <b>Buyer</b>', '--number', '7'] as const;

test('--only quote writes a quote that goes to a customer, on one sheet', async () => {
  const file = join(folder, 'quote.html');
  const told = await kerf(...tray, '--only', 'quote', ...from, '--date', '2026-11-29', '-o', file);
  expect(told).toMatchObject({ code: 0, err: '', out: `${file}: Quote 7\n` });
  const html = readFileSync(file, 'utf8');
  expect(html).toMatch(/1 Pier Road[\s\S]*2026-12-29/);
  expect(html).toContain('A. &lt;b&gt;Buyer&lt;/b&gt;');
  expect(html).not.toMatch(/with a teacher beside them|Steps: tick/);
  const pdf = join(folder, 'quote.pdf');
  for (const paper of ['a4', 'letter']) {
    await kerf(...tray, '--only', 'quote', ...from, '--paper', paper, '--units', 'inch', '-o', pdf);
    expect((await PDFDocument.load(readFileSync(pdf))).getPageCount()).toBe(1);
  }
}, 60_000);

test('a packet for the bench has no quote in it', async () => {
  const { out } = await kerf(...tray, '-o', join(folder, 'packet.html'));
  expect(out).not.toContain('Quote');
}, 30_000);

test('.txt is the text of a listing', async () => {
  const file = join(folder, 'listing.txt');
  expect(await kerf(...tray, '-o', file)).toMatchObject({ code: 0, err: '' });
  expect(readFileSync(file, 'utf8')).toMatch(
    /^Serving tray with round corners\n\nWood: sugar maple \(Acer saccharum\)\./,
  );
  const { code, err } = await kerf('sheet', 'methods/making-a-template.yaml', '-o', file);
  expect(code).toBe(1);
  expect(err).toMatch(/Food: The method asks for no label/);
}, 30_000);

test.each([
  [['--price', 'cheap'], /--price: “cheap” is not a sum of money\. Write the number/],
  [['--until', '2020-01-01', '--date', '2026-11-29'], /--until: The quote would end on 2020-01-01, before its own day/],
])('%j is refused in words', async (options, words) => {
  const { code, err } = await kerf(...tray, '--only', 'quote', '-o', join(folder, 'q.pdf'), ...options);
  expect(code).toBe(2);
  expect(err).toMatch(words);
});
