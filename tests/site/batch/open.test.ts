import { expect, test } from 'vitest';
import { batchesText, readBatches } from '../../../src/method/batch/record.ts';
import { readCalendar } from '../../../src/method/page/read-calendar.ts';
import { readMethod } from '../../../src/method/read.ts';
import { newBatch } from '../../../src/site/batch/open.ts';
import { notInLinks, saleAddress, stepAddress } from '../../../src/site/batch/step-address.ts';
import { readCalendarTexts, readMethodTexts } from '../../../src/store/index.ts';

const text = readMethodTexts().find(({ id }) => id === 'class-of-twelve')?.text ?? '';
const method = { file: 'methods/class-of-twelve.yaml', text };
const taught = readMethod(text, method.file).record?.taught;
const calendars = readCalendarTexts().map(readCalendar);
const named = { calendars, ...(taught ? { taught } : {}) };
const open = (query: string) =>
  newBatch(method, 'Spring class', new URLSearchParams(query), Date.parse('2027-01-02T09:00:00Z'), undefined, named);

test('a batch that was opened in named hours is read again as it was written', () => {
  const batch = open('pieces=11&calendar=six-tuesdays');
  expect(batch.case.hours?.sessions?.length).toBeGreaterThan(5);
  const read = readBatches(batchesText([batch]), 'batches.json');
  expect(read).toEqual({ ok: true, batches: [batch] });
});

test('its links name its hours, so that whoever follows one elsewhere reckons with the same', () => {
  const batch = open('pieces=11&calendar=six-tuesdays');
  expect(stepAddress(batch, 'sand')).toBe(
    `/methods/class-of-twelve?pieces=11&start=${batch.case.start}&people=${batch.case.people}&calendar=six-tuesdays#step-sand`,
  );
  expect(new URL(saleAddress(batch) ?? '', 'http://site').searchParams.get('calendar')).toBe('six-tuesdays');
});

test('one that was opened in the hours of the shop names none', () => {
  expect(stepAddress(open('pieces=11'), 'sand')).toBe('/methods/class-of-twelve?pieces=11#step-sand');
});

test('what earlier versions wrote of a class is read still', () => {
  const batch = open('pieces=11&calendar=six-tuesdays');
  const before = { ...batch, case: { ...batch.case, first: '2027-02-09 18:30-21:00' } };
  expect(readBatches(batchesText([before]), 'batches.json')).toMatchObject({ ok: true });
});

test('what a batch keeps and no link carries is said: a shop record with its hours, or hours without a name', () => {
  const method = { file: 'methods/first-tray.yaml', text: '' };
  const hours = { zone: 'UTC', week: { mon: ['09:00-17:00'] } };
  const said = (kept: object, file = method.file) => notInLinks({ method: { ...method, file }, case: kept });
  expect(said({ pieces: 2 })).toBeUndefined();
  expect(said({ hours, calendar: 'six-tuesdays' })).toBeUndefined();
  expect(said({ shop: 'shop: 1' })).toMatch(
    /carry this case, but not the shop record .*: hours, machines, air and prices/,
  );
  expect(said({ shop: 'shop: 1', hours, calendar: 'six-tuesdays' })).toMatch(
    /and the name of its hours, but .*: machines, air/,
  );
  expect(said({ hours })).toMatch(/but not the hours that were kept with it, which have no name/);
  // A method of the maker's own has no page, and no link.
  expect(said({ shop: 'shop: 1' }, 'mine.yaml')).toBeUndefined();
});
