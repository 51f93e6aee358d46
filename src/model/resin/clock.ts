import { equation } from '../evidence/index.ts';
import { gasConstant } from '../quantity/constants.ts';
import { arrhenius, type Kinetics, kelvin } from './kinetics.ts';

export const cureRate = equation(
  {
    id: 'cure-rate',
    title: 'Rate of cure',
    tex: '\\frac{d\\alpha}{dt} = (k_1 + k_2\\,\\alpha^m)\\,(1 - \\alpha)^n',
    symbols: [
      { tex: '\\alpha', meaning: 'conversion, 0 for fresh resin and 1 for fully cured', unit: '1' },
      { tex: 'k_1', meaning: 'rate constant of the uncatalysed path', unit: '1/s' },
      { tex: 'k_2', meaning: 'rate constant of the path that its own product speeds up', unit: '1/s' },
      { tex: 'm, n', meaning: 'orders; 1 and 2 for a mix of resin and amine in its right ratio', unit: '1' },
    ],
    validity:
      'Until the resin turns glassy, from where it is slowed by the vitrification factor. With m = 1 and n = 2 it is the third-order mechanism of epoxide and amine.',
    basis: 'memory',
    remarks:
      'The form is that of Kamal and Sourour and stands in many texts; their papers were not opened. For a room-temperature resin no whole set of constants could be read, so rates are fitted to a pot life.',
  },
  /**
   * @param conversion α, 0 to 1
   * @param k2 rate constant at the temperature, 1/s
   * @param kinetics orders and share of the uncatalysed path
   * @returns dα/dt, 1/s
   */
  (conversion: number, k2: number, { k1OverK2, m, n }: Pick<Kinetics, 'k1OverK2' | 'm' | 'n'>): number => {
    const rest = 1 - conversion;
    // Powers cost most of a run's time, and the class sets need none.
    return m === 1 && n === 2
      ? k2 * (k1OverK2 + conversion) * rest * rest
      : k2 * (k1OverK2 + conversion ** m) * rest ** n;
  },
);

export const classClock = equation(
  {
    id: 'cure-clock',
    title: 'Time to a conversion at constant temperature',
    tex: 't = \\frac{1}{k_2}\\left[\\frac{1}{(1+c)^2}\\ln\\frac{c+\\alpha}{c\\,(1-\\alpha)} + \\frac{1}{1+c}\\left(\\frac{1}{1-\\alpha} - 1\\right)\\right]',
    symbols: [
      { tex: 't', meaning: 'time from mixing', unit: 's' },
      { tex: '\\alpha', meaning: 'conversion wanted, below 1', unit: '1' },
      { tex: 'k_2', meaning: 'rate constant at the temperature', unit: '1/s' },
      { tex: 'c', meaning: 'k_1 / k_2, above 0', unit: '1' },
    ],
    validity: 'Thin layers, which keep the temperature of the shop; m = 1, n = 2; until the resin turns glassy.',
    basis: 'derived',
    citation: {
      source: 'kerf-and-cure',
      locator: 'the rate of cure with m = 1 and n = 2, integrated by partial fractions',
    },
  },
  /**
   * @param conversion α, 0 up to but not including 1
   * @param k2 rate constant at the temperature, 1/s
   * @param k1OverK2 share of the uncatalysed path, above 0
   * @returns time from mixing, s
   */
  (conversion: number, k2: number, k1OverK2: number): number => {
    const c = k1OverK2;
    const rest = 1 - conversion;
    return (Math.log((c + conversion) / (c * rest)) / (1 + c) ** 2 + (1 / rest - 1) / (1 + c)) / k2;
  },
);

/** Half-width and step of the variable of the quadrature; together they leave an error below 1e-8 for the orders in use. */
const reach = 4;
const steps = 160;

/**
 * Time to a conversion at constant temperature, for any orders: the closed form where there is one, else the integral of
 * dα over the rate, by quadrature on a scale that crowds its points at both ends. There the integrand is steepest: at 0
 * where the uncatalysed path is slow, near 1 where little is left to react.
 *
 * @param conversion α, 0 up to but not including 1
 * @param celsius temperature, °C
 * @param kinetics with `k1OverK2` above 0: without an uncatalysed path nothing ever starts
 * @returns time from mixing, s
 */
