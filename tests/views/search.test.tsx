import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { searchFileOf } from '../../src/site/plugin/search-index.ts';
import { SearchBox } from '../../src/site/search/SearchBox.tsx';
import { fetched as kept } from '../../src/site/search/use-search-index.ts';

const passages = [{ anchor: '', heading: '', text: 'Cloths with oil.' }];
const file = searchFileOf(
  [
    { address: '/how-to/oily-rags', page: { title: 'Oily rags', description: '<img src=x onerror=bad()>', passages } },
    { address: '/how-to/oiling-and-waxing', page: { title: 'Oiling', description: 'Rags after it.', passages } },
  ],
  [{ id: 'white-ash', name: 'White ash', botanical: 'Fraxinus americana', tradeNames: [] }],
);

function Box() {
  const [text, setText] = useState('');
  return (
    <SearchBox label="Find anything" text={text} onText={setText} most={1}>
      <p>Nothing typed yet</p>
    </SearchBox>
  );
}

const box = () => screen.getByRole('searchbox', { name: 'Find anything' });
const fetched = vi.fn();

beforeEach(() => {
  vi.stubGlobal('fetch', fetched);
  fetched.mockReset().mockImplementation(async () => ({ ok: true, json: async () => file }));
});
afterEach(() => {
  cleanup();
  delete kept.index;
  vi.unstubAllGlobals();
});

test('without a connection it says so, and asks again where somebody says so, with the focus kept', async () => {
  fetched.mockRejectedValue(new Error('offline'));
  render(<Box />);
  await userEvent.type(box(), 'rags');
  await screen.findByText(/could not be fetched/);
  await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
  await screen.findByText(/could not be fetched/);
  fetched.mockImplementation(async () => ({ ok: true, json: async () => file }));
  await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
  expect(document.activeElement).toBe(box());
  await screen.findByRole('link', { name: 'Oily rags' });
  expect(screen.queryByRole('button', { name: 'Try again' })).toBeNull();
});

test('without a connection it says so, and asks again as one types on', async () => {
  fetched.mockRejectedValue(new Error('offline'));
  render(<Box />);
  expect(fetched).not.toHaveBeenCalled();
  await userEvent.click(box());
  await userEvent.type(box(), 'rags');
  await screen.findByText(/could not be fetched/);
  fetched.mockImplementation(async () => ({ ok: true, json: async () => file }));
  fireEvent.focus(box());
  await screen.findByRole('link', { name: 'Oily rags' });
});

test('what is found stands below by its kind, the rest a page away', async () => {
  render(<Box />);
  expect(screen.getByText('Nothing typed yet')).toBeTruthy();
  await userEvent.type(box(), 'rags');
  expect((await screen.findByRole('link', { name: 'Oily rags' })).getAttribute('href')).toBe('/how-to/oily-rags');
  expect(screen.getByRole('heading', { name: 'How-to' })).toBeTruthy();
  expect(screen.getByRole('status').textContent).toBe('2 places:');
  expect(screen.getByRole('link', { name: /1 more/ }).getAttribute('href')).toBe('/search?q=rags');
  expect(screen.queryByText('Nothing typed yet')).toBeNull();
  await userEvent.clear(box());
  await userEvent.type(box(), 'ash');
  expect(await screen.findByRole('link', { name: /White ash/ })).toBeTruthy();
  await userEvent.clear(box());
  await userEvent.type(box(), 'zzyzxqq');
  await waitFor(() => expect(screen.getByRole('status').textContent).toMatch(/^Nothing is found/));
});

test('arrows lead into the list and back, Enter to the first of several', async () => {
  render(<Box />);
  await userEvent.type(box(), 'rags');
  const first = await screen.findByRole('link', { name: 'Oily rags' });
  await userEvent.keyboard('{ArrowDown}');
  expect(document.activeElement).toBe(first);
  await userEvent.keyboard('{ArrowUp}');
  expect(document.activeElement).toBe(box());
  await userEvent.keyboard('{Enter}');
  expect(document.activeElement).toBe(first);
});
