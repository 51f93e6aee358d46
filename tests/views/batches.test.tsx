import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { IDBFactory } from 'fake-indexeddb';
import { strToU8, zipSync } from 'fflate';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { BatchRecord } from '../../src/method/batch/record.ts';
import { batchesText } from '../../src/method/batch/record.ts';
import { addBatches, forgetBatches, keptBatches } from '../../src/site/batch/kept-batches.ts';
import { closeKerf, putThings } from '../../src/site/kept/database.ts';
import { at, batchOf, finished, inlaidBoard, read, started } from '../method/batch/kit.ts';

vi.mock('../../src/site/page/Page.tsx', () => ({
  Page: ({ children }: { children: React.ReactNode }) => <main>{children}</main>,
}));
const { default: Batches } = await import('../../src/site/batch/Batches.tsx');

const { Today } = await import('../../src/site/batch/Today.tsx');

const part = (name: string) => document.querySelector(`[data-part="${name}"]`) as HTMLElement;
const press = (name: string | RegExp, inside: HTMLElement = document.body) =>
  userEvent.click(within(inside).getByRole('button', { name }));
const entries = () => keptBatches().batches?.flatMap((batch) => batch.entries) ?? [];

/** Show the page at an address, with batches that are kept. */
async function show(search: string, ...batches: BatchRecord[]): Promise<void> {
  if (batches.length > 0) await addBatches(batches);
  window.history.replaceState(null, '', `/batches${search}`);
  render(<Batches />);
}

function take(name: string, content: string | Uint8Array<ArrayBuffer>, into = 'batch-file'): void {
  fireEvent.change(part(into), { target: { files: [new File([content], name)] } });
}

/** A week of which every time lies behind: the page takes the clock of the machine. */
const sealed = [started('s1', 'seal', '2026-01-12 09:00'), finished('s2', 'seal', '2026-01-12 09:20')];

beforeEach(async () => {
  localStorage.clear();
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
});
afterEach(async () => {
  cleanup();
  forgetBatches();
  await closeKerf();
  vi.unstubAllGlobals();
});

test('a step is begun and finished with one button each, and struck where it was wrong', async () => {
  await show('?batch=fair-trays', batchOf([]));
  await waitFor(() => expect(part('today').textContent).toContain('May be done now.'));
  await press('Started: Seal the pocket');
  await waitFor(() => expect(part('today').textContent).toContain('Begun '));
  await press('Finished: Seal the pocket');
  await waitFor(() => expect(entries().map(({ kind }) => kind)).toEqual(['started', 'finished']));
  await waitFor(() => expect(part('wanted')).not.toBeNull());
  await press(/^Strike: “Seal the pocket” finished/);
  await press('Strike it');
  await waitFor(() => expect(part('entries').querySelector('s')?.textContent).toContain('“Seal the pocket” finished'));
  expect(entries()).toHaveLength(3);
  await waitFor(() => expect(part('today').textContent).toContain('Begun '));
  // What is struck is folded, and one press puts it back: the record keeps that it was struck.
  const fold = () => part('struck');
  expect(fold().tagName).toBe('DETAILS');
  expect(within(fold()).getByText('Struck out (1)')).toBeTruthy();
  expect(part('entries').querySelectorAll(':scope > ul > li')).toHaveLength(1);
  fold().setAttribute('open', '');
  await press(/^Put it back: “Seal the pocket” finished/);
  await waitFor(() => expect(part('entries').querySelectorAll(':scope > ul > li')).toHaveLength(2));
  expect(entries()).toHaveLength(4);
  expect(fold().textContent).toContain('That was taken back: Put back.');
  await waitFor(() => expect(part('today').textContent).not.toContain('Begun '));
});

test('a card tells the work of its step, and leads to its page with the same case', async () => {
  const house = { method: { file: 'methods/inlaid-board.yaml', text: inlaidBoard } };
  const told = { case: { pieces: 3, set: { shop: '21 °C' } } };
  await show('?batch=fair-trays', batchOf([], { ...house, ...told }));
  await waitFor(() => expect(part('step-words')?.textContent).toContain('Brush a thin coat on.'));
  const words = part('step-words');
  expect(words.textContent).toMatch(/Dangers: .+ · /);
  expect(within(words).getByRole('link').getAttribute('href')).toBe(
    '/methods/inlaid-board?pieces=3&shop=21+%C2%B0C#step-seal',
  );
  await press('All of it, and how to tell', words);
  expect(within(words).getByRole('button', { name: 'Less' }).getAttribute('aria-expanded')).toBe('true');
});

