import { equation } from '../evidence/index.ts';
import type { Kinetics, ThermalProperties } from './kinetics.ts';
import { longestRun, type Pour, type PourOptions, type PourRun, runPour } from './pour.ts';
import { usualPour } from './usual-pour.ts';

/** The pour that a data sheet allows at most, as the model sees it: the yardstick of the heat index. */
export interface Anchor {
  /** Greatest depth that the sheet allows, mm, and the temperature that it is meant for, °C. */
  depth: number;
  temperature: number;
  /** Rise of that pour, K. */
  rise: number;
  /** The same on the coarse grid of `riseUpTo`, so that depths sought on it are measured by its own yardstick. */
  coarseRise: number;
  /** Kinetics of the run: those given, or slowed ones where the given would be too hot at the sheet's own depth. */
  kinetics: Kinetics;
  /** How many times slower they were taken to be; 1 where they stand as given. */
  slowedBy: number;
}

/**
 * A pour that a maker allows is taken to rise by no more than this, K. Beyond, the model cannot tell a hot pour from one that
 * runs away, and as a yardstick it would be worth nothing.
 */
export const hottestAnchor = 40;

/**
 * A cure slowed by more than this factor is none that the sheet's pot life can mean: pot life and depth are then at war, and
 * nothing is measured by either. Twice as much as resins of one pot life differ: their rises, 0.35 to 3 times (120 invented ones), are
 * those of rates of 0.67 to 1.5.
 */
export const mostSlowed = 3;

/** Below this rise a sheet's depth is hardly a limit of heat in the model, K: the maker may have another reason. */
export const coolestAnchor = 10;

/** Ten and eight cells: half a percent of the rise of a pool, in a third of a millisecond. */
const coarse = { cells: [10, 8], conversionStep: 0.02, peakOnly: true } as const satisfies PourOptions;
/** The same for a channel: 1 to 4 % too hot, in some milliseconds. */
const coarseChannel = { ...coarse, cells: [8, 6] } as const satisfies PourOptions;

/** For a first guess at a depth: 5 to 10 % too hot, in a fifth of the time. */
const crudeChannel = { ...coarse, cells: [4, 3], conversionStep: 0.05 } as const satisfies PourOptions;

/**
 * Rise of a pour above the air, on a coarse grid, followed no further than to `most`.
 *
 * @param most K
 * @param until time to which it is followed at most, s
 * @param crude true for a first guess in a channel
 * @returns K, `most` where it rises by that or more
 */
export function riseUpTo(pour: Pour, most: number, until = longestRun, crude = false): number {
  if (pour.resinTemperature - pour.shopTemperature >= most) return most;
  const fineness = pour.channel ? (crude ? crudeChannel : coarseChannel) : coarse;
  const options = { ...fineness, stop: Number.POSITIVE_INFINITY, mostRise: most, until };
  return Math.max(1e-6, runPour(pour, options).peakRise);
}

/** Speeds of cure, as a share of the given one, between which a slowed one is sought. */
const slowest = 0.002;

/**
 * The sheet's own greatest pour, run.
 *
 * Where the pot life makes that pour rise by more than `hottestAnchor`, sheet and pot life do not go together in the model. The
 * sheet wins: somebody poured that depth. The cure is slowed until the pour rises by just that.
 *
 * @param kinetics fitted to the pot life
 * @param resin thermal properties of the mix
 * @param depth greatest depth that the sheet allows, mm
 * @param temperature that the depth is stated for, °C
 * @param maySlow false where the kinetics are the reader's own and must stand
 * @returns the anchor, or undefined where the pour runs away and must not be slowed, or never warms
 */
export function anchorOf(
  kinetics: Kinetics,
  resin: ThermalProperties,
  depth: number,
  temperature: number,
  maySlow: boolean,
): Anchor | undefined {
  const at = (share: number) =>
    usualPour({ ...kinetics, k2At25C: share * kinetics.k2At25C }, resin, depth, temperature);
  const tooHot = (share: number) => riseUpTo(at(share), hottestAnchor) >= hottestAnchor;
  if (maySlow && tooHot(1)) {
    if (tooHot(slowest)) return undefined;
    let [low, high] = [Math.log(slowest), 0];
    while (high - low > 0.004) {
      const middle = (low + high) / 2;
      if (tooHot(Math.exp(middle))) high = middle;
      else low = middle;
    }
    return measured(at(Math.exp(low)), Math.exp(-low));
  }
  return measured(at(1), 1);
}

/** A yardstick shorter than this is none, K. */
const leastRise = 0.05;

function measured(pour: Pour, slowedBy: number): Anchor | undefined {
  const { outcome, peakRise } = runPour(pour, { peakOnly: true });
  if (outcome === 'runaway' || peakRise < leastRise) return undefined;
  return {
    depth: pour.depth,
    temperature: pour.shopTemperature,
    rise: peakRise,
    coarseRise: riseUpTo(pour, Number.POSITIVE_INFINITY),
    kinetics: pour.kinetics,
    slowedBy,
  };
}

