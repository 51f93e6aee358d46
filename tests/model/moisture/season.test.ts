import { expect, test } from 'vitest';
import { equilibriumMoisture, moistureThroughYear } from '../../../src/model/moisture/index.ts';

test('each reading gets the moisture content of its air, and nothing else changes', () => {
  const readings = [
    { label: 'Jan', temperature: 20, humidity: 30 },
    { label: 'Jul', temperature: 24, humidity: 60 },
  ];
  expect(moistureThroughYear(readings)).toEqual(
    readings.map((reading) => ({ ...reading, moisture: equilibriumMoisture(reading.temperature, reading.humidity) })),
  );
  expect(moistureThroughYear([])).toEqual([]);
});
