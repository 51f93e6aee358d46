import type { CheckSet, CheckValue, Citation } from '../evidence/index.ts';
import { airChecks } from './checks-air.ts';
import { climateChecks } from './checks-climates.ts';
import { homesComparison } from './checks-homes.ts';
import { climateById } from './climates.ts';
import comparisons from './comparisons.json' with { type: 'json' };
import { months } from './months.ts';
import { outdoorAir } from './rooms.ts';
import { moistureThroughYear } from './season.ts';
import {
  equilibriumMoisture,
  equilibriumMoisture2021,
  relativeHumidityFor,
  relativeHumidityFor2021,
} from './sorption.ts';

/** A value where there is one; the checks ask only inside the ranges where there is. */
function some(value: number | null): number {
  return value ?? Number.NaN;
}

const ownWork: Citation = { source: 'kerf-and-cure' };

const tableRead: CheckSet = {
  id: 'moisture-table-4-2-read',
  title: 'Eq. 4-5 against the rows of Table 4-2 that were read',
  kind: 'check',
  about:
    'Nine humidities at three temperatures of the table are quoted in texts that were read. The rest of the table is compared below.',
  values: (
    [
      [40, [4.6, 6.3, 7.9, 9.5, 11.3, 12.3, 13.5, 16.5, 21.0]],
      [70, [4.5, 6.2, 7.7, 9.2, 11.0, 12.0, 13.1, 16.0, 20.5]],
      [80, [4.4, 6.1, 7.6, 9.1, 10.8, 11.7, 12.9, 15.7, 20.2]],
    ] as const
  ).flatMap(([fahrenheit, row]) => {
    const temperature = (fahrenheit - 32) / 1.8;
    return [20, 30, 40, 50, 60, 65, 70, 80, 90].map(
      (humidity, at): CheckValue => ({
        id: `at-${temperature.toFixed(1)}-and-${humidity}`,
        what: `moisture content at ${temperature.toFixed(1)} °C (${fahrenheit} °F) and ${humidity} % relative humidity`,
        published: row[at] as number,
        ours: () => equilibriumMoisture(temperature, humidity),
        unit: '%',
        tolerance: 0.05,
        reason: 'Half of the last printed digit.',
        citation: { source: 'fpl-gtr-282', locator: `Table 4-2, ${fahrenheit} °F, ${humidity} %`, seen: 'quoted' },
      }),
    );
  }),
};

/** Eq. 4-5 with the constants for °F, from memory; only here, to compare with the constants for °C. */
function fahrenheitForm(fahrenheit: number, humidity: number): number {
  const t = fahrenheit;
  const w = 330 + 0.452 * t + 0.00415 * t * t;
  const kh = ((0.791 + 0.000463 * t - 0.000000844 * t * t) * humidity) / 100;
  const first = (6.34 + 0.000775 * t - 0.0000935 * t * t) * kh;
  const second = first * (1.09 + 0.0284 * t - 0.0000904 * t * t) * kh;
  return (1800 / w) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
}

/** Of several pairs, the one furthest apart. */
function furthest<P>(pairs: readonly P[], gap: (pair: P) => number): P {
  return pairs.reduce((worst, pair) => (Math.abs(gap(pair)) > Math.abs(gap(worst)) ? pair : worst));
}

const grid: CheckSet = {
  id: 'moisture-table-4-2-memory',
  title: 'Eq. 4-5 against Table 4-2, from memory',
  kind: 'comparison',
  about:
    'The table at 19 temperatures and 19 humidities, except the cells that were read. It was written from memory, so it proves nothing; each line shows the humidity at which the two lie furthest apart.',
  values: comparisons.grid.map(({ fahrenheit, cells }): CheckValue => {
    const temperature = (fahrenheit - 32) / 1.8;
    const [humidity, moisture] = furthest(
      cells as [number, number][],
      ([rh, mc]) => equilibriumMoisture(temperature, rh) - mc,
    );
    return {
      id: `at-${fahrenheit}`,
      what: `moisture content at ${fahrenheit} °F (${temperature.toFixed(1)} °C): furthest apart of ${cells.length} humidities, at ${humidity} %`,
      published: moisture,
      ours: () => equilibriumMoisture(temperature, humidity),
      unit: '%',
      tolerance: 0.06,
      reason: 'Half of the last printed digit, and a little for constants that are rounded to three figures.',
      citation: { source: 'fpl-gtr-190', locator: 'Table 4-2', seen: 'memory' },
    };
  }),
};

const fahrenheitConstants: CheckSet = {
  id: 'moisture-fahrenheit-form',
  title: 'Eq. 4-5: constants for °F, from memory, against those for °C',
  kind: 'comparison',
  about:
    'The handbook prints the equation with two sets of constants. Those for °C were read and are used; those for °F are from memory. Each line shows the humidity from 5 to 95 % at which the two lie furthest apart.',
  values: [30, 50, 70, 90, 110, 130, 150, 170, 190, 210].map((t): CheckValue => {
    const humidities = Array.from({ length: 19 }, (_, index) => 5 + 5 * index);
    const celsius = (t - 32) / 1.8;
    const humidity = furthest(humidities, (rh) => equilibriumMoisture(celsius, rh) - fahrenheitForm(t, rh));
    return {
      id: `at-${t}`,
      what: `moisture content at ${t} °F, furthest apart at ${humidity} %`,
      published: fahrenheitForm(t, humidity),
      ours: () => equilibriumMoisture(celsius, humidity),
      unit: '%',
      tolerance: 0.013,
      reason:
        'The constants are rounded to three figures, each set by itself; 0.013 is the largest gap found when they were first compared.',
      citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5, constants for °F', seen: 'memory' },
    };
  }),
};

