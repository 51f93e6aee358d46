import { type Basis, derivedBasis } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { runawayTemperature } from '../../model/resin/pour.ts';
import type { FigureValue } from '../kit/calculator.ts';
import type { PourAnswer } from './answer.ts';
import type { Figures } from './figures.ts';
import type { Setting } from './setting.ts';

/**
 * Rises from a pot life alone, 5 to 95 % of 120 invented resins of each class (`tests/second-roads/invented-resins.ts`): 0.47 to 2.98
 * where their class rises by 25 K, 0.35 to 2.2 where it rises by 60. Between the two the upper end falls, and is taken as 2.8.
 *
 * @param rise K
 */
export const riseBand = (rise: number): readonly [number, number] => (rise > 40 ? [0.35, 2.8] : [0.47, 3]);
const riseBandWords =
  '5 to 95 % of 120 invented resins of the same pot life: the spread of what is assumed, not of measurements.';

/**
 * Gel of a pour from a pot life alone, by the same resins: 0.73 to 1.61 of a fast class, 0.87 to 1.19 of a slow one, taken as a quarter.
 *
 * @param potLife s
 */
export const timeBand = (potLife: number | undefined): readonly [number, number] =>
  potLife !== undefined && potLife < 3 * 3600 ? [0.72, 1.62] : [0.75, 1.25];

/** Rise and times of the run. */
export function runFigures({ pour, resin, from }: Setting, { run, hotter, index }: PourAnswer): Figures {
  const own = from === 'own';
  const basis: Basis = own ? 'derived' : derivedBasis(['memory']);
  const runaway = run.outcome === 'runaway';
  const ceiling =
    pour.kinetics.heatOfReaction / pour.resin.heatCapacity + Math.max(0, pour.resinTemperature - pour.shopTemperature);
  const rise = Math.max(0, run.peakRise);
  const [least, most] = riseBand(rise);
  const [sooner, later] = timeBand(resin?.figures.potLife?.value);
  const time = (value: number | null, early: number | null | undefined, note?: string): FigureValue | undefined => {
    if (value === null) return undefined;
    const low = Math.min(sooner * value, sooner * (early ?? value));
    return {
      value,
      basis,
      ...(own ? {} : { low, high: later * value, band: riseBandWords }),
      ...(note ? { note } : {}),
    };
  };
  const estimate = `An estimate of the model, no promise${index === undefined ? '.' : ': the depth and the index say more.'}`;
  const stop = amount(runawayTemperature, 'Cel');
  const stopNote = `It passes ${stop} before any of it counts as gelled; from there it sets within minutes.`;
  const timeToWork = time(run.timeToWork, hotter?.timeToWork);
  const timeToFirstGel = time(
    run.timeToFirstGel ?? (runaway ? run.timeToPeak : null),
    hotter && (hotter.timeToFirstGel ?? hotter.timeToPeak),
    run.timeToFirstGel === null && runaway ? stopNote : undefined,
  );
  const timeToLastGel = time(run.timeToLastGel, hotter && (hotter.timeToLastGel ?? hotter.timeToPeak));
  return {
    peakRise: {
      value: rise,
      basis,
      ...(runaway
        ? {
            low: rise,
            band: `The calculation stops at ${stop}.`,
            note: `Runaway: more than that. How hot it grows is not said: past that the model is wrong.`,
          }
        : {
            ...(own
              ? {}
              : { low: least * rise, high: Math.max(rise, Math.min(most * rise, ceiling)), band: riseBandWords }),
            note:
              run.peakRise > 0 ? estimate : 'The resin is poured colder than the air and never grows warmer than it.',
          }),
    },
    timeToPeak: { value: run.timeToPeak, basis, ...peakNote() },
    ...(timeToWork ? { timeToWork } : {}),
    ...(timeToFirstGel ? { timeToFirstGel } : {}),
    ...(timeToLastGel ? { timeToLastGel } : {}),
    hottestHeight: { value: run.hottestHeight, basis },
    ceiling: { value: ceiling, basis },
  };

  function peakNote(): Pick<FigureValue, 'note'> {
    if (runaway) return { note: `Runaway: it passes ${stop} then, and grows hotter still.` };
    return pour.resinTemperature > pour.shopTemperature && run.timeToPeak <= 60
      ? { note: 'It is warmest as it is poured.' }
      : {};
  }
}
