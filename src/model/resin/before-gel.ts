import type { Caution } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { statedCupWords } from './assumed.ts';
import { gelPoint, rateFactor, timeToConversion } from './clock.ts';
import { cupOf, runCup } from './cup.ts';
import { kineticsOf } from './fit.ts';
import { statedBy } from './stated.ts';
import type { Resin } from './types.ts';

/** Waits that say that a resin has set: none of them can be over while it still flows. */
export type SetWait = 'recoatOpens' | 'sandable' | 'cure';

/** A wait of a data sheet that is over before the resin has set, by the sheet's own pot life. */
export interface BeforeGel {
  name: SetWait;
  /** s, and the temperature that it holds at, °C. */
  time: number;
  celsius: number;
  /**
   * `cup`: before even the cup of the pot life has set, which warms itself and is sooner than any layer, so that one of the two figures is wrong.
   * `layer`: before a thin layer has gelled, by a clock a quarter faster than the pot life makes it; a deep one may have.
   */
  sooner: 'cup' | 'layer';
  /** What it comes before, s, at that temperature: what the pot life means for its cup, or the gel of a thin layer. */
  than: number;
}

/** A pot life is read to about so much of it. */
const potLifeError = 0.05;
/** The clock is good to a quarter. */
const clockError = 0.25;

const names: readonly SetWait[] = ['recoatOpens', 'sandable', 'cure'];
const ofSheet = 'supplier-sheet';

/** The waits of a reader's own sheet that are over before the resin has set; empty for a generic kind, and where no pot life is known. */
export function waitsBeforeGel(resin: Resin): BeforeGel[] {
  const { potLife, potLifeTemperature } = resin.figures;
  if (!resin.fromSheet || potLife?.basis !== ofSheet || !potLifeTemperature) return [];
  const { kinetics, cautions } = kineticsOf(resin);
  if (cautions.some(({ id }) => id === 'pot-life-unlikely')) return [];
  return names.flatMap((name): BeforeGel[] => {
    const stated = statedBy(resin, name);
    if (!stated || resin.figures[name]?.basis !== ofSheet) return [];
    const { time, celsius } = stated;
    const gel = timeToConversion(gelPoint, celsius, kinetics);
    // A layer is never sooner than the cup: what comes after the gel of a thin one comes after both.
    if (time >= (1 - clockError) * gel) return [];
    const cup = cupTime(resin, celsius);
    return cup !== undefined && time < (1 - potLifeError) * cup
      ? [{ name, time, celsius, sooner: 'cup', than: cup }]
      : [{ name, time, celsius, sooner: 'layer', than: gel }];
  });
}

/** What the pot life means for its cup at another temperature, s: the shortest that the activation energy leaves open. */
function cupTime(resin: Resin, celsius: number): number | undefined {
  const { potLife, potLifeMass, potLifeTemperature } = resin.figures;
  if (!potLife || !potLifeMass || !potLifeTemperature) return undefined;
  if (Math.abs(potLifeTemperature.value - celsius) < 0.5) return potLife.value;
  const { kinetics, thermal, energyBand } = kineticsOf(resin);
  const factor = (energy: number) => rateFactor(energy, 25, potLifeTemperature.value);
  const times = [-energyBand, 0, energyBand].map((off) => {
    const activationEnergy = kinetics.activationEnergy + off;
    const k2At25C = (kinetics.k2At25C * factor(kinetics.activationEnergy)) / factor(activationEnergy);
    const run = runCup(cupOf(potLifeMass.value, thermal), { ...kinetics, k2At25C, activationEnergy }, { air: celsius });
    return resin.potLifeMeans === 'gel' ? run?.gel : run?.work;
  });
  const found = times.filter((time) => time !== undefined);
  return found.length === times.length ? Math.min(...found) : undefined;
}

const doing: Readonly<Record<SetWait, string>> = {
  recoatOpens: 'lets the next coat follow',
  sandable: 'lets it be sanded',
  cure: 'calls it cured',
};

/** Which wait of a sheet cannot be true beside its pot life, as a clause that goes on after the resin's name; undefined where all can. */
export function beforeGelWar(resin: Resin): string | undefined {
  const [worst] = waitsBeforeGel(resin).filter(({ sooner }) => sooner === 'cup');
  return worst && `it ${doing[worst.name]} before its own pot life is over, so nobody knows how fast it cures`;
}

/** What must be said of a sheet with a wait that is over before the resin has set; empty for any other. */
export function beforeGelCautions(resin: Resin): Caution[] {
  const all = waitsBeforeGel(resin);
  const [first] = [...all.filter(({ sooner }) => sooner === 'cup'), ...all];
  const { potLife, potLifeMass, potLifeTemperature } = resin.figures;
  if (!first || !potLife || !potLifeMass || !potLifeTemperature) return [];
  const { name, time, celsius, sooner, than } = first;
  const potLifeWords = `${amount(potLife.value, 's')} ${statedCupWords(resin)}`;
  const when = `${amount(time, 's')} at ${amount(celsius, 'Cel')}`;
  return [
    sooner === 'cup'
      ? {
          id: 'before-pot-life',
          level: 'danger',
          own: true,
          text: `Do not work by this sheet of ${resin.name}: it ${doing[name]} after ${when}, before its pot life is over, ${potLifeWords}. One of the two is wrong: look at the sheet again, or ask the maker.`,
          why: `A layer is never sooner than the cup, which warms itself: at that temperature such a cup takes ${amount(than, 's', 2)} or more. Was a unit misread, are the two swapped, or is the pot life for another mass or temperature?`,
          basis: 'derived',
        }
      : {
          id: 'before-gel',
          level: 'warning',
          own: true,
          text: `Touch it before you go by the sheet of ${resin.name}: it ${doing[name]} after ${when}, and by its pot life a thin layer gels only after about ${amount(than, 's', 2)} there. Wait until it has set.`,
          why: `By the pot life of ${potLifeWords}, and more than a quarter apart, which is what the clock is good to. A deep layer warms itself and gels sooner.`,
          basis: 'derived',
        },
  ];
}