test('a method of the maker’s own has no page to lead to', async () => {
  await show('?batch=fair-trays', batchOf([]));
  await waitFor(() => expect(part('step-words')).not.toBeNull());
  expect(within(part('step-words')).queryByRole('link')).toBeNull();
});

test('another time and other pieces are typed; what cannot be is said and not written', async () => {
  await show('?batch=fair-trays', batchOf([]));
  await waitFor(() => expect(part('today')).not.toBeNull());
  fireEvent.change(screen.getByLabelText('To piece'), { target: { value: '3' } });
  expect(screen.getByRole('alert').textContent).toContain(
    '“1” to “3” are no pieces of this batch. Give whole numbers from 1 to 2',
  );
  await press('Started: Seal the pocket');
  expect(entries()).toEqual([]);
  fireEvent.change(screen.getByLabelText('To piece'), { target: { value: '1' } });
  fireEvent.change(screen.getByLabelText('When'), { target: { value: '2026-01-12T09:05' } });
  await press('Started: Seal the pocket');
  await waitFor(() =>
    expect(entries()[0]).toMatchObject({ kind: 'started', pieces: [1, 1], when: at('2026-01-12 09:05') }),
  );
});

test('a half-typed reading outlives the page, and a bare number is read in the reader’s unit', async () => {
  await show('?batch=fair-trays', batchOf(sealed));
  const field = () => part('wanted').querySelector('input') as HTMLInputElement;
  await waitFor(() => expect(part('wanted')).not.toBeNull());
  expect(part('wanted').textContent).toContain('(planned 22 °C)');
  fireEvent.change(field(), { target: { value: '16' } });
  cleanup();
  forgetBatches();
  await show('?batch=fair-trays');
  await waitFor(() => expect(field().value).toBe('16'));
  await press('Write down', part('wanted'));
  await waitFor(() =>
    expect(entries().find(({ kind }) => kind === 'reading')).toMatchObject({ step: 'seal', value: '16 °C' }),
  );
  await waitFor(() =>
    expect(part('changes').textContent).toMatch(/“Pour” comes at least .* the plan said at least 20 h/),
  );
  expect(localStorage.getItem('kerf-batch-typed')).toBe('{}');
});

test('a reading has its own day and time; one that has not come is refused at the field, one before the batch is remarked on', async () => {
  await show('?batch=fair-trays', batchOf(sealed, { opened: '2026-01-12T08:00:00-06:00' }));
  await waitFor(() => expect(part('wanted')).not.toBeNull());
  const reading = part('wanted').querySelector('[data-reading]') as HTMLElement;
  const when = within(reading).getByLabelText(/^When .+ was read$/);
  fireEvent.change(within(reading).getByLabelText(/^Temperature of the shop/), { target: { value: '16' } });
  fireEvent.change(when, { target: { value: '2099-01-12T09:10' } });
  expect(within(reading).getByRole('alert').textContent).toContain('has not come yet');
  await press('Write down', reading);
  expect(entries().some(({ kind }) => kind === 'reading')).toBe(false);
  fireEvent.change(when, { target: { value: '2026-01-12T07:10' } });
  expect(within(reading).getByRole('status').textContent).toContain('before the batch was opened');
  fireEvent.change(when, { target: { value: '2026-01-12T09:10' } });
  await press('Write down', reading);
  await waitFor(() =>
    expect(entries().find(({ kind }) => kind === 'reading')).toMatchObject({ when: at('2026-01-12 09:10') }),
  );
  expect(localStorage.getItem('kerf-batch-typed')).toBe('{}');
});

test('lots and deviations are kept as typed, scripts as text', async () => {
  await show('?batch=fair-trays', batchOf(sealed));
  await waitFor(() => expect(part('more')).not.toBeNull());
  const text = '<img src=x onerror="window.ran=1"> leaked';
  fireEvent.change(screen.getByLabelText('Lot, as it stands on it'), { target: { value: 'A-1107' } });
  fireEvent.change(screen.getByLabelText('Of what'), { target: { value: 'resin-a' } });
  await press('Write down the lot');
  fireEvent.change(screen.getByLabelText('What, and why'), { target: { value: text } });
  await press('Write it down');
  await waitFor(() => expect(part('entries').textContent).toContain('Lot of Resin, part A: A-1107'));
  await waitFor(() => expect(part('entries').textContent).toContain(text));
  expect(part('batch').querySelector('img')).toBeNull();
});