export function timeToConversion(conversion: number, celsius: number, kinetics: Kinetics): number {
  const k2 = arrhenius(kinetics.k2At25C, kinetics.activationEnergy, celsius);
  if (kinetics.m === 1 && kinetics.n === 2) return classClock(conversion, k2, kinetics.k1OverK2);
  return quadratureTime(conversion, k2, kinetics);
}

/** The integral behind `timeToConversion`, without the closed form; what the form is checked against. */
export function quadratureTime(conversion: number, k2: number, orders: Pick<Kinetics, 'k1OverK2' | 'm' | 'n'>): number {
  let sum = 0;
  const step = (2 * reach) / steps;
  for (let index = 0; index <= steps; index += 1) {
    const s = -reach + index * step;
    // α = a/(1 + exp(−π sinh s)): both ends lie infinitely far away, and the points crowd towards them.
    const share = 1 / (1 + Math.exp(-Math.PI * Math.sinh(s)));
    const weight = share * (1 - share) * Math.PI * Math.cosh(s);
    if (weight > 0) sum += weight / cureRate(conversion * share, k2, orders);
  }
  return conversion * step * sum;
}

export const gelConversion = equation(
  {
    id: 'gel-conversion',
    title: 'Conversion at which a mix gels',
    tex: '\\alpha_{gel} = \\left[\\,r\\,(f-1)\\,(g-1)\\right]^{-1/2}',
    symbols: [
      { tex: '\\alpha_{gel}', meaning: 'conversion of the epoxide at the gel point', unit: '1' },
      { tex: 'r', meaning: 'amine hydrogens to one epoxide group; 1 in the right ratio', unit: '1' },
      { tex: 'f', meaning: 'epoxide groups of a molecule of resin; 2', unit: '1' },
      { tex: 'g', meaning: 'amine hydrogens of a molecule of hardener; 4', unit: '1' },
    ],
    validity:
      'Molecules that never close on themselves. Rings delay the gel a little; 0.52 to 0.62 is a fair band for a mix of two and four groups.',
    basis: 'memory',
    remarks:
      'The formula of Flory and Stockmayer; their papers were not opened. 1/√3 = 0.577 for a mix in its right ratio.',
  },
  /**
   * @param ratio amine hydrogens to one epoxide group
   * @param f epoxide groups of a molecule of resin
   * @param g amine hydrogens of a molecule of hardener
   * @returns conversion at the gel point, 0 to 1
   */
  (ratio: number, f: number, g: number): number => (ratio * (f - 1) * (g - 1)) ** -0.5,
);

/** Conversion at which resin and hardener in their right ratio gel. */
export const gelPoint = gelConversion(1, 2, 4);

/** What the glass transition of a resin runs between, and how steeply. */
export interface Glass {
  /** Of the fresh mix, °C. */
  fresh: number;
  /** Of the fully cured resin, °C. */
  cured: number;
  lambda: number;
}

/** Of the two class sets; assumed, from what such resins usually are. */
export const classGlass: Readonly<Record<'fast' | 'slow', Glass>> = {
  fast: { fresh: -40, cured: 65, lambda: 0.45 },
  slow: { fresh: -45, cured: 50, lambda: 0.45 },
};

export const glassTransition = equation(
  {
    id: 'dibenedetto',
    title: 'Glass transition of a resin that is curing',
    tex: 'T_g(\\alpha) = T_{g0} + (T_{g\\infty} - T_{g0})\\,\\frac{\\lambda\\,\\alpha}{1 - (1-\\lambda)\\,\\alpha}',
    symbols: [
      { tex: 'T_g', meaning: 'temperature above which the resin is rubbery and below which it is glassy', unit: '°C' },
      { tex: 'T_{g0}', meaning: 'that of the fresh mix', unit: '°C' },
      { tex: 'T_{g\\infty}', meaning: 'that of the fully cured resin', unit: '°C' },
      { tex: '\\lambda', meaning: 'ratio of the steps in heat capacity, cured to fresh; 0.3 to 0.6', unit: '1' },
      { tex: '\\alpha', meaning: 'conversion', unit: '1' },
    ],
    validity: 'Amine-cured epoxies. The three constants are assumed for a class of resin, not measured on yours.',
    basis: 'memory',
    remarks: 'The form of DiBenedetto; the paper was not opened.',
  },
  /**
   * @param conversion α, 0 to 1
   * @param glass temperatures in °C and λ
   * @returns glass transition, °C
   */
  (conversion: number, { fresh, cured, lambda }: Glass): number =>
    fresh + ((cured - fresh) * lambda * conversion) / (1 - (1 - lambda) * conversion),
);

