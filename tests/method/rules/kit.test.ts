import { expect, test } from 'vitest';
import { layersOfResin, leastBetween } from '../../../src/method/rules/kit.ts';
import { withResin, workedIn } from './base.ts';

const between = async (link: string) =>
  leastBetween(
    await workedIn({}, withResin, `steps: { fill: { hands: { each: 30 min } }, smooth: { after: [${link}] } }`),
    'fill',
    'smooth',
  );

test('a wait from the end of a step lies all behind it', async () => {
  expect(await between('{ step: fill, least: 10 h }')).toBe(600);
});

test('a wait that counts from the start of the step is shorter by the work on a piece', async () => {
  expect(await between('{ step: fill, counts: start, least: 10 h }')).toBe(570);
  expect(await between('{ step: fill, counts: start, least: 20 min }')).toBe(0);
});

test('a wait that counts from the start of a step in between is taken whole', async () => {
  const worked = await workedIn(
    {},
    withResin,
    'steps: { fill: { hands: { each: 30 min } }, smooth: { after: [{ step: fill, counts: start, least: 10 h }] } }',
  );
  expect(leastBetween(worked, 'stir', 'smooth')).toBe(600);
  expect(leastBetween(worked, 'smooth', 'stir')).toBeUndefined();
});

test('pours are layers of resin, and a coat of oil is none', async () => {
  expect(layersOfResin(await workedIn({}, withResin)).map(({ id }) => id)).toEqual(['fill']);
});
