import type { Figure } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import type { Resin, ResinFigureName } from './types.ts';

/**
 * What is assumed where a data sheet leaves it out, from memory: g and °C.
 *
 * Each on the cautious side. A depth is taken for 20 °C, the coolest that such sheets usually name, so that less of it is left
 * in a warmer shop; never for the temperature of the cure, which may be that of an oven.
 */
export const assumed = {
  potLifeMass: 100,
  potLifeTemperature: 25,
  depthTemperature: 20,
  timesTemperature: 25,
} as const;

/**
 * Temperature of a sheet's waits (recoat, sanding, cure, food) where it names none: that of its pot life, else the warmest that
 * such sheets usually mean, so that none comes out too short in a cooler shop.
 *
 * @param potLifeTemperature that the sheet states, °C
 */
export function assumedTemperatureOfTimes(potLifeTemperature: number | undefined): { celsius: number; words: string } {
  return potLifeTemperature === undefined
    ? { celsius: assumed.timesTemperature, words: amount(assumed.timesTemperature, 'Cel') }
    : { celsius: potLifeTemperature, words: `${amount(potLifeTemperature, 'Cel')}, the temperature of its pot life,` };
}

/**
 * The cup that a pot life is stated for, as a sentence goes on after the time: `for 100 g at 25 °C`. In grams, as sheets and scales have it,
 * and with a word on what the sheet does not say.
 */
export function statedCupWords(resin: Resin): string {
  const { potLifeMass, potLifeTemperature } = resin.figures;
  const taken = (name: 'potLifeMass' | 'potLifeTemperature') => resin.figures[name] === null || isAssumed(resin, name);
  const [mass, celsius] = [
    amount(potLifeMass?.value ?? assumed.potLifeMass, 'g', 3, true),
    amount(potLifeTemperature?.value ?? assumed.potLifeTemperature, 'Cel'),
  ];
  const [byMass, byCelsius] = [taken('potLifeMass'), taken('potLifeTemperature')];
  const note = ' (assumed: the sheet does not say)';
  if (byMass && byCelsius) return `for ${mass} at ${celsius} (both assumed: the sheet does not say)`;
  return `for ${mass}${byMass ? note : ''} at ${celsius}${byCelsius ? note : ''}`;
}

/** Whether a figure of a reader's sheet stands for something that the sheet does not say. */
export function isAssumed(resin: Resin, name: ResinFigureName): boolean {
  const figure: Figure | null = resin.figures[name];
  return resin.fromSheet && figure !== null && figure.basis !== 'supplier-sheet';
}
