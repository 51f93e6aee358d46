import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { keepUnits } from '../../src/calculators/view/units.tsx';
import { finishes } from '../../src/model/finish/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { Finishes } from '../../src/site/finish/Finishes.tsx';

afterEach(cleanup);

const row = (id: string) => document.querySelector(`[data-finish="${id}"]`)?.textContent ?? '';

test('has a row for every finish, under its name', () => {
  render(<Finishes />);
  const table = screen.getByRole('table');
  expect(
    within(table)
      .getAllByRole('rowheader')
      .map((cell) => cell.textContent),
  ).toEqual(finishes.map(({ name, look }) => `${name}${look}.`));
  expect(within(table).getAllByRole('columnheader')).toHaveLength(4);
});

test('says how oil goes on, and what its rags do', () => {
  render(<Finishes />);
  expect(row('linseed-oil')).toContain('Coats 2 to 3');
  expect(row('linseed-oil')).toContain('Soak 30 to 45 minutes, wipe');
  expect(row('linseed-oil')).toMatch(/take fire by themselves/);
  expect(row('mineral-oil')).toContain('it never cures');
  expect(row('varnish')).not.toContain('Soak');
});

test('says plainly that oils hardly delay a board and epoxy does', () => {
  render(<Finishes />);
  expect(row('mineral-oil')).toContain('Delay, 20 mm none');
  expect(row('linseed-oil')).toMatch(/Delay, 20 mm 0\.9 days/);
  expect(row('film-epoxy')).toContain('Delay, 20 mm 130 days');
});

test('tells a reader of inches of a board of 3/4 in, which is thinner and is delayed by as much less', () => {
  const delays = () => finishes.map(({ id }) => Number(/Delay, \S+ \w+ ([\d.]+) days/.exec(row(id))?.[1] ?? 0));
  render(<Finishes />);
  const metric = delays();
  cleanup();
  keepUnits({ system: 'inch', inches: 'thirty-seconds' });
  try {
    render(<Finishes />);
    const inch = delays();
    expect(row('film-epoxy')).toContain('Delay, 3/4 in');
    expect(document.body.textContent).toContain('adds to a board of 3/4 in coated all over');
    // 19.05 mm in place of 20; each is shown to two digits.
    for (const [at, days] of inch.entries())
      expect(Math.abs(days - 0.9525 * (metric[at] ?? 0))).toBeLessThanOrEqual(0.1 * days);
    expect(inch).not.toEqual(metric);
  } finally {
    keepUnits(defaultUnits);
    localStorage.removeItem('kerf-units');
  }
});
