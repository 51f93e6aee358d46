import { type Basis, derivedBasis, type Figure } from '../evidence/index.ts';
import committed from './kinds.json' with { type: 'json' };
import { volumeRatioOfWeight, weightRatioOfVolume } from './ratio.ts';
import type { ResinRecord } from './record.ts';
import type { Resin, ResinFigureName } from './types.ts';

/** Label and UCUM unit of every figure of a resin. */
export const resinFigureWords: Readonly<
  Record<ResinFigureName, { label: string; unit: string; digits?: number; kept?: true }>
> = {
  volumeRatio: { label: 'Hardener to one of resin by volume', unit: '1', digits: 4 },
  weightRatio: { label: 'Hardener to one of resin by weight', unit: '1', digits: 4 },
  densityA: { label: 'Density of part A', unit: 'g/mL' },
  densityB: { label: 'Density of part B', unit: 'g/mL' },
  viscosity: { label: 'Viscosity of the mix', unit: 'mPa.s', digits: 2 },
  potLife: { label: 'Pot life', unit: 's' },
  potLifeMass: { label: 'Mass that the pot life is stated for', unit: 'g', kept: true },
  potLifeTemperature: { label: 'Temperature that the pot life is stated for', unit: 'Cel' },
  secondPotLife: { label: 'Pot life at a second temperature', unit: 's' },
  secondPotLifeTemperature: { label: 'Second temperature', unit: 'Cel' },
  greatestDepth: { label: 'Greatest depth of one pour', unit: 'mm', digits: 2 },
  greatestDepthTemperature: { label: 'Temperature that the depth is stated for', unit: 'Cel' },
  greatestVolume: { label: 'Greatest volume of one pour', unit: 'mL' },
  greatestMass: { label: 'Greatest mass of one pour', unit: 'g' },
  recoatOpens: { label: 'Recoat window opens', unit: 's' },
  recoatCloses: { label: 'Recoat window closes', unit: 's' },
  sandable: { label: 'Hard enough to sand', unit: 's' },
  cure: { label: 'Full cure', unit: 's' },
  foodService: { label: 'Fit for the food contact that the maker declares', unit: 's' },
  cureTemperature: { label: 'Temperature that these times are stated for', unit: 'Cel' },
  pigmentLimit: { label: 'Most pigment, by mass of the mix', unit: '%' },
};

/** A figure of a resin with its label and unit. */
export function resinFigure(name: ResinFigureName, value: number, basis: Basis, note?: string): Figure {
  return { ...resinFigureWords[name], value, basis, ...(note ? { note } : {}) };
}

/** Every figure of a resin of which nothing is known. */
const nothingKnown = Object.fromEntries(Object.keys(resinFigureWords).map((name) => [name, null])) as Record<
  ResinFigureName,
  null
>;

function kindOf({ id, name, kinetics, potLifeMeans, figures: known }: ResinRecord): Resin {
  const figures: Record<ResinFigureName, Figure | null> = { ...nothingKnown };
  for (const [name, { value, ...evidence }] of Object.entries(known)) {
    figures[name as ResinFigureName] = { ...resinFigureWords[name as ResinFigureName], value, ...evidence };
  }
  const { volumeRatio, densityA, densityB } = figures;
  if (volumeRatio && densityA && densityB) {
    figures.weightRatio = resinFigure(
      'weightRatio',
      weightRatioOfVolume(volumeRatio.value, densityA.value, densityB.value),
      derivedBasis([volumeRatio.basis, densityA.basis, densityB.basis]),
      'From the ratio by volume and the densities.',
    );
  }
  return { kind: id, name, fromSheet: false, figures, potLifeMeans, kinetics };
}

/**
 * The generic kinds, from fast to slow. None is a product: each stands for what resins of its kind usually are, from memory and
 * common practice. What only a maker can say (a limit of pigment, food contact, a second pot life) is not known of a kind.
 */
export const resinKinds: readonly Resin[] = (committed as unknown as ResinRecord[]).map(kindOf);

/** Ids of the generic kinds: the names of their records, so that a kind is added by adding a file. */
export const resinKindIds: readonly string[] = resinKinds.map(({ kind }) => kind);

const byId = new Map(resinKinds.map((kind) => [kind.kind, kind]));

/** The generic kind with this id, for example `slow-casting-2-1`. */
export function resinOf(kind: string): Resin | undefined {
  return byId.get(kind);
}

/** Volume and weight ratio of a mix, of which one is known: the other follows from the densities, g/mL. */
export function bothRatios(
  known: { volume: number } | { weight: number },
  densityA: number,
  densityB: number,
): { volume: number; weight: number } {
  return 'volume' in known
    ? { volume: known.volume, weight: weightRatioOfVolume(known.volume, densityA, densityB) }
    : { volume: volumeRatioOfWeight(known.weight, densityA, densityB), weight: known.weight };
}
