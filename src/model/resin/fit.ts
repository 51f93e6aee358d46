import { answer, type Caution, type EvidenceNote, type Figure, type Outcome, refuse } from '../evidence/index.ts';
import { gasConstant } from '../quantity/constants.ts';
import { amount, formatNumber } from '../quantity/index.ts';
import { assumed } from './assumed.ts';
import { classClock, classGlass, type Glass, gelPoint, rateFactor } from './clock.ts';
import { cupOf, runCup } from './cup.ts';
import { classKinetics, classThermal, type Kinetics, type ThermalProperties, workConversion } from './kinetics.ts';
import type { PotLifeMeaning, Resin } from './types.ts';

/** A pot life as a data sheet states it, and what is taken as known of the resin beside its rate. */
export interface PotLife {
  /** s. */
  potLife: number;
  /** Of mixed resin in the cup, g. */
  mass: number;
  /** Of air and resin, °C. */
  temperature: number;
  means: PotLifeMeaning;
  kinetics: Omit<Kinetics, 'k2At25C'>;
  thermal: ThermalProperties;
}

/** Rates between which a resin must lie, 1/s at 25 °C: a thin layer that gels within a minute, or in years, is no resin to pour. */
const rates = { least: 1e-8, most: 0.1 };
/** Closeness of the fit, as a share of the pot life: far within what any sheet means by its figure. */
const close = 3e-4;
const mostTries = 12;

/** What a cup does, as the logarithm of the time that a pot life means by its name; undefined where it never gels. */
function lastsFor({ mass, temperature, means, kinetics, thermal }: PotLife): (logRate: number) => number | undefined {
  const cup = cupOf(mass, thermal);
  return (logRate) => {
    const run = runCup(cup, { ...kinetics, k2At25C: Math.exp(logRate) }, { air: temperature });
    return run && Math.log(means === 'gel' ? run.gel : run.work);
  };
}

/**
 * Rate constant at 25 °C with which a cup of the stated mass at the stated temperature has the stated pot life.
 *
 * The secant rule in logarithms: twice the rate about halves the time, a little more than that where the cup heats itself, so the
 * curve is nearly straight and three or four cups find it.
 *
 * @param stated pot life in s, mass in g, temperature in °C, what the sheet means by it, and the other constants
 * @param near a rate to start from, 1/s
 * @returns k2 at 25 °C, 1/s, or a refusal at `potLife` where no rate of a resin for pouring gives it
 */
export function fitRate(stated: PotLife, near?: number): Outcome<number> {
  const wanted = Math.log(stated.potLife);
  const logTime = lastsFor(stated);
  const { least, most } = rates;
  const refusal = () =>
    refuse(
      'potLife',
      `A pot life of ${amount(stated.potLife, 's')} for ${amount(stated.mass, 'g', 3, true)} at ${amount(stated.temperature, 'Cel')} is not that of an epoxy for coating or casting`,
      'Look at the sheet again: the time, its unit, the mass and the temperature that go with it.',
    );
  let from = Math.log(near ?? startingRate(stated));
  let at = logTime(from);
  // In a cup that heats itself the time falls a little faster than the rate grows.
  let slope = -1.3;
  for (let tries = 0; at !== undefined && tries < mostTries; tries += 1) {
    const off = at - wanted;
    if (Math.abs(off) < close) {
      const rate = Math.exp(from);
      return rate < least || rate > most ? refusal() : answer(rate);
    }
    const next = from - off / slope;
    // A rate so far out is refused; its cup need not be run.
    if (next < Math.log(least) - 1 || next > Math.log(most) + 1) return refusal();
    const then = logTime(next);
    if (then !== undefined && next !== from) slope = Math.min(-0.5, Math.max(-5, (then - at) / (next - from)));
    [from, at] = [next, then];
  }
  return refusal();
}

/** A first guess: a thin layer lasts about three times as long as the cup. */
function startingRate({ potLife, temperature, means, kinetics }: PotLife): number {
  const here =
    classClock(means === 'gel' ? gelPoint : workConversion, 1, Math.max(1e-3, kinetics.k1OverK2)) / 3 / potLife;
  const guess = here / rateFactor(kinetics.activationEnergy, 25, temperature);
  return Math.min(rates.most, Math.max(rates.least, guess));
}

/** Activation energy of a resin whose sheet does not show it, J/mol, and how far such resins differ. */
export const usualEnergy = { value: 55_000, band: 8_000 };
/** Energies between which a fitted one must lie, J/mol. */
const energies = { least: 30_000, most: 110_000 };
/** Two pot lives are each good to about 5 %, so their ratio to about 7 %. */
const ratioError = 0.07;

