import { readFileSync } from 'node:fs';
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, beforeAll, expect, test } from 'vitest';
import { answerNumbers } from '../../src/method/page/answer.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { quoteDocument, readQuote } from '../../src/method/sale/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { ForSale } from '../../src/site/sale/ForSale.tsx';
import { QuoteForm } from '../../src/site/sale/QuoteForm.tsx';
import { Sheet } from '../../src/site/sheets/Sheet.tsx';

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