test('a batch is opened from a method file; one that cannot be is said', async () => {
  await show('');
  await waitFor(() => expect(part('method-file')).not.toBeNull());
  take('bad.yaml', 'method: 9', 'method-file');
  await waitFor(() => expect(document.body.textContent).toContain('No batch can be opened of it so:'));
  take('inlaid-board.yaml', inlaidBoard, 'method-file');
  await waitFor(() => expect(screen.getByRole('button', { name: 'Open a batch' })).toBeDefined());
  await press('Open a batch');
  await waitFor(() => expect(window.location.search).toMatch(/^\?batch=[0-9a-f]{24}$/));
  await waitFor(() => expect(part('today').textContent).toContain('May be done now.'));
});

test('a method of the site is opened with the case of the address', async () => {
  vi.stubGlobal('fetch', async (address: string) =>
    address === '/data/methods/inlaid-board.yaml' ? new Response(inlaidBoard) : new Response('', { status: 404 }),
  );
  await show('?open=inlaid-board&pieces=4&start=2027-01-12&shop=24+%C2%B0C');
  await waitFor(() => expect(document.body.textContent).toContain('Board with an amber inlay, 4 pieces'));
  await press('Open a batch');
  await waitFor(() =>
    expect(keptBatches().batches?.[0]).toMatchObject({
      case: { pieces: 4, start: '2027-01-12', set: { shop: '24 °C' } },
    }),
  );
  await waitFor(() => expect(window.location.search).toMatch(/^\?batch=/));
  cleanup();
  await show('?open=nowhere');
  await waitFor(() => expect(document.body.textContent).toContain('The method “nowhere” was not found here.'));
});

test('whoever has gone to another page while a batch is being kept stays at its address', async () => {
  await show('');
  await waitFor(() => expect(part('method-file')).not.toBeNull());
  take('inlaid-board.yaml', inlaidBoard, 'method-file');
  await waitFor(() => expect(screen.getByRole('button', { name: 'Open a batch' })).toBeDefined());
  fireEvent.click(screen.getByRole('button', { name: 'Open a batch' }));
  cleanup();
  window.history.replaceState(null, '', '/woods?cut=flatsawn');
  await waitFor(() => expect(keptBatches().batches).toHaveLength(1));
  // The browser has written it by the time that it can be read again.
  await addBatches([]);
  await new Promise((resolve) => setTimeout(resolve));
  expect(window.location.search).toBe('?cut=flatsawn');
});

test('a batch is opened with the hours that the address names; hours that are not there are said', async () => {
  const hours = { zone: 'America/Chicago', sessions: ['2027-02-09 18:30-21:00', '2027-02-16 18:30-21:00'] };
  const calendars = [{ id: 'two-tuesdays', title: 'Two Tuesdays', hours }];
  vi.stubGlobal('fetch', async (address: string) =>
    address === '/data/methods/inlaid-board.yaml'
      ? new Response(inlaidBoard)
      : address === '/data/methods/calendars.json'
        ? Response.json(calendars)
        : new Response('', { status: 404 }),
  );
  await show('?open=inlaid-board&calendar=two-tuesdays');
  await waitFor(() => expect(screen.getByRole('button', { name: 'Open a batch' })).toBeDefined());
  await press('Open a batch');
  await waitFor(() => expect(keptBatches().batches?.[0]?.case).toMatchObject({ hours, start: '2027-02-09' }));
  cleanup();
  await show('?open=inlaid-board&calendar=mondays');
  await waitFor(() =>
    expect(document.body.textContent).toContain('There is no calendar “mondays” here. Those that are: two-tuesdays.'),
  );
  expect(screen.queryByRole('button', { name: 'Open a batch' })).toBeNull();
});

test('files are taken in beside what is kept: a conflict is shown, a damaged file refused', async () => {
  const mine = batchOf([read('r', 'seal', '2026-01-12 09:10', '16 °C')]);
  await show('', mine);
  await waitFor(() => expect(part('batches').textContent).toContain('Trays for the fair'));
  take('other.json', batchesText([batchOf([read('r', 'seal', '2026-01-12 09:10', '18 °C')])]));
  await waitFor(() =>
    expect(part('taken').textContent).toContain('no new batches, 1 new entry in batches that were here.'),
  );
  expect(document.body.textContent).toContain('two entries bear the id r and do not say the same. Both are kept.');
  take(
    'log.zip',
    zipSync({ 'batches.json': strToU8(batchesText([{ ...mine, id: 'second' }])) }) as Uint8Array<ArrayBuffer>,
  );
  await waitFor(() => expect(part('taken').textContent).toContain('1 new batch'));
  take('bad.json', '<script>window.ran = 1</script>');
  await waitFor(() => expect(part('taken').textContent).toContain('bad.json: it is not whole JSON'));
  expect(keptBatches().batches).toHaveLength(2);
});

