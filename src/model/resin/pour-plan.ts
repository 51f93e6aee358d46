import { type Anchor, riseUpTo } from './anchor.ts';
import { kineticsOf, type ResinKinetics } from './fit.ts';
import { greatestPourOf } from './greatest-pour.ts';
import { type History, steady } from './history.ts';
import { type Pour, type PourRun, runPour } from './pour.ts';
import { type CureEventId, narrowestWindow, timetableOf } from './timetable.ts';
import { silentOn } from './told.ts';
import type { Resin } from './types.ts';
import { usualPour } from './usual-pour.ts';

/** Depths between which a greatest depth is sought, mm. */
const depths = { least: 0.5, most: 400 } as const;

/** Greatest depth of a pour, mm; `more` where even the deepest sought stays within, `none` where the thinnest does not, or the resin starts too warm. */
export type GreatestDepth = { kind: 'found' | 'more'; depth: number } | { kind: 'none' };

/**
 * Greatest depth at which a pour warms no more than the sheet's own greatest pour: heat index 1, over this base, in this air.
 *
 * @param pour everything but its depth
 * @param anchor the sheet's own pour
 */
export function greatestDepth(pour: Omit<Pour, 'depth'>, anchor: Pick<Anchor, 'coarseRise' | 'depth'>): GreatestDepth {
  if (pour.resinTemperature - pour.shopTemperature >= anchor.coarseRise) return { kind: 'none' };
  const start = { at: Math.log(anchor.depth), slope: 3 };
  if (!pour.channel) return searched(pour, anchor, start, aim, false).depth;
  // A channel's runs are dear: most of the way is gone on a crude grid.
  const guess = searched(pour, anchor, start, roughly, true);
  return searched(pour, anchor, guess, aim, false).depth;
}

interface Searched {
  depth: GreatestDepth;
  /** Logarithm of the depth, and how steep the logarithm of the index is there. */
  at: number;
  slope: number;
}

/** Logarithm of the heat index against that of the depth: nearly straight, so that the secant rule finds its root in a few runs. */
function searched(
  pour: Omit<Pour, 'depth'>,
  anchor: Pick<Anchor, 'coarseRise'>,
  start: { at: number; slope: number },
  near: number,
  crude: boolean,
): Searched {
  const over = (logDepth: number) =>
    Math.log(
      riseUpTo({ ...pour, depth: Math.exp(logDepth) }, steep * anchor.coarseRise, undefined, crude) / anchor.coarseRise,
    );
  const ends = { low: Math.log(depths.least), high: Math.log(depths.most) };
  let { low, high } = ends;
  let at = Math.min(high, Math.max(low, start.at));
  let { slope } = start;
  let off = over(at);
  for (let tries = 0; tries < mostTries; tries += 1) {
    if (Math.abs(off) <= near) break;
    if (off < 0 && at === ends.high) return { depth: { kind: 'more', depth: depths.most }, at, slope };
    if (off > 0 && at === ends.low) return { depth: { kind: 'none' }, at, slope };
    if (off < 0) low = at;
    else high = at;
    const wanted = at - (saturated(off) ? 0.9 : Math.min(0.7, Math.max(-0.7, off / slope)));
    // A step to the edge of the bracket or beyond takes its middle, but for an end that has not been tried.
    const next =
      wanted > low && wanted < high
        ? wanted
        : wanted >= high && high === ends.high
          ? high
          : wanted <= low && low === ends.low
            ? low
            : (low + high) / 2;
    const then = over(next);
    if (!saturated(off) && !saturated(then)) slope = Math.min(8, Math.max(1, (then - off) / (next - at)));
    [at, off] = [next, then];
  }
  return { depth: { kind: 'found', depth: Math.exp(Math.abs(off) <= near ? at : low) }, at, slope };
}

/** Runs stop at this multiple of the rise that is sought; hotter than that is hot enough to know. */
const steep = 3;
/** Whether a run was stopped as hot enough, so that only the sign of its answer counts. */
const saturated = (off: number) => off >= Math.log(steep) - 1e-9;
/** The depth given has a heat index within so much of 1. */
const aim = 0.005;
/** And of a first guess on a crude grid. */
const roughly = 0.03;
const mostTries = 16;

/**
 * Share of the depth at 25 °C, by temperature, °C: between the middles of 120 invented resins of each class that all fit one sheet, which
 * are 1.65 to 1.72, 1.27 to 1.30 and 0.78 to 0.80 (`tests/second-roads/invented-resins.ts`).
 */
const depthShares: readonly (readonly [celsius: number, share: number])[] = [
  [15, 1.7],
  [20, 1.3],
  [25, 1],
  [30, 0.78],
];

/** How far the depth rule may be off either way, as a share: 5 to 95 % of those resins lie within 0.92 to 1.10 of it. */
export const depthRuleBand = 0.1;

/**
 * Greatest depth at another temperature by a rule without any run: D₁₅ : D₂₀ : D₂₅ : D₃₀ = 1.70 : 1.30 : 1 : 0.78.
 *
 * @param depth at `from`, mm
 * @param from temperature that the depth is stated for, °C
 * @param to °C
 * @returns mm, or undefined where either temperature lies outside 15 to 30 °C
 */
export function depthByRule(depth: number, from: number, to: number): number | undefined {
  const [a, b] = [shareAt(from), shareAt(to)];
  return a === undefined || b === undefined ? undefined : (depth * b) / a;
}

function shareAt(celsius: number): number | undefined {
  for (let at = 1; at < depthShares.length; at += 1) {
    const [low, first] = depthShares[at - 1] as readonly [number, number];
    const [high, second] = depthShares[at] as readonly [number, number];
    if (celsius < low || celsius > high) continue;
    return first * (second / first) ** ((celsius - low) / (high - low));
  }
  return undefined;
}

