import type { CheckSet, CheckValue } from '../evidence/index.ts';
import { climateById } from './climates.ts';
import comparisons from './comparisons.json' with { type: 'json' };

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;

/** Mean relative humidity of a place's twelve months, %. */
function yearHumidity(id: string): number {
  return mean(climateById(id)?.humidity ?? [Number.NaN]);
}

const typicalYears: CheckSet = {
  id: 'moisture-climates-typical-year',
  title: 'Humidity of the world’s places against a typical-year file of the same station',
  kind: 'comparison',
  about:
    'The mean of a station’s reports of 2003 to 2021 against the hourly file of a typical year, put together from older decades by other hands. The terms of most of those files forbid handing their figures on, so the first column is ours less the difference that was noted when the two were compared, and the line says how far apart the single months are. It shows how far two descriptions of one place differ, about 4 points in a month, and proves neither. 190 of the places have no second source.',
  values: comparisons.typicalYears.map(
    ({ climate, file, temperature, humidity, apart, worst }): CheckValue => ({
      id: climate,
      what: `${climateById(climate)?.place}: mean relative humidity of the year (file ${file}; months ${apart.toFixed(1)} apart on average, ${signed(worst)} at worst; temperature ${signed(temperature)} °C)`,
      published: Math.round((yearHumidity(climate) - humidity) * 10) / 10,
      ours: () => yearHumidity(climate),
      unit: '%',
      tolerance: 5,
      reason: 'Reported only: other years, and a mean vapour pressure against a mean of hours.',
      citation: { source: 'dwd-climat', locator: climateById(climate)?.citation.locator ?? '' },
    }),
  ),
};

/** Comparisons of the climate tables with second sources. */
export const climateChecks: readonly CheckSet[] = [typicalYears];
