import { cleanup, render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { Chart, listedPlaces } from '../../src/calculators/view/Chart.tsx';
import type { Series } from '../../src/model/evidence/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

afterEach(cleanup);

const seriesOf = (count: number): Series => ({
  id: 'cure',
  title: 'How far the cure has gone',
  axis: { label: 'Time', unit: 'h', values: Array.from({ length: count }, (_, at) => at) },
  lines: [{ id: 'cured', label: 'Cured', unit: '%', values: Array.from({ length: count }, (_, at) => at) }],
  description: 'It rises.',
});

const rowHeads = () => screen.getAllByRole('rowheader', { hidden: true }).map((head) => Number(head.textContent));

test('a short list behind a chart has every value, and says nothing of others', () => {
  render(<Chart series={seriesOf(13)} units={defaultUnits} />);
  expect(rowHeads()).toEqual(Array.from({ length: 13 }, (_, at) => at));
  expect(screen.queryByText(/Take it away/)).toBeNull();
});

test('a long one has one in so many, the first and the last among them, and says where all are', () => {
  render(<Chart series={seriesOf(62)} units={defaultUnits} />);
  expect(rowHeads()).toEqual([...Array.from({ length: 21 }, (_, at) => 3 * at), 61]);
  expect(screen.getByText('One in 3 of 62 values: “Take it away” has them all.')).toBeTruthy();
});

test('paper, where nothing can be taken away, says how many of the values stand on it', () => {
  // Of a list of 22 every second row is printed, and so it is of one that holds every value.
  for (const [count, words] of [
    [62, 'One in 6 of 62 values.'],
    [24, 'One in 2 of 24 values.'],
  ] as const) {
    const { container } = render(<Chart series={seriesOf(count)} units={defaultUnits} />);
    expect([...container.querySelectorAll('.print-only')].map(({ textContent }) => textContent)).toEqual([words]);
    for (const line of screen.queryAllByText(/Take it away/)) expect(line.classList).toContain('no-print');
    cleanup();
  }
  const { container } = render(<Chart series={seriesOf(13)} units={defaultUnits} />);
  expect(container.querySelector('.print-only')).toBeNull();
});

test('a place on an axis is said in three digits, a word as it is', () => {
  const { axis, ...series } = seriesOf(3);
  render(<Chart series={{ ...series, axis: { ...axis, values: [0.10006, 28.919, 0] } }} units={defaultUnits} />);
  expect(rowHeads()).toEqual([0.1, 28.9, 0]);
  cleanup();
  render(
    <Chart series={{ ...series, axis: { label: 'Month', values: ['May', 'June', 'July'] } }} units={defaultUnits} />,
  );
  expect(screen.getByRole('rowheader', { name: 'May', hidden: true })).toBeTruthy();
});

test('no list is longer than can be read, and none begins late or ends early', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2000 }), (count) => {
      const { places } = listedPlaces(count);
      expect(places.length).toBeLessThanOrEqual(26);
      expect([places[0], places.at(-1)]).toEqual([0, count - 1]);
      if (count <= 25) expect(places).toHaveLength(count);
    }),
  );
});
