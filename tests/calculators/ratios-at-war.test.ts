import { expect, test } from 'vitest';
import { answer } from '../../src/calculators/kit/answer.ts';
import { pourHeatCalculator } from '../../src/calculators/pour-heat/calculator.ts';

const sheet = {
  name: 'My resin',
  mixByVolume: '2:1',
  mixByWeight: '1:2',
  potLife: '6 h',
  potLifeMass: '100 g',
  potLifeTemperature: '25 °C',
  greatestDepth: '12 mm',
  greatestDepthTemperature: '24 °C',
};
const asked = {
  resin: JSON.stringify(sheet),
  depth: '10 mm',
  shopTemperature: '20 °C',
  base: 'hardwood',
  air: 'still',
};

test('a sheet whose ratios contradict each other is told no pour: nobody knows of which mix its depth is', () => {
  const outcome = answer(pourHeatCalculator, asked);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.errors));
  const { verdict, figures, timeline, tables = [] } = outcome.value.result;
  expect(verdict.level).toBe('unknown');
  expect(verdict.text).toMatch(/^Not by this sheet: its ratios by volume and by weight differ by \d+ %/);
  for (const name of ['heatIndex', 'layers', 'layerDepth', 'layerWait', 'greatestDepthHere'])
    expect(figures[name], name).toBeUndefined();
  expect(timeline).toBeUndefined();
  expect(tables.map(({ id }) => id)).not.toContain('layers');
});

test('one whose ratios agree is told one', () => {
  const outcome = answer(pourHeatCalculator, { ...asked, resin: JSON.stringify({ ...sheet, mixByWeight: '100:43' }) });
  expect(outcome.ok && outcome.value.result.figures.greatestDepthHere).toBeTruthy();
});
