import 'fake-indexeddb/auto';
import { act, cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { starterMethod } from '../../src/method/record/starter.ts';
import Bench from '../../src/site/bench/Bench.tsx';
import { fragmentOf } from '../../src/site/bench/link.ts';
import { theShelf } from '../../src/site/bench/use-shelf.ts';
import { allThings, closeKerf, putThings } from '../../src/site/kept/database.ts';

beforeEach(async () => {
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
  window.history.replaceState(null, '', '/bench');
  // Nothing of the site is served here.
  vi.spyOn(globalThis, 'fetch').mockRejectedValue(new Error('offline'));
});
afterEach(async () => {
  cleanup();
  for (const { id } of theShelf().shelf().drafts) theShelf().remove(id);
  await theShelf().load();
  await closeKerf();
  vi.restoreAllMocks();
});

const part = (name: string) => document.querySelector<HTMLElement>(`[data-part="${name}"]`) as HTMLElement;
const shown = async () => {
  render(<Bench />);
  await screen.findByRole('heading', { name: 'Begin a method' });
  // The shelf outlives a test: what a test has put into the database comes to it with the next reading.
  await act(() => theShelf().load());
};

test('a draft begins with the small method, is named, and its problems are listed', async () => {
  await shown();
  fireEvent.click(screen.getByRole('button', { name: 'A small one to change' }));
  await screen.findByRole('heading', { name: 'My method' });
  expect(window.location.search).toMatch(/^\?draft=[0-9a-f]{24}$/);
  fireEvent.change(screen.getByLabelText('Name of the draft'), { target: { value: 'Spring tray' } });
  await screen.findByRole('heading', { name: 'Spring tray' });
  await waitFor(() => expect(part('count').textContent).toMatch(/note|warning|Nothing/), {
    timeout: 60_000,
  });
  await waitFor(async () =>
    expect(await allThings('drafts')).toMatchObject([{ name: 'Spring tray', text: starterMethod }]),
  );
});

test('a removed draft can be put back; a copy has a name of its own', async () => {
  await putThings('drafts', [{ id: 'a', changed: 1, made: 1, name: 'Tray', text: 'title: Tray' }]);
  await shown();
  const list = within(part('drafts'));
  fireEvent.click(list.getByRole('button', { name: 'Copy Tray' }));
  await list.findByRole('link', { name: 'Tray (copy)' });
  fireEvent.click(list.getByRole('button', { name: 'Remove Tray' }));
  await list.findByText('“Tray” is removed.');
  expect(list.queryByRole('link', { name: 'Tray' })).toBeNull();
  fireEvent.click(list.getByRole('button', { name: 'Put it back' }));
  await list.findByRole('link', { name: 'Tray' });
});

test('a link is shown before it is opened, and opened as a draft beside the others', async () => {
  const text = 'title: From <img src=x onerror="window.ran = 1">\n';
  await putThings('drafts', [{ id: 'a', changed: 1, made: 1, name: 'Tray', text: 'title: Tray' }]);
  window.history.replaceState(null, '', `/bench${await fragmentOf(text)}`);
  await shown();
  await waitFor(() => expect(part('link-offer')).not.toBeNull());
  expect(part('link-offer').textContent).toContain('From <img src=x');
  expect(document.querySelector('img')).toBeNull();
  expect(theShelf().shelf().drafts).toHaveLength(1);
  fireEvent.click(screen.getByRole('button', { name: 'Open it as a new draft' }));
  await waitFor(() =>
    expect(
      theShelf()
        .shelf()
        .drafts.map((draft) => draft.text)
        .sort(),
    ).toEqual(['title: Tray', text].sort()),
  );
  expect(window.location.hash).toBe('');
  expect('ran' in window).toBe(false);
});

test('a damaged link says so and makes nothing', async () => {
  window.history.replaceState(null, '', '/bench#method=abc!');
  await shown();
  await screen.findByText(/The link is damaged/);
  fireEvent.click(screen.getByRole('button', { name: 'Close' }));
  expect(part('link-offer')).toBeNull();
  expect(theShelf().shelf().drafts).toEqual([]);
});

test('files are taken as drafts, and what is no method is refused in words', async () => {
  await shown();
  const input = document.querySelector<HTMLInputElement>('[data-part="draft-file"]') as HTMLInputElement;
  const give = (name: string, content: BlobPart) =>
    fireEvent.change(input, { target: { files: [new File([content], name)] } });
  give('cut.zip', Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0));
  await within(part('said')).findByText(/cut\.zip cannot be read\. It is not a whole zip.*Nothing was taken/);
  give('latin.yaml', Uint8Array.of(0x74, 0xfc, 0x72));
  await within(part('said')).findByText(/latin cannot be read\. It is not text in UTF-8/);
  give('long.yaml', 'a'.repeat(131_073));
  await within(part('said')).findByText(/long cannot be read\. It is 131,073 characters long/);
  expect(theShelf().shelf().drafts).toEqual([]);
  give('My tray.yaml', 'title: Tray\r\n');
  await screen.findByRole('heading', { name: 'My tray' });
  expect(
    theShelf()
      .shelf()
      .drafts.map(({ text }) => text),
  ).toEqual(['title: Tray\n']);
});

