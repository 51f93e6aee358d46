import { heatIndex, type IndexLevel, indexLevel, levelByHeat, riseUpTo } from '../../model/resin/anchor.ts';
import { films } from '../../model/resin/base.ts';
import { classGlass } from '../../model/resin/clock.ts';
import { countsAs } from '../../model/resin/depth-limit.ts';
import { kineticsOf, type ResinKinetics, usualEnergy } from '../../model/resin/fit.ts';
import type { GreatestPour } from '../../model/resin/greatest-pour.ts';
import { steady } from '../../model/resin/history.ts';
import { classThermal, type Kinetics } from '../../model/resin/kinetics.ts';
import { type Pour, type PourRun, runPour } from '../../model/resin/pour.ts';
import {
  depthByRule,
  equalLayers,
  type GreatestDepth,
  greatestDepth,
  type LayerWait,
  layerTimesOf,
  layerWait,
} from '../../model/resin/pour-plan.ts';
import type { Resin } from '../../model/resin/types.ts';
import { type AmountLimit, amountLimits } from './limit.ts';
import type { Setting } from './setting.ts';
import { keptWarm, warmestOf } from './shop-air.ts';

type StatedPour = Extract<GreatestPour, { kind: 'stated' }>;

/** A pour in layers: the fewest equal ones within the depth allowed here. */
export interface LayerPlan {
  count: number;
  /** mm. */
  depth: number;
  /** The most that one layer may have here, mm. */
  most: number;
  /** Of one layer. */
  run: PourRun;
  index: number;
  wait: LayerWait | undefined;
}

/** What a sheet says of one pour that names its depth and no pot life. */
export interface SheetLimit {
  stated: StatedPour;
  /** True where shop and resin are warmer than the depth is stated for: then less is allowed, and nobody knows how much less. */
  warmer: boolean;
  /** The pour is more at once than the sheet allows: deeper, or of a greater volume or mass. */
  beyond: 'depth' | 'amount' | undefined;
  /** The fewest equal layers within the sheet, and the most that one may have, mm, where it is beyond and the depth holds here. */
  layers: Pick<LayerPlan, 'count' | 'depth' | 'most'> | undefined;
}

/** Everything that was worked out of a pour. */
export interface PourAnswer {
  run: PourRun;
  /** Run with the kinetics of the pot life alone, where the sheet's depth slowed them. */
  hotter: PourRun | undefined;
  /** The same pour with resin as warm as the shop, where it was poured warmer. */
  unwarmed: PourRun | undefined;
  index: number | undefined;
  /** True of a coat that is a hair deeper than its generic kind says, 1/8 in for 3 mm: it counts as that. */
  asCoat: boolean;
  /** Undefined where there is no yardstick and the pour is neither hot nor runs away. */
  level: IndexLevel | undefined;
  /** Depth that warms as much as the sheet's own greatest pour, by the model alone. */
  greatest: GreatestDepth | undefined;
  byRule: number | undefined;
  /** Greatest depth of one pour here, mm, and what sets it: never deeper than the sheet or the kind. */
  cap: { depth: number; by: 'model' | 'sheet' | 'amount' } | undefined;
  /** Limits of the sheet on volume and mass. */
  limits: readonly AmountLimit[];
  /** Undefined where one pour will do or nothing can be said. */
  layers: LayerPlan | undefined;
  /** What the sheet's own depth allows, where that alone is known of the resin; undefined anywhere else. */
  bySheet: SheetLimit | undefined;
  /**
   * What becomes of the pour, or of one layer where it comes in layers, if the shop is warmed while it still reacts; undefined where it
   * stays within the sheet. The rise is infinite where it runs away.
   */
  ifWarmed: { shop: number; rise: number } | undefined;
  /** Of a channel: what a pool of its depth would do here, and how deep that could be; undefined of a pool. */
  asPool: { run: PourRun; greatest: GreatestDepth | undefined } | undefined;
  /** What keeps it within the sheet and may be otherwise: a fan, a thick base that was assumed. */
  leansOn: readonly ('fan' | 'base')[];
}

