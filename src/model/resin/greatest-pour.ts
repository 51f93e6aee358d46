import type { Caution } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { type Anchor, hottestAnchor, knownAnchor, mostSlowed, riseUpTo } from './anchor.ts';
import { assumed, isAssumed, statedCupWords } from './assumed.ts';
import { cupOf, runCup } from './cup.ts';
import { kineticsOf } from './fit.ts';
import type { Kinetics, ThermalProperties } from './kinetics.ts';
import { runPour } from './pour.ts';
import type { Resin } from './types.ts';
import { usualPour } from './usual-pour.ts';

/** What a resin's sheet, or its generic kind, says of one pour, once it has been held against its pot life. */
export type GreatestPour =
  /** Nobody says how deep it may be poured: a sheet that names no depth, whatever the kind under it. */
  | { kind: 'silent' }
  /** Depth and pot life go together well enough: the pour of that depth is a yardstick. */
  | ({ kind: 'stated'; anchor: Anchor } & StatedDepth)
  /** By the pot life, a pour of that depth is so hot that one of the two figures must be wrong. */
  | ({ kind: 'at-war'; slowedBy: number | undefined } & StatedDepth)
  /** With kinetics of the reader's own that pour runs away, or never warms. */
  | ({ kind: 'no-yardstick' } & StatedDepth);

interface StatedDepth {
  /** mm. */
  depth: number;
  /** °C. */
  temperature: number;
  /** True where the sheet names a depth and no temperature, so that `temperature` is assumed. */
  temperatureAssumed: boolean;
  /** The depth is the sheet's own, not the generic kind's. */
  ofSheet: boolean;
}

/** What holds of the cure and the mix where it is not what the resin's pot life gives. */
export interface OwnCure {
  kinetics: Kinetics;
  thermal: ThermalProperties;
  /** False where the kinetics are the reader's own and must stand. */
  maySlow: boolean;
}

/** The greatest pour that a resin's sheet or kind allows, held against its own pot life. */
export function greatestPourOf(resin: Resin, own?: OwnCure): GreatestPour {
  const { greatestDepth, greatestDepthTemperature } = resin.figures;
  // Beside a sheet of the reader's own the depth of a generic kind is nobody's word.
  if (!greatestDepth || isAssumed(resin, 'greatestDepth')) return { kind: 'silent' };
  const { kinetics, thermal, maySlow } = own ?? { ...kineticsOf(resin), maySlow: true };
  const stated: StatedDepth = {
    depth: greatestDepth.value,
    temperature: greatestDepthTemperature?.value ?? assumed.depthTemperature,
    temperatureAssumed: greatestDepthTemperature === null || isAssumed(resin, 'greatestDepthTemperature'),
    ofSheet: greatestDepth.basis === 'supplier-sheet',
  };
  const anchor = knownAnchor(kinetics, thermal, stated.depth, stated.temperature, maySlow);
  if (anchor && anchor.slowedBy <= mostSlowed) return { kind: 'stated', anchor, ...stated };
  if (!maySlow || (!anchor && !tooHot(kinetics, thermal, stated))) return { kind: 'no-yardstick', ...stated };
  return { kind: 'at-war', slowedBy: anchor?.slowedBy, ...stated };
}

function tooHot(
  kinetics: Kinetics,
  thermal: ThermalProperties,
  { depth, temperature }: Pick<StatedDepth, 'depth' | 'temperature'>,
): boolean {
  return riseUpTo(usualPour(kinetics, thermal, depth, temperature), hottestAnchor) >= hottestAnchor;
}

/** What follows if either of two figures at war is right. */
export interface EitherFigure {
  /** If the pot life is right: what a pour of the sheet's own depth does, and the depth at which it warms by `hottestAnchor`, mm. */
  outcome: { runsAwayAfter: number } | { rise: number };
  depthByPotLife: number;
  /** If the depth is right: the pot life that would go with it, for the same cup, s; undefined where none does. */
  potLifeByDepth: number | undefined;
}

