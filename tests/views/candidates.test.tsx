import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import { viewOf } from './view-of.tsx';

const Movement = await viewOf('seasonal-movement');
const at = (search: string) => window.history.replaceState(null, '', `/page${search}`);
const offered = (field: string) =>
  [...document.querySelectorAll(`[data-field="${field}"] fieldset button`)].map(({ textContent }) => textContent);

afterEach(cleanup);

test('a place whose name several bear is offered as buttons, and one of them fills the field', async () => {
  at('?place=Portland');
  render(<Movement />);
  expect(offered('place')).toEqual(['Portland, Maine', 'Portland, Oregon']);
  const group = screen.getByRole('group', { name: /which\?$/ });
  await userEvent.click(within(group).getByRole('button', { name: 'Portland, Oregon' }));
  expect(document.querySelector<HTMLInputElement>('[data-field="place"] input')?.value).toBe('Portland, Oregon');
  expect(offered('place')).toEqual([]);
});

test('a wood whose name several bear is offered, and a slip of the pen is guessed at', () => {
  at('?species=soft+maple&place=Duluht');
  render(<Movement />);
  expect(offered('species')).toEqual(expect.arrayContaining(['Red maple', 'Silver maple']));
  expect(offered('place')).toEqual(['Duluth, Minnesota']);
});

test('a wood that is surely meant and has no figures is not offered in its own place', () => {
  at('?species=African+blackwood');
  render(<Movement />);
  expect(document.querySelector('[data-field="species"]')?.textContent).toContain('is not published');
  expect(offered('species')).toEqual([]);
});

test('nothing is offered for an empty field, nor for what nothing is like', () => {
  at('?species=zzzz');
  render(<Movement />);
  expect(offered('species')).toEqual([]);
  fireEvent.change(document.querySelector('[data-field="species"] input') as HTMLInputElement, {
    target: { value: '' },
  });
  expect(offered('species')).toEqual([]);
});
