import type { CheckSet, CheckValue, Citation } from '../evidence/index.ts';
import { type Climate, climateById, climates } from './climates.ts';
import { humidityRatio, saturationPressure } from './psychrometrics.ts';
import { type AirReading, indoorAir, outdoorAir, usualRoom } from './rooms.ts';

/** December, January and February by their place in the year. */
const winter = [11, 0, 1];

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Slope of the straight line through points, by least squares. */
function slope(points: readonly (readonly [x: number, y: number])[]): number {
  const [x, y] = [mean(points.map(([at]) => at)), mean(points.map(([, at]) => at))];
  const rise = points.reduce((sum, [each, other]) => sum + (each - x) * (other - y), 0);
  return rise / points.reduce((sum, [each]) => sum + (each - x) ** 2, 0);
}

/** Indoor against outdoor, month by month, of a house as commonly kept. */
function pairs(id: string, of: (reading: AirReading, climate: Climate) => number): [number, number][] {
  const climate = climateById(id);
  if (!climate) return [];
  const indoors = indoorAir(climate, usualRoom);
  return outdoorAir(climate).map((outdoors, month) => [
    of(outdoors, climate),
    of(indoors[month] as AirReading, climate),
  ]);
}

const ratio = ({ temperature, humidity }: AirReading, { pressure }: Climate) =>
  humidityRatio(temperature, humidity, pressure) ?? Number.NaN;

/** Mean relative humidity, %, of the winter months in Canadian houses as commonly kept. */
function canadianWinter(): number {
  const canadian = climates.filter(({ country }) => country === 'Canada');
  return mean(
    canadian.flatMap((climate) => {
      const indoors = indoorAir(climate, usualRoom);
      return winter.map((month) => (indoors[month] as AirReading).humidity);
    }),
  );
}

/** Mean vapour pressure, hPa, of the winter months in a New York house as commonly kept. */
function newYorkWinter(): number {
  const climate = climateById('new-york-ny');
  const indoors = climate ? indoorAir(climate, usualRoom) : [];
  return mean(
    winter.map((month) => {
      const { temperature, humidity } = indoors[month] as AirReading;
      return ((saturationPressure(temperature) ?? Number.NaN) * humidity) / 100 / 100;
    }),
  );
}

const boston: Citation = { source: 'nguyen-2014', locator: 'abstract', seen: 'source-text' };
const measured =
  'The measured figure as printed; an assumption and not a calculation is compared, so no difference fails.';

const values: CheckValue[] = [
  {
    id: 'canada-winter-humidity',
    what: 'relative humidity of heated houses in winter: Canadian houses as measured, 25 to 30 %; ours for December to February, mean of the Canadian places',
    published: 27.5,
    ours: canadianWinter,
    unit: '%',
    tolerance: 2.5,
    reason: 'The range as printed.',
    citation: { source: 'kent-1966', locator: 'abstract', seen: 'source-text' },
  },
  {
    id: 'new-york-winter-vapour',
    what: 'vapour pressure indoors in winter: 34 New York apartments as measured; ours for December to February',
    published: 6.7,
    ours: newYorkWinter,
    unit: 'hPa',
    tolerance: 0.05,
    reason: measured,
    citation: { source: 'quinn-2017', locator: 'abstract', seen: 'source-text' },
  },
  {
    id: 'boston-moisture-slope',
    what: 'change of indoor moisture for a change of outdoor moisture through the year: 16 Boston homes as measured, by day; ours by month',
    published: 0.69,
    ours: () => slope(pairs('boston-ma', ratio)),
    unit: '1',
    tolerance: 0.005,
    reason: measured,
    citation: boston,
  },
  {
    id: 'boston-temperature-cool',
    what: 'change of indoor temperature for a change of outdoor temperature on the cool side: 16 Boston homes as measured; ours for the months below 20 °C',
    published: 0.04,
    ours: () =>
      slope(pairs('boston-ma', ({ temperature }) => temperature).filter(([outdoors]) => outdoors < usualRoom.heatTo)),
    unit: '1',
    tolerance: 0.005,
    reason: measured,
    citation: boston,
  },
  {
    id: 'boston-temperature-warm',
    what: 'the same on the warm side: 16 Boston homes as measured; ours for the months above 20 °C',
    published: 0.41,
    ours: () =>
      slope(pairs('boston-ma', ({ temperature }) => temperature).filter(([outdoors]) => outdoors > usualRoom.heatTo)),
    unit: '1',
    tolerance: 0.005,
    reason: measured,
    citation: boston,
  },
];

/** The house as commonly kept, which is our assumption, beside homes in which somebody measured. */
export const homesComparison: CheckSet = {
  id: 'moisture-homes',
  title: 'The house as commonly kept, against homes as measured',
  kind: 'comparison',
  about:
    'Where no reading is given, a house is taken to be heated to 20 °C, cooled to 26 °C, and to gain 2 g of water a kilogram of air while shut. That is a rule of thumb; here it stands beside measured homes. The measured figures are from abstracts, of other years than the weather used. The Boston paper’s slope of relative humidity, 0.39, is of days, whose weather monthly means do not have; it cannot be set beside ours.',
  values,
};
