import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { flattenPlanCalculator } from '../../src/calculators/flatten-plan/calculator.ts';
import { Frame } from '../../src/calculators/view/Frame.tsx';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { defaultUnits } from '../../src/model/quantity/index.ts';

const settle = () => act(() => new Promise((resolve) => setTimeout(resolve, 320)));
const inch = { system: 'inch', inches: 'thirty-seconds' } as const;
const open = (search: string) => {
  window.history.replaceState(null, '', `/page${search}`);
  render(<Frame calculator={flattenPlanCalculator} />);
};
const heights = () => screen.getByLabelText<HTMLTextAreaElement>(/^Heights, evenly spaced/);

beforeEach(() => act(() => keepUnits(inch)));
afterEach(() => {
  cleanup();
  act(() => keepUnits(defaultUnits));
});

test('heights typed without a unit are inches for a reader of inches, are read back, and stay so in the address', async () => {
  open('');
  await userEvent.clear(heights());
  await userEvent.type(heights(), '0, 3/16, 0; 0, 3/16, 1/8');
  expect(document.querySelector('[data-field="grid"]')?.textContent).toContain('Read as: in: 0, 3/16, 0; 0, 3/16, 1/8');
  await settle();
  expect(new URLSearchParams(window.location.search).get('grid')).toBe('in: 0, 3/16, 0; 0, 3/16, 1/8');
  expect(heights().value).toBe('0, 3/16, 0; 0, 3/16, 1/8');
});

test('rows on lines of their own are read back with their ends, and all of them are there for paper', async () => {
  act(() => keepUnits(defaultUnits));
  open('');
  await userEvent.clear(heights());
  await userEvent.type(heights(), '3,5 1,0 0{Enter}2 0 0');
  const field = document.querySelector('[data-field="grid"]');
  expect(field?.textContent).toContain('Read as: mm: 3,5 1,0 0 / 2 0 0');
  const many = Array.from({ length: 40 }, (_, row) => `${row} 0 0`).join('\n');
  await userEvent.clear(heights());
  await userEvent.click(heights());
  await userEvent.paste(many);
  const whole = field?.querySelector('[data-part="whole-text"]');
  expect(whole?.textContent).toBe(many);
  expect(whole?.classList).toContain('print-only');
});

test('a link with bare heights in millimetres means millimetres to a reader of inches', () => {
  open('?grid=3,+0;+3,+0&length=900+mm');
  expect(heights().value).toBe('mm: 3, 0; 3, 0');
});

test('what cannot be taken is said in the reader’s own units', async () => {
  open('');
  const width = screen.getByLabelText<HTMLInputElement>(/^Width of the board/);
  await userEvent.clear(width);
  await userEvent.type(width, '400');
  expect(document.querySelector('[data-field="width"]')?.textContent).toMatch(/more than this takes: .* in to .* in/);
});