/** Rate and energy that give two pot lives of one mass; undefined where no energy in range does. */
function fitBoth(
  first: PotLife,
  second: Pick<PotLife, 'potLife' | 'temperature'>,
): { rate: number; energy: number } | undefined {
  let near: number | undefined;
  /** How much too long the second pot life comes out, in logarithms, with the rate fitted to the first. */
  const off = (energy: number): number | undefined => {
    const kinetics = { ...first.kinetics, activationEnergy: energy };
    const rate = fitRate({ ...first, kinetics }, near);
    if (!rate.ok) return undefined;
    near = rate.value;
    const at = lastsFor({ ...first, kinetics, ...second })(Math.log(near));
    return at === undefined ? undefined : at - Math.log(second.potLife);
  };
  let [energy, then] = [usualEnergy.value, off(usualEnergy.value)];
  // A thin layer's time goes with exp(E/RT); a cup's a little faster.
  let slope = 1.2 * (1 / (gasConstant * (second.temperature + 273)) - 1 / (gasConstant * (first.temperature + 273)));
  for (let tries = 0; then !== undefined && near !== undefined && tries < mostTries; tries += 1) {
    if (Math.abs(then) < 2 * close) return { rate: near, energy };
    const next = energy - then / slope;
    if (next < energies.least || next > energies.most) return undefined;
    const there = off(next);
    if (there !== undefined && Math.abs(next - energy) > 1) slope = (there - then) / (next - energy);
    [energy, then] = [next, there];
  }
  return undefined;
}

/** How a resin cures, as far as its kind or its sheet says, and what that rests on. */
export interface ResinKinetics {
  kinetics: Kinetics;
  thermal: ThermalProperties;
  glass: Glass;
  /** The activation energy is good to so much either way, J/mol. */
  energyBand: number;
  evidence: readonly EvidenceNote[];
  /** What the sheet says and the model cannot follow. */
  cautions: readonly Caution[];
}

const known = new Map<string, ResinKinetics>();
/** Resins whose fit is kept; one is a few hundred bytes. */
const mostKnown = 200;

/**
 * Kinetics of a resin, fitted to its pot life.
 *
 * Orders, heat and the share of the uncatalysed path are those of its class. The energy is the published one for a generic
 * kind; for a data sheet with pot lives at two temperatures it is fitted to both, and 55 ± 8 kJ/mol otherwise. A resin
 * without a pot life keeps the rate of its class. The answer is kept, since a fit takes a few cups.
 */
export function kineticsOf(resin: Resin): ResinKinetics {
  const { potLife, potLifeMass, potLifeTemperature, secondPotLife, secondPotLifeTemperature } = resin.figures;
  const key = JSON.stringify([
    resin.kinetics,
    resin.potLifeMeans,
    ...[potLife, potLifeMass, potLifeTemperature, secondPotLife, secondPotLifeTemperature].map((figure) => [
      figure?.value,
      figure?.basis,
    ]),
  ]);
  const kept = known.get(key);
  if (kept) return kept;
  const fitted = fitResin(resin);
  if (known.size >= mostKnown) known.delete(known.keys().next().value as string);
  known.set(key, fitted);
  return fitted;
}

function fitResin(resin: Resin): ResinKinetics {
  const { potLife } = resin.figures;
  const base = classKinetics[resin.kinetics];
  const common = { thermal: classThermal, glass: classGlass[resin.kinetics] };
  const orders: EvidenceNote = {
    text: `Orders 1 and 2, k1/k2 = ${base.k1OverK2}, ${formatNumber(base.heatOfReaction / 1000)} J/g, ${classThermal.density} kg/m³, ${classThermal.heatCapacity} J/(kg·K) and ${classThermal.conductivity} W/(m·K) are assumed for a ${resin.kinetics} resin.`,
    basis: 'memory',
  };
  if (!potLife) {
    const text = `Nothing is known of its pot life, so it is taken as the ${resin.kinetics} class: a cup of ${amount(assumed.potLifeMass, 'g', 3, true)} at ${amount(assumed.potLifeTemperature, 'Cel')} gels in ${resin.kinetics === 'fast' ? '30 minutes' : '6 hours'}.`;
    return {
      ...common,
      kinetics: base,
      energyBand: usualEnergy.band,
      evidence: [{ text, basis: 'memory' }, publishedEnergy, orders],
      cautions: [],
    };
  }
  const ofSheet = potLife.basis === 'supplier-sheet';
  const stated: PotLife = {
    potLife: potLife.value,
    mass: resin.figures.potLifeMass?.value ?? assumed.potLifeMass,
    temperature: resin.figures.potLifeTemperature?.value ?? assumed.potLifeTemperature,
    means: resin.potLifeMeans,
    kinetics: ofSheet ? { ...base, activationEnergy: usualEnergy.value } : base,
    thermal: classThermal,
  };
  const second = secondOf(resin);
  const both = second && fitBoth(stated, second);
  const cautions = second && !both ? [unlikely(second)] : [];
  const rate = both ? answer(both.rate) : fitRate(stated);
  if (!rate.ok) {
    const [why] = rate.errors;
    return {
      ...common,
      kinetics: base,
      energyBand: usualEnergy.band,
      evidence: [publishedEnergy, orders],
      cautions: [
        {
          id: 'pot-life-unlikely',
          level: 'warning',
          text: `${why?.message} Until then the ${resin.kinetics} class stands in for it.`,
          basis: 'derived',
        },
      ],
    };
  }
  const kinetics: Kinetics = {
    ...stated.kinetics,
    k2At25C: rate.value,
    activationEnergy: both?.energy ?? stated.kinetics.activationEnergy,
  };
  const energyBand = both && second ? bandOfEnergy(stated.temperature, second.temperature) : usualEnergy.band;
  return {
    ...common,
    kinetics,
    energyBand,
    evidence: [
      fittedRate(stated, potLife, rate.value),
      both && second
        ? fittedEnergy(stated, second, both.energy, energyBand)
        : ofSheet
          ? assumedEnergy
          : publishedEnergy,
      orders,
    ],
    cautions,
  };
}