test('a draft of the bench is opened with its text as it is now', async () => {
  await putThings('drafts', [{ id: 'a', changed: 1, made: 1, name: 'Spring tray', text: inlaidBoard }]);
  await show('?draft=a&paper=letter&shop=21+°C');
  await waitFor(() => screen.getByRole('button', { name: 'Open a batch' }));
  await press('Open a batch');
  await waitFor(() => expect(keptBatches().batches).toHaveLength(1));
  expect(keptBatches().batches?.[0]).toMatchObject({
    method: { file: 'spring-tray.yaml', text: inlaidBoard },
    case: { set: { shop: '21 °C' } },
  });
});

test('where the browser stores nothing it is said, and a file is offered', async () => {
  vi.stubGlobal('indexedDB', undefined);
  await show('?batch=fair-trays', batchOf([]));
  await waitFor(() => expect(part('not-kept').textContent).toContain('This browser stores nothing for this page'));
  expect(within(part('not-kept')).getByRole('button', { name: 'Save this batch as a file' })).toBeDefined();
});

test('an id that is not kept here leads on', async () => {
  await show('?batch=none');
  await waitFor(() => expect(document.body.textContent).toContain('This browser keeps no batch of this id.'));
});

test('a step said to be done before the batch was opened is remarked on before it is written', async () => {
  await show('?batch=fair-trays', batchOf([]));
  await waitFor(() => expect(part('today')).not.toBeNull());
  fireEvent.change(screen.getByLabelText('When'), { target: { value: '2019-01-01T09:00' } });
  await waitFor(() => expect(part('today').textContent).toContain('That is before the batch was opened'));
});

test('what a rule forbids of a step to come heads the list, and more than three things to be put right are folded', () => {
  const stop = {
    rule: 'pour-depth',
    level: 'stop',
    step: 'pour',
    message: 'Do not pour so deep.',
    wayOut: 'Two layers.',
  };
  const item = {
    step: 'seal',
    number: 1,
    title: 'Seal',
    pieces: [1, 2],
    which: '',
    state: 'now',
    text: 'May be done now.',
  };
  const problem = (text: string) => ({ text, wayOut: 'Look at the piece.', entries: [] });
  const problems = ['One.', 'Two.', 'Three.', 'Four.', 'Five.'].map(problem);
  const shown = { state: { today: [item], findings: [stop], problems, finished: false }, cards: {} } as never;
  const writing = {
    zone: 'America/Chicago',
    opened: at('2026-01-12 08:00'),
    pieces: 2,
    now: Date.parse(at('2026-01-12 09:00')),
    typed: { of: () => undefined, type: () => undefined, drop: () => undefined },
    write: () => undefined,
  } as never;
  render(<Today shown={shown} pageOf={() => undefined} writing={writing} />);
  const words = part('today').textContent ?? '';
  expect(words.indexOf('Do not pour so deep. Two layers.')).toBeGreaterThan(-1);
  expect(words.indexOf('Do not pour so deep.')).toBeLessThan(words.indexOf('May be done now.'));
  expect(part('problems').querySelectorAll(':scope > ul > li')).toHaveLength(3);
  expect(part('problems').querySelector('details > summary')?.textContent).toBe('2 more to be put right');
  expect(part('problems').textContent?.match(/Look at the piece\./g)).toHaveLength(2);
});

test('a class’s method offers the sessions by which it is taught', async () => {
  const text = inlaidBoard.replace(/^food:/m, 'taught: { calendar: six-tuesdays, people: 14, evenings: 6 }\nfood:');
  vi.stubGlobal('fetch', async () => new Response(text));
  await show('?open=inlaid-board&pieces=4');
  await waitFor(() => expect(part('open-batch').textContent).toContain('taught in the sessions of “six-tuesdays”'));
  await press('Take its sessions as the hours');
  expect(new URLSearchParams(window.location.search).get('calendar')).toBe('six-tuesdays');
  expect(new URLSearchParams(window.location.search).get('pieces')).toBe('4');
});