/** Work out what follows if either figure is right, of a resin whose depth and pot life are at war. */
export function eitherOf(resin: Resin, war: Extract<GreatestPour, { kind: 'at-war' }>): EitherFigure {
  const { kinetics, thermal } = kineticsOf(resin);
  const run = runPour(usualPour(kinetics, thermal, war.depth, war.temperature), { peakOnly: true });
  let [low, high] = [Math.log(0.1), Math.log(war.depth)];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (tooHot(kinetics, thermal, { depth: Math.exp(middle), temperature: war.temperature })) high = middle;
    else low = middle;
  }
  const { potLifeMass, potLifeTemperature } = resin.figures;
  const cup =
    war.slowedBy === undefined
      ? undefined
      : runCup(
          cupOf(potLifeMass?.value ?? assumed.potLifeMass, thermal),
          { ...kinetics, k2At25C: kinetics.k2At25C / war.slowedBy },
          { air: potLifeTemperature?.value ?? assumed.potLifeTemperature },
        );
  return {
    outcome: run.outcome === 'runaway' ? { runsAwayAfter: run.timeToPeak } : { rise: run.peakRise },
    depthByPotLife: Math.exp(low),
    potLifeByDepth: cup && (resin.potLifeMeans === 'gel' ? cup.gel : cup.work),
  };
}

/** At a temperature, and whether the sheet says so. */
export function statedAt({
  temperature,
  temperatureAssumed,
}: Pick<StatedDepth, 'temperature' | 'temperatureAssumed'>): string {
  const at = amount(temperature, 'Cel');
  return temperatureAssumed ? `${at} (assumed: the sheet names no temperature)` : at;
}

/** What must be said of a resin whose depth and pot life are at war; empty for any other. */
export function depthAgainstPotLife(resin: Resin): Caution[] {
  // A pot life that no resin has is left aside, and says so itself.
  if (kineticsOf(resin).cautions.some(({ id }) => id === 'pot-life-unlikely')) return [];
  const war = greatestPourOf(resin);
  if (war.kind !== 'at-war') return [];
  const { outcome, depthByPotLife, potLifeByDepth } = eitherOf(resin, war);
  const { potLife } = resin.figures;
  const ofSheet = potLife?.basis === 'supplier-sheet';
  const cup = `${amount(potLife?.value ?? 0, 's')} ${ofSheet ? statedCupWords(resin) : cupOfKind(resin)}`;
  const depth = amount(war.depth, 'mm', 2);
  const does =
    'rise' in outcome
      ? `warms by ${amount(outcome.rise, 'K', 2)}`
      : `runs away ${amount(outcome.runsAwayAfter, 's', 2)} after mixing`;
  const whose = ofSheet ? `its pot life of ${cup}` : `the pot life of the generic kind that stands in, ${cup}`;
  return [
    {
      id: 'depth-against-pot-life',
      level: 'danger',
      own: true,
      text: ofSheet
        ? `Do not pour ${resin.name} by this sheet: by ${whose}, ${depth} at ${statedAt(war)} ${does}. One of the two figures is wrong. Look at the sheet again, or ask the maker.`
        : `Do not pour ${resin.name} by this sheet: by ${whose}, ${depth} at ${statedAt(war)} ${does}. Enter the sheet’s own pot life, with its mass and temperature.`,
      why: `If the pot life is right, the model warms by ${amount(hottestAnchor, 'K')} at a depth of about ${amount(depthByPotLife, 'mm', 2)} already. ${
        potLifeByDepth === undefined || war.slowedBy === undefined
          ? 'If the depth is right, no pot life of a resin goes with it.'
          : `If the depth is right, the cure must be about ${formatFactor(war.slowedBy)} times slower, and the pot life of that cup nearer ${amount(potLifeByDepth, 's', 2)}.`
      } Was a digit or a unit misread; is the depth that of several layers; is the pot life for another mass or temperature, or until usable rather than gelled?`,
      basis: 'derived',
    },
  ];
}

/** The cup of a kind's pot life, which the kind itself states. */
const cupOfKind = (resin: Resin) => statedCupWords({ ...resin, fromSheet: false });

const formatFactor = (factor: number) => (factor < 10 ? factor.toFixed(1) : factor.toFixed(0));