function secondOf({ figures }: Resin): Pick<PotLife, 'potLife' | 'temperature'> | undefined {
  const { potLifeTemperature, secondPotLife, secondPotLifeTemperature } = figures;
  if (!secondPotLife || !secondPotLifeTemperature) return undefined;
  const apart = secondPotLifeTemperature.value - (potLifeTemperature?.value ?? assumed.potLifeTemperature);
  return Math.abs(apart) < 1
    ? undefined
    : { potLife: secondPotLife.value, temperature: secondPotLifeTemperature.value };
}

/** How well two pot lives at two temperatures fix the energy, J/mol; no better than nothing said, where they lie close. */
function bandOfEnergy(one: number, other: number): number {
  return Math.min(2 * usualEnergy.band, ratioError / Math.abs(Math.log(rateFactor(1, one, other))));
}

const publishedEnergy: EvidenceNote = {
  equation: 'arrhenius',
  text: 'Activation energy 58.6 kJ/mol, published for the autocatalytic path of a bisphenol-A resin with an aliphatic amine; resins of the trade differ by about 8 either way.',
  basis: 'published',
  citation: { source: 'riccardi-1984', locator: 'abstract, 14 kcal/mol', seen: 'source-text' },
};

const assumedEnergy: EvidenceNote = {
  equation: 'arrhenius',
  text: 'The sheet gives one pot life, so the activation energy is taken as 55 ± 8 kJ/mol: published ones of such mixes run from 44 to 61. A pot life at a second temperature would fix it.',
  basis: 'memory',
};

/** A number as 6.22 × 10⁻⁴. */
function scientific(value: number): string {
  const [digits, power] = value.toExponential(2).split('e') as [string, string];
  const raised = [...power.replace('+', '')].map((sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)])).join('');
  return `${digits} × 10${raised}`;
}

function fittedRate({ potLife, mass, temperature, means }: PotLife, figure: Figure, rate: number): EvidenceNote {
  const does = means === 'gel' ? 'gels' : 'grows too thick to use';
  return {
    equation: 'cure-rate',
    text: `Rate fitted so that a cup of ${amount(mass, 'g', 3, true)} at ${amount(temperature, 'Cel')} ${does} in ${amount(potLife, 's')}: k2 = ${scientific(rate)} 1/s at ${amount(25, 'Cel')}.`,
    basis: figure.basis,
  };
}

function fittedEnergy(
  first: PotLife,
  second: Pick<PotLife, 'potLife' | 'temperature'>,
  energy: number,
  band: number,
): EvidenceNote {
  return {
    equation: 'arrhenius',
    text: `Activation energy ${formatNumber(energy / 1000)} ± ${formatNumber(band / 1000, 1)} kJ/mol, fitted to the pot lives at ${amount(first.temperature, 'Cel')} and ${amount(second.temperature, 'Cel')}.`,
    basis: 'supplier-sheet',
  };
}

function unlikely({ potLife, temperature }: Pick<PotLife, 'potLife' | 'temperature'>): Caution {
  return {
    id: 'second-pot-life-unlikely',
    level: 'warning',
    text: `Look at the sheet again: its pot life of ${amount(potLife, 's')} at ${amount(temperature, 'Cel')} does not go with the other one. Both must be for the same mass.`,
    why: `No activation energy from ${energies.least / 1000} to ${energies.most / 1000} kJ/mol gives both, so it was left aside.`,
    basis: 'derived',
  };
}
