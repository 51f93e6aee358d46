import { answer, type Basis, derivedBasis, type Outcome, refuse } from '../../model/evidence/index.ts';
import { bothRatios, resinFigure } from '../../model/resin/kinds.ts';
import { mixedDensity, ratioLimits, writeMixRatio } from '../../model/resin/ratio.ts';
import { ratioConflict } from '../../model/resin/resin.ts';
import type { Resin } from '../../model/resin/types.ts';
import { type Hindrance, hindrance } from './hindrance.ts';
import type { Inputs } from './inputs.ts';

/** The mix that the inputs name: its ratio both ways, its densities in g/mL, and how firmly they are known. */
export interface Mix {
  weightRatio: number;
  volumeRatio: number;
  densityA: number;
  densityB: number;
  density: number;
  /** Whose ratio it is. */
  ratioOf: 'reader' | 'sheet' | 'kind';
  /** Percent by which the reader's own ratio differs from the sheet's, where it differs by more than rounding. */
  ownRatioOff?: number;
  /** True where the ratio that is measured by follows from the other by densities that are not all the reader's or the sheet's. */
  byAssumedDensities: boolean;
  /** How the ratio is known, the densities, and both together. */
  ratioBasis: Basis;
  densityBasis: Basis;
  basis: Basis;
  by: 'weight' | 'volume';
}

/** The mix, or what keeps it from being known. */
export type MixFound = { mix: Mix } | { hindrance: Hindrance };

/**
 * The mix of a resin, or of a ratio and densities given beside it.
 *
 * The ratio that is stated for the way the parts are measured counts; where a sheet states only the other, that one
 * follows from the densities. So masses and volumes of the answer always agree with each other. A sheet that names no ratio, and one
 * whose two ratios cannot both be right, give no mix; nor does a ratio that was typed without its basis.
 */
export function mixOf({ resin, mixRatio, mixRatioBy, measureBy, ...own }: Inputs): Outcome<MixFound> {
  const by = measureBy ?? 'weight';
  if (!resin && mixRatio === undefined) {
    return refuse('resin', 'No resin was named and no mix ratio given', 'Pick a resin, or give a ratio such as 2:1.');
  }
  const densityA = own.densityA ?? resin?.figures.densityA?.value;
  const densityB = own.densityB ?? resin?.figures.densityB?.value;
  if (densityA === undefined || densityB === undefined) {
    const [field, part] = densityA === undefined ? (['densityA', 'A'] as const) : (['densityB', 'B'] as const);
    return refuse(
      field,
      `The density of part ${part} is not known, so weights and volumes cannot be turned into each other`,
      'Take it from the maker’s sheet, or pick a resin that stands in for it.',
    );
  }
  const stated = statedRatio(resin, mixRatio, mixRatioBy, by);
  if (!stated) {
    return answer({
      hindrance: hindrance(
        'no-ratio',
        'unknown',
        'Your sheet names no mix ratio. Read it off the bottle or the maker’s sheet, and enter it with “volume” or “weight”.',
      ),
    });
  }
  const ratios = bothRatios(stated.ratio, densityA, densityB);
  const against =
    mixRatio === undefined
      ? ofTheSheet(resin)
      : (ofTheTyped(mixRatio, mixRatioBy, resin, densityA, densityB) ?? ofTheReader(resin, ratios));
  if (against.hindrance) return answer({ hindrance: against.hindrance });
  const [basisA, basisB] = [
    own.densityA === undefined ? (resin?.figures.densityA?.basis ?? 'memory') : 'supplier-sheet',
    own.densityB === undefined ? (resin?.figures.densityB?.basis ?? 'memory') : 'supplier-sheet',
  ] as const;
  const densityBasis = derivedBasis([basisA, basisB]);
  const converted = 'volume' in stated.ratio !== (by === 'volume');
  return answer({
    mix: {
      weightRatio: ratios.weight,
      volumeRatio: ratios.volume,
      densityA,
      densityB,
      density: mixedDensity(ratios.weight, densityA, densityB),
      ratioOf: mixRatio !== undefined ? 'reader' : resin?.fromSheet ? 'sheet' : 'kind',
      ...(against.off === undefined ? {} : { ownRatioOff: against.off }),
      byAssumedDensities: converted && [basisA, basisB].some((basis) => basis !== 'supplier-sheet'),
      ratioBasis: stated.basis,
      densityBasis,
      basis: derivedBasis([stated.basis, densityBasis]),
      by,
    },
  });
}

/** A resin with densities of the reader's own where its sheet names none. */
export function withDensities(
  resin: Resin | undefined,
  { densityA, densityB }: Pick<Inputs, 'densityA' | 'densityB'>,
): Resin | undefined {
  if (!resin?.fromSheet) return resin;
  const laid = (name: 'densityA' | 'densityB', own: number | undefined): Partial<Resin['figures']> =>
    own === undefined || resin.figures[name]?.basis === 'supplier-sheet'
      ? {}
      : { [name]: resinFigure(name, own, 'supplier-sheet') };
  return { ...resin, figures: { ...resin.figures, ...laid('densityA', densityA), ...laid('densityB', densityB) } };
}

