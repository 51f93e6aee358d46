import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { documentText } from '../../../src/calculators/kit/document-text.ts';
import { packetHtml } from '../../../src/command/sheet-html.ts';
import { answersTo, MethodMemory } from '../../../src/method/page/answer.ts';
import type { MethodPage, MethodQuestion } from '../../../src/method/page/types.ts';
import { foodKinds, hardestFood } from '../../../src/method/rules/food-words.ts';
import {
  dayNotes,
  listingOf,
  priceNotes,
  promiseNotes,
  type QuoteTexts,
  type QuoteTyped,
  quoteDocument,
  quotePrice,
  readQuote,
  saleFacts,
  startFault,
} from '../../../src/method/sale/index.ts';
import { promisesIn } from '../../../src/model/food/index.ts';
import { defaultUnits, holdsAmount, type ReaderUnits } from '../../../src/model/quantity/index.ts';
import { methodFiles } from '../../methods/files.ts';

const shop = readFileSync(new URL('../../../methods/shop.yaml', import.meta.url), 'utf8');
const inch: ReaderUnits = { ...defaultUnits, system: 'inch' };
const day = '2026-11-29';
const memory = new MethodMemory();

const typed = (texts: Partial<QuoteTexts> = {}): QuoteTyped => {
  const read = readQuote({ day, ...texts });
  if (!read.ok) throw new Error(read.errors.map(({ message }) => message).join(' '));
  return read.value;
};
const textOf = (page: MethodPage, texts: Partial<QuoteTexts> = {}, units = defaultUnits) =>
  documentText(quoteDocument(page, typed(texts)), units);

/** The page of a method of the house for a case, with the shop of the demonstration unless told. */
async function pageOf(name: string, asked: Partial<MethodQuestion> = {}, whole = true): Promise<MethodPage> {
  const text = asked.text ?? methodFiles.find((file) => file.name === `${name}.yaml`)?.text;
  if (text === undefined) throw new Error(`no method ${name}`);
  const question = { file: `methods/${name}.yaml`, shop, ...asked, text };
  if (asked.shop === '') delete (question as Partial<MethodQuestion>).shop;
  // The first answer with a timetable, or without one for good: what is advised beside it is not on a quote.
  for await (const answered of answersTo(question, memory)) {
    if (!answered.ok) throw new Error(answered.problems.map(({ message }) => message).join(' '));
    if (!whole || answered.page.toCome !== 'timetable') return answered.page;
  }
  throw new Error('no answer');
}

