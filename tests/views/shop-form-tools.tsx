import { act, fireEvent, render, waitFor, within } from '@testing-library/react';
import { expect } from 'vitest';
import { parse } from 'yaml';
import { changeKept } from '../../src/calculators/view/kept-sheets.ts';
import { changeShop, keptShop } from '../../src/calculators/view/kept-shop.ts';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { ShopRecord } from '../../src/site/shop/ShopRecord.tsx';
// Loaded before the first test, which the page does when a record is shown.
import '../../src/site/shop/form/ShopForm.tsx';

export const small = `# Our shop.
shop: 1
name: Lakeside # by the water
zone: America/Chicago
currency: USD
air: { day: 20 °C } # in winter
machines:
  # The old one.
  - id: planer
    kind: planer # with a new belt
    limits: { width: 13 in }
  # Bought second-hand.
  - { id: saw, kind: band-saw, name: Band saw }
scales:
  - { id: bench-scale, division: 1 g } # by the door
grits: [P80, P120] # in the drawer
calendar:
  week:
    tue: ["09:00-12:00", "13:00-17:00"] # with a meal between
materials:
  - id: oil
    name: Mineral oil
    packs: [{ size: 500 ml, price: 8.90 }] # from the shop at the corner
margin: 25 %
`;
export const comments = (text: string) => [...text.matchAll(/#[^\n]*/g)].map(([words]) => words);

export const text = () => keptShop().text ?? '';
export const data = () => parse(text());
export const patient = { timeout: 10_000 };
export const put = (next: string) =>
  act(() => {
    changeShop(() => ({ text: next, aside: false }));
  });

export async function show(from = small) {
  put(from);
  render(<ShopRecord titles={{}} />);
  await waitFor(() => expect(document.querySelector('[data-part="shop-form"]')).not.toBeNull(), patient);
}

export function opened(details: HTMLDetailsElement): HTMLElement {
  details.open = true;
  fireEvent(details, new Event('toggle'));
  return details;
}
/** Open a part of the form, as a press on it does. */
export const part = (name: string) => opened(document.getElementById(`shop-part-${name}`) as HTMLDetailsElement);
/** Open an entry of a list. */
export const entry = (path: string) =>
  opened(document.querySelector(`[data-entry="${path}"] > details`) as HTMLDetailsElement);
export const button = (within_: HTMLElement, name: RegExp | string) => within(within_).getByRole('button', { name });
export const write = (field: HTMLElement, words: string) => {
  fireEvent.change(field, { target: { value: words } });
  fireEvent.blur(field);
};
export const choose = (field: HTMLElement, value: string) => fireEvent.change(field, { target: { value } });

/** Nothing kept, metric units. */
export function fresh(): void {
  window.localStorage.clear();
  act(() => {
    keepUnits(defaultUnits);
    changeShop(() => ({ aside: false }));
    changeKept(() => []);
  });
}
