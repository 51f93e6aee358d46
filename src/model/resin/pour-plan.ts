import { type Anchor, riseUpTo } from './anchor.ts';
import type { Pour, PourRun } from './pour.ts';
import type { Resin } from './types.ts';

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
  // Logarithm of the heat index against that of the depth: nearly straight, so that the secant rule finds its root in a few runs.
  const over = (logDepth: number) =>
    Math.log(riseUpTo({ ...pour, depth: Math.exp(logDepth) }, steep * anchor.coarseRise) / anchor.coarseRise);
  const ends = { low: Math.log(depths.least), high: Math.log(depths.most) };
  let { low, high } = ends;
  let at = Math.min(high, Math.max(low, Math.log(anchor.depth)));
  let slope = 3;
  let off = over(at);
  for (let tries = 0; tries < mostTries; tries += 1) {
    if (Math.abs(off) <= aim) break;
    if (off < 0 && at === ends.high) return { kind: 'more', depth: depths.most };
    if (off > 0 && at === ends.low) return { kind: 'none' };
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
  return { kind: 'found', depth: Math.exp(Math.abs(off) <= aim ? at : low) };
}

/** Runs stop at this multiple of the rise that is sought; hotter than that is hot enough to know. */
const steep = 3;
/** Whether a run was stopped as hot enough, so that only the sign of its answer counts. */
const saturated = (off: number) => off >= Math.log(steep) - 1e-9;
/** The depth given has a heat index within so much of 1. */
const aim = 0.005;
const mostTries = 16;

/** Share of the depth at 25 °C, by temperature, °C: middle of 120 invented resins that all fit one sheet. */
const depthShares: readonly (readonly [celsius: number, share: number])[] = [
  [15, 1.7],
  [20, 1.3],
  [25, 1],
  [30, 0.78],
];

/** How far the depth rule may be off either way, as a share. */
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

/** When the next layer may be poured, s from mixing the one below, and what says so. */
export interface LayerWait {
  from: number;
  /** What decides `from`. */
  fromBy: 'sheet' | 'gel' | 'cool';
  /** Until when it still bonds by itself; null where neither sheet nor model can say. */
  to: number | null;
  toBy: 'sheet' | 'model';
  /** True where the window has closed before it opens, or as good as: let it cool, abrade, then pour. */
  abrade: boolean;
}

/** A window of the model shorter than this share of the wait for it is none: both its ends are estimates. */
const narrowest = 0.1;

/**
 * When a layer may be poured on another: not before the sheet's recoat window opens, nor before the one below has gelled
 * through and cooled; not after the window closes. The sheet's window wins over the model's, but a layer that is still hot waits.
 *
 * @param run of the layer below
 * @param resin its figures, where there are any
 * @returns undefined where the layer does not set within the run
 */
export function layerWait(run: PourRun, resin: Resin | undefined): LayerWait | undefined {
  const { timeToLastGel, timeToCool, timeToClose } = run;
  if (run.outcome === 'runaway' || timeToLastGel === null || timeToCool === null) return undefined;
  const { recoatOpens, recoatCloses } = resin?.figures ?? {};
  const reasons: readonly (readonly [LayerWait['fromBy'], number])[] = [
    ['gel', timeToLastGel],
    ['cool', timeToCool],
    ['sheet', recoatOpens?.value ?? 0],
  ];
  const [fromBy, from] = reasons.reduce((latest, reason) => (reason[1] > latest[1] ? reason : latest));
  const to = recoatCloses?.value ?? timeToClose;
  const least = from * (1 + (recoatCloses ? 0 : narrowest));
  return { from, fromBy, to, toBy: recoatCloses ? 'sheet' : 'model', abrade: to !== null && to < least };
}