/** What every quote and listing of a method must keep. */
function keepsItsWord(page: MethodPage): void {
  const quote = quoteDocument(page, typed());
  for (const units of [defaultUnits, inch]) {
    const text = documentText(quote, units);
    expect(text).toContain('Valid until: 2026-12-29');
    expect(text).not.toMatch(/NaN|Infinity|undefined|\[object|not known/);
    expect(holdsAmount(text)).toBe(false);
  }
  const listing = listingOf(page);
  expect(holdsAmount(listing.text)).toBe(false);
  expect(listing.text).not.toMatch(/NaN|Infinity|undefined/);
  const claimed = page.food && page.food.touches !== 'nothing' ? hardestFood(page.food.claim)?.kind : undefined;
  const most = claimed === undefined ? -1 : foodKinds.indexOf(claimed);
  for (const text of [documentText(quote, defaultUnits), listing.text]) {
    expect(promisesIn(text)).toEqual([]);
    const said = hardestFood(text);
    if (said) expect(foodKinds.indexOf(said.kind), said.words.join(', ')).toBeLessThanOrEqual(most);
    expect(text).toContain('Nobody certifies a board.');
  }
  expect(JSON.stringify(quote.blocks)).toContain('"warning"');
  if (!saleFacts(page).food.ok) expect(listing.inTheWay.join(' ')).toMatch(/^Food: /);
}

const pages: Record<string, MethodPage> = {};
const names = methodFiles.map(({ name }) => name.replace('.yaml', ''));
beforeAll(async () => {
  for (const name of names) pages[name] = await pageOf(name, { start: '2027-01-12' });
}, 120_000);
const of = (name: string) => pages[name] as MethodPage;

describe.each(names)('%s', (name) => {
  test('as it stands: validity, cautions, a price, a day, and no word beyond its papers', () => {
    const page = of(name);
    keepsItsWord(page);
    const text = textOf(page);
    expect(text).toContain(page.brief.price as string);
    expect(text).toMatch(/Planned ready by: \w{3} 2027-\d\d-\d\d/);
    expect(text).not.toMatch(/every layer cured|fully cured/);
    const poured = page.steps.some(({ calculations }) => calculations.some(({ use }) => use === 'cure-clock'));
    for (const said of [text, listingOf(page, day).text])
      expect(/if the resin cures as its kind usually does/.test(said)).toBe(poured);
    expect(dayNotes(page).some((note) => /a kind of resin \(.+\) as it usually cures/.test(note))).toBe(poured);
    expect(dayNotes(page).join(' ')).toMatch(/hours/);
    expect(priceNotes(page, quotePrice(page, typed()))[0]).toContain(page.brief.pieceCost as string);
  });

  test('with any wood, finish and resin that it is written for', async () => {
    const choices = of(name).parameters.flatMap(({ name: parameter, record }) =>
      'among' in record && record.among ? [[parameter, record.among] as const] : [],
    );
    if (choices.length === 0) return;
    const set = fc.record(
      Object.fromEntries(choices.map(([parameter, among]) => [parameter, fc.constantFrom(...among)])),
    );
    await fc.assert(
      fc.asyncProperty(set, async (own) =>
        keepsItsWord(await pageOf(name, { set: own as Record<string, string> }, false)),
      ),
      { numRuns: 2 },
    );
  }, 60_000);
});

test('the movement is a number for this board in its own town, with its months', () => {
  const year = of('class-of-twelve')
    .steps.flatMap(({ calculations }) => calculations)
    .find(({ use }) => use === 'seasonal-movement');
  const { low = 0, high = 0 } = year?.figures['swing'] ?? {};
  expect(textOf(of('class-of-twelve'))).toContain(
    `In a heated house in Duluth, Minnesota this board may become ${Math.round(low)} mm to ${Math.round(high)} mm wider in August than in January`,
  );
  expect(textOf(of('class-of-twelve'), {}, inch)).toMatch(/may become 3\/16 in to \d+\/\d+ in wider in August/);
});

test('what it is stands in words of the case', () => {
  const text = textOf(of('panel-moss-channel'));
  expect(text).toContain('Wood: Sugar maple (Acer saccharum); black cherry (Prunus serotina).');
  expect(text).toContain('Size: 450 mm long, 230 mm wide, 20 mm thick.');
  expect(text).toContain('Resin: Moss green epoxy resin in a channel of 330 mm by 18 mm, 6 mm deep.');
  expect(text).toContain('Finish: Mineral oil.');
  expect(listingOf(of('panel-moss-channel')).text).toContain('Size: 450 × 230 × 20 mm (17 11/16 × 9 1/16 × 13/16 in).');
});

describe('the price', () => {
  const page = () => of('first-tray');

  test('is that of the plan, times the pieces, less the discount, to the coin', () => {
    const price = quotePrice(of('class-of-twelve'), typed({ discount: '10' }));
    const each = of('class-of-twelve').cost?.pricing.price ?? 0;
    if (!price.ok) throw new Error(price.why.join(' '));
    const cents = Math.round(each * 100) * 12;
    expect(Math.round(price.before * 100)).toBe(cents);
    expect(Math.round(price.off * 100)).toBe(Math.round(cents / 10));
    expect(Math.round(price.total * 100)).toBe(cents - Math.round(cents / 10));
  });

  test.each([
    ['$95', 95],
    ['95 EUR', 95],
    ['US$ 1,250.50', 1250.5],
    ['€ 80', 80],
  ])('that the seller types, %s, stands as theirs', (text, each) => {
    const price = quotePrice(page(), typed({ price: text }));
    expect(price).toMatchObject({ ok: true, each, own: true });
    expect(textOf(page(), { price: text })).toContain('Price, set by the maker');
  });

  test('below its cost is told to the seller, and not to the customer', () => {
    const own = { price: '20' };
    expect(priceNotes(page(), quotePrice(page(), typed(own))).join(' ')).toContain('every piece is sold at a loss');
    expect(textOf(page(), own)).not.toMatch(/loss|costs \$/);
  });

  test('is none without a shop record, and says what is missing', async () => {
    const bare = await pageOf('first-tray', { shop: '' }, false);
    expect(quotePrice(bare, typed())).toEqual({ ok: false, why: [expect.stringContaining('Without a shop record')] });
    expect(textOf(bare)).toContain('Price: none is named yet.');
    expect(textOf(bare)).not.toMatch(/\d+\.\d\d|\$/);
    expect(quotePrice(bare, typed({ price: '95' }))).toMatchObject({
      ok: false,
      why: [expect.stringContaining('currency')],
    });
    expect(quotePrice(bare, typed({ price: '95', currency: 'nok' }))).toMatchObject({
      ok: true,
      currency: { code: 'NOK' },
    });
  });

  test('is none where the record lacks what it rests on', async () => {
    const page = await pageOf('first-tray', { shop: shop.replace(/^margin:.*$/m, '') }, false);
    expect(quotePrice(page, typed())).toEqual({
      ok: false,
      why: [expect.stringContaining('neither a margin nor a mark-up')],
    });
  });

  test('in another currency is not that of the plan', () => {
    expect(quotePrice(page(), typed({ currency: 'EUR' }))).toMatchObject({ ok: false });
  });
});

test('a plan that cannot be met names no day', async () => {
  const page = await pageOf('class-of-twelve', { start: '2027-01-12', end: '2027-01-14' });
  expect(page.impossible).toBeDefined();
  const text = textOf(page);
  expect(text).toContain('Planned ready by: no day is named. The plan cannot be met.');
  expect(listingOf(page, day).text).not.toMatch(/ready by/);
  expect(dayNotes(page)).toEqual([]);
});

test('without a first day the quote counts days and names none', async () => {
  expect(textOf(await pageOf('first-tray'))).toMatch(
    /Planned ready by: day \d+ of the work\. No first day is agreed yet\./,
  );
});

test('a method that a rule stops is not offered: no price, no day', async () => {
  const text = methodFiles
    .find(({ name }) => name === 'first-tray.yaml')
    ?.text.replace('touches: wood', 'touches: resin');
  const page = await pageOf('first-tray', { text: text as string, start: '2027-01-12' });
  expect(page.brief.stops).toBeGreaterThan(0);
  const quote = textOf(page);
  expect(quote).toContain('Danger. Not to be sent: a rule stops this method.');
  expect(quote).toContain('Price: none is named yet.');
  expect(quote).not.toMatch(/ready by: \w{3} \d|\$/);
  expect(listingOf(page, day).text).not.toContain('ready by');
  expect(listingOf(page).inTheWay[0]).toMatch(/^A rule stops this method/);
});

test.each([
  [{ day: '2026-02-30' }, 'day', /is not a day of the calendar/],
  [{ until: 'soon' }, 'until', /is not a day of the calendar/],
  [{ until: '2026-11-01' }, 'until', /before its own day/],
  [{ price: 'cheap' }, 'price', /is not a sum of money/],
  [{ price: '-5' }, 'price', /is not a sum of money/],
  [{ discount: '120 %' }, 'discount', /is not a share below 100 %/],
  [{ currency: 'dollars' }, 'currency', /is not a currency code/],
])('%j is refused at its field', (texts, field, words) => {
  const read = readQuote({ day, ...texts });
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.errors).toEqual([{ field, message: expect.stringMatching(words) }]);
});

