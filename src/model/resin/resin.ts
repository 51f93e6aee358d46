import { type Caution, derivedBasis, type Figure } from '../evidence/index.ts';
import { amount, formatQuantity } from '../quantity/index.ts';
import { assumed, assumedTemperatureOfTimes } from './assumed.ts';
import { beforeGelCautions } from './before-gel.ts';
import { depthAgainstPotLife } from './greatest-pour.ts';
import { bothRatios, resinFigure, resinFigureWords, resinKinds, resinOf } from './kinds.ts';
import { ratioLimits, weightRatioOfVolume } from './ratio.ts';
import type { PotLifeMeaning, Resin, ResinFigureName } from './types.ts';

/** What a maker's data sheet says of a resin, in the units of `resinFigureNames`; what it leaves out is absent. */
export interface ResinSheet {
  name: string;
  /** Id of the generic kind that it is laid over; absent, the nearest. */
  kind?: string;
  potLifeMeans?: PotLifeMeaning;
  figures: Readonly<Partial<Record<ResinFigureName, number>>>;
}

/** Figures that hang on how fast a resin cures: those of a kind do not hold beside a pot life of the sheet's own. */
const paced: readonly ResinFigureName[] = [
  'potLife',
  'potLifeMass',
  'potLifeTemperature',
  'secondPotLife',
  'secondPotLifeTemperature',
  'greatestDepth',
  'greatestDepthTemperature',
  'recoatOpens',
  'recoatCloses',
  'sandable',
];

/** Figures that are stated together: where a sheet gives one, the others are the sheet's or not known. */
const together: readonly (readonly ResinFigureName[])[] = [
  ['greatestDepth', 'greatestDepthTemperature'],
  ['recoatOpens', 'recoatCloses'],
  ['potLife', 'potLifeMass', 'potLifeTemperature'],
  ['secondPotLife', 'secondPotLifeTemperature'],
];

/** Times after mixing that a sheet states for the one temperature `cureTemperature`. */
const waits: readonly ResinFigureName[] = ['recoatOpens', 'recoatCloses', 'sandable', 'cure', 'foodService'];

/** The generic kind nearest to a sheet: by pot life and ratio, as factors; without either, the medium one. */
function nearestKind({ figures }: ResinSheet): Resin {
  const distance = (kind: Resin) => {
    const factor = (name: ResinFigureName) => {
      const own = figures[name];
      const its = kind.figures[name]?.value;
      return own !== undefined && its ? Math.abs(Math.log(own / its)) : 0;
    };
    // The pot life says more of a resin than its ratio does.
    return 2 * factor('potLife') + factor(figures.volumeRatio === undefined ? 'weightRatio' : 'volumeRatio');
  };
  const nothing =
    figures.potLife === undefined && figures.volumeRatio === undefined && figures.weightRatio === undefined;
  const medium = resinOf('medium-2-1') as Resin;
  if (nothing) return medium;
  return resinKinds.reduce((best, kind) => (distance(kind) < distance(best) ? kind : best), medium);
}

/**
 * A maker's data sheet laid over the generic kind nearest to it.
 *
 * The sheet's own figures have the basis `supplier-sheet`. Where the sheet gives a pot life, the kind's depth, recoat window
 * and time to sand are dropped rather than shown beside it, since they hang on the speed of the cure. What a sheet leaves out
 * beside a figure (the mass and temperature of a pot life, the temperature of a depth and of the waits) is assumed by
 * `assumed.ts`, with basis `memory` and a note that says so. A ratio that the sheet gives in one way only follows in the
 * other from the densities.
 */
export function layResinSheet(sheet: ResinSheet): Resin {
  const under = (sheet.kind === undefined ? undefined : resinOf(sheet.kind)) ?? nearestKind(sheet);
  const own = sheet.figures;
  const figures: Record<ResinFigureName, Figure | null> = { ...under.figures };
  const gives = (name: ResinFigureName) => own[name] !== undefined;
  if (gives('potLife')) for (const name of paced) figures[name] = null;
  for (const group of together) if (group.some(gives)) for (const name of group) figures[name] = null;
  for (const [name, value] of Object.entries(own) as [ResinFigureName, number | undefined][]) {
    if (value !== undefined) figures[name] = resinFigure(name, value, 'supplier-sheet');
  }
  const assume = (name: ResinFigureName, value: number, what = amount(value, resinFigureWords[name].unit)) => {
    figures[name] ??= resinFigure(name, value, 'memory', `The sheet does not say; ${what} is assumed.`);
  };
  if (gives('potLife')) {
    assume('potLifeMass', assumed.potLifeMass);
    assume('potLifeTemperature', assumed.potLifeTemperature);
  }
  if (gives('greatestDepth')) assume('greatestDepthTemperature', assumed.depthTemperature);
  if (waits.some(gives) && !gives('cureTemperature')) {
    figures.cureTemperature = null;
    const { celsius, words } = assumedTemperatureOfTimes(own.potLifeTemperature);
    assume('cureTemperature', celsius, words);
  }
  layRatios(figures, own);
  return {
    kind: under.kind,
    name: sheet.name,
    fromSheet: true,
    figures,
    potLifeMeans: sheet.potLifeMeans ?? under.potLifeMeans,
    kinetics: under.kinetics,
  };
}

