import { type Basis, derivedBasis, type Figure } from '../../model/evidence/index.ts';
import type { Inputs } from './inputs.ts';
import type { DosePlan } from './plan.ts';

/** Names and labels of the figures, in the order in which they are shown. */
export const figureLabels = {
  mass: { label: 'Mix in all' },
  massA: { label: 'Part A, resin' },
  massB: { label: 'Part B, hardener' },
  volumeA: { label: 'Part A by volume' },
  volumeB: { label: 'Part B by volume' },
  volume: { label: 'Mix in all by volume', minor: true },
  measuredA: { label: 'Part A in whole divisions', minor: true },
  measuredB: { label: 'Part B in whole divisions', minor: true },
  cups: { label: 'Cups' },
  largestCup: { label: 'Mix in the largest cup' },
  layers: { label: 'Layers' },
  layerThickness: { label: 'Thickness of a layer', minor: true },
  dosingError: { label: 'Error of the ratio that the division allows' },
  roundingError: { label: 'Error of the ratio by rounding', minor: true },
  pigment: { label: 'Pigment in all, on top' },
  area: { label: 'Area', minor: true },
  fillVolume: { label: 'Volume to fill', minor: true },
  fillMass: { label: 'Mix that fills it', minor: true },
  sealMass: { label: 'Mix for the seal coat', minor: true },
  dripMass: { label: 'Mix that runs over the edge', minor: true },
  residueMass: { label: 'Mix that stays in the cups', minor: true },
  spareMass: { label: 'Spare', minor: true },
  mixedDensity: { label: 'Density of the mix', minor: true },
  weightRatio: { label: 'Hardener to 100 of resin by weight', minor: true },
} as const;
type FigureName = keyof typeof figureLabels;

/** The figures of a plan. */
export function figuresOf(plan: DosePlan, given: Inputs): Record<string, Figure> {
  const { mix, place, dose, parts, cups } = plan;
  const figures: Record<string, Figure> = {};
  const put = (name: FigureName, value: number, unit: string, basis: Basis, more: Partial<Figure> = {}) => {
    figures[name] = { label: figureLabels[name].label, value, unit, basis, ...more };
  };
  const byWeight = mix.by === 'weight';
  // A weight asked for is divided by the ratio alone; a volume needs the densities too. Allowances are the reader's own or usual.
  const assumed: Basis[] = [
    ...(dose.residue > 0 && given.residue === undefined ? ['memory' as const] : []),
    ...(dose.spare > 0 && given.spare === undefined ? ['shop-practice' as const] : []),
  ];
  const amount = derivedBasis([...(place.from === 'mass' ? [] : [mix.densityBasis]), ...assumed]);
  const part = derivedBasis([amount, mix.basis]);
  put('mass', dose.total, 'g', amount, { digits: 4 });
  put('massA', parts.massA, 'g', part, { digits: 4 });
  put('massB', parts.massB, 'g', part, { digits: 4 });
  put('volumeA', parts.volumeA, 'mL', part, { digits: 4 });
  put('volumeB', parts.volumeB, 'mL', part, { digits: 4 });
  put('volume', parts.volumeA + parts.volumeB, 'mL', part, { digits: 4 });
  const unit = byWeight ? 'g' : 'mL';
  const rounded = { digits: 6, note: 'What the cups below sum to.' };
  put('measuredA', plan.measured.a, unit, part, rounded);
  put('measuredB', plan.measured.b, unit, part, rounded);
  put('cups', cups.length, '1', 'derived', { note: limitWords(plan) });
  put('largestCup', largestOf(plan), 'g', part, { digits: 4 });
  put('layers', plan.layers, '1', 'derived', { note: layerWords(plan, given) });
  if (plan.layerThickness !== undefined) put('layerThickness', plan.layerThickness, 'mm', 'derived', { digits: 2 });
  put('dosingError', plan.readingError, '%', 'derived', {
    digits: 2,
    note: `Half a division on the smaller part of the smallest cup, ${Number(plan.smallestPart.toPrecision(3))} ${byWeight ? 'g' : 'ml'}; up or down.`,
  });
  put('roundingError', plan.roundingError, '%', 'derived', { digits: 2, note: 'Of the worst cup, as rounded below.' });
  const pigment = cups.reduce((sum, cup) => sum + cup.pigment, 0);
  if (pigment > 0) {
    put('pigment', pigment, 'g', part, {
      note: 'Added to the mix: it is in neither part, and the mix grows by it.',
    });
  }
  if (place.footprint) put('area', place.footprint.area, 'mm2', 'derived', { digits: 4 });
  if (place.volume !== undefined) {
    put('fillVolume', place.volume, 'mL', place.from === 'water' ? 'memory' : 'derived', {
      digits: 4,
      ...(place.from === 'water' ? { note: 'Weighed water at 0.998 g/ml, its density at 20 °C.' } : {}),
    });
  }
  put('fillMass', dose.fill, 'g', derivedBasis(place.from === 'mass' ? [] : [mix.densityBasis]), { digits: 4 });
  if (dose.seal > 0) put('sealMass', dose.seal, 'g', 'derived');
  if (dose.drip > 0) put('dripMass', dose.drip, 'g', amount);
  if (dose.residue > 0) {
    put('residueMass', dose.residue, 'g', given.residue === undefined ? 'memory' : amount);
  }
  if (dose.spare > 0) put('spareMass', dose.spare, 'g', amount);
  put('mixedDensity', mix.density, 'g/mL', mix.basis, { digits: 4 });
  put('weightRatio', 100 * mix.weightRatio, '1', mix.basis);
  return figures;
}

/** g of mix in the fullest cup, as measured. */
function largestOf({ cups, mix }: DosePlan): number {
  const [perA, perB] = mix.by === 'weight' ? [1, 1] : [mix.densityA, mix.densityB];
  return cups.reduce((most, { a, b }) => Math.max(most, a * perA + b * perB), 0);
}

function limitWords({ largestCup }: DosePlan): string {
  if (!largestCup) return 'Nothing limits a cup: give the most that you dare to mix at once.';
  const mass = `${Number(largestCup.mass.toPrecision(3))} g`;
  if (largestCup.setBy === 'reader') return `None above ${mass}, as you say.`;
  return largestCup.setBy === 'pot life'
    ? `None above ${mass}, the mass that the pot life is stated for.`
    : `None above ${mass}, which is what you can place while a cup can be worked.`;
}

function layerWords({ place, layers }: DosePlan, { resin, layers: asked }: Inputs): string {
  const { greatestDepth, greatestDepthTemperature } = resin?.figures ?? {};
  if (asked !== undefined) return 'As you say.';
  if (!place.profile) return layers === 1 ? 'The depth is not known, so one is taken.' : '';
  if (!greatestDepth) return 'No greatest depth of one pour is known of this resin, so one layer is taken.';
  const at = greatestDepthTemperature ? ` at ${greatestDepthTemperature.value} °C` : '';
  return `None thicker than ${greatestDepth.value} mm, the greatest depth of one pour${at}.`;
}