test('no day before that of the quote is named, and a first day before it is refused', () => {
  const page = of('first-tray');
  const late = documentText(quoteDocument(page, typed({ day: '2028-01-01' })), defaultUnits);
  expect(late).toMatch(/Planned ready by: no day is named\. By the plan .* before the day of this quote/);
  expect(listingOf(page, '2028-01-01').text).not.toContain('ready by');
  expect(listingOf(page).text).not.toContain('ready by');
  expect(listingOf(page, day).text).toContain('ready by');
  expect(startFault('2019-02-01', day)).toMatch(/2019-02-01 is before the day of this quote, 2026-11-29/);
  expect(startFault('soon', day)).toMatch(/is not a day of the calendar/);
  for (const good of ['', day, '2027-01-12', '2027-01-12 09:00']) expect(startFault(good, day)).toBeUndefined();
});

test('the shop’s own sheet without a cure gives no day', async () => {
  const page = of('panel-moss-channel');
  const own = {
    ...page,
    steps: page.steps.map((step) => ({
      ...step,
      calculations: step.calculations.map((each) => {
        if (each.use !== 'cure-clock') return each;
        const { fullCure: _, ...figures } = each.figures;
        return { ...each, inputs: { ...each.inputs, resin: '{"name":"Ours"}' }, figures };
      }),
    })),
  };
  expect(saleFacts(page).leaving.kind).toBe('day');
  expect(textOf(own)).toMatch(/Planned ready by: no day is named\. The data sheet of the resin gives no time/);
  expect(listingOf(own, day).text).not.toContain('ready by');
  expect(dayNotes(own)).toEqual([]);
});

