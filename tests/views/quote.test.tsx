import { readdirSync, readFileSync } from 'node:fs';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { sheetsWords } from '../../src/calculators/view/DocumentLabels.tsx';
import { packetOf } from '../../src/method/documents/index.ts';
import { answerNumbers } from '../../src/method/page/answer.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { quoteDocument, readQuote } from '../../src/method/sale/index.ts';
import { labelGrids } from '../../src/model/outline/label-grids.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { ForSale } from '../../src/site/sale/ForSale.tsx';
import { QuoteForm } from '../../src/site/sale/QuoteForm.tsx';
import { caseErrors } from '../../src/site/sale/QuotePage.tsx';
import { Sheet } from '../../src/site/sheets/Sheet.tsx';

const methodFiles = readdirSync('methods')
  .filter((name) => name.endsWith('.yaml') && name !== 'shop.yaml')
  .map((name) => ({ name, text: readFileSync(`methods/${name}`, 'utf8') }));

let page: MethodPage;
beforeAll(async () => {
  const read = (name: string) => readFileSync(`methods/${name}.yaml`, 'utf8');
  const answered = await answerNumbers({
    text: read('first-tray'),
    file: 'methods/first-tray.yaml',
    shop: read('shop'),
  });
  if (!answered.ok) throw new Error('first-tray');
  page = answered.page;
}, 60_000);
afterEach(cleanup);

test('a hostile name stands on the quote as it was typed, and is no element', () => {
  const name = '<img src=x onerror="alert(1)"><b>A. Buyer</b>';
  const read = readQuote({ day: '2026-11-29', customer: name, maker: name });
  if (!read.ok) throw new Error('quote');
  const { container } = render(<Sheet document={quoteDocument(page, read.value)} units={defaultUnits} paper="a4" />);
  expect(container.querySelector('img, b')).toBeNull();
  expect(container.textContent).toContain(name);
});

test('every field has its name, and what is wrong stands beside it', () => {
  render(
    <QuoteForm
      texts={{ day: '2026-11-29', price: 'cheap' }}
      pieces=""
      start=""
      usual={page}
      errors={[{ field: 'price', message: 'That is no sum.' }]}
      lasting={true}
      onText={() => undefined}
      onCase={() => undefined}
    />,
  );
  const price = screen.getByLabelText('Price of a piece, if your own');
  expect(price.getAttribute('aria-invalid')).toBe('true');
  expect(document.getElementById(price.getAttribute('aria-describedby')?.split(' ').at(-1) ?? '')?.textContent).toBe(
    'That is no sum.',
  );
  expect(price.getAttribute('placeholder')).toBe(page.brief.price);
  for (const field of document.querySelectorAll('input, textarea'))
    expect((field as HTMLInputElement).labels).toHaveLength(1);
});

test('the listing stands beside what it must not say, and why', () => {
  render(<ForSale page={page} units={defaultUnits} />);
  expect(screen.getByLabelText('Text of the listing').textContent).toMatch(/^Serving tray with round corners/);
  expect(screen.getByText('“food safe”').nextElementSibling?.textContent).toMatch(/No rule gives a board these words/);
  expect(screen.getAllByText(/Made on/).length).toBeGreaterThan(0);
});

test.each(methodFiles.map(({ name, text }) => [name, text] as const))(
  '%s: no document, label or listing shows a mark of a quantity',
  async (name, text) => {
    const shop = readFileSync('methods/shop.yaml', 'utf8');
    const answered = await answerNumbers({ text, file: `methods/${name}`, shop });
    if (!answered.ok) throw new Error(name);
    const read = readQuote({ day: '2026-11-29' });
    if (!read.ok) throw new Error('quote');
    const { documents } = packetOf(answered.page, { paper: 'a4', made: '2026-11-29', quote: read.value });
    for (const units of [defaultUnits, { ...defaultUnits, system: 'inch' as const }]) {
      const { container } = render(
        <>
          <ForSale page={answered.page} units={units} day="2026-11-29" />
          {documents.map((each) => (
            <Sheet key={each.id} document={each} units={units} paper="a4" />
          ))}
        </>,
      );
      expect(container.textContent?.length).toBeGreaterThan(1000);
      expect(container.innerHTML).not.toMatch(/[⟦⟧]/);
      cleanup();
    }
  },
  60_000,
);

test('wrong pieces and days are told at their fields, without a file or a name of the record', () => {
  const message = '0 pieces were asked for, and the method is written for 1 to 6. Give a whole number in that range.';
  expect(caseErrors('', '2026-11-29', [], [{ field: 'makes.pieces', message }])).toEqual([
    { field: 'pieces', message },
  ]);
  const typed = [{ field: 'pieces', message: '“abc” is not a whole number. Give one, such as 6.' }];
  expect(caseErrors('', '2026-11-29', typed, [])).toEqual(typed);
  expect(caseErrors('2019-02-01', '2026-11-29', [], [])).toEqual([
    { field: 'start', message: expect.stringContaining('before the day of this quote') },
  ]);
  const props = { texts: { day: '2026-11-29' }, start: '', usual: page, lasting: true };
  const nothing = () => undefined;
  render(<QuoteForm {...props} pieces="abc" errors={typed} onText={nothing} onCase={nothing} />);
  const field = screen.getByLabelText('Pieces');
  expect(field.getAttribute('aria-invalid')).toBe('true');
  expect(field.parentElement?.textContent).toContain('“abc” is not a whole number');
});

test('labels say how many sheets they take', () => {
  const grid = labelGrids[0];
  if (!grid) throw new Error('grid');
  const each = grid.columns * grid.rows;
  expect(sheetsWords({ grid, start: 1, count: each, typed: {} })).toBe(`${each} labels on 1 sheet.`);
  expect(sheetsWords({ grid, start: 2, count: each, typed: {} })).toBe(`${each} labels on 2 sheets.`);
});
