import { gasConstant } from '../../../src/model/quantity/constants.ts';
import { kelvin, referenceKelvin, type ThermalProperties } from '../../../src/model/resin/kinetics.ts';
import type { Pour } from '../../../src/model/resin/pour.ts';

/** Sizes of cells, m: from the middle outwards and from the underside up, those of the resin and those of wood or base. */
export interface SectionCells {
  resinWidths: readonly number[];
  woodWidths: readonly number[];
  baseHeights: readonly number[];
  resinHeights: readonly number[];
}

/** Equal cells of about a size, with wood beside it as far as told, mm. */
export function evenCells(pour: Pour, size: number, wood: number): SectionCells {
  const { channel, base, depth } = pour;
  if (!channel || !base) throw new Error('The stepper wants a channel and a base.');
  const even = (length: number) => {
    const count = Math.max(1, Math.round(length / size));
    return Array.from({ length: count }, () => length / count / 1000);
  };
  return {
    resinWidths: even(channel.width / 2),
    woodWidths: even(wood),
    baseHeights: even(base.thickness),
    resinHeights: even(depth),
  };
}

/**
 * A channel by a plain explicit scheme: heat passes between neighbours as they stand at the start of each step, and steps are as
 * long as that stays stable. Shares no numerics with the channel of the model; slow, and only for tests and the bench.
 *
 * @param airAt temperature of the air at a time, s, where it does not keep still, °C
 * @param conversionStep largest change of conversion in a step
 * @returns rise of the hottest cell over the warmest air so far, K, its temperature, °C, and times of peak and first gel, s
 */
export function stepChannel(
  pour: Pour,
  cells: SectionCells,
  airAt: (time: number) => number = () => pour.shopTemperature,
  conversionStep = 0.005,
): { rise: number; peak: number; timeToPeak: number; firstGel: number } {
  const { kinetics, resin, base, channel } = pour;
  if (!channel || !base) throw new Error('The stepper wants a channel and a base.');
  const widths = [...cells.resinWidths, ...cells.woodWidths];
  const heights = [...cells.baseHeights, ...cells.resinHeights];
  const [columns, rows] = [widths.length, heights.length];
  const inResin = (x: number, y: number) => x < cells.resinWidths.length && y >= cells.baseHeights.length;
  const of = (x: number, y: number): ThermalProperties =>
    y < cells.baseHeights.length ? base : inResin(x, y) ? resin : channel.sides;
  const [dx, dy] = [(x: number) => widths[x] as number, (y: number) => heights[y] as number];
  const count = columns * rows;
  const [right, up, down] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  const capacity = new Float64Array(count);
  const heat = new Float64Array(count);
  for (let y = 0; y < rows; y += 1) {
    for (let x = 0; x < columns; x += 1) {
      const at = x + columns * y;
      const me = of(x, y);
      const upHalf = dy(y) / 2 / me.conductivity;
      if (x + 1 < columns)
        right[at] = dy(y) / (dx(x) / 2 / me.conductivity + dx(x + 1) / 2 / of(x + 1, y).conductivity);
      up[at] = dx(x) / (upHalf + (y + 1 < rows ? dy(y + 1) / 2 / of(x, y + 1).conductivity : 1 / pour.filmTop));
      down[at] = y > 0 ? (up[at - columns] as number) : dx(x) / (upHalf + 1 / pour.filmBottom);
      capacity[at] = dx(x) * dy(y) * me.density * me.heatCapacity;
      if (inResin(x, y)) heat[at] = dx(x) * dy(y) * resin.density * kinetics.heatOfReaction;
    }
  }
  let stable = Number.POSITIVE_INFINITY;
  for (let at = 0; at < count; at += 1) {
    const left = at % columns > 0 ? (right[at - 1] as number) : 0;
    const all = left + (right[at] as number) + (up[at] as number) + (down[at] as number);
    stable = Math.min(stable, (0.9 * (capacity[at] as number)) / all);
  }
  const energy = kinetics.activationEnergy / gasConstant;
  const rate = (alpha: number, celsius: number) =>
    kinetics.k2At25C *
    Math.exp(energy * (1 / referenceKelvin - 1 / kelvin(celsius))) *
    (kinetics.k1OverK2 + alpha ** kinetics.m) *
    (1 - alpha) ** kinetics.n;

  let now = new Float64Array(count).fill(pour.shopTemperature);
  for (let at = 0; at < count; at += 1) if ((heat[at] as number) > 0) now[at] = pour.resinTemperature;
  let next = new Float64Array(count);
  const alpha = new Float64Array(count);
  const rates = new Float64Array(count);
  let warmest = airAt(0);
  let [peak, rise, timeToPeak, firstGel, time] = [pour.resinTemperature, 0, 0, 0, 0];
  for (;;) {
    let quickest = 0;
    for (let at = 0; at < count; at += 1) {
      if (heat[at] === 0) continue;
      const here = rate(alpha[at] as number, now[at] as number);
      rates[at] = here;
      if (here > quickest) quickest = here;
    }
    const step = Math.min(stable, conversionStep / quickest);
    const air = airAt(time);
    warmest = Math.max(warmest, air);
    let [hottest, most] = [Number.NEGATIVE_INFINITY, 0];
    for (let y = 0; y < rows; y += 1) {
      for (let x = 0; x < columns; x += 1) {
        const at = x + columns * y;
        const here = now[at] as number;
        let watts =
          (up[at] as number) * ((y + 1 < rows ? (now[at + columns] as number) : air) - here) +
          (down[at] as number) * ((y > 0 ? (now[at - columns] as number) : air) - here);
        if (x > 0) watts += (right[at - 1] as number) * ((now[at - 1] as number) - here);
        if (x + 1 < columns) watts += (right[at] as number) * ((now[at + 1] as number) - here);
        const made = heat[at] as number;
        if (made > 0) {
          const change = (rates[at] as number) * step;
          alpha[at] = (alpha[at] as number) + change;
          watts += (made * change) / step;
          if ((alpha[at] as number) > most) most = alpha[at] as number;
        }
        next[at] = here + (watts * step) / (capacity[at] as number);
        if (made > 0 && (next[at] as number) > hottest) hottest = next[at] as number;
      }
    }
    [now, next] = [next, now];
    time += step;
    if (firstGel === 0 && most >= 1 / Math.sqrt(3)) firstGel = time;
    if (hottest > peak) [peak, timeToPeak] = [hottest, time];
    rise = Math.max(rise, hottest - warmest);
    if (firstGel > 0 && hottest < peak - 0.1 * (peak - warmest)) return { rise, peak, timeToPeak, firstGel };
  }
}
