import { gasConstant, kelvin, referenceKelvin } from '../../../src/model/resin/kinetics.ts';
import type { Pour } from '../../../src/model/resin/pour.ts';

/**
 * A pour by a plain explicit scheme: the same volumes, stepped forward by Euler within the limit of stability. Another road to
 * what the model gives, as slow as it is simple.
 *
 * @param pour a pour over a base, all at the temperature of the shop
 * @param cells in resin and base
 * @param share of the stable step
 * @param conversionStep largest change of conversion in a step
 * @returns rise at the peak, K, and times of peak and first gel, s; followed until well past the peak
 */
export function stepPour(
  pour: Pour,
  cells: readonly [resin: number, base: number] = [20, 12],
  share = 0.9,
  conversionStep = 0.005,
): { rise: number; timeToPeak: number; firstGel: number } {
  const { kinetics, resin, base, depth, shopTemperature: air } = pour;
  if (!base) throw new Error('The stepper wants a base.');
  const count = cells[0] + cells[1];
  const inResin = (cell: number) => cell >= cells[1];
  const width = (cell: number) => (inResin(cell) ? depth / cells[0] : base.thickness / cells[1]) / 1000;
  const of = (cell: number) => (inResin(cell) ? resin : base);
  const capacity = Array.from({ length: count }, (_, cell) => width(cell) * of(cell).density * of(cell).heatCapacity);
  const half = (cell: number) => width(cell) / 2 / of(cell).conductivity;
  const between = Array.from({ length: count + 1 }, (_, face) =>
    face === 0
      ? 1 / (1 / pour.filmBottom + half(0))
      : face === count
        ? 1 / (1 / pour.filmTop + half(count - 1))
        : 1 / (half(face - 1) + half(face)),
  );
  const stable = Math.min(
    ...capacity.map((held, cell) => held / ((between[cell] as number) + (between[cell + 1] as number))),
  );
  const energy = kinetics.activationEnergy / gasConstant;
  const heat = (resin.density * kinetics.heatOfReaction * depth) / 1000 / cells[0];
  const rate = (alpha: number, celsius: number) =>
    kinetics.k2At25C *
    Math.exp(energy * (1 / referenceKelvin - 1 / kelvin(celsius))) *
    (kinetics.k1OverK2 + alpha ** kinetics.m) *
    (1 - alpha) ** kinetics.n;

  let now = new Float64Array(count).fill(air);
  let next = new Float64Array(count);
  const alpha = new Float64Array(count);
  let [peak, timeToPeak, firstGel, time] = [air, 0, 0, 0];
  for (;;) {
    let quickest = 0;
    for (let cell = cells[1]; cell < count; cell += 1)
      quickest = Math.max(quickest, rate(alpha[cell] as number, now[cell] as number));
    const step = Math.min(share * stable, conversionStep / quickest);
    for (let cell = 0; cell < count; cell += 1) {
      const here = now[cell] as number;
      const below = cell === 0 ? air : (now[cell - 1] as number);
      const above = cell === count - 1 ? air : (now[cell + 1] as number);
      let watts = (between[cell] as number) * (below - here) + (between[cell + 1] as number) * (above - here);
      if (inResin(cell)) {
        const change = rate(alpha[cell] as number, here) * step;
        alpha[cell] = (alpha[cell] as number) + change;
        watts += (heat * change) / step;
      }
      next[cell] = here + (watts * step) / (capacity[cell] as number);
    }
    [now, next] = [next, now];
    time += step;
    let [hottest, most] = [air, 0];
    for (let cell = cells[1]; cell < count; cell += 1) {
      hottest = Math.max(hottest, now[cell] as number);
      most = Math.max(most, alpha[cell] as number);
    }
    if (firstGel === 0 && most >= 1 / Math.sqrt(3)) firstGel = time;
    if (hottest > peak) [peak, timeToPeak] = [hottest, time];
    if (firstGel > 0 && hottest < peak - 0.1 * (peak - air)) return { rise: peak - air, timeToPeak, firstGel };
  }
}