/** A shop that somebody heats for comfort, °C. */
const warmedShop = 25;
/** Resin so much warmer than the shop is worth a run beside it, K. */
const warmResin = 5;
/** A base that is assumed and is a mere film instead, mm. */
const film = 1;
/** A base that conducts no better than this is no worse than wood by much, W/(m·K). */
const woodlike = 0.2;
/** A hair over a depth is none. */
const hair = 1 + 1e-9;

/** Work out a pour: its run, its index, the depth that would do, and layers where it is deeper. */
export function answerOf(setting: Setting): PourAnswer {
  const { pour, resin, anchor, byPotLife, area, day, resinTemperature, stated } = setting;
  const run = runPour(pour, { record: true });
  const warmed = pour.resinTemperature - pour.shopTemperature >= warmResin;
  const limits = resin ? amountLimits(resin, pour.depth, area, pour.resin.density / 1000) : [];
  const common = {
    run,
    unwarmed: warmed ? runPour({ ...pour, resinTemperature: pour.shopTemperature }) : undefined,
    limits,
    asPool: asPool(),
  };
  if (!anchor) {
    const level = levelByHeat(run);
    const none = { hotter: undefined, index: undefined, greatest: undefined, byRule: undefined, cap: undefined };
    const bySheet = sheetLimit(setting, limits);
    return { ...common, ...none, asCoat: false, level, layers: undefined, bySheet, ifWarmed: undefined, leansOn: [] };
  }
  // Where the worst hour was taken, the depth must hold at every hour; where one was given, at that.
  const inWarmth = day ? keptWarm(pour, resinTemperature) : pour;
  const greatest = greatestDepth(day?.asked ? pour : inWarmth, anchor);
  const counted =
    stated?.kind === 'stated'
      ? countsAs(anchor.depth, stated.ofSheet, warmestOf(pour) > anchor.temperature)
      : anchor.depth;
  const asCoat = pour.depth > anchor.depth * hair && pour.depth <= counted * hair;
  const { peakRise } = asCoat ? runPour({ ...pour, depth: anchor.depth }, { peakOnly: true }) : run;
  const index = heatIndex(peakRise, anchor.rise);
  const byAmount = Math.min(...limits.map(({ depth }) => depth ?? Number.POSITIVE_INFINITY));
  const level = indexLevel(index, run, pour.depth > Math.min(counted, byAmount) * hair);
  const within = level === 'inside' || level === 'edge';
  const cap = capOf();
  const whole = within && cap !== undefined && (asCoat || pour.depth <= cap.depth * hair);
  const many = cap && (whole ? undefined : layersWithin(cap.depth));
  // What is outside is never poured in one go, however near the depth lies to the greatest.
  const layers = many && planOf(many.count > 1 ? many : { count: 2, depth: pour.depth / 2 });
  return {
    ...common,
    hotter: anchor.slowedBy > 1 ? runPour({ ...pour, kinetics: byPotLife }) : undefined,
    index,
    asCoat,
    level,
    greatest,
    byRule: ruleOf(),
    cap,
    layers,
    bySheet: undefined,
    ifWarmed: layers || whole ? ifWarmed({ ...pour, depth: layers?.depth ?? pour.depth }, anchor.rise) : undefined,
    leansOn: within ? leansOn(setting, anchor.coarseRise) : [],
  };

  /** The fewest layers within a depth; in a shop that changes the later ones lie there at other hours, and each must bear its warmth. */
  function layersWithin(depth: number): ReturnType<typeof equalLayers> | undefined {
    if (!anchor || !day?.asked) return equalLayers(pour.depth, depth);
    const always = greatestDepth(inWarmth, anchor);
    return always.kind === 'none' ? undefined : equalLayers(pour.depth, Math.min(depth, always.depth));
  }

  function asPool(): PourAnswer['asPool'] {
    if (!pour.channel) return undefined;
    const { channel: _, ...pool } = pour;
    return {
      run: runPour(pool, { peakOnly: true }),
      greatest: anchor && greatestDepth(day && !day.asked ? keptWarm(pool, resinTemperature) : pool, anchor),
    };
  }

  /** The rule of thumb, downwards only: no sheet allows more because the shop is cold. */
  function ruleOf(): number | undefined {
    const depth = anchor && depthByRule(anchor.depth, anchor.temperature, warmestOf(pour));
    return anchor && depth !== undefined && depth <= anchor.depth * hair ? depth : undefined;
  }

  function capOf(): PourAnswer['cap'] {
    if (!anchor || greatest.kind === 'none') return undefined;
    // A pour that was found within is within, though the depth was sought on a coarser grid.
    const byModel = within ? Math.max(greatest.depth, pour.depth) : greatest.depth;
    const least = Math.min(byModel, anchor.depth, byAmount);
    const depth = least * hair >= anchor.depth ? anchor.depth : least;
    return { depth, by: depth === byAmount ? 'amount' : depth === anchor.depth ? 'sheet' : 'model' };
  }

  function planOf({ count, depth }: { count: number; depth: number }): LayerPlan {
    const one = runPour({ ...pour, depth });
    const faster = anchor && anchor.slowedBy > 1 ? runPour({ ...pour, depth, kinetics: byPotLife }) : one;
    const clock = clockOf(resin, byPotLife);
    return {
      count,
      depth,
      most: cap?.depth ?? Number.POSITIVE_INFINITY,
      run: one,
      index: anchor ? heatIndex(one.peakRise, anchor.rise) : Number.NaN,
      wait: layerWait(one, layerTimesOf(resin, clock, pour.air ?? steady(pour.shopTemperature)), faster),
    };
  }
}

