import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, expect, test, vi } from 'vitest';
import { Frame } from '../../src/calculators/view/Frame.tsx';
import { sample } from '../calculators/kit/sample.ts';

const lend = (name: 'share' | 'clipboard', value: unknown) =>
  Object.defineProperty(navigator, name, { value, configurable: true });

const button = (name: string) => screen.getByRole('button', { name });

afterEach(() => {
  cleanup();
  Reflect.deleteProperty(navigator, 'share');
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

test('where the browser can share, the link is shared; the server writes the button that all browsers have', async () => {
  expect(renderToString(<Frame calculator={sample} />)).toContain('Copy link');
  const share = vi.fn(async () => {});
  lend('share', share);
  window.history.replaceState(null, '', '/page?width=10+cm&length=10+cm');
  render(<Frame calculator={sample} />);
  await userEvent.click(button('Share'));
  expect(share).toHaveBeenCalledWith({
    title: 'Sample',
    url: expect.stringContaining('/calculators/sample?width=10+cm'),
  });
});

test('closing the list of apps does nothing more; a refusal leaves the clipboard', async () => {
  const user = userEvent.setup();
  const writeText = vi.fn(async () => {});
  vi.spyOn(navigator.clipboard, 'writeText').mockImplementation(writeText);
  lend('share', () => Promise.reject(new DOMException('closed', 'AbortError')));
  render(<Frame calculator={sample} />);
  await user.click(button('Share'));
  expect(writeText).not.toHaveBeenCalled();
  lend('share', () => Promise.reject(new DOMException('no', 'NotAllowedError')));
  await user.click(button('Share'));
  expect(writeText).toHaveBeenCalledOnce();
  expect(screen.getByText('Link copied.')).toBeTruthy();
});

test('files are folded behind one line, and made when it is opened', async () => {
  const user = userEvent.setup();
  window.history.replaceState(null, '', '/page');
  const saved: { name: string; blob: Blob }[] = [];
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
    saved.push({ name: '', blob: blob as Blob });
    return 'blob:sample';
  });
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    Object.assign(saved.at(-1) ?? {}, { name: this.download });
  });
  render(<Frame calculator={sample} />);
  const fold = screen.getByText('Take it away');
  expect(fold.closest('details')?.open).toBe(false);
  expect(screen.queryByText('CSV: question and figures')).toBeNull();
  await user.click(fold);
  await user.click(await screen.findByText('CSV: question and figures'));
  const [csv] = saved;
  expect(csv?.name).toMatch(/^sample-\d{4}-\d\d-\d\d\.csv$/);
  const text = (await csv?.blob.text()) ?? '';
  expect(text).toContain('Figure,Area,1800,cm²,,,cm2,derived,');
  await user.click(screen.getByText('Spreadsheet, one sheet'));
  await vi.waitFor(() => expect(saved).toHaveLength(2));
  expect(saved[1]?.name).toMatch(/^sample-.*\.xlsx$/);
  expect(new Uint8Array((await saved[1]?.blob.arrayBuffer()) ?? new ArrayBuffer(0)).slice(0, 2)).toEqual(
    new Uint8Array([0x50, 0x4b]),
  );
});

test('the same question as a command, in quotes that a shell leaves alone', async () => {
  const user = userEvent.setup();
  const writeText = vi.fn(async () => {});
  vi.spyOn(navigator.clipboard, 'writeText').mockImplementation(writeText);
  window.history.replaceState(null, '', '/page?width=10+cm&length=10+cm');
  render(<Frame calculator={sample} />);
  await user.click(screen.getByText('Take it away'));
  await user.click(button('Copy as a command'));
  expect(writeText).toHaveBeenCalledWith(
    expect.stringMatching(/^npm run -s kerf -- calc sample --json '\{"width":"10 cm","length":"10 cm".*\}'$/),
  );
});

test('in another page a calculator prints by itself, and the page is as it was afterwards', async () => {
  const print = vi.fn();
  vi.stubGlobal('print', print);
  render(<Frame calculator={sample} />);
  await userEvent.click(button('Print'));
  expect(print).toHaveBeenCalledOnce();
  expect(document.documentElement.hasAttribute('data-print-alone')).toBe(true);
  expect(document.querySelector('[data-alone]')?.getAttribute('data-calculator')).toBe('sample');
  act(() => window.dispatchEvent(new Event('afterprint')) as never);
  expect(document.documentElement.hasAttribute('data-print-alone')).toBe(false);
  expect(document.querySelector('[data-alone]')).toBeNull();
});

test('on its own page it prints with the page', async () => {
  vi.stubGlobal('print', vi.fn());
  render(<Frame calculator={sample} titled={false} />);
  await userEvent.click(button('Print'));
  expect(document.documentElement.hasAttribute('data-print-alone')).toBe(false);
});