const newerModel: CheckSet = {
  id: 'moisture-newer-model',
  title: 'Eq. 4-6 of the 2021 edition beside Eq. 4-5',
  kind: 'comparison',
  about:
    'How far the newer model lies above the older equation that the table follows, and that Eq. 4-7 undoes Eq. 4-6. The gaps in the third column were worked out once by hand, from the printed equations.',
  values: [
    ...(
      [
        [20, 65, 0.5],
        [10, 90, 1.1],
        [5, 95, 2.3],
      ] as const
    ).map(
      ([temperature, humidity, gap]): CheckValue => ({
        id: `gap-${temperature}-${humidity}`,
        what: `Eq. 4-6 less Eq. 4-5 at ${temperature} °C and ${humidity} %`,
        published: gap,
        ours: () => some(equilibriumMoisture2021(temperature, humidity)) - equilibriumMoisture(temperature, humidity),
        unit: '%',
        tolerance: 0.05,
        reason: 'Half of the last digit noted.',
        citation: ownWork,
      }),
    ),
    ...(
      [
        [0, 20],
        [20, 65],
        [60, 90],
      ] as const
    ).map(
      ([temperature, humidity]): CheckValue => ({
        id: `inverse-${temperature}-${humidity}`,
        what: `humidity by Eq. 4-7 from the moisture content by Eq. 4-6 at ${temperature} °C and ${humidity} %`,
        published: humidity,
        ours: () => some(relativeHumidityFor2021(temperature, some(equilibriumMoisture2021(temperature, humidity)))),
        unit: '%',
        tolerance: 1e-9,
        reason: 'Eq. 4-7 is Eq. 4-6 solved for humidity: only rounding may remain.',
        citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-6 and 4-7', seen: 'quoted' },
      }),
    ),
    {
      id: 'inverse-older',
      what: 'humidity by Eq. 4-5 solved, from the moisture content by Eq. 4-5 at 20 °C and 65 %',
      published: 65,
      ours: () => some(relativeHumidityFor(20, equilibriumMoisture(20, 65))),
      unit: '%',
      tolerance: 1e-9,
      reason: 'The bracket is halved down to 1e-10 %.',
      citation: ownWork,
    },
  ],
};

/** Moisture contents outdoors through the year, %. */
function outdoorMoisture(climate: string): number[] {
  const found = climateById(climate);
  return found ? moistureThroughYear(outdoorAir(found)).map(({ moisture }) => moisture) : [];
}

const yearRanges: CheckSet = {
  id: 'moisture-year-ranges',
  title: 'Lowest and highest month outdoors, worked out separately',
  kind: 'comparison',
  about:
    'Moisture content from the monthly means of five places, worked out once from the same climate table and Eq. 4-5 by another hand. It shows that the table was carried over and the equation called aright, not that the climate is so.',
  values: (
    [
      ['miami-fl', 12.4, 14.9],
      ['phoenix-az', 4.2, 9.6],
      ['minneapolis-mn', 10.9, 13.9],
      ['seattle-wa', 12, 17.8],
      ['boston-ma', 11, 13.9],
    ] as const
  ).flatMap(([climate, low, high]) =>
    (
      [
        ['lowest', low, Math.min],
        ['highest', high, Math.max],
      ] as const
    ).map(
      ([which, published, pick]): CheckValue => ({
        id: `${climate}-${which}`,
        what: `${which} month of ${climateById(climate)?.place}`,
        published,
        ours: () => pick(...outdoorMoisture(climate)),
        unit: '%',
        tolerance: 0.05,
        reason: 'Half of the last digit noted.',
        citation: ownWork,
      }),
    ),
  ),
};

const outdoors: CheckSet = {
  id: 'moisture-outdoors-memory',
  title: 'Outdoor moisture content by month against Table 13-1, from memory',
  kind: 'comparison',
  about:
    'Eq. 4-5 on the monthly means of a typical year, against the handbook’s table of outdoor places. The table was written from memory and rests on other years, so it proves nothing; each line shows the month in which the two lie furthest apart.',
  values: comparisons.outdoors.map(({ city, climate, moisture }): CheckValue => {
    const ours = outdoorMoisture(climate);
    const month = furthest([...months.keys()], (at) => (ours[at] as number) - (moisture[at] as number));
    return {
      id: climate,
      what: `${city}: furthest apart in ${months[month]}`,
      published: moisture[month] as number,
      ours: () => outdoorMoisture(climate)[month] as number,
      unit: '%',
      tolerance: 1.5,
      reason: 'Reported only: other years, and a mean of monthly means against a mean of hours.',
      citation: { source: 'fpl-gtr-190', locator: `Table 13-1, ${city}`, seen: 'memory' },
    };
  }),
};

/** Published values that this room must reproduce, and comparisons. */
export const checks: readonly CheckSet[] = [
  tableRead,
  ...airChecks,
  grid,
  fahrenheitConstants,
  newerModel,
  yearRanges,
  outdoors,
  ...climateChecks,
  homesComparison,
];
