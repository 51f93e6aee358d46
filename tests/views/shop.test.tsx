import { readFileSync } from 'node:fs';
import { act, cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { changeKept, keptSheets } from '../../src/calculators/view/kept-sheets.ts';
import { changeShop, keptShop, SiteShopContext } from '../../src/calculators/view/kept-shop.ts';
import { ShopRecord } from '../../src/site/shop/ShopRecord.tsx';
import { viewOf } from './view-of.tsx';

const Cure = await viewOf('cure-clock');
const sample = readFileSync('methods/shop.yaml', 'utf8');
const titles = { 'cure-clock': 'Cure clock' };

beforeEach(() => {
  vi.useFakeTimers({ shouldAdvanceTime: true });
  window.localStorage.clear();
  act(() => {
    changeShop(() => ({ aside: false }));
    changeKept(() => []);
  });
  window.history.replaceState(null, '', '/page');
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const box = () => screen.getByLabelText<HTMLTextAreaElement>('The record');
const state = () => document.querySelector('[data-part="shop-state"]')?.textContent ?? '';
const day = () => screen.getByLabelText<HTMLInputElement>(/^By day/);

async function write(text: string) {
  render(<ShopRecord titles={titles} />);
  if (keptShop().text === undefined) fireEvent.click(screen.getByRole('button', { name: 'Begin small' }));
  fireEvent.click(screen.getByRole('button', { name: 'Text' }));
  fireEvent.change(box(), { target: { value: text } });
  await vi.waitFor(() => expect(state()).not.toMatch(/Being read/), { timeout: 20_000 });
}

describe('the record', () => {
  test('as typed is kept with every key; what is wrong names its line and what calculators begin with stays', async () => {
    await write(sample);
    expect(state()).toContain('It can be read, and is in use.');
    expect(keptShop().defaults?.inputs['cure-clock']).toMatchObject({ dayTemperature: '20 °C' });
    fireEvent.change(box(), { target: { value: sample.replace('day: 20 °C', 'day: warm') } });
    expect(keptShop().text).toContain('day: warm');
    await vi.waitFor(() =>
      expect(state()).toMatch(/the last record that could be read is in use\..*Line 11, air\.day: .*warm/s),
    );
    expect(keptShop().defaults?.inputs['cure-clock']).toMatchObject({ dayTemperature: '20 °C' });
  });

  test('is forgotten, and had back', async () => {
    await write(sample);
    fireEvent.click(screen.getByRole('button', { name: 'Forget it' }));
    expect(keptShop().text).toBeUndefined();
    expect(keptShop().defaults).toBeUndefined();
    fireEvent.click(screen.getByRole('button', { name: 'Have the one before back' }));
    expect(keptShop().text).toBe(sample);
  });

  test('its resins are kept as data sheets when asked, and replace nothing unasked', async () => {
    act(() => {
      changeKept(() => [{ name: 'Lakeside casting resin, sheet of March', potLife: '1 h' }]);
    });
    await write(sample);
    const resins = within(document.querySelector('[data-part="shop-resins"]') as HTMLElement);
    expect(keptSheets().sheets[0]).toMatchObject({ potLife: '1 h' });
    fireEvent.click(resins.getByRole('button', { name: 'Replace the kept one' }));
    expect(keptSheets().sheets).toHaveLength(1);
    expect(keptSheets().sheets[0]).toMatchObject({ potLife: '6 h' });
  });

  test('a planted script is a text', async () => {
    await write(
      `shop: 1\nname: "<img src=x onerror=alert(1)>"\nzone: Europe/Oslo\ncurrency: EUR\nair: { day: 21 °C }\n`,
    );
    expect(document.querySelector('img')).toBeNull();
  });
});

describe('a calculator', () => {
  const defaults = { shop: 'Barn', inputs: { 'cure-clock': { dayTemperature: '23 °C', nightTemperature: '11 °C' } } };

  test('begins with the values of the shop, says so, and sets them aside when told', () => {
    act(() => {
      changeShop(() => ({ text: 'x', defaults, aside: false }));
    });
    render(<Cure remembers="cases" />);
    expect(day().value).toBe('23 °C');
    expect(document.body.textContent).toContain('With the values of Barn, your shop record.');
    fireEvent.click(screen.getByRole('button', { name: 'Set them aside' }));
    expect(screen.queryByDisplayValue('23 °C')).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Take them' }));
    expect(day().value).toBe('23 °C');
  });

  test('keeps to a link, and to a case of the page around it', () => {
    act(() => {
      changeShop(() => ({ text: 'x', defaults, aside: false }));
    });
    window.history.replaceState(null, '', '/page?shopTemperature=19+%C2%B0C');
    const { unmount } = render(<Cure remembers="cases" />);
    expect(screen.queryByDisplayValue('23 °C')).toBeNull();
    unmount();
    window.history.replaceState(null, '', '/page');
    render(<Cure />);
    expect(screen.queryByDisplayValue('23 °C')).toBeNull();
  });

  test('takes the record of the site where the reader has none, and never in place of one that cannot be read yet', () => {
    const ofSite = (
      <SiteShopContext.Provider value={defaults}>
        <Cure remembers="cases" />
      </SiteShopContext.Provider>
    );
    const { unmount } = render(ofSite);
    expect(day().value).toBe('23 °C');
    unmount();
    act(() => {
      changeShop(() => ({ text: 'shop: ', aside: false }));
    });
    render(ofSite);
    expect(screen.queryByDisplayValue('23 °C')).toBeNull();
  });
});

test('a browser that refuses to store keeps the record for the page, and says so', async () => {
  const refuse = vi.spyOn(window, 'localStorage', 'get').mockImplementation(() => {
    throw new DOMException('forbidden', 'SecurityError');
  });
  await write(sample);
  expect(keptShop().text).toBe(sample);
  expect(screen.getByText(/the record lasts as long as this page/)).toBeTruthy();
  refuse.mockRestore();
  act(() => {
    changeShop(() => ({ aside: false }));
  });
});
