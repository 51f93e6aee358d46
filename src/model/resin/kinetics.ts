import { equation } from '../evidence/index.ts';
import { gasConstant } from '../quantity/constants.ts';

/** 25 °C in K: the temperature at which rate constants are given here. */
export const referenceKelvin = 298.15;
/** Kelvin of a temperature in °C. */
export const kelvin = (celsius: number): number => celsius + 273.15;

/** Conversion at which the viscosity has about doubled since mixing: the end of working time. */
export const workConversion = 0.2;

/** How fast and how hot a resin cures: dα/dt = (k1 + k2·α^m)·(1 − α)^n. */
export interface Kinetics {
  /** Rate constant of the autocatalytic path at 25 °C, 1/s. */
  k2At25C: number;
  /** Activation energy of both paths, J/mol. */
  activationEnergy: number;
  /** Rate constant of the uncatalysed path as a share of k2. */
  k1OverK2: number;
  m: number;
  n: number;
  /** Heat of reaction, J/kg of mixed resin. */
  heatOfReaction: number;
}

/** What heat does in a body: of mixed resin, or of what it lies on. */
export interface ThermalProperties {
  /** kg/m³. */
  density: number;
  /** J/(kg·K). */
  heatCapacity: number;
  /** W/(m·K). */
  conductivity: number;
}

/**
 * The two class sets: energies as published for an aliphatic amine, rate constants fitted so that a cup of 100 g at 25 °C
 * gels in 30 minutes (fast, as tabletop coatings) or in 6 hours (slow, as casting resins). `k1OverK2` and the heats are assumed.
 */
export const classKinetics: Readonly<Record<'fast' | 'slow', Kinetics>> = {
  fast: { k2At25C: 6.2186e-4, activationEnergy: 58_600, k1OverK2: 0.03, m: 1, n: 2, heatOfReaction: 400_000 },
  slow: { k2At25C: 9.7521e-5, activationEnergy: 58_600, k1OverK2: 0.03, m: 1, n: 2, heatOfReaction: 350_000 },
};

/** Mixed resin of either class, from memory and tables: density, heat capacity of the liquid, conductivity. */
export const classThermal: ThermalProperties = { density: 1100, heatCapacity: 2000, conductivity: 0.18 };

/** Rate constant of a cure at another temperature, 1/s. */
export const arrhenius = equation(
  {
    id: 'arrhenius',
    title: 'Rate constant at another temperature',
    tex: 'k(T) = k_{25} \\, \\exp\\!\\left[\\frac{E}{R}\\left(\\frac{1}{298.15} - \\frac{1}{T}\\right)\\right]',
    symbols: [
      { tex: 'k', meaning: 'rate constant', unit: '1/s' },
      { tex: 'k_{25}', meaning: 'the same at 25 °C', unit: '1/s' },
      { tex: 'E', meaning: 'activation energy', unit: 'J/mol' },
      { tex: 'R', meaning: 'gas constant, 8.314462618', unit: 'J/(mol K)' },
      { tex: 'T', meaning: 'temperature', unit: 'K' },
    ],
    validity:
      'One energy holds over some tens of degrees. With 51 kJ/mol the rate doubles from 20 to 30 °C; epoxy–amine systems lie between 44 and 65 kJ/mol.',
    basis: 'memory',
    remarks: 'The form stands in every textbook of chemistry; none was opened for it.',
  },
  /**
   * @param k25 rate constant at 25 °C, 1/s
   * @param energy activation energy, J/mol
   * @param celsius temperature, °C
   * @returns rate constant at that temperature, 1/s
   */
  (k25: number, energy: number, celsius: number): number =>
    k25 * Math.exp((energy / gasConstant) * (1 / referenceKelvin - 1 / kelvin(celsius))),
);