/**
 * The fewest equal layers that fill a depth, each within a greatest depth.
 *
 * @param depth mm
 * @param greatest mm
 */
export function equalLayers(depth: number, greatest: number): { count: number; depth: number } {
  // A hair over must not cost a layer.
  const count = Math.max(1, Math.ceil(depth / greatest - 1e-6));
  return { count, depth: depth / count };
}

/**
 * From so many layers on a resin is the wrong one for the place; common practice. Each layer is a wait, a joint that may let go and a chance
 * of dust and bubbles, and a resin made for depth needs one or two.
 */
export const tooManyLayers = 6;

/** What must be said where depth alone asks for so many layers, a sentence; undefined where it does not. */
export function wrongForDepth(layers: number, resin: Resin | undefined): string | undefined {
  if (layers < tooManyLayers) return undefined;
  const slow = resin?.kinetics === 'slow';
  return `This resin is wrong for so deep a place: pick a ${slow ? 'casting resin that is poured deeper' : 'slow casting resin'}.`;
}

/** When the next layer may be poured, s from mixing the one below, and what says so. */
export interface LayerWait {
  from: number;
  /** What decides `from`. */
  fromBy: 'window' | 'gel' | 'cool' | 'sand';
  /** Until when the layer below still bonds by itself; null where neither sheet nor model can say. */
  to: number | null;
  toBy: 'sheet' | 'model';
  /** True where there is no window, or it has closed before the layer has cooled, or as good as: sand, wipe, then pour. */
  abrade: boolean;
}

/** What the timetable says of the layer below, s from mixing. */
export interface LayerTimes {
  /** Null where there is no window at all. */
  opens: number | null;
  closes: number | null;
  closesBy: 'sheet' | 'model';
  /** When it may be sanded; null where that is too far off to plan for. */
  sandable: number | null;
}

/**
 * Recoat window and time to sand of a layer in the air of a shop: those of `timetableOf`, so that a plan of layers and the
 * cure clock never differ.
 *
 * @param known kinetics by the pot life, not slowed to fit a depth
 */
export function layerTimesOf(resin: Resin | undefined, known: ResinKinetics, air: History): LayerTimes {
  const { events, noWindow } = timetableOf(resin, known, air);
  const of = (id: CureEventId) => events.find((event) => event.id === id);
  const closes = of('recoatCloses');
  return {
    opens: noWindow ? null : (of('recoatOpens')?.time ?? null),
    closes: closes?.time ?? null,
    closesBy: closes && closes.origin !== 'clock' ? 'sheet' : 'model',
    sandable: of('sandable')?.time ?? null,
  };
}

/**
 * When a layer may be poured on another: not before the recoat window opens, nor before the one below has gelled through and cooled; not
 * after the window closes. A window that the sheet gives wins over the model's, which closes by the earlier of the thin layer and the pour.
 *
 * A layer that has cooled only after its window is sanded first, and so waits until it may be sanded: half-cured resin makes the dust that
 * sensitises most.
 *
 * @param run of the layer below
 * @param times of the layer below
 * @param faster the same layer by the faster of two clocks, where its sheet gives two
 * @returns undefined where the layer does not set within the run, or its time to sand is too far off
 */
export function layerWait(run: PourRun, times: LayerTimes, faster: PourRun = run): LayerWait | undefined {
  const { timeToLastGel, timeToCool } = run;
  if (run.outcome === 'runaway' || timeToLastGel === null || timeToCool === null) return undefined;
  const settled: Reason[] = [
    ['gel', timeToLastGel],
    ['cool', timeToCool],
  ];
  const [fromBy, from] = latest(times.opens === null ? settled : [...settled, ['window', times.opens]]);
  const byModel = times.closesBy === 'model';
  const ends = [times.closes, ...(byModel ? [run.timeToClose, faster.timeToClose] : [])].filter((end) => end !== null);
  const to = ends.length === 0 ? null : Math.min(...ends);
  const shut = times.opens === null || (to !== null && to < from * (1 + (byModel ? narrowestWindow : 0)));
  const common = { to, toBy: times.closesBy };
  if (!shut) return { from, fromBy, ...common, abrade: false };
  if (times.sandable === null) return undefined;
  const [sandBy, sandFrom] = latest([...settled, ['sand', times.sandable]]);
  return { from: sandFrom, fromBy: sandBy, ...common, abrade: true };
}

type Reason = readonly [LayerWait['fromBy'], number];

/** The latest of some reasons to wait. */
function latest(reasons: readonly Reason[]): Reason {
  return reasons.reduce((last, reason) => (reason[1] > last[1] ? reason : last));
}

/**
 * The wait between equal layers over 20 mm of hardwood in still air, in a shop that keeps one temperature: what the heat of a pour gives
 * where nothing else was said of base and air.
 *
 * @param depth of a layer, mm
 * @param celsius of the shop and of the resin
 * @returns undefined where the sheet names no pot life, sheet and pot life give no yardstick, or the layer does not set
 */
export function usualLayerWait(resin: Resin, depth: number, celsius: number): LayerWait | undefined {
  // How long it takes to set and to cool nobody knows of a sheet without a pot life.
  if (silentOn(resin, 'potLife')) return undefined;
  const known = kineticsOf(resin);
  const stated = greatestPourOf(resin, { ...known, maySlow: true });
  if (stated.kind !== 'stated') return undefined;
  const { anchor } = stated;
  const layer = usualPour(anchor.kinetics, known.thermal, depth, celsius);
  const run = runPour(layer);
  const faster = anchor.slowedBy > 1 ? runPour({ ...layer, kinetics: known.kinetics }) : run;
  return layerWait(run, layerTimesOf(resin, known, steady(celsius)), faster);
}
