import { equation } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';

/** Temperatures in °C between which the functions of this file give a finite answer. */
export const sorptionTemperatures = { minimum: -40, maximum: 130 } as const;

/** Range of the handbook's Table 4-2, which Eq. 4-5 stands for: °C and % relative humidity. */
const tableRange = { temperatureLow: -1.1, temperatureHigh: 132, humidityLow: 5, humidityHigh: 95 } as const;

/**
 * Moisture content of wood at balance with the air, in % of its ovendry mass.
 *
 * Source: Wood handbook, FPL-GTR-190 (2010) and FPL-GTR-282 (2021), Eq. 4-5, with the constants for °C.
 * Finite and rising with humidity for every temperature from -40 to 130 °C and humidity from 0 to 100 %;
 * `sorptionValidity` says where that is further than the handbook's table goes.
 *
 * @param temperature of the air, °C
 * @param humidity relative humidity of the air, %
 */
export const equilibriumMoisture = equation(
  {
    id: 'wood-handbook-4-5',
    title: 'Equilibrium moisture content',
    tex: String.raw`\begin{aligned}
\mathrm{EMC} &= \frac{1800}{W}\left[\frac{Kh}{1-Kh}+\frac{K_1Kh+2K_1K_2K^2h^2}{1+K_1Kh+K_1K_2K^2h^2}\right]\\
W &= 349 + 1.29\,T + 0.0135\,T^2\\
K &= 0.805 + 0.000736\,T - 0.00000273\,T^2\\
K_1 &= 6.27 - 0.00938\,T - 0.000303\,T^2\\
K_2 &= 1.91 + 0.0407\,T - 0.000293\,T^2
\end{aligned}`,
    symbols: [
      { tex: String.raw`\mathrm{EMC}`, meaning: 'equilibrium moisture content, of the ovendry mass', unit: '%' },
      { tex: 'T', meaning: 'temperature of the air', unit: '°C' },
      { tex: 'h', meaning: 'relative humidity as a decimal, 0 to 1', unit: '1' },
      { tex: 'W,\\;K,\\;K_1,\\;K_2', meaning: 'coefficients of the two-hydrate sorption model', unit: '1' },
    ],
    validity:
      'The handbook’s Table 4-2, which it stands for, runs from −1.1 to 132 °C (30 to 270 °F) and from 5 to 95 % relative humidity. It is solved here from −40 to 130 °C and from 0 to 100 %, and an answer outside the table says so.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-5', seen: 'quoted' },
    remarks:
      'One curve for all woods, midway between drying and wetting; the tenth of a percent shows a trend only (the handbook’s footnote, from memory). The abstract of the paper behind it gives a mean deviation under 0.13 and a largest deviation under 0.9 percentage points from the sorption data of Agriculture Handbook 72.',
  },
  (temperature: number, humidity: number): number => sorbed(coefficients(temperature), humidity / 100),
);

interface Coefficients {
  w: number;
  k: number;
  k1: number;
  k2: number;
}

function coefficients(t: number): Coefficients {
  return {
    w: 349 + 1.29 * t + 0.0135 * t * t,
    k: 0.805 + 0.000736 * t - 0.00000273 * t * t,
    k1: 6.27 - 0.00938 * t - 0.000303 * t * t,
    k2: 1.91 + 0.0407 * t - 0.000293 * t * t,
  };
}

function sorbed({ w, k, k1, k2 }: Coefficients, h: number): number {
  const kh = k * h;
  const first = k1 * kh;
  const second = first * k2 * kh;
  return (1800 / w) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
}

/**
 * Relative humidity that keeps wood at a moisture content, in %: Eq. 4-5 solved for humidity to 1e-10 %.
 *
 * The equation rises with humidity at every temperature, so halving a bracket always finds the one answer.
 *
 * @param temperature of the air, °C, -40 to 130
 * @param moisture moisture content of the wood, %
 * @returns null where no air from 0 to 100 % gives it
 */
