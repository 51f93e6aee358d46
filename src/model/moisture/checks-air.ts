import type { CheckSet, CheckValue, Citation } from '../evidence/index.ts';
import { climateById } from './climates.ts';
import { humidityRatio, magnusOverWater, relativeHumidity, saturationPressure } from './psychrometrics.ts';
import { indoorAir } from './rooms.ts';
import { moistureThroughYear } from './season.ts';

/** A value where there is one; the checks ask only inside the ranges where there is. */
function some(value: number | null): number {
  return value ?? Number.NaN;
}

/** Pressure of the standard atmosphere at sea level, Pa. */
const seaLevel = 101_325;

const ashrae = (locator: string): Citation => ({ source: 'ashrae-fundamentals', locator, seen: 'quoted' });

const saturation: CheckSet = {
  id: 'moisture-saturation',
  title: 'Saturation pressure of water vapour, above freezing',
  kind: 'check',
  about:
    'Table 3 of the handbook’s chapter, as the tests of PsychroLib quote it. It shows that the library is called as it should be, in the right units.',
  values: (
    [
      [5, 872.6],
      [25, 3169.7],
      [50, 12351.3],
      [100, 101418],
      [150, 476101.4],
    ] as const
  ).map(
    ([temperature, published]): CheckValue => ({
      id: `at-${temperature}`,
      what: `saturation pressure over water at ${temperature} °C`,
      published,
      ours: () => some(saturationPressure(temperature)),
      unit: 'Pa',
      tolerance: published * 0.0003,
      reason: '300 parts in a million, which the handbook claims for its equation.',
      citation: ashrae('Chapter 1, Table 3'),
    }),
  ),
};

const moistAir: CheckSet = {
  id: 'moisture-moist-air',
  title: 'Humidity ratio of saturated air, and a worked example',
  kind: 'check',
  about:
    'Table 2 and Example 1 of the handbook’s chapter, as the tests of PsychroLib quote them. The table is of real air; the equation takes air and vapour as ideal gases, and lies up to 2 % from it.',
  values: [
    ...(
      [
        [5, 5.425, 0.005],
        [25, 20.173, 0.005],
        [50, 86.863, 0.01],
        [85, 838.105, 0.02],
      ] as const
    ).map(
      ([temperature, published, share]): CheckValue => ({
        id: `saturated-${temperature}`,
        what: `humidity ratio of saturated air at ${temperature} °C and 101.325 kPa`,
        published,
        ours: () => some(humidityRatio(temperature, 100, seaLevel)),
        unit: 'g/kg',
        tolerance: published * share,
        reason: `${share * 100} %: ideal gases against real air, as the library’s own tests allow.`,
        citation: ashrae('Chapter 1, Table 2'),
      }),
    ),
    {
      id: 'example-1-humidity',
      what: 'relative humidity of air at 40 °C with 6.5 g/kg (wet bulb 20 °C), 101.325 kPa',
      published: 14,
      ours: () => some(relativeHumidity(40, 6.5, seaLevel)),
      unit: '%',
      tolerance: 0.5,
      reason: 'Half of the last printed digit.',
      citation: ashrae('Chapter 1, Example 1'),
    },
  ],
};

const overIce: CheckSet = {
  id: 'moisture-below-freezing',
  title: 'Below freezing: saturation over water (ours) against saturation over ice',
  kind: 'comparison',
  about:
    'The handbook’s table gives pressure over ice below freezing. Weather records and hygrometers mean the share of saturation over water there, so ours is higher on purpose: by 5 % at −5 °C, 22 % at −20 °C. Taking ice would dry January’s air by as much.',
  values: (
    [
      [-5, 401.74],
      [-20, 103.24],
    ] as const
  ).map(
    ([temperature, published]): CheckValue => ({
      id: `at-${temperature}`,
      what: `saturation pressure at ${temperature} °C: over ice as printed, over water by ours`,
      published,
      ours: () => some(saturationPressure(temperature)),
      unit: 'Pa',
      tolerance: published * 0.0003,
      reason: 'What the handbook claims for its equation over ice; ours means water.',
      citation: ashrae('Chapter 1, Table 3'),
    }),
  ),
};

const magnus: CheckSet = {
  id: 'moisture-magnus',
  title: 'Saturation pressure against the meteorologists’ form',
  kind: 'comparison',
  about:
    'An independent formula for the same pressure, recommended by the World Meteorological Organization over water from −45 to 60 °C.',
  values: [0, 5, 10, 15, 20, 25, 30, 40, 50].map(
    (temperature): CheckValue => ({
      id: `at-${temperature}`,
      what: `saturation pressure over water at ${temperature} °C`,
      published: magnusOverWater(temperature),
      ours: () => some(saturationPressure(temperature)),
      unit: 'Pa',
      tolerance: magnusOverWater(temperature) * 0.003,
      reason: 'The meteorologists’ form is a fit with two constants; 0.3 % is far below what any hygrometer sees.',
      citation: { source: 'wmo-8', locator: 'Magnus form over water', seen: 'quoted' },
    }),
  ),
};

const januaryIndoors: CheckSet = {
  id: 'moisture-january-indoors',
  title: 'January air warmed to 20 °C, nothing added, worked out separately',
  kind: 'comparison',
  about:
    'Relative humidity and moisture content by the psychrometrics used here, against the same worked out once with the Magnus form over water. From the mean of hourly vapour pressure it would be 8, 9 and 70 % humidity: monthly means lose a little.',
  values: (
    [
      ['minneapolis-mn', 7, 1.8],
      ['duluth-mn', 7, 1.8],
      ['miami-fl', 68, 12.7],
    ] as const
  ).flatMap(([id, humidity, moisture]): CheckValue[] => {
    const climate = climateById(id);
    const january = () => {
      const [first] = climate
        ? moistureThroughYear(indoorAir(climate, { heatTo: 20, coolTo: 20, moistureGain: 0, humidityCeiling: 100 }))
        : [];
      return first;
    };
    return [
      {
        id: `${id}-humidity`,
        what: `relative humidity of ${climate?.place}’s January air at 20 °C`,
        published: humidity,
        ours: () => january()?.humidity ?? Number.NaN,
        unit: '%',
        tolerance: 0.5,
        reason: 'Half of the last digit noted.',
        citation: { source: 'kerf-and-cure' },
      },
      {
        id: `${id}-moisture`,
        what: `moisture content in ${climate?.place}’s January air at 20 °C`,
        published: moisture,
        ours: () => january()?.moisture ?? Number.NaN,
        unit: '%',
        tolerance: 0.05,
        reason: 'Half of the last digit noted.',
        citation: { source: 'kerf-and-cure' },
      },
    ];
  }),
};

/** Published values of moist air that this room must reproduce, and comparisons. */
export const airChecks: readonly CheckSet[] = [saturation, moistAir, overIce, magnus, januaryIndoors];
