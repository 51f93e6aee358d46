import 'fake-indexeddb/auto';
import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ClassDesk } from '../../src/site/class/ClassDesk.tsx';
import { allThings, closeKerf } from '../../src/site/kept/database.ts';
import { readMethodTexts } from '../../src/store/index.ts';

beforeEach(async () => {
  await closeKerf();
  globalThis.indexedDB = new IDBFactory();
});
afterEach(async () => {
  cleanup();
  vi.unstubAllGlobals();
  await closeKerf();
});

class Idle {
  postMessage() {}
  terminate() {}
}

test('a list that is opened before its method has come is taken once it is there, and loses nothing that was typed meanwhile', async () => {
  let send: ((answer: unknown) => void) | undefined;
  const text = readMethodTexts().find(({ id }) => id === 'class-of-twelve')?.text;
  vi.stubGlobal('Worker', Idle);
  vi.stubGlobal('fetch', (address: string) =>
    address.endsWith('class-of-twelve.yaml')
      ? new Promise((resolve) => {
          send = resolve;
        })
      : Promise.resolve({ ok: false, text: async () => '', json: async () => [] }),
  );
  render(<ClassDesk />);
  const name = await screen.findByLabelText('Name of the class');
  const list = document.querySelector<HTMLInputElement>('input[data-part="class-list"]') as HTMLInputElement;
  await userEvent.upload(list, new File(['Place,Name\n1,A. B.\n2,C. D.\n'], 'places.csv', { type: 'text/csv' }));
  await userEvent.type(name, ' of spring');
  await act(async () => send?.({ ok: true, text: async () => text }));
  await waitFor(() => expect(screen.getByRole('button', { name: 'Take out place 2' })).toBeTruthy());
  expect((screen.getByLabelText('Name of the class') as HTMLInputElement).value).toBe('New class of spring');
});

test('a class that is changed as its page is left is kept, and other tabs are told', async () => {
  vi.stubGlobal('Worker', Idle);
  vi.stubGlobal('fetch', () => Promise.resolve({ ok: false, text: async () => '', json: async () => [] }));
  const told: unknown[] = [];
  const otherTab = new BroadcastChannel('kerf-classes');
  otherTab.onmessage = ({ data }) => told.push(data);
  render(<ClassDesk />);
  fireEvent.change(await screen.findByLabelText('Name of the class'), { target: { value: 'Autumn class' } });
  cleanup();
  await waitFor(() => expect(told).toEqual([{ kept: expect.any(String) }]));
  otherTab.close();
  expect((await allThings('classes'))?.map(({ text }) => JSON.parse(String(text)).name)).toEqual(['Autumn class']);
});