const known = new Map<string, Anchor | undefined>();
const mostKnown = 200;

/** `anchorOf`, kept, since the same sheet is asked for again with every keystroke. */
export function knownAnchor(...from: Parameters<typeof anchorOf>): Anchor | undefined {
  const key = JSON.stringify(from);
  if (known.has(key)) return known.get(key);
  const anchor = anchorOf(...from);
  if (known.size >= mostKnown) known.delete(known.keys().next().value as string);
  known.set(key, anchor);
  return anchor;
}

export const heatIndex = equation(
  {
    id: 'heat-index',
    title: 'Heat index of a pour',
    tex: 'I = \\frac{\\Delta T}{\\Delta T^{*}}',
    symbols: [
      { tex: 'I', meaning: 'heat index', unit: '1' },
      { tex: '\\Delta T', meaning: 'rise of this pour above the air, by the model', unit: 'K' },
      {
        tex: '\\Delta T^{*}',
        meaning: 'rise, by the same model, of a pour as deep as the data sheet allows at the temperature that it names',
        unit: 'K',
      },
    ],
    validity:
      'Up to 1 the pour warms no more than one that the sheet allows; above 1 it lies outside the sheet; above 1.6 expect a runaway. What the model does not know of a resin mostly cancels in the ratio.',
    basis: 'derived',
    citation: { source: 'kerf-and-cure', locator: 'the heat of a pour, against itself' },
  },
  /**
   * @param rise of this pour, K; resin poured cold may never grow warmer than the air, which counts as 0
   * @param sheetRise of the sheet's own greatest pour, K
   */
  (rise: number, sheetRise: number): number => Math.max(0, rise) / sheetRise,
);

/** Below this a pour as good as does not warm, and the band of its index is not worth working out. */
const leastIndex = 0.01;

/**
 * Band of a heat index, 5 to 95 % of 120 invented resins of each class that all have the same pot life, each against its own greatest
 * depth at 25 °C (`tests/second-roads/invented-resins.ts`): at 0.8 and 1.25 of that depth they rise by 12 to 16 and 43 to 82 K, where
 * 25 K is the yardstick, which asks for 0.5 of the logarithm of the index; away from 25 °C their rises go apart by up to 4 % for each
 * kelvin, taken as 4.5.
 *
 * @param index the heat index
 * @param away from the temperature of the sheet's depth, K
 */
export function indexBand(index: number, away: number): [low: number, high: number] {
  if (index < leastIndex) return [0, leastIndex];
  const half = Math.hypot(0.5 * Math.log(index), 0.045 * away);
  return [index * Math.exp(-half), index * Math.exp(half)];
}

export const indexBandWords =
  '5 to 95 % of 120 invented resins that all fit the same sheet: the spread of what is assumed, not of measurements.';

/** Where a pour lies: against the sheet by its heat and by its depth, and whether it is hot whatever the sheet says. */
export type IndexLevel = 'inside' | 'edge' | 'outside' | 'deeper' | 'hot' | 'runaway';

/**
 * Level of a pour, the gravest that holds.
 *
 * @param index heat index
 * @param run of the pour, whose own outcome and rise count whatever the index
 * @param tooDeep whether it is deeper, or more, than the sheet allows in one pour: that comes first, however cool the model finds it
 */
export function indexLevel(index: number, run: Pick<PourRun, 'outcome' | 'peakRise'>, tooDeep = false): IndexLevel {
  if (run.outcome === 'runaway') return 'runaway';
  // A sheet whose depth hardly warms has its limit for another reason; a little more warmth there is no runaway.
  if (index > 1.6 && run.peakRise >= coolestAnchor) return 'runaway';
  if (run.peakRise > hottestAnchor) return 'hot';
  if (tooDeep) return 'deeper';
  if (index > 1) return 'outside';
  return index > 0.8 ? 'edge' : 'inside';
}

/**
 * Level of a pour where nobody states a greatest depth that it could be measured by: by its own heat alone.
 *
 * @returns undefined where it neither runs away nor warms by more than `hottestAnchor`, which is no leave to pour it
 */
export function levelByHeat(run: Pick<PourRun, 'outcome' | 'peakRise'>): 'hot' | 'runaway' | undefined {
  if (run.outcome === 'runaway') return 'runaway';
  return run.peakRise > hottestAnchor ? 'hot' : undefined;
}

export const levelWords: Readonly<Record<IndexLevel, string>> = {
  inside: 'Inside the sheet: it warms less than the deepest pour that the sheet allows.',
  edge: 'At the edge of the sheet: a little deeper or warmer and it lies outside.',
  outside: 'Outside the sheet: it warms more than the deepest pour that the sheet allows. Pour thinner, or cooler.',
  deeper: 'More than the sheet allows in one pour. The sheet comes first, however little the model warms.',
  hot: 'Too hot: it warms by more than a pour that a maker allows.',
  runaway: 'Expect a runaway. Do not pour this in one go.',
};