/** The ratio that the sheet does not state follows from the one that it does; where it states none there is none, whatever the kind's. */
function layRatios(figures: Record<ResinFigureName, Figure | null>, own: ResinSheet['figures']): void {
  if (own.volumeRatio === undefined && own.weightRatio === undefined) {
    figures.volumeRatio = null;
    figures.weightRatio = null;
    return;
  }
  const { densityA, densityB } = figures;
  if (!densityA || !densityB) return;
  const stated = own.volumeRatio === undefined && own.weightRatio !== undefined ? 'weightRatio' : 'volumeRatio';
  const from = figures[stated];
  if (!from) return;
  const both = bothRatios(
    stated === 'volumeRatio' ? { volume: from.value } : { weight: from.value },
    densityA.value,
    densityB.value,
  );
  const basis = derivedBasis([from.basis, densityA.basis, densityB.basis]);
  const note = (other: string) => `From the ratio by ${other} and the densities.`;
  if (stated === 'weightRatio') figures.volumeRatio = resinFigure('volumeRatio', both.volume, basis, note('weight'));
  else if (own.weightRatio === undefined)
    figures.weightRatio = resinFigure('weightRatio', both.weight, basis, note('volume'));
}

const ratioWords = (ratio: number) => `100 : ${(100 * ratio).toFixed(1)}`;

/** Two ratios of one sheet that do not agree. Ratios are parts of B to one of A. */
export interface RatioConflict {
  /** The sheet's ratio by volume, what it makes by weight with the densities, and the sheet's own by weight. */
  volume: number;
  volumeAsWeight: number;
  weight: number;
  /** How far the last two are apart, in percent. */
  apart: number;
  /** True where both densities are the sheet's own. */
  ownDensities: boolean;
}

/** The ratios by volume and by weight of a sheet, where they differ by more than rounding; undefined where they agree or one follows from the other. */
export function ratioConflict({ figures }: Resin): RatioConflict | undefined {
  const { volumeRatio, weightRatio, densityA, densityB } = figures;
  if (!volumeRatio || !weightRatio || !densityA || !densityB) return undefined;
  if (volumeRatio.basis !== 'supplier-sheet' || weightRatio.basis !== 'supplier-sheet') return undefined;
  const volumeAsWeight = weightRatioOfVolume(volumeRatio.value, densityA.value, densityB.value);
  const apart = 100 * Math.abs(volumeAsWeight / weightRatio.value - 1);
  if (!(apart > ratioLimits.rounding)) return undefined;
  return {
    volume: volumeRatio.value,
    volumeAsWeight,
    weight: weightRatio.value,
    apart,
    ownDensities: [densityA, densityB].every(({ basis }) => basis === 'supplier-sheet'),
  };
}

function ratioWarning(resin: Resin): Caution[] {
  const conflict = ratioConflict(resin);
  if (!conflict) return [];
  const { densityA, densityB } = resin.figures;
  return [
    {
      id: 'ratios-disagree',
      level: conflict.apart > ratioLimits.stop ? 'danger' : 'warning',
      own: true,
      text: `The two ratios of ${resin.name} differ by ${conflict.apart.toFixed(1)} %: ${
        conflict.ownDensities
          ? 'ask the maker which is right before you mix.'
          : 'enter the densities of the sheet, and if they still differ ask the maker before you mix.'
      }`,
      why: `By volume it is ${ratioWords(conflict.volume)}, which with densities of ${densityA?.value} and ${densityB?.value} g/ml${
        conflict.ownDensities ? '' : ', not all of them the sheet’s,'
      } is ${ratioWords(conflict.volumeAsWeight)} by weight; the sheet says ${ratioWords(conflict.weight)}.`,
      basis: 'derived',
    },
  ];
}

