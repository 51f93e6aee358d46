import { heatIndex, type IndexLevel, indexLevel } from '../../model/resin/anchor.ts';
import { classGlass } from '../../model/resin/clock.ts';
import { kineticsOf, type ResinKinetics, usualEnergy } from '../../model/resin/fit.ts';
import { classThermal, type Kinetics } from '../../model/resin/kinetics.ts';
import { type PourRun, runPour } from '../../model/resin/pour.ts';
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
import type { Setting } from './setting.ts';

/** A pour in layers: the fewest equal ones within the depth allowed here. */
export interface LayerPlan {
  count: number;
  /** mm. */
  depth: number;
  /** Of one layer. */
  run: PourRun;
  index: number;
  wait: LayerWait | undefined;
}

/** Everything that was worked out of a pour. */
export interface PourAnswer {
  run: PourRun;
  /** Run with the kinetics of the pot life alone, where the sheet's depth slowed them. */
  hotter: PourRun | undefined;
  index: number | undefined;
  level: IndexLevel | undefined;
  greatest: GreatestDepth | undefined;
  byRule: number | undefined;
  /** Depth that a layer may have: by the model here, and by the maker's own sheet where there is one; mm. */
  allowed: number | undefined;
  /** Undefined where one pour will do or nothing can be said. */
  layers: LayerPlan | undefined;
}

/** The model finds a depth to within half a percent; so much over it is not too deep. */
const slack = 1.01;

/** Work out a pour: its run, its index, the depth that would do, and layers where it is deeper. */
export function answerOf({ pour, resin, anchor, byPotLife }: Setting): PourAnswer {
  const run = runPour(pour, { record: true });
  const hotter = anchor && anchor.slowedBy > 1 ? runPour({ ...pour, kinetics: byPotLife }) : undefined;
  const sheetDepth = resin?.figures.greatestDepth;
  const bySheet =
    sheetDepth?.basis === 'supplier-sheet' || resin?.fromSheet ? (sheetDepth?.value ?? Infinity) : Infinity;
  if (!anchor) {
    const layers = Number.isFinite(bySheet) ? equalLayers(pour.depth, bySheet) : undefined;
    return {
      run,
      hotter,
      index: undefined,
      level: run.outcome === 'runaway' ? 'runaway' : undefined,
      greatest: undefined,
      byRule: undefined,
      allowed: Number.isFinite(bySheet) ? bySheet : undefined,
      layers: layers && layers.count > 1 ? planOf(layers) : undefined,
    };
  }
  const greatest = greatestDepth(pour, anchor);
  const byModel = greatest.kind === 'none' ? undefined : greatest.depth * slack;
  const allowed = byModel === undefined ? undefined : Math.min(byModel, bySheet);
  const layers = allowed === undefined ? undefined : equalLayers(pour.depth, allowed);
  const index = heatIndex(run.peakRise, anchor.rise);
  return {
    run,
    hotter,
    index,
    level: indexLevel(index, run),
    greatest,
    byRule: depthByRule(anchor.depth, anchor.temperature, pour.shopTemperature),
    allowed: byModel === undefined ? undefined : Math.min(byModel / slack, bySheet),
    layers: layers && layers.count > 1 ? planOf(layers) : undefined,
  };

  function planOf({ count, depth }: { count: number; depth: number }): LayerPlan {
    const one = runPour({ ...pour, depth });
    const faster = anchor && anchor.slowedBy > 1 ? runPour({ ...pour, depth, kinetics: byPotLife }) : one;
    const clock = clockOf(resin, byPotLife);
    return {
      count,
      depth,
      run: one,
      index: anchor ? heatIndex(one.peakRise, anchor.rise) : Number.NaN,
      wait: layerWait(one, layerTimesOf(resin, clock, pour.shopTemperature), faster),
    };
  }
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
