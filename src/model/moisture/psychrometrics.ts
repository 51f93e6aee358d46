import psychrolib from 'psychrolib';
import { equation } from '../evidence/index.ts';

// The library keeps its unit system in one shared variable: set once here, and no other file may import it.
psychrolib.SetUnitSystem(psychrolib.SI);

/** Below this temperature in °C the library takes saturation over ice, which no hygrometer or weather record means. */
const triplePoint = 0.01;
/** Temperatures in °C at which saturation is answered: the WMO form over supercooled water ends at -45. */
const answered = { minimum: -45, maximum: 200 } as const;

/**
 * Saturation pressure of water vapour over liquid water, Pa.
 *
 * Relative humidity is the share of this pressure, and below freezing too weather records and hygrometers
 * mean saturation over (supercooled) water, not over ice.
 *
 * Source: above 0.01 °C ASHRAE handbook, fundamentals, ch. 1, Eq. 6, through PsychroLib; below, the form that the
 * World Meteorological Organization recommends over water (WMO-No. 8).
 *
 * @param temperature °C
 * @returns null outside -45 to 200 °C
 */
export const saturationPressure = equation(
  {
    id: 'saturation-pressure',
    title: 'Saturation pressure of water vapour, over water',
    tex: String.raw`\begin{aligned}
\ln p_{ws} &= \frac{C_8}{T}+C_9+C_{10}T+C_{11}T^2+C_{12}T^3+C_{13}\ln T && t > 0.01\,^\circ\mathrm{C}\\
p_{ws} &= 611.2\,\exp\frac{17.62\,t}{243.12+t} && t \le 0.01\,^\circ\mathrm{C}
\end{aligned}`,
    symbols: [
      { tex: 'p_{ws}', meaning: 'saturation pressure of water vapour', unit: 'Pa' },
      { tex: 't', meaning: 'temperature', unit: '°C' },
      { tex: 'T', meaning: 'temperature', unit: 'K' },
      { tex: 'C_8 \\ldots C_{13}', meaning: 'constants of the handbook’s Eq. 6', unit: '1' },
    ],
    validity: 'From −45 to 200 °C.',
    basis: 'published',
    citation: { source: 'ashrae-fundamentals', locator: 'Chapter 1, Eq. 6', seen: 'quoted' },
    remarks:
      'Below freezing the library would take saturation over ice (Eq. 5). Weather records and hygrometers mean saturation over water there, so the form over water that the World Meteorological Organization recommends (WMO-No. 8, quoted) is used instead, valid from −45 to 60 °C. At −13 °C the difference is 12 % of the vapour. The two forms meet within 0.003 % at 0.01 °C.',
  },
  (temperature: number): number | null => {
    if (!(temperature >= answered.minimum && temperature <= answered.maximum)) return null;
    if (temperature <= triplePoint) return magnusOverWater(temperature);
    return guarded(() => psychrolib.GetSatVapPres(temperature));
  },
);

/** The form over liquid water that WMO-No. 8 recommends, Pa, for -45 to 60 °C. */
export function magnusOverWater(temperature: number): number {
  return 611.2 * Math.exp((17.62 * temperature) / (243.12 + temperature));
}

/**
 * Humidity ratio of air, g of water vapour a kg of dry air.
 *
 * @param temperature °C, -45 to 200
 * @param humidity relative humidity over liquid water, %, 0 to 100
 * @param pressure of the air, Pa
 * @returns null outside those ranges, and where the vapour would need more than the whole pressure
 */
export const humidityRatio = equation(
  {
    id: 'ashrae-humidity-ratio',
    title: 'Humidity ratio of air',
    tex: String.raw`W = 1000 \cdot 0.621945\,\frac{p_w}{p-p_w} \qquad p_w = \varphi\,p_{ws}(t)`,
    symbols: [
      { tex: 'W', meaning: 'humidity ratio: vapour to dry air', unit: 'g/kg' },
      { tex: 'p_w', meaning: 'pressure of the water vapour', unit: 'Pa' },
      { tex: 'p', meaning: 'pressure of the air', unit: 'Pa' },
      { tex: String.raw`\varphi`, meaning: 'relative humidity as a decimal', unit: '1' },
      { tex: 'p_{ws}(t)', meaning: 'saturation pressure at the air’s temperature', unit: 'Pa' },
    ],
    validity: 'Moist air as a mixture of ideal gases; −45 to 200 °C.',
    basis: 'published',
    citation: { source: 'ashrae-fundamentals', locator: 'Chapter 1, Eq. 12, 20 and 22', seen: 'quoted' },
  },
  (temperature: number, humidity: number, pressure: number): number | null => {
    const saturated = saturationPressure(temperature);
    if (saturated === null || !(humidity >= 0 && humidity <= 100)) return null;
    const vapour = (humidity / 100) * saturated;
    if (!(pressure > vapour) || !Number.isFinite(pressure)) return null;
    // The library lifts what is below 1e-7 kg/kg to that, which would make perfectly dry air slightly damp.
    if (vapour === 0) return 0;
    return guarded(() => 1000 * psychrolib.GetHumRatioFromVapPres(vapour, pressure));
  },
);

/**
 * Relative humidity of air over liquid water, %. More than 100 means that water would condense: nothing is capped here.
 *
 * @param temperature °C, -45 to 200
 * @param ratio humidity ratio, g of water vapour a kg of dry air, 0 or more
 * @param pressure of the air, Pa
 * @returns null outside those ranges
 */
export const relativeHumidity = equation(
  {
    id: 'ashrae-relative-humidity',
    title: 'Relative humidity of air',
    tex: String.raw`\varphi = \frac{p_w}{p_{ws}(t)} \qquad p_w = p\,\frac{W}{621.945 + W}`,
    symbols: [
      { tex: String.raw`\varphi`, meaning: 'relative humidity as a decimal', unit: '1' },
      { tex: 'p_w', meaning: 'pressure of the water vapour', unit: 'Pa' },
      { tex: 'p_{ws}(t)', meaning: 'saturation pressure at the air’s temperature', unit: 'Pa' },
      { tex: 'p', meaning: 'pressure of the air', unit: 'Pa' },
      { tex: 'W', meaning: 'humidity ratio: vapour to dry air', unit: 'g/kg' },
    ],
    validity: 'Moist air as a mixture of ideal gases; −45 to 200 °C. More than 1 means that water would condense.',
    basis: 'published',
    citation: { source: 'ashrae-fundamentals', locator: 'Chapter 1, Eq. 12, 20 and 22', seen: 'quoted' },
  },
  (temperature: number, ratio: number, pressure: number): number | null => {
    const saturated = saturationPressure(temperature);
    if (saturated === null || !(ratio >= 0) || !(pressure > 0) || !Number.isFinite(ratio * pressure)) return null;
    if (ratio === 0) return 0;
    return guarded(() => (100 * psychrolib.GetVapPresFromHumRatio(ratio / 1000, pressure)) / saturated);
  },
);

/** The library throws on what it will not take; here that is no answer. */
function guarded(compute: () => number): number | null {
  try {
    const value = compute();
    return Number.isFinite(value) ? value : null;
  } catch {
    return null;
  }
}
