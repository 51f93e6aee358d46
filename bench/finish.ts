import { fitResistance } from '../src/model/finish/excluding-fit.ts';
import { coatingResistance, measuredFinishes } from '../src/model/finish/index.ts';
import { moistureYear, yearSeconds } from '../src/model/finish/year.ts';
import { median } from './compute.ts';

const months = [4.5, 5, 5.9, 6.4, 8.3, 11.2, 12.5, 12.8, 10.1, 7.5, 5.7, 4.7];
const board = { balance: months, thickness: 20, diffusion: 0.57e-10, surface: 5.5e-8 };
/** Most that a year of the bare and the coated board together may take, ms. */
const most = 30;

/** Moisture at balance at a time, s: straight between the months. */
function balanceAt(time: number): number {
  const at = (time / yearSeconds) * months.length;
  const whole = Math.floor(at);
  const [from, to] = [months[whole % 12] as number, months[(whole + 1) % 12] as number];
  return from + (at - whole) * (to - from);
}

/**
 * The yearly swing by a plain explicit scheme: finite volumes on half the board, the largest step that is stable, year after
 * year until the swing stays the same to 0.01 %.
 */
function explicitSwing(cells: number, coating: number): number {
  const width = board.thickness / 2000 / cells;
  const inner = board.diffusion / width;
  const outer = 1 / (width / 2 / board.diffusion + 1 / board.surface + coating);
  const steps = Math.ceil(yearSeconds / ((0.9 * width) / (2 * inner)));
  const dt = yearSeconds / steps;
  let now = new Float64Array(cells).fill(months.reduce((sum, value) => sum + value, 0) / 12);
  let next = new Float64Array(cells);
  let last = Number.NaN;
  for (let year = 0; year < 40; year += 1) {
    let [driest, wettest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let step = 0; step < steps; step += 1) {
      const air = balanceAt(step * dt);
      let sum = 0;
      for (let cell = 0; cell < cells; cell += 1) {
        const value = now[cell] as number;
        const below = cell === 0 ? 0 : inner * ((now[cell - 1] as number) - value);
        const above = cell === cells - 1 ? outer * (air - value) : inner * ((now[cell + 1] as number) - value);
        const moved = value + (dt / width) * (below + above);
        next[cell] = moved;
        sum += moved;
      }
      [now, next] = [next, now];
      driest = Math.min(driest, sum / cells);
      wettest = Math.max(wettest, sum / cells);
    }
    const swing = wettest - driest;
    if (Math.abs(swing / last - 1) < 1e-4) return swing;
    last = swing;
  }
  return last;
}

/** A year of a board bare and behind two coats of epoxy, beside a plain explicit scheme; and the fit of one finish. */
export function benchFinish(): void {
  const coating = coatingResistance('epoxy', 2).resistance;
  const ours = (film: number) => moistureYear({ ...board, coatings: [film, film] }).swing;
  const both = median(() => ours(0) + ours(coating));
  const films = [0, coating];
  // What steps come to on a fine grid, and how far from it each road may stay: as far as the closed form with its 120 sines.
  const fine = films.map((film) => explicitSwing(64, film));
  const apart = (swing: (film: number) => number) =>
    films.map((film, at) => Math.abs(swing(film) / (fine[at] as number) - 1));
  const own = apart(ours);
  const near = (count: number) =>
    apart((film) => explicitSwing(count, film)).every((error, at) => error <= (own[at] as number));
  const cells = [4, 8, 12, 16, 20, 24, 28, 32, 40].find(near) ?? 48;
  const stepped = median(() => explicitSwing(cells, 0) + explicitSwing(cells, coating), { warm: 1, runs: 11 });
  const readings = measuredFinishes.find(({ finish }) => finish === 'Shellac')?.readings ?? [];
  const fit = median(() => fitResistance(readings), { warm: 5, runs: 50 });
  console.log('\nA year of a 20 mm board, bare and coated together, median');
  console.log(
    `${both.toFixed(2)} ms (at most ${most}); within ${(100 * Math.max(...own)).toFixed(3)} % of fine steps; explicit steps as near take ${cells} cells and ${stepped.toFixed(1)} ms: ratio ${(both / stepped).toFixed(4)}`,
  );
  console.log(`The resistance of one finish fitted to three readings: ${fit.toFixed(2)} ms`);
  if (both > most)
    throw new Error(`A year of bare and coated board took ${both.toFixed(1)} ms; it may take ${most} ms.`);
}