/**
 * Why the day for food is later than the sheet says, a clause that goes on after ‘for food’: the sheet’s own day comes before its own full
 * cure. Undefined where it does not, where the sheet gives only one of the two, and for a generic kind.
 */
export function foodBeforeCure({ fromSheet, figures: { cure, foodService } }: Resin): string | undefined {
  if (!fromSheet || cure?.basis !== 'supplier-sheet' || foodService?.basis !== 'supplier-sheet') return undefined;
  if (foodService.value >= cure.value) return undefined;
  return `its sheet’s day for food, ${amount(foodService.value, 's', 2)}, comes before its own full cure, ${amount(cure.value, 's', 2)}: the later one is kept`;
}

/** Pot lives of one mass at one temperature may be read so much apart. */
const potLivesApart = 0.1;
/** Temperatures nearer than this are one, °C. */
const sameTemperature = 1;

/** Two times of a sheet that look swapped: what it does to every answer, and what to say of it. */
export interface SwappedTimes {
  /** A clause that goes on after the resin's name. */
  war: string;
  caution: Caution;
}

/** Times of a sheet of which the later should be the sooner: nobody can work by them until one is mended. */
export function swappedTimes({ name, figures }: Resin): SwappedTimes[] {
  const { recoatOpens, recoatCloses, potLife, potLifeTemperature, secondPotLife, secondPotLifeTemperature } = figures;
  const found: SwappedTimes[] = [];
  const time = (figure: Figure) => amount(figure.value, 's');
  const swapped = (id: string, war: string, text: string) =>
    found.push({ war, caution: { id, level: 'danger', own: true, text, basis: 'derived' } });
  if (recoatOpens && recoatCloses && recoatCloses.value <= recoatOpens.value) {
    swapped(
      'recoat-closes-first',
      'its recoat window closes before it opens, so one of its times is wrong',
      `Look at the sheet of ${name} again: its recoat window closes at ${time(recoatCloses)}, before it opens at ${time(recoatOpens)}. Are the two swapped?`,
    );
  }
  if (potLife && potLifeTemperature && secondPotLife && secondPotLifeTemperature) {
    const warmer = secondPotLifeTemperature.value - potLifeTemperature.value;
    const longer = secondPotLife.value - potLife.value;
    const wrong =
      Math.abs(warmer) < sameTemperature ? Math.abs(longer) > potLivesApart * potLife.value : longer * warmer >= 0;
    const at = (figure: Figure, celsius: Figure) => `${time(figure)} at ${amount(celsius.value, 'Cel')}`;
    if (wrong) {
      swapped(
        'pot-lives-swapped',
        'its two pot lives cannot both be right, so nobody knows how fast it cures',
        `Look at the sheet of ${name} again: its pot life is ${at(potLife, potLifeTemperature)} and ${at(secondPotLife, secondPotLifeTemperature)}, and every resin’s is shorter where it is warmer. Are the two swapped?`,
      );
    }
  }
  return found;
}

/** What does not agree within a data sheet; empty for a generic kind and for a sheet that agrees with itself. */
export function sheetWarnings(resin: Resin): Caution[] {
  const { sandable, cure } = resin.figures;
  const swapped = resin.fromSheet ? swappedTimes(resin) : [];
  const warnings: Caution[] = [
    ...ratioWarning(resin),
    ...swapped.map(({ caution }) => caution),
    // Nothing is worked out from pot lives of which one is wrong.
    ...(resin.fromSheet && !swapped.some(({ caution }) => caution.id === 'pot-lives-swapped')
      ? [...depthAgainstPotLife(resin), ...beforeGelCautions(resin)]
      : []),
  ];
  const hours = (figure: Figure) => formatQuantity(figure.value, 's');
  if (resin.fromSheet && sandable && cure && sandable.value > cure.value) {
    warnings.push({
      id: 'sandable-after-cure',
      level: 'warning',
      text: `${resin.name} would be hard enough to sand only after ${hours(sandable)}, later than its full cure of ${hours(cure)}. Look at the sheet again.`,
      basis: 'derived',
    });
  }
  const food = foodBeforeCure(resin);
  if (food) {
    warnings.push({
      id: 'food-before-cure',
      level: 'note',
      text: `Ask the maker about ${resin.name}: ${food}.`,
      why: 'Resin that has not cured through can pass into food what has not reacted.',
      basis: 'derived',
    });
  }
  return warnings;
}