export function relativeHumidityFor(temperature: number, moisture: number): number | null {
  const at = coefficients(temperature);
  // Written so that a moisture content that is not a number is refused too.
  if (!(moisture >= 0 && moisture <= sorbed(at, 1))) return null;
  let low = 0;
  let high = 100;
  while (high - low > 1e-10) {
    const middle = (low + high) / 2;
    if (sorbed(at, middle / 100) < moisture) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const a = -0.000612;
const b = 2.43;
const c = 0.0577;
const d = 0.43;
const critical = 647.1;

/** A T (1 - T/Tc)^B of Eq. 4-6, and C T^D, at a temperature in °C. */
function glassCoefficients(temperature: number): { scale: number; power: number } {
  const t = temperature + 273.15;
  return { scale: a * t * (1 - t / critical) ** b, power: c * t ** d };
}

/**
 * Moisture content at balance by the newer model that the 2021 edition prints beside Eq. 4-5, in %.
 *
 * Source: Wood handbook, FPL-GTR-282 (2021), Eq. 4-6, after Glass and others 2014.
 *
 * @param temperature of the air, °C, -40 to 130
 * @param humidity relative humidity of the air, %
 * @returns null at 100 %, where the formula grows without bound, and outside 0 to 100 %
 */
export const equilibriumMoisture2021 = equation(
  {
    id: 'wood-handbook-2021-4-6',
    title: 'Equilibrium moisture content, newer model',
    tex: String.raw`\mathrm{EMC} = 100\left[A\,T\left(1-\frac{T}{T_c}\right)^{B}\ln(1-h)\right]^{C\,T^{D}}`,
    symbols: [
      { tex: String.raw`\mathrm{EMC}`, meaning: 'equilibrium moisture content, of the ovendry mass', unit: '%' },
      { tex: 'T', meaning: 'temperature of the air', unit: 'K' },
      { tex: 'T_c', meaning: 'critical temperature of water, 647.1 K', unit: 'K' },
      { tex: 'h', meaning: 'relative humidity as a decimal', unit: '1' },
      { tex: 'A', meaning: '−0.000612', unit: '1/K' },
      { tex: 'B,\\;C,\\;D', meaning: '2.43, 0.0577 and 0.430', unit: '1' },
    ],
    validity:
      'Below 100 % relative humidity, where it grows without bound. The range that it was fitted to has not been read; it is solved here from −40 to 130 °C.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-6', seen: 'quoted' },
    remarks:
      'Shown as a comparison. The handbook’s Table 4-2 does not follow it: it lies above Eq. 4-5 by 0.5 percentage points at 20 °C and 65 %, 1.1 at 10 °C and 90 %, 2.3 at 5 °C and 95 %.',
  },
  (temperature: number, humidity: number): number | null => {
    if (!(humidity >= 0 && humidity < 100)) return null;
    const { scale, power } = glassCoefficients(temperature);
    return 100 * (scale * Math.log1p(-humidity / 100)) ** power;
  },
);

/**
 * Relative humidity that keeps wood at a moisture content by the newer model, in %.
 *
 * Source: Wood handbook, FPL-GTR-282 (2021), Eq. 4-7, the closed inverse of Eq. 4-6.
 *
 * @param temperature of the air, °C, -40 to 130
 * @param moisture moisture content of the wood, %
 * @returns null below 0 %
 */
export const relativeHumidityFor2021 = equation(
  {
    id: 'wood-handbook-2021-4-7',
    title: 'Relative humidity from moisture content, newer model',
    tex: String.raw`h = 1-\exp\left\{\frac{1}{A\,T}\left(1-\frac{T}{T_c}\right)^{-B}\left(\frac{\mathrm{EMC}}{100}\right)^{\frac{1}{C}T^{-D}}\right\}`,
    symbols: [
      { tex: 'h', meaning: 'relative humidity as a decimal', unit: '1' },
      { tex: String.raw`\mathrm{EMC}`, meaning: 'moisture content of the wood', unit: '%' },
      { tex: 'T', meaning: 'temperature of the air', unit: 'K' },
      { tex: 'T_c', meaning: 'critical temperature of water, 647.1 K', unit: 'K' },
      { tex: 'A', meaning: '−0.000612', unit: '1/K' },
      { tex: 'B,\\;C,\\;D', meaning: '2.43, 0.0577 and 0.430', unit: '1' },
    ],
    validity: 'As Eq. 4-6, whose inverse it is.',
    basis: 'published',
    citation: { source: 'fpl-gtr-282', locator: 'Eq. 4-7', seen: 'quoted' },
  },
  (temperature: number, moisture: number): number | null => {
    if (!(moisture >= 0)) return null;
    const { scale, power } = glassCoefficients(temperature);
    return -100 * Math.expm1((moisture / 100) ** (1 / power) / scale);
  },
);

/**
 * In words, how far air lies outside the table that Eq. 4-5 stands for; null inside it.
 *
 * @param temperature of the air, °C
 * @param humidity relative humidity of the air, %
 */
export function sorptionValidity(temperature: number, humidity: number): string | null {
  const beyond: string[] = [];
  const { temperatureLow, temperatureHigh, humidityLow, humidityHigh } = tableRange;
  if (temperature < temperatureLow)
    beyond.push(`${amount(temperatureLow - temperature, 'K', 2)} colder than its ${amount(temperatureLow, 'Cel')}`);
  if (temperature > temperatureHigh)
    beyond.push(`${amount(temperature - temperatureHigh, 'K', 2)} warmer than its ${amount(temperatureHigh, 'Cel')}`);
  if (humidity < humidityLow) beyond.push(`${short(humidityLow - humidity)} points of humidity below its 5 %`);
  if (humidity > humidityHigh) beyond.push(`${short(humidity - humidityHigh)} points of humidity above its 95 %`);
  if (beyond.length === 0) return null;
  return `This air lies outside the handbook’s Table 4-2: ${beyond.join(', and ')}. The equation is carried on beyond it, so take the answer as a guide.`;
}

/** One decimal, or more where that would read as zero. */
function short(gap: number): string {
  return gap < 0.05 ? 'less than 0.1' : String(Math.round(gap * 10) / 10);
}
