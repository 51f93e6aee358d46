import { expect, test } from 'vitest';
import { refused, result } from './resin-dose-cases.ts';

// What is levelled later is poured above the face, and the dose must hold it.

const channel = {
  resin: 'slow-casting-2-1',
  shapes: 'channel, 280 mm, 18 mm, 12',
  depth: '6 mm',
  measureBy: 'weight',
  shopTemperature: '20 °C',
};

const worked = (more: Record<string, unknown> = {}) => result({ ...channel, ...more });
const grams = (name: 'pieceMass' | 'fillMass' | 'proudMass' | 'mass', more?: Record<string, unknown>) =>
  worked(more).figures[name]?.value;

test('what stands proud is in the dose, in the part of each piece and told by itself', () => {
  // By hand: the floor of 280 mm by 18 mm, 6.6 mm high in place of 6 mm.
  expect(grams('pieceMass', { proud: '0.6 mm' })).toBeCloseTo((grams('pieceMass') ?? 0) * 1.1, 6);
  expect(grams('mass', { proud: '0.6 mm' })).toBeCloseTo((grams('mass') ?? 0) * 1.1, 6);
  expect(grams('proudMass', { proud: '0.6 mm' })).toBeCloseTo((grams('fillMass') ?? 0) / 10, 6);
  expect(grams('proudMass')).toBeUndefined();
});

test('it counts as depth of the pour: a channel as deep as one pour bears takes two layers with it', () => {
  expect(worked({ depth: '19 mm' }).figures.layers?.value).toBe(1);
  expect(worked({ depth: '19 mm', proud: '1 mm' }).figures.layers?.value).toBe(2);
});

test('without the size of the place it is refused, with a way out', () => {
  const { shapes: _, ...rest } = channel;
  expect(JSON.stringify(refused({ ...rest, volume: '100 ml', proud: '0.6 mm' }))).toMatch(
    /"proud".*size of the place is known/,
  );
});