export const vitrification = equation(
  {
    id: 'vitrification',
    title: 'Slowing of the cure as the resin turns glassy',
    tex: 'f_d = \\frac{1}{1 + \\exp\\left[(T_g - T - 10)/4\\right]}',
    symbols: [
      { tex: 'f_d', meaning: 'factor on the rate of cure', unit: '1' },
      { tex: 'T_g', meaning: 'glass transition at the conversion reached', unit: '°C' },
      { tex: 'T', meaning: 'temperature of the resin', unit: '°C' },
    ],
    validity:
      'Our own shape for what is well known: cure all but stops once the glass transition has overtaken the temperature by 10 to 25 °C. It matters only after the gel point.',
    basis: 'memory',
    remarks:
      'The 10 and the 4 are assumed. That cold cure goes glassy and then waits for diffusion is reported of epoxies cured at 5 to 10 °C.',
  },
  /**
   * @param glassTransition °C
   * @param celsius temperature of the resin, °C
   * @returns 0 to 1
   */
  (glassTransition: number, celsius: number): number => 1 / (1 + Math.exp((glassTransition - celsius - 10) / 4)),
);

export const viscosityRise = equation(
  {
    id: 'castro-macosko',
    title: 'Thickening of a resin on the way to its gel point',
    tex: '\\frac{\\eta}{\\eta_0} = \\left(\\frac{\\alpha_{gel}}{\\alpha_{gel} - \\alpha}\\right)^{1.5}',
    symbols: [
      { tex: '\\eta', meaning: 'viscosity', unit: 'mPa·s' },
      { tex: '\\eta_0', meaning: 'that of the fresh mix at the same temperature', unit: 'mPa·s' },
      { tex: '\\alpha', meaning: 'conversion, below that of the gel', unit: '1' },
    ],
    validity: 'Below the gel point. It doubles at α = 0.21, so working time is taken to end at α = 0.20.',
    basis: 'memory',
    remarks: 'The form of Castro and Macosko with the exponent 1.5; the paper was not opened.',
  },
  /**
   * @param conversion α, 0 up to but not including the gel point
   * @returns viscosity as a multiple of the fresh mix's
   */
  (conversion: number): number => (gelPoint / (gelPoint - conversion)) ** 1.5,
);

export const rateFactor = equation(
  {
    id: 'rate-factor',
    title: 'How many times faster a cure runs at another temperature',
    tex: '\\frac{k(T_2)}{k(T_1)} = \\exp\\left[\\frac{E}{R}\\left(\\frac{1}{T_1} - \\frac{1}{T_2}\\right)\\right]',
    symbols: [
      { tex: 'k', meaning: 'rate constant', unit: '1/s' },
      { tex: 'E', meaning: 'activation energy', unit: 'J/mol' },
      { tex: 'R', meaning: 'gas constant, 8.314462618', unit: 'J/(mol K)' },
      { tex: 'T_1, T_2', meaning: 'the two temperatures', unit: 'K' },
    ],
    validity:
      'Thin layers. The rule that 10 °C doubles the rate is the energy 51 kJ/mol and holds within 15 % for them. A mass heats itself and follows neither.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'the Arrhenius equation at two temperatures' },
  },
  /**
   * @param energy activation energy, J/mol
   * @param from °C
   * @param to °C
   * @returns rate at `to` divided by the rate at `from`
   */
  (energy: number, from: number, to: number): number =>
    Math.exp((energy / gasConstant) * (1 / kelvin(from) - 1 / kelvin(to))),
);