test('dropped files are taken before the editor writes them into the open text', async () => {
  await putThings('drafts', [{ id: 'a', changed: 1, made: 1, name: 'Tray', text: 'title: Tray' }]);
  window.history.replaceState(null, '', '/bench?draft=a');
  render(<Bench />);
  await waitFor(() => expect(part('editor')?.shadowRoot?.querySelector('.cm-content')).toBeTruthy());
  const files = [new File(['title: One'], 'one.yaml'), new File(['title: Two'], 'two.yaml')];
  fireEvent.drop(part('editor'), { dataTransfer: { files, types: ['Files'] } });
  await within(part('said')).findByText('“two” is opened as a new draft.');
  expect(
    theShelf()
      .shelf()
      .drafts.map(({ text }) => text)
      .sort(),
  ).toEqual(['title: One', 'title: Tray', 'title: Two']);
});

test('whoever has gone to another page while a file is taken stays at its address, and the draft is kept', async () => {
  window.history.replaceState(null, '', '/bench');
  const { unmount } = render(<Bench />);
  const bench = await screen.findByRole('region', { name: 'Bench' });
  fireEvent.drop(bench, { dataTransfer: { files: [new File(['title: One'], 'one.yaml')], types: ['Files'] } });
  unmount();
  window.history.replaceState(null, '', '/woods?cut=flatsawn');
  await waitFor(() => expect(theShelf().shelf().drafts).toHaveLength(1));
  await new Promise((resolve) => setTimeout(resolve));
  expect(window.location.search).toBe('?cut=flatsawn');
});

test('each fault names its field, also where many are alike', async () => {
  const complained = vi.spyOn(console, 'error');
  await putThings('drafts', [{ id: 'a', changed: 1, made: 1, name: 'Tray', text: 'title: Tray' }]);
  window.history.replaceState(null, '', '/bench?draft=a');
  render(<Bench />);
  await waitFor(() => expect(part('problems')?.textContent).toMatch(/steps: the field is missing/), {
    timeout: 20_000,
  });
  expect(part('problems').textContent).toMatch(/for: the field is missing/);
  expect(complained).not.toHaveBeenCalled();
});

test('a draft that is damaged is shown as text and stays', async () => {
  await putThings('drafts', [{ id: 'damaged', changed: 1, text: 'title: Saved' }]);
  await shown();
  expect(part('damaged').textContent).toContain('title: Saved');
  fireEvent.click(screen.getByRole('button', { name: 'Open it as a new draft' }));
  await within(part('drafts')).findByRole('link', { name: 'A mended draft' });
  expect(part('damaged')).not.toBeNull();
  fireEvent.click(screen.getByRole('button', { name: 'Throw it away' }));
  await waitFor(() => expect(part('damaged')).toBeNull());
});

test('a browser that stores nothing is told of, and everything works all the same', async () => {
  vi.stubGlobal('indexedDB', undefined);
  await shown();
  expect(part('storage').textContent).toContain('does not let the page store anything');
  fireEvent.click(screen.getByRole('button', { name: 'An empty text' }));
  await screen.findByRole('heading', { name: 'An empty method' });
  expect(screen.getByRole('button', { name: 'Take what is not stored as a zip' })).toBeTruthy();
  vi.unstubAllGlobals();
});

test('the address of a draft that is not here says so', async () => {
  window.history.replaceState(null, '', '/bench?draft=nowhere');
  await shown();
  expect(screen.getByText(/The draft of this address is not kept in this browser/)).toBeTruthy();
});
