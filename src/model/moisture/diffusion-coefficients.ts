import { type EvidenceNote, equation } from '../evidence/index.ts';
import { gasConstant } from '../quantity/constants.ts';

/** Density that is assumed where none is given, kg/m³: a usual hardwood. */
export const assumedDensity = 650;

/** Density (kg/m³, air-dry) against diffusion coefficient (m²/s, across the grain, 20 °C, 9 % moisture content). */
const byDensity: readonly (readonly [density: number, diffusion: number])[] = [
  // The middle, as a ratio, of each range of the working values: 1 to 2, 0.4 to 0.8 and 0.2 to 0.4 ×10⁻¹⁰.
  [425, Math.sqrt(1e-10 * 2e-10)],
  [650, Math.sqrt(0.4e-10 * 0.8e-10)],
  [900, Math.sqrt(0.2e-10 * 0.4e-10)],
];

/** Where the working values speak; beyond it the nearest one is used and said to be. */
export const densityRange = { minimum: 350, maximum: 1000 };

const activationEnergy = 37_500;
const perPercent = 0.12;
const reference = { temperature: 20, moisture: 9 };

/** D at the reference temperature and moisture: straight lines of ln D between the working values, level beyond them. */
function referenceDiffusion(density: number): number {
  const first = byDensity[0] as readonly [number, number];
  const last = byDensity[byDensity.length - 1] as readonly [number, number];
  if (density <= first[0]) return first[1];
  if (density >= last[0]) return last[1];
  const at = byDensity.findIndex(([knot]) => knot >= density);
  const [lowDensity, lowD] = byDensity[at - 1] as readonly [number, number];
  const [highDensity, highD] = byDensity[at] as readonly [number, number];
  return lowD * (highD / lowD) ** ((density - lowDensity) / (highDensity - lowDensity));
}

/** Working value of the diffusion coefficient of moisture across the grain, m²/s. */
export const workingDiffusion = equation(
  {
    id: 'working-diffusion',
    title: 'Working value of the diffusion coefficient across the grain',
    tex: 'D = D_\\rho \\, \\exp\\!\\left[\\frac{E}{R}\\left(\\frac{1}{293.15} - \\frac{1}{T}\\right)\\right] \\exp[0.12\\,(\\bar M - 9)]',
    symbols: [
      { tex: 'D', meaning: 'diffusion coefficient for moisture content as the driving force', unit: 'm²/s' },
      {
        tex: 'D_\\rho',
        meaning:
          'its value at 20 °C and 9 %, 1.41, 0.566 and 0.283 × 10⁻¹⁰ m²/s at densities of 425, 650 and 900 kg/m³, between them on a straight line of its logarithm',
        unit: 'm²/s',
      },
      { tex: 'E', meaning: 'activation energy, 37.5 kJ/mol', unit: 'J/mol' },
      { tex: 'R', meaning: 'gas constant, 8.314', unit: 'J/(mol K)' },
      { tex: 'T', meaning: 'temperature', unit: 'K' },
      { tex: '\\bar M', meaning: 'moisture content, mean of start and balance', unit: '%' },
    ],
    validity:
      'Order of magnitude: 5 to 40 °C, 4 to 20 % moisture content, densities of 350 to 1000 kg/m³. Times follow from it to a factor of two.',
    basis: 'memory',
    remarks:
      'Working values from memory. Published beside them: 0.94 and 1.00 × 10⁻¹⁰ m²/s for spruce, radial and tangential; spruce two to three times beech; D growing eightfold from 2.5 to 18 % in aspen at 43 °C, an exponent of 0.134 per percent where 0.12 is used here.',
  },
  /**
   * A working value of D for a wood across the grain.
   *
   * @param density air-dry density, kg/m³
   * @param temperature °C
   * @param moisture moisture content, mean of start and balance, %
   * @returns m²/s
   */
  (density: number, temperature: number, moisture: number): number =>
    referenceDiffusion(density) *
    Math.exp((activationEnergy / gasConstant) * (1 / (reference.temperature + 273.15) - 1 / (temperature + 273.15))) *
    Math.exp(perPercent * (moisture - reference.moisture)),
);

/** Surface coefficient in still indoor air, m/s on moisture content: the middle, as a ratio, of 0.3 to 1 × 10⁻⁷. */
export const stillAirSurface = Math.sqrt(0.3e-7 * 1e-7);

/** Times from the working values scatter by this factor either way. */
export const diffusionScatter = 2;

/** What the coefficients rest on, for an answer that used the working values. */
export const coefficientEvidence: readonly EvidenceNote[] = [
  {
    text: 'Measured in spruce: D of 0.94 and 1.00 × 10⁻¹⁰ m²/s, radial and tangential, and 1.98 × 10⁻¹⁰ along the grain.',
    basis: 'published',
    citation: { source: 'sanchez-ferrer-2026', locator: 'abstract', seen: 'source-text' },
  },
  {
    text: 'Methods differ by a factor of two for one wood (D of a drying or wetting board is about half of D in a cup test); spruce conducts two to three times as well as beech.',
    basis: 'published',
    citation: { source: 'sonderegger-2011', locator: 'abstract', seen: 'source-text' },
  },
  {
    text: 'D grows about exponentially with moisture content: eightfold from 2.5 to 18 % in aspen at 43 °C.',
    basis: 'published',
    citation: { source: 'simpson-aspen', locator: 'abstract', seen: 'source-text' },
  },
  {
    text: 'In beech the coefficient along the grain is about 13 times that across it (40 °C, 10 %); across the grain it grows with moisture content in the radial direction and hardly at all in the tangential. One exponent is used here for both.',
    basis: 'published',
    citation: { source: 'skaar-beech', locator: 'abstract', seen: 'source-text' },
  },
  {
    text: 'In northern red oak one pair of coefficients does not fit a whole drying curve, and two pairs, early and late, do: one more reason for the band of a factor of two.',
    basis: 'published',
    citation: { source: 'liu-simpson', locator: 'abstract', seen: 'source-text' },
  },
  {
    text: 'Surface coefficient of still indoor air, 0.3 to 1 × 10⁻⁷ m/s on moisture content: a working value from memory.',
    basis: 'memory',
  },
];
