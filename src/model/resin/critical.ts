import { type BodyShape, conductorOf, gridOf } from './conduction.ts';

// When a body that heats itself stops finding a balance, in numbers without units: half-width (or radius) 1, faces held at 0,
// heat made at the rate δ·exp θ. Above the critical δ no steady temperature exists.

const longest = 400;
const stepLength = 0.1;
const passes = 3;

/** Whether a body with this δ settles: it is followed in time until it does or its middle passes what any balance can have. */
function settles(delta: number, shape: BodyShape, cells: number, source: (theta: number) => number): boolean {
  const grid = gridOf(
    [{ thickness: 1, cells, conductivity: 1, heatCapacity: 1 }],
    { low: 0, high: Number.POSITIVE_INFINITY },
    shape,
  );
  const conductor = conductorOf(grid);
  conductor.setStep(stepLength);
  let before = new Float64Array(cells);
  let after = new Float64Array(cells);
  const heat = new Float64Array(cells);
  for (let time = 0; time < longest; time += stepLength) {
    after.set(before);
    for (let pass = 0; pass < passes; pass += 1) {
      for (let at = 0; at < cells; at += 1)
        heat[at] = delta * (grid.volumes[at] as number) * source(((before[at] as number) + (after[at] as number)) / 2);
      conductor.step(before, heat, 0, after);
    }
    const middle = after[0] as number;
    if (!(middle < 3)) return false;
    if (Math.abs(middle - (before[0] as number)) < 1e-7) return true;
    [before, after] = [after, before];
  }
  return false;
}

/**
 * Critical δ of a body as the scheme of the pours finds it.
 *
 * @param shape slab with two cold faces, cylinder or ball
 * @param cells from the middle to the face
 * @param source rate of heat at a temperature, exp θ unless told
 */
export function criticalDelta(shape: BodyShape, cells: number, source: (theta: number) => number = Math.exp): number {
  let [low, high] = [0.5, 5];
  while (high - low > 2e-4) {
    const middle = (low + high) / 2;
    if (settles(middle, shape, cells, source)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The same of a slab, worked out on paper: δ = 2z²/cosh²z is greatest where z·tanh z = 1.
 *
 * @returns 0.8785
 */
export function criticalSlab(): number {
  let z = 1.2;
  for (let pass = 0; pass < 20; pass += 1) {
    const tanh = Math.tanh(z);
    z -= (z * tanh - 1) / (tanh + z * (1 - tanh * tanh));
  }
  return 2 * (z / Math.cosh(z)) ** 2;
}

/** Of a cylinder: δ = 8B/(1 + B)² is greatest at B = 1. */
export const criticalCylinder = 2;

/**
 * Of a ball: the greatest δ = ξ²·exp(−Θ) along Θ″ + 2Θ′/ξ = exp(−Θ) from the middle outwards, Θ(0) = Θ′(0) = 0,
 * integrated by Runge–Kutta of fourth order.
 *
 * @returns 3.3220
 */
export function criticalSphere(): number {
  const step = 0.002;
  const slope = (xi: number, value: number, rate: number): [number, number] => [
    rate,
    xi > 0 ? Math.exp(-value) - (2 * rate) / xi : 1 / 3,
  ];
  let [value, rate, best] = [0, 0, 0];
  for (let xi = 0; xi < 8; xi += step) {
    const [a1, b1] = slope(xi, value, rate);
    const [a2, b2] = slope(xi + step / 2, value + (a1 * step) / 2, rate + (b1 * step) / 2);
    const [a3, b3] = slope(xi + step / 2, value + (a2 * step) / 2, rate + (b2 * step) / 2);
    const [a4, b4] = slope(xi + step, value + a3 * step, rate + b3 * step);
    value += (step * (a1 + 2 * (a2 + a3) + a4)) / 6;
    rate += (step * (b1 + 2 * (b2 + b3) + b4)) / 6;
    best = Math.max(best, (xi + step) ** 2 * Math.exp(-value));
  }
  return best;
}

/**
 * Of a slab with any source, by quadrature: a middle at θm is steady for δ = ½ [∫ dθ / √(F(θm) − F(θ))]², where F is the
 * integral of the source; the critical δ is the greatest along θm.
 *
 * @param source rate of heat at a temperature, 1 at 0
 */
export function criticalSlabBy(source: (theta: number) => number): number {
  const nodes = 400;
  const deltaOf = (most: number) => {
    // θ = θm(1 − s²) takes the root out of the integrand; F(θm) − F(θ) is summed from the middle outwards by Simpson’s rule.
    let [area, sum] = [0, 0];
    const theta = (s: number) => most * (1 - s * s);
    for (let at = 0; at <= nodes; at += 1) {
      const s = at / nodes;
      if (at > 0) {
        const before = (at - 1) / nodes;
        const [low, high] = [theta(s), theta(before)];
        area += ((high - low) / 6) * (source(low) + 4 * source((low + high) / 2) + source(high));
      }
      const value = at === 0 ? 2 * Math.sqrt(most / source(most)) : (2 * most * s) / Math.sqrt(area);
      sum += value * (at === 0 || at === nodes ? 1 : at % 2 === 1 ? 4 : 2);
    }
    return (sum / (3 * nodes)) ** 2 / 2;
  };
  let best = 0;
  for (let most = 0.8; most < 1.8; most += 0.002) best = Math.max(best, deltaOf(most));
  return best;
}
