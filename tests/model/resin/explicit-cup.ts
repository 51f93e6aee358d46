import { cureRate, gelPoint } from '../../../src/model/resin/clock.ts';
import { cupRadius } from '../../../src/model/resin/cup.ts';
import { arrhenius, type Kinetics, type ThermalProperties, workConversion } from '../../../src/model/resin/kinetics.ts';

/**
 * A cup by the plainest scheme there is: equal cells, explicit steps in time as long as they stay stable, conversion by the slope
 * at the start of each step. Shares no numerics with the cup of the model; slow, and only for tests and the bench.
 *
 * @param mass g
 * @param air °C, of the resin at the start too
 * @param cells from axis to wall and from bottom to top
 * @returns times in s and the highest temperature until the gel, °C
 */
export function explicitCup(
  mass: number,
  { density, heatCapacity, conductivity: k }: ThermalProperties,
  kinetics: Kinetics,
  air: number,
  cells: number,
): { work: number; gel: number; hottest: number } {
  const radius = cupRadius(mass, density);
  const [dr, dz] = [radius / cells, (1.065 * radius) / cells];
  const through = (film: number, half: number, wall = 0) => 1 / (1 / film + wall + half / k);
  const side = through(9, dr / 2, 0.0008 / 0.22);
  const [top, bottom] = [through(10, dz / 2), through(6, dz / 2)];
  const capacity = density * heatCapacity;
  const rise = Array.from({ length: cells }, () => new Array<number>(cells).fill(0));
  const conversion = Array.from({ length: cells }, () => new Array<number>(cells).fill(0));
  const value = (grid: number[][], i: number, j: number) => grid[i]?.[j] ?? 0;
  const stable = 0.4 / ((k / capacity) * (4 / dr ** 2 + 2 / dz ** 2));
  let [time, furthest, work, gel, hottest] = [0, 0, 0, 0, 0];
  while (gel === 0) {
    let fastest = 0;
    const flow = rise.map((column, i) =>
      column.map((warmth, j) => {
        const outer = i + 1 < cells ? (i + 1) * k * (value(rise, i + 1, j) - warmth) : -(i + 1) * dr * side * warmth;
        const inner = i > 0 ? i * k * (value(rise, i - 1, j) - warmth) : 0;
        const above = j + 1 < cells ? (k / dz) * (value(rise, i, j + 1) - warmth) : -top * warmth;
        const below = j > 0 ? (k / dz) * (value(rise, i, j - 1) - warmth) : -bottom * warmth;
        return (outer + inner) / ((i + 0.5) * dr * dr) + (above + below) / dz;
      }),
    );
    const rates = conversion.map((column, i) =>
      column.map((alpha, j) => {
        const rate = cureRate(
          alpha,
          arrhenius(kinetics.k2At25C, kinetics.activationEnergy, air + value(rise, i, j)),
          kinetics,
        );
        fastest = Math.max(fastest, rate);
        return rate;
      }),
    );
    const step = Math.min(stable, 0.002 / fastest);
    let now = 0;
    for (let i = 0; i < cells; i += 1) {
      for (let j = 0; j < cells; j += 1) {
        const gained = step * value(rates, i, j);
        const warmth =
          value(rise, i, j) + (step * value(flow, i, j)) / capacity + (kinetics.heatOfReaction / heatCapacity) * gained;
        (rise[i] as number[])[j] = warmth;
        (conversion[i] as number[])[j] = value(conversion, i, j) + gained;
        now = Math.max(now, value(conversion, i, j));
        hottest = Math.max(hottest, air + warmth);
      }
    }
    const reached = (wanted: number) => time + (step * (wanted - furthest)) / (now - furthest);
    if (work === 0 && now >= workConversion) work = reached(workConversion);
    if (now >= gelPoint) gel = reached(gelPoint);
    time += step;
    furthest = now;
  }
  return { work, gel, hottest };
}
