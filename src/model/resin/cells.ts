import { gasConstant } from '../quantity/constants.ts';
import { type Kinetics, kelvin, referenceKelvin } from './kinetics.ts';

/**
 * Conversion of the cells of a body after a step, each at one temperature through the step: classical Runge–Kutta of fourth
 * order on dα/dt = (k1 + k2·α^m)(1 − α)^n. Allocates nothing.
 *
 * @param before conversion of each cell at the start
 * @param after gets the conversion at the end
 * @param temperature of cell at + offset through the step, °C
 * @param seconds length of the step
 * @returns the largest change of conversion in a cell
 */
export type CellCure = (
  before: Float64Array,
  after: Float64Array,
  temperature: Float64Array,
  offset: number,
  seconds: number,
) => number;

/** The step of cure for these kinetics. */
export function cellCureOf(kinetics: Kinetics): CellCure {
  const { k2At25C, activationEnergy, k1OverK2, m, n } = kinetics;
  const energy = activationEnergy / gasConstant;
  const k2Endless = k2At25C * Math.exp(energy / referenceKelvin);
  // Powers are the costly part of the loop: most resins are taken with whole ones, and for others logarithms are cheaper.
  const shape =
    m === 1 && n === 2
      ? (alpha: number) => (k1OverK2 + alpha) * (1 - alpha) * (1 - alpha)
      : (alpha: number) => {
          const rest = n * Math.log(1 - alpha);
          const grown = alpha > 0 ? Math.exp(rest + m * Math.log(alpha)) : m === 0 ? 1 : 0;
          return k1OverK2 * Math.exp(rest) + grown;
        };
  const rate = (alpha: number) => (alpha < 1 ? shape(alpha) : 0);
  return (before, after, temperature, offset, seconds) => {
    let largest = 0;
    for (let at = 0; at < before.length; at += 1) {
      const alpha = before[at] as number;
      const step = seconds * k2Endless * Math.exp(-energy / kelvin(temperature[at + offset] as number));
      const first = step * rate(alpha);
      const second = step * rate(alpha + first / 2);
      const third = step * rate(alpha + second / 2);
      const fourth = step * rate(alpha + third);
      const change = Math.min((first + 2 * (second + third) + fourth) / 6, 1 - alpha);
      after[at] = alpha + change;
      if (change > largest) largest = change;
    }
    return largest;
  };
}