function statedRatio(
  resin: Inputs['resin'],
  mixRatio: number | undefined,
  mixRatioBy: Inputs['mixRatioBy'],
  by: 'weight' | 'volume',
): { ratio: { volume: number } | { weight: number }; basis: Basis } | undefined {
  if (mixRatio !== undefined) {
    // Where nobody said which, only a ratio that both readings agree on goes on to a dose.
    return {
      ratio: (mixRatioBy ?? by) === 'volume' ? { volume: mixRatio } : { weight: mixRatio },
      basis: 'supplier-sheet',
    };
  }
  const { volumeRatio, weightRatio } = resin?.figures ?? {};
  const byVolume = volumeRatio && { ratio: { volume: volumeRatio.value }, basis: volumeRatio.basis };
  const byWeight = weightRatio && { ratio: { weight: weightRatio.value }, basis: weightRatio.basis };
  // What a sheet states itself comes before what follows from it.
  const isOwn = (figure: typeof volumeRatio) => !resin?.fromSheet || figure?.basis === 'supplier-sheet';
  const [first, second] =
    by === 'volume' ? ([volumeRatio, weightRatio] as const) : ([weightRatio, volumeRatio] as const);
  const [wanted, other] = by === 'volume' ? ([byVolume, byWeight] as const) : ([byWeight, byVolume] as const);
  if (wanted && isOwn(first)) return wanted;
  return (other && isOwn(second) ? other : wanted) ?? undefined;
}

/** What two ratios would put into 100 g of mix, as words. */
const hardenerIn100 = (weightRatio: number) => `${((100 * weightRatio) / (1 + weightRatio)).toFixed(1)} g`;

interface Against {
  hindrance?: Hindrance;
  off?: number;
}

/** More hardener than resin by volume and by weight: hardly any resin for pouring is mixed so. */
export const mostHardener = 1.02;

/**
 * A ratio that was typed, by itself: more hardener than resin where no sheet says so, and one of which nobody said whether it is by
 * weight or by volume, unless both come to one mix.
 */
function ofTheTyped(
  ratio: number,
  by: Inputs['mixRatioBy'],
  resin: Resin | undefined,
  densityA: number,
  densityB: number,
): Against | undefined {
  const readings = (by ? [by] : (['weight', 'volume'] as const)).map((each) =>
    bothRatios(each === 'volume' ? { volume: ratio } : { weight: ratio }, densityA, densityB),
  );
  const sheetSaysIt = resin?.fromSheet && (resin.figures.weightRatio ?? resin.figures.volumeRatio) !== undefined;
  if (!sheetSaysIt && readings.every(({ weight, volume }) => Math.min(weight, volume) > mostHardener)) {
    const kind = resin && !resin.fromSheet ? ', which no resin of this kind is' : '';
    return {
      hindrance: hindrance(
        'more-hardener-than-resin',
        'stop',
        `${writeMixRatio(ratio)} is more hardener than resin${kind}. A is the resin here: some bottles are lettered the other way round. Look at both labels; if the maker does say so, enter it as a data sheet of your own.`,
      ),
    };
  }
  const [one, other] = readings;
  if (!one || !other || 100 * Math.abs(one.weight / other.weight - 1) <= ratioLimits.rounding) return undefined;
  return {
    hindrance: hindrance(
      'ratio-by-what',
      'unknown',
      `Is ${writeMixRatio(ratio)} by weight or by volume? Choose it beside the ratio: it stands on the bottle or the sheet. Of 100 g of mix the one makes ${hardenerIn100(one.weight)} hardener, the other ${hardenerIn100(other.weight)}.`,
    ),
  };
}

/** The two ratios of a sheet against each other. */
function ofTheSheet(resin: Resin | undefined): Against {
  const conflict = resin && ratioConflict(resin);
  if (!conflict || conflict.apart <= ratioLimits.stop) return {};
  return {
    hindrance: hindrance(
      'ratios-disagree',
      'stop',
      `The two ratios of this sheet differ by ${conflict.apart.toFixed(0)} %: of 100 g of mix the one by volume makes ${hardenerIn100(conflict.volumeAsWeight)} hardener, the one by weight ${hardenerIn100(conflict.weight)}. ${
        conflict.ownDensities
          ? 'Ask the maker before you mix.'
          : 'Enter the sheet’s densities; if they still differ ask the maker.'
      }`,
    ),
  };
}

/** The reader's own ratio against those that the sheet states: it may settle which of two is right, and not be a third. */
function ofTheReader(resin: Resin | undefined, own: { weight: number; volume: number }): Against {
  if (!resin?.fromSheet) return {};
  const { weightRatio, volumeRatio } = resin.figures;
  const offs = [weightRatio && own.weight / weightRatio.value, volumeRatio && own.volume / volumeRatio.value]
    .flatMap((share) => (typeof share === 'number' ? [100 * Math.abs(share - 1)] : []))
    .sort((a, b) => a - b);
  const [least] = offs;
  if (least === undefined || least <= ratioLimits.rounding) return {};
  if (least <= ratioLimits.stop) return { off: least };
  return {
    hindrance: hindrance(
      'own-ratio-differs',
      'stop',
      `Your own mix ratio differs from that of ${resin.name} by ${least.toFixed(0)} %. Look at the bottle, and correct the one or the other.`,
    ),
  };
}
