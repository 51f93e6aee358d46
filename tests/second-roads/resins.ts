/**
 * A resin as the second roads see it: every number typed here again, and no code of the model, so that a slip in one of the two
 * shows as a difference.
 */
export interface RoadResin {
  /** Rate constant at 25 °C, 1/s, and activation energy, J/mol. */
  rate: number;
  energy: number;
  /** dα/dt = k (c + α^m) (1 − α)^n. */
  c: number;
  m: number;
  n: number;
  /** Heat of reaction, J/kg; density, kg/m³; heat capacity, J/(kg·K); conductivity, W/(m·K). */
  heat: number;
  density: number;
  heatCapacity: number;
  conductivity: number;
}

const mix = { energy: 58_600, c: 0.03, m: 1, n: 2, density: 1100, heatCapacity: 2000, conductivity: 0.18 };

/** The two class sets: a cup of 100 g at 25 °C gels in 30 minutes, or in six hours. */
export const classes = {
  fast: { ...mix, rate: 6.2186e-4, heat: 400_000 },
  slow: { ...mix, rate: 9.7521e-5, heat: 350_000 },
} as const satisfies Readonly<Record<string, RoadResin>>;

/** Conversions at the end of working time and at the gel, 1/√3. */
export const work = 0.2;
export const gel = 1 / Math.sqrt(3);

/** Rate of cure, 1/s, at a conversion and a temperature in °C. */
export function cureRate({ rate, energy, c, m, n }: RoadResin, alpha: number, celsius: number): number {
  const left = 1 - alpha;
  const order = (base: number, power: number) => (power === 1 ? base : power === 2 ? base * base : base ** power);
  return (
    rate *
    Math.exp((energy / 8.314462618) * (1 / 298.15 - 1 / (celsius + 273.15))) *
    (c + order(alpha, m)) *
    order(left, n)
  );
}

/**
 * Time in s at which a thin layer, which keeps the temperature of the shop, reaches a conversion: stepped by Heun's rule.
 *
 * @param share largest gain of conversion in a step
 */
export function stepLayer(resin: RoadResin, celsius: number, wanted: number, share = 1e-4): number {
  let [alpha, time] = [0, 0];
  for (;;) {
    const slope = cureRate(resin, alpha, celsius);
    const step = share / slope;
    const gain = (step / 2) * (slope + cureRate(resin, alpha + share, celsius));
    if (alpha + gain >= wanted) return time + (step * (wanted - alpha)) / gain;
    alpha += gain;
    time += step;
  }
}
