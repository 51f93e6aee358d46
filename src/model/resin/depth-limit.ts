import { amount } from '../quantity/index.ts';
import { levelByHeat } from './anchor.ts';
import { assumed } from './assumed.ts';
import { kineticsOf } from './fit.ts';
import { greatestPourOf } from './greatest-pour.ts';
import { resinFigure } from './kinds.ts';
import { runPour } from './pour.ts';
import { depthByRule, greatestDepth } from './pour-plan.ts';
import { silentOn } from './told.ts';
import type { Resin } from './types.ts';
import { usualPour } from './usual-pour.ts';

/** A layer up to this is a coat, mm, 3 mm or 1/8 in: common practice for coating resins, thin enough to lose its heat as it comes. */
export const coatDepth = 3.2;

/**
 * The most that counts as a given depth of one pour, mm. The few millimetres of a generic coating resin are no figure of anybody's sheet:
 * where such a kind says 3 mm, 1/8 in is such a coat as well. A sheet's own depth is its own, and a warm shop leaves nothing over.
 */
export const countsAs = (depth: number, ofSheet: boolean, hotter: boolean): number =>
  ofSheet || hotter || depth > coatDepth ? depth : coatDepth;

/** What keeps a coat from being poured of a resin of which nobody states a greatest depth. */
export type CoatBar =
  /** Its sheet states no pot life either: nobody knows how fast it cures. */
  | { kind: 'no-pot-life' }
  /** By its pot life it grows too hot, or runs away, in a shop of that temperature, °C, taken from the pot life where none was given. */
  | { kind: 'hot' | 'runaway'; celsius: number; assumed: boolean };

/**
 * Whether a coat may not be poured of a resin whose depth nobody states: as the heat of a pour judges it, over wood in still air. Undefined
 * where it is found cool, which makes a coat a coat, and nothing deeper.
 *
 * @param depth of the coat, mm
 * @param shop °C; undefined for a shop at the temperature that the pot life is stated for
 */
export function coatBarOf(resin: Resin, depth: number, shop?: number): CoatBar | undefined {
  if (silentOn(resin, 'potLife')) return { kind: 'no-pot-life' };
  const celsius = shop ?? resin.figures.potLifeTemperature?.value ?? assumed.potLifeTemperature;
  const { kinetics, thermal } = kineticsOf(resin);
  const kind = levelByHeat(runPour(usualPour(kinetics, thermal, depth, celsius), { peakOnly: true }));
  return kind && { kind, celsius, assumed: shop === undefined };
}

/** That the shop is warmer than the depth of a sheet without a pot life is stated for, as sentences. */
export function lessUnknownInWords(
  { name }: Resin,
  shop: number,
  { stated, statedAt, statedAtAssumed }: Extract<DepthLimit, { kind: 'less-unknown' }>,
): string {
  const at = `${amount(statedAt, 'Cel')}${statedAtAssumed ? ' (assumed: the sheet names no temperature)' : ''}`;
  return `The sheet of ${name} allows ${amount(stated, 'mm', 2)} in one pour at ${at}. At ${amount(shop, 'Cel')} it is less, and since it names no pot life nobody can say how much less. Enter the pot life, or ask the maker.`;
}

/** A coat that is too hot, as a sentence. */
export function tooHotInWords(
  { name }: Resin,
  depth: number,
  { kind, celsius, assumed }: Extract<CoatBar, { celsius: number }>,
): string {
  const at = `${amount(celsius, 'Cel')}${assumed ? ' (assumed, from its pot life: no shop was given)' : ''}`;
  const does = kind === 'hot' ? 'it grows too hot' : 'it runs away, far too hot,';
  return `Do not pour ${amount(depth, 'mm', 2)} of ${name} in one go: by its pot life ${does} at ${at}. Your sheet names no greatest depth: ask the maker.`;
}