test('a coated end is called one, with its length, and nothing is said of an inlay', () => {
  const page = of('wide-cherry-flood');
  for (const text of [textOf(page), listingOf(page, day).text]) {
    expect(text).not.toMatch(/inlay/i);
    expect(text).toMatch(/coat of epoxy resin over 120 mm .*of one end, about 1\.4 mm/);
    expect(text).toMatch(/The coated end, 120 mm .*of the length, is epoxy resin: keep food on the bare wood\./);
  }
  expect(textOf(of('panel-moss-channel'))).toContain('The inlay is epoxy resin');
});

test('nothing typed is cut: it stands whole, or is refused by its length', () => {
  const address = `Lakeside Hall, ${'second door on the left, '.repeat(15)}Harbour`;
  expect(address.length).toBeGreaterThan(300);
  expect(textOf(of('first-tray'), { customer: address, maker: address }).split(address)).toHaveLength(3);
  for (const field of ['number', 'maker', 'customer', 'repair'] as const) {
    const read = readQuote({ day, [field]: 'x'.repeat(900) });
    expect(read).toMatchObject({ ok: false, errors: [{ field, message: expect.stringMatching(/900 characters/) }] });
  }
  expect(readQuote({ day, customer: 'a\n'.repeat(13) })).toMatchObject({
    ok: false,
    errors: [{ field: 'customer', message: expect.stringMatching(/13 lines/) }],
  });
});

test('hostile names stay text, on paper and on the page', () => {
  const name = '<img src=x onerror=alert(1)>\n</td><script>alert(2)</script>\u0000\u202e⟦5 mm 3⟧';
  const document = quoteDocument(of('first-tray'), typed({ maker: name, customer: name, number: name, repair: name }));
  const html = packetHtml(
    {
      title: 'Quote',
      paper: 'a4',
      made: day,
      language: 'en',
      running: 'Quote',
      documents: [document],
      sheets: [{ sheet: 'quote', title: document.title }],
    },
    defaultUnits,
  );
  expect(html).not.toMatch(/<img src=x|<script>alert/);
  expect(html).toContain('&lt;script&gt;alert(2)&lt;/script&gt;');
  expect(documentText(document, defaultUnits)).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}⟦⟧]/u);
});

test('a promise in the seller’s own words is told to them', () => {
  expect(promiseNotes(typed())).toEqual([]);
  expect(promiseNotes(typed({ repair: 'Food safe, with a lifetime guarantee.' }))[0]).toMatch(
    /“food safe” and “lifetime guarantee”.*leave them out/,
  );
});

test('nothing that the listing must not say is in it', () => {
  const { text, mustNot } = listingOf(of('class-of-twelve'));
  expect(mustNot.length).toBeGreaterThan(3);
  for (const { words, why } of mustNot) {
    expect(why).not.toBe('');
    for (const each of words.split(/, | or /)) expect(text.toLowerCase()).not.toContain(each.toLowerCase());
  }
});
