import { equation } from '../evidence/index.ts';
import { fickMean } from '../moisture/diffusion-series.ts';
import { day } from '../quantity/seconds.ts';

/**
 * The specimen that the table of moisture-excluding effectiveness was measured on, as the fit takes it: half of a
 * thickness of 5/8 in, and coefficients at 26.7 °C that count in its edges and ends. From memory: D and S were not
 * measured apart from each other.
 */
export const specimen = {
  /** mm. */
  halfThickness: 7.94,
  /** m²/s. */
  diffusion: 8e-10,
  /** m/s on moisture content. */
  surface: 2e-7,
} as const;

const metresPerMillimetre = 1e-3;
const depth = specimen.halfThickness * metresPerMillimetre;

/** Share of its whole change that the specimen has made after some days, behind a film of this resistance (s/m). */
function gain(resistance: number, days: number): number {
  const surface = 1 / (1 / specimen.surface + resistance);
  return fickMean((specimen.diffusion * days * day) / depth ** 2, (surface * depth) / specimen.diffusion);
}

export const moistureExcluding = equation(
  {
    id: 'moisture-excluding',
    title: 'Moisture-excluding effectiveness of a coating of one resistance',
    tex: '\\mathrm{MEE} = 100\\left(1 - \\frac{E(t;\\, 1/S + R_c)}{E(t;\\, 1/S)}\\right)',
    symbols: [
      { tex: '\\mathrm{MEE}', meaning: 'moisture-excluding effectiveness', unit: '%' },
      {
        tex: 'E',
        meaning: 'share of its whole change that the board has made, by Fick’s law with this resistance at its faces',
        unit: '1',
      },
      { tex: 't', meaning: 'time in the damp air', unit: 's' },
      { tex: 'S', meaning: 'surface coefficient of the bare wood on moisture content, 2 × 10⁻⁷', unit: 'm/s' },
      { tex: 'R_c', meaning: 'resistance of the coating on moisture content, of each face', unit: 's/m' },
    ],
    validity:
      'Fitted to the handbook’s table: ponderosa pine sapwood, 26.7 °C, from 30 to 90 % relative humidity, up to 14 days. The resistance counts in the film’s flaws: pinholes, sharp edges and age lower it. Within a class of finishes it scatters by a factor of about 1.5.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'one resistance fitted to each row of the table' },
    remarks:
      'The definition is the laboratory’s. Half thickness (7.94 mm) and coefficients (D 8 × 10⁻¹⁰ m²/s, S 2 × 10⁻⁷ m/s) of the specimen are from memory, and its edges and ends are counted in. Another half thickness would change R in proportion, and leave the delay R times the half thickness as it is. A wood denser than pine takes up more water for each percent and would be slower behind the same film; that is not counted.',
  },
  /**
   * What a finish keeps out of the handbook’s specimen.
   *
   * @param resistance of the film on each face, s/m, from 0
   * @param days in the damp air, above 0
   * @returns %, from 0 for bare wood towards 100
   */
  (resistance: number, days: number): number => 100 * (1 - gain(resistance, days) / gain(0, days)),
);

/** A printed effectiveness (%) after some days. */
export interface ExcludingReading {
  days: number;
  printed: number;
}

/** A resistance and how well it meets the readings. */
export interface ResistanceFit {
  /** s/m. */
  resistance: number;
  /** Root of the mean square of modelled less printed, percentage points. */
  misfit: number;
}

/** Logarithms (base 10, s/m) between which a resistance is sought: a film that is hardly there, and a sheet of metal. */
const range = { low: 4, high: 11 } as const;
const coarse = 70;
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * The one resistance that meets some readings best, by least squares: the best of a grid, then the golden section about it,
 * since several readings may give more than one valley.
 *
 * @param readings at least one
 */
export function fitResistance(readings: readonly ExcludingReading[]): ResistanceFit {
  const misfit = (logarithm: number) => {
    const squares = readings.map(({ days, printed }) => (moistureExcluding(10 ** logarithm, days) - printed) ** 2);
    return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
  };
  const step = (range.high - range.low) / coarse;
  let best: number = range.low;
  for (let at = 1; at <= coarse; at += 1) {
    const logarithm = range.low + at * step;
    if (misfit(logarithm) < misfit(best)) best = logarithm;
  }
  let low = best - step;
  let high = best + step;
  while (high - low > 1e-7) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (misfit(left) < misfit(right)) high = right;
    else low = left;
  }
  const logarithm = (low + high) / 2;
  return { resistance: 10 ** logarithm, misfit: misfit(logarithm) };
}