/** How deep a resin may be poured in one go in a shop, over wood in still air. */
export type DepthLimit =
  /** Nobody says how deep it may be poured. */
  | { kind: 'silent' }
  /** Its depth and its pot life cannot both be right, or its pot life is that of no resin for pouring. */
  | { kind: 'contradicted' }
  /** The shop is warmer than the depth is stated for, so that less is allowed, and without a pot life nobody knows how much less. */
  | { kind: 'less-unknown'; stated: number; statedAt: number; statedAtAssumed: boolean }
  /** At the temperature of the shop no depth warms as little as the stated one does at its own. */
  | { kind: 'too-warm'; statedAt: number }
  | {
      kind: 'known';
      /** What one pour may have in this shop, mm: never more than stated, however cold the shop. */
      depth: number;
      /** True where it is the depth of a reader's own sheet. */
      ofSheet: boolean;
      /** Depth as stated, mm, and the temperature that it is stated for, °C. */
      stated: number;
      statedAt: number;
      /** True where nobody says that temperature, so that it is assumed. */
      statedAtAssumed: boolean;
      /** True where the shop is warmer than that, so that less is allowed. */
      hotter: boolean;
    };

/**
 * The greatest depth of one pour in a shop.
 *
 * In a shop no warmer than the sheet's own temperature it is the stated depth, never more. In a warmer one it is the depth that warms
 * as much as the stated one does at its own temperature: `greatestDepth`, as the heat of a pour gives it; of a sheet without a pot life
 * nobody knows that.
 *
 * @param shop °C; undefined for a shop at the temperature that the depth is stated for
 */
export function depthLimitOf(resin: Resin, shop?: number): DepthLimit {
  const pour = greatestPourOf(resin);
  if (pour.kind === 'silent') return { kind: 'silent' };
  const fitted = kineticsOf(resin);
  if (pour.kind === 'at-war' || fitted.cautions.some(({ id }) => id === 'pot-life-unlikely')) {
    return { kind: 'contradicted' };
  }
  const stated = {
    kind: 'known' as const,
    depth: pour.depth,
    ofSheet: pour.ofSheet,
    stated: pour.depth,
    statedAt: pour.temperature,
    statedAtAssumed: pour.temperatureAssumed,
    hotter: false,
  };
  if (shop === undefined || shop <= pour.temperature) return stated;
  if (silentOn(resin, 'potLife')) {
    const { temperature: statedAt, temperatureAssumed: statedAtAssumed } = pour;
    return { kind: 'less-unknown', stated: pour.depth, statedAt, statedAtAssumed };
  }
  const here = pour.kind === 'stated' ? depthByModel(pour.anchor, resin, shop) : undefined;
  const depth = here ?? depthByRule(pour.depth, pour.temperature, shop);
  return depth === undefined || depth === 'none'
    ? { kind: 'too-warm', statedAt: pour.temperature }
    : { ...stated, depth: Math.min(pour.depth, depth), hotter: true };
}

type StatedPour = Extract<ReturnType<typeof greatestPourOf>, { kind: 'stated' }>;

const known = new Map<string, number | 'none'>();
const mostKnown = 200;

/** The depth that warms as much as the stated one, kept, since the same is asked for with every keystroke. */
function depthByModel(anchor: StatedPour['anchor'], resin: Resin, shop: number): number | 'none' {
  const { thermal } = kineticsOf(resin);
  const key = JSON.stringify([anchor.kinetics, anchor.coarseRise, anchor.depth, shop]);
  const kept = known.get(key);
  if (kept !== undefined) return kept;
  const found = greatestDepth(usualPour(anchor.kinetics, thermal, anchor.depth, shop), anchor);
  const depth = found.kind === 'none' ? 'none' : found.depth;
  if (known.size >= mostKnown) known.delete(known.keys().next().value as string);
  known.set(key, depth);
  return depth;
}

/** A resin with a greatest depth of the reader's own, for a temperature in °C, over what its sheet or kind says; the lesser wins over a sheet. */
export function withOwnDepth(resin: Resin, depth: number, celsius: number): Resin {
  const { greatestDepth: own } = resin.figures;
  if (own?.basis === 'supplier-sheet' && own.value <= depth) return resin;
  return {
    ...resin,
    figures: {
      ...resin.figures,
      greatestDepth: resinFigure('greatestDepth', depth, 'supplier-sheet'),
      greatestDepthTemperature: resinFigure('greatestDepthTemperature', celsius, 'supplier-sheet'),
    },
  };
}