/** The sheet's own limit, of a resin of which nobody knows how fast it cures: arithmetic with what is printed, and nothing by a clock. */
function sheetLimit({ noAnchor, stated, pour }: Setting, limits: readonly AmountLimit[]): SheetLimit | undefined {
  if (noAnchor !== 'no-sheet-pot-life' || stated?.kind !== 'stated') return undefined;
  const byAmount = Math.min(...limits.map(({ depth }) => depth ?? Number.POSITIVE_INFINITY));
  const most = Math.min(stated.depth, byAmount);
  const beyond = pour.depth > most * hair ? (byAmount < stated.depth ? 'amount' : 'depth') : undefined;
  const warmer = Math.max(warmestOf(pour), pour.resinTemperature) > stated.temperature;
  return { stated, warmer, beyond, layers: beyond && !warmer ? { ...equalLayers(pour.depth, most), most } : undefined };
}

/** The clock of a thin layer of this resin, for the window and the time to sand. */
function clockOf(resin: Resin | undefined, kinetics: Kinetics): ResinKinetics {
  const base = resin && kineticsOf(resin);
  return base
    ? { ...base, kinetics }
    : {
        kinetics,
        thermal: classThermal,
        glass: classGlass.slow,
        energyBand: usualEnergy.band,
        evidence: [],
        cautions: [],
      };
}

/** A pour in a shop that is heated before it has set, where that takes it outside the sheet. */
function ifWarmed({ air, ...pour }: Pour, yardstick: number): PourAnswer['ifWarmed'] {
  if ((air?.highest ?? pour.shopTemperature) >= warmedShop) return undefined;
  const warm: Pour = {
    ...pour,
    shopTemperature: warmedShop,
    resinTemperature: Math.max(warmedShop, pour.resinTemperature),
  };
  const { outcome, peakRise } = runPour(warm, { peakOnly: true });
  if (outcome !== 'runaway' && peakRise <= yardstick) return undefined;
  return { shop: warmedShop, rise: outcome === 'runaway' ? Number.POSITIVE_INFINITY : peakRise };
}

function leansOn({ pour, baseThicknessAssumed }: Setting, yardstick: number): ('fan' | 'base')[] {
  const outside = (other: Partial<Pour>) => riseUpTo({ ...pour, ...other }, 2 * yardstick) > 1.01 * yardstick;
  const { base, filmTop } = pour;
  return [
    ...(filmTop > films.still && outside({ filmTop: films.still }) ? (['fan'] as const) : []),
    ...(base && baseThicknessAssumed && base.conductivity > woodlike && outside({ base: { ...base, thickness: film } })
      ? (['base'] as const)
      : []),
  ];
}
