import { cureRate, gel, type RoadResin, work } from './resins.ts';

/** What a cup does: °C, and minutes from mixing. */
export interface RoadCup {
  peak: number;
  gel: number;
  work: number;
}

/** Cells from the axis to the wall and from the bottom up, and the largest gain of conversion in a step. */
export interface CupFineness {
  cells: readonly [radial: number, axial: number];
  gain: number;
}
export const fineCup: CupFineness = { cells: [15, 16], gain: 0.002 };

/**
 * A cup of mixed resin by Euler's rule on equal rings: height 1.065 of the radius, 10 W/(m²·K) above, 6 below, 9 at the wall behind
 * 0.8 mm of polypropylene (0.22 W/(m·K)). Shares no line with the model.
 *
 * @param mass g
 * @param air °C, of the resin at the start too
 * @param wanted ends the run at the gel, or past the peak
 */
export function stepCup(
  resin: RoadResin,
  mass: number,
  air: number,
  wanted: 'gel' | 'peak' = 'peak',
  { cells, gain }: CupFineness = fineCup,
): RoadCup {
  const { conductivity: k, density, heatCapacity } = resin;
  const [radial, axial] = cells;
  const radius = Math.cbrt(mass / 1000 / density / (Math.PI * 1.065));
  const [dr, dz] = [radius / radial, (1.065 * radius) / axial];
  const loss = (film: number, half: number, wall = 0) => 1 / (1 / film + wall + half / k);
  const wall = loss(9, dr / 2, 0.0008 / 0.22);
  const [top, bottom] = [loss(10, dz / 2), loss(6, dz / 2)];
  const capacity = density * heatCapacity;
  const stable = (0.45 * capacity) / (k * (2 / dr ** 2 + 2 / dz ** 2));
  const count = radial * axial;
  let warmth = new Float64Array(count);
  let next = new Float64Array(count);
  const alpha = new Float64Array(count);
  const rates = new Float64Array(count);
  const found = { peak: air, gel: 0, work: 0 };
  for (let [time, before] = [0, 0]; ; ) {
    let quickest = 0;
    for (let at = 0; at < count; at += 1) {
      const rate = cureRate(resin, alpha[at] as number, air + (warmth[at] as number));
      rates[at] = rate;
      if (rate > quickest) quickest = rate;
    }
    const step = Math.min(stable, gain / quickest);
    let [most, hottest] = [0, 0];
    for (let i = 0; i < radial; i += 1) {
      for (let j = 0; j < axial; j += 1) {
        const at = i * axial + j;
        const here = warmth[at] as number;
        // Per radian and metre of height, over the ring's own (i + ½) dr²; then per square metre, over dz.
        const out =
          i + 1 < radial ? (i + 1) * k * ((warmth[at + axial] as number) - here) : -(i + 1) * dr * wall * here;
        const inward = i > 0 ? i * k * ((warmth[at - axial] as number) - here) : 0;
        const up = j + 1 < axial ? (k / dz) * ((warmth[at + 1] as number) - here) : -top * here;
        const down = j > 0 ? (k / dz) * ((warmth[at - 1] as number) - here) : -bottom * here;
        const watts = (out + inward) / ((i + 0.5) * dr * dr) + (up + down) / dz;
        const gained = Math.min(1 - (alpha[at] as number), step * (rates[at] as number));
        const cured = (alpha[at] as number) + gained;
        const warmer = here + (watts * step) / capacity + (resin.heat / heatCapacity) * gained;
        alpha[at] = cured;
        next[at] = warmer;
        if (cured > most) most = cured;
        if (warmer > hottest) hottest = warmer;
      }
    }
    [warmth, next] = [next, warmth];
    const reached = (conversion: number) => (time + (step * (conversion - before)) / (most - before)) / 60;
    if (found.work === 0 && most >= work) found.work = reached(work);
    if (found.gel === 0 && most >= gel) found.gel = reached(gel);
    time += step;
    before = most;
    if (air + hottest > found.peak) found.peak = air + hottest;
    if (found.gel > 0 && (wanted === 'gel' || hottest < 0.95 * (found.peak - air))) return found;
  }
}

/**
 * Rate constant at 25 °C with which a cup gels in so many minutes: halved on its logarithm.
 *
 * @param mass g
 * @param air °C
 */
export function rateOfPotLife(
  resin: Omit<RoadResin, 'rate'>,
  minutes: number,
  mass: number,
  air: number,
  fineness: CupFineness = fineCup,
): number {
  let [low, high] = [Math.log(1e-7), Math.log(0.05)];
  while (high - low > 5e-4) {
    const middle = (low + high) / 2;
    if (stepCup({ ...resin, rate: Math.exp(middle) }, mass, air, 'gel', fineness).gel < minutes) high = middle;
    else low = middle;
  }
  return Math.exp((low + high) / 2);
}
