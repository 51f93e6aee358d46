import { type Basis, derivedBasis, type Figure } from '../evidence/index.ts';
import { volumeRatioOfWeight, weightRatioOfVolume } from './ratio.ts';
import type { Resin, ResinFigureName } from './types.ts';

const minute = 60;
const hour = 3600;
const day = 86_400;

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

/** What tells one kind from another; all else follows, or is the same for all. */
interface KindData {
  id: string;
  name: string;
  kinetics: Resin['kinetics'];
  /** Parts of B to one of A by volume. */
  volumeRatio: number;
  ratioNote: string;
  densities: readonly [a: number, b: number];
  viscosity: number;
  potLife: number;
  depth: { mm: number; celsius: number; basis: Basis; note: string };
  recoat: readonly [opens: number, closes: number];
  sandable: number;
  sandableNote?: string;
  timesBasis: Basis;
}

const depthNote =
  'Near the depth at which a pour over hardwood warms by 25 °C in the model of a resin of this pot life; nobody’s data sheet says it.';

const kindData: readonly KindData[] = [
  {
    id: 'fast-coating-1-1',
    name: 'Fast coating epoxy, 1:1 by volume',
    kinetics: 'fast',
    volumeRatio: 1,
    ratioNote: 'Equal parts by volume is common practice for coating epoxies of this kind.',
    densities: [1.16, 0.97],
    viscosity: 1000,
    potLife: 30 * minute,
    depth: {
      mm: 3,
      celsius: 25,
      basis: 'shop-practice',
      note: 'Coats of a few millimetres are common practice; the model of a resin of this pot life warms by about 25 °C at 3 mm.',
    },
    recoat: [4 * hour, 12 * hour],
    sandable: 24 * hour,
    sandableNote: 'About 24 hours before the next stage at room temperature is common practice.',
    timesBasis: 'shop-practice',
  },
  {
    id: 'medium-2-1',
    name: 'Medium epoxy, 2:1 by volume',
    kinetics: 'fast',
    volumeRatio: 1 / 2,
    ratioNote: 'Two parts of resin to one of hardener is a usual ratio of resins of this kind.',
    densities: [1.15, 0.98],
    viscosity: 600,
    potLife: 90 * minute,
    depth: { mm: 8, celsius: 20, basis: 'memory', note: depthNote },
    recoat: [8 * hour, 24 * hour],
    sandable: 36 * hour,
    timesBasis: 'memory',
  },
  {
    id: 'slow-casting-2-1',
    name: 'Slow casting epoxy, 2:1 by volume',
    kinetics: 'slow',
    volumeRatio: 1 / 2,
    ratioNote: 'Two parts of resin to one of hardener is a usual ratio of casting resins.',
    densities: [1.16, 1.0],
    viscosity: 400,
    potLife: 6 * hour,
    depth: { mm: 19, celsius: 20, basis: 'memory', note: depthNote },
    recoat: [20 * hour, 48 * hour],
    sandable: 72 * hour,
    timesBasis: 'memory',
  },
  {
    id: 'slow-casting-3-1',
    name: 'Slow casting epoxy, 3:1 by volume',
    kinetics: 'slow',
    volumeRatio: 1 / 3,
    ratioNote: 'Three parts of resin to one of hardener is a usual ratio of casting resins for deep pours.',
    densities: [1.13, 0.96],
    viscosity: 300,
    potLife: 12 * hour,
    depth: { mm: 25, celsius: 20, basis: 'memory', note: depthNote },
    recoat: [30 * hour, 72 * hour],
    sandable: 96 * hour,
    timesBasis: 'memory',
  },
];

function kindOf(data: KindData): Resin {
  const [densityA, densityB] = data.densities;
  const figure = (name: ResinFigureName, value: number, basis: Basis, note?: string) => ({
    [name]: resinFigure(name, value, basis, note),
  });
  const figures: Readonly<Record<ResinFigureName, Figure | null>> = {
    ...nothingKnown,
    ...figure('volumeRatio', data.volumeRatio, 'shop-practice', data.ratioNote),
    ...figure(
      'weightRatio',
      weightRatioOfVolume(data.volumeRatio, densityA, densityB),
      derivedBasis(['shop-practice', 'memory']),
      'From the ratio by volume and the densities.',
    ),
    ...figure('densityA', densityA, 'memory'),
    ...figure('densityB', densityB, 'memory'),
    ...figure('viscosity', data.viscosity, 'memory', 'At 25 °C.'),
    ...figure('potLife', data.potLife, 'memory'),
    ...figure('potLifeMass', 100, 'memory'),
    ...figure('potLifeTemperature', 25, 'memory'),
    ...figure('greatestDepth', data.depth.mm, data.depth.basis, data.depth.note),
    ...figure('greatestDepthTemperature', data.depth.celsius, data.depth.basis),
    ...figure('recoatOpens', data.recoat[0], data.timesBasis),
    ...figure('recoatCloses', data.recoat[1], data.timesBasis),
    ...figure('sandable', data.sandable, data.timesBasis, data.sandableNote),
    ...figure('cure', 7 * day, 'shop-practice', 'A week at room temperature is common practice.'),
    ...figure('cureTemperature', 22, 'memory', 'Room temperature, 20 to 25 °C.'),
  };
  return {
    kind: data.id,
    name: data.name,
    fromSheet: false,
    figures,
    potLifeMeans: 'gel',
    kinetics: data.kinetics,
  };
}

/** Every figure of a resin of which nothing is known. */
const nothingKnown = Object.fromEntries(Object.keys(resinFigureWords).map((name) => [name, null])) as Record<
  ResinFigureName,
  null
>;

/**
 * The generic kinds, from fast to slow. None is a product: each stands for what resins of its kind usually are, from memory and
 * common practice. What only a maker can say (a limit of pigment, food contact, a second pot life) is not known of a kind.
 */
export const resinKinds: readonly Resin[] = kindData.map(kindOf);

/** Ids of the generic kinds. */
export const resinKindIds = ['fast-coating-1-1', 'medium-2-1', 'slow-casting-2-1', 'slow-casting-3-1'] as const;

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
