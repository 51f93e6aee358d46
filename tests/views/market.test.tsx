import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { renderToString } from 'react-dom/server';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

/** The food calculator anew, as a page just opened has it, in a browser of these languages. */
async function opened(languages: readonly string[], search = '') {
  vi.spyOn(navigator, 'languages', 'get').mockReturnValue(languages);
  vi.resetModules();
  window.history.replaceState(null, '', `/page${search}`);
  const { viewOf } = await import('./view-of.tsx');
  return await viewOf('food-contact');
}
const chosen = () =>
  document.querySelector<HTMLInputElement>('[data-field="market"] input:checked')?.parentElement?.textContent;

beforeEach(() => window.localStorage.clear());
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

describe('the market of a first visit', () => {
  test.each([
    [['en-US'], 'United States', /Rules of the United States, by your region/],
    [['de-DE'], 'European Union', /Rules of the European Union, by your region/],
    [['en-GB'], 'European Union', /Rules of the European Union, until you choose.*may have its own/],
  ] as const)('of %j is %s, and a line says why', async (languages, market, words) => {
    const FoodContact = await opened(languages);
    render(<FoodContact remembers="cases" />);
    expect(chosen()).toBe(market);
    expect(screen.getByText(words)).toBeTruthy();
  });

  test('is the Union’s in the page as sent, whoever opens it', async () => {
    const FoodContact = await opened(['en-US']);
    expect(renderToString(<FoodContact remembers="cases" />)).toContain(
      'Rules of the European Union, until you choose',
    );
  });

  test('gives way to an address, and to a choice, which is kept', async () => {
    const Linked = await opened(['en-US'], '?market=eu');
    render(<Linked remembers="cases" />);
    expect(chosen()).toBe('European Union');
    expect(screen.queryByText(/by your region/)).toBeNull();
    cleanup();
    const FoodContact = await opened(['en-US']);
    render(<FoodContact remembers="cases" />);
    await userEvent.click(screen.getByLabelText('European Union'));
    // It is kept when it has stood a while; how long that takes is the machine's affair.
    await waitFor(() => expect(Object.values({ ...window.localStorage }).join()).toMatch(/"market":"eu"/));
    cleanup();
    const Again = await opened(['en-US']);
    render(<Again remembers="cases" />);
    expect(chosen()).toBe('European Union');
    expect(screen.queryByText(/by your region/)).toBeNull();
  });

  test('is no matter of a page that shows a case of its own', async () => {
    const FoodContact = await opened(['en-US']);
    render(<FoodContact />);
    expect(chosen()).toBe('European Union');
    expect(screen.queryByText(/by your region/)).toBeNull();
  });
});
