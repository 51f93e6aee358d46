import { type Basis, derivedBasis, type Figure } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Measuring } from './dosing-words.ts';
import { alikeOf } from './pieces.ts';
import type { Place } from './place.ts';
import type { DosePlan, NoDose } from './plan.ts';
import { grams } from './verdict.ts';

/** Names and labels of the figures, in the order in which they are shown. */
export const figureLabels = {
  mass: { label: 'Mix in all' },
  massA: { label: 'Part A, resin' },
  massB: { label: 'Part B, hardener' },
  volumeA: { label: 'Part A by volume' },
  volumeB: { label: 'Part B by volume' },
  cups: { label: 'Cups' },
  largestCup: { label: 'Mix in the largest cup' },
  emptyWithin: { label: 'Empty the largest cup within' },
  layers: { label: 'Layers' },
  pieceMass: { label: 'Mix that fills one piece' },
  dosingError: { label: 'Error of the ratio that the division allows' },
  pigment: { label: 'Pigment in all, on top' },
  fillVolume: { label: 'Volume to fill', minor: true },
  area: { label: 'Area', minor: true },
  layerThickness: { label: 'Thickness of a layer', minor: true },
  roundingError: { label: 'Error of the ratio by rounding', minor: true },
  volume: { label: 'Mix in all by volume', minor: true },
  fillMass: { label: 'Mix that fills it', minor: true },
  sealMass: { label: 'Mix for the seal coat', minor: true },
  dripMass: { label: 'Mix that runs over the edge', minor: true },
  residueMass: { label: 'Mix that stays in the cups', minor: true },
  spareMass: { label: 'Spare', minor: true },
  mixedDensity: { label: 'Density of the mix', minor: true },
  weightRatio: { label: 'Hardener to 100 of resin by weight', minor: true },
} as const;
type FigureName = keyof typeof figureLabels;

type Put = (name: FigureName, value: number, unit: string, basis: Basis, more?: Partial<Figure>) => void;

/** Units in which resin is measured, whatever a reader measures boards in. */
const ofScales: readonly string[] = ['g', 'mL', 'g/mL'];

function collector(): { figures: Record<string, Figure>; put: Put } {
  const figures: Record<string, Figure> = {};
  return {
    figures,
    put: (name, value, unit, basis, more = {}) => {
      figures[name] = {
        label: figureLabels[name].label,
        value,
        unit,
        basis,
        ...(ofScales.includes(unit) ? { kept: true } : {}),
        ...more,
      };
    },
  };
}

/** The figures of a plan. */
export function figuresOf(plan: DosePlan): Record<string, Figure> {
  const { mix, place, dose, parts, cups, given, layers } = plan;
  const { figures, put } = collector();
  // A weight asked for is divided by the ratio alone; a volume needs the densities too. Allowances are the reader's own or usual.
  const assumed: Basis[] = [
    ...(dose.residue > 0 && given.residue === undefined ? ['memory' as const] : []),
    ...(dose.spare > 0 && given.spare === undefined ? ['shop-practice' as const] : []),
  ];
  const all = derivedBasis([...(place.from === 'mass' ? [] : [mix.densityBasis]), ...assumed]);
  const part = derivedBasis([all, mix.basis]);
  put('mass', dose.total, 'g', all, { digits: 4 });
  put('massA', parts.massA, 'g', part, { digits: 4 });
  put('massB', parts.massB, 'g', part, { digits: 4 });
  put('volumeA', parts.volumeA, 'mL', part, { digits: 4 });
  put('volumeB', parts.volumeB, 'mL', part, { digits: 4 });
  put('volume', parts.volumeA + parts.volumeB, 'mL', part, { digits: 4 });
  put('cups', cups.length, '1', 'derived', { note: limitWords(plan) });
  put('largestCup', plan.largestCup, 'g', part, { digits: 4 });
  if (plan.clock && plan.cup.empty !== undefined) {
    put('emptyWithin', plan.cup.empty, 's', 'memory', {
      digits: 2,
      note: `From the moment that B is in, at ${amount(plan.clock.celsius, 'Cel')}${plan.clock.assumed ? ', the temperature of the pot life' : ''}: half of its working time.`,
    });
  }
  put('layers', layers.count, '1', 'derived', { note: layerWords(plan) });
  if (layers.thickness !== undefined) put('layerThickness', layers.thickness, 'mm', 'derived', { digits: 2 });
  measured(put, plan);
  const pigment = cups.reduce((sum, cup) => sum + cup.pigment, 0);
  if (pigment > 0) {
    put('pigment', pigment, 'g', part, {
      note: 'Added to the mix: it is in neither part, and the mix grows by it.',
    });
  }
  const [alike, ...others] = alikeOf(plan);
  if (alike && others.length === 0 && alike.to > 1) {
    put('pieceMass', alike.fill, 'g', derivedBasis([mix.densityBasis]), {
      note: `Each of ${alike.to}${alike.seal > 0 ? `, and ${grams(alike.seal)} of the seal coat` : ''}, without what stays in the cups.`,
    });
  }
  placed(put, place);
  put('fillMass', dose.fill, 'g', derivedBasis(place.from === 'mass' ? [] : [mix.densityBasis]), { digits: 4 });
  if (dose.seal > 0) put('sealMass', dose.seal, 'g', 'derived');
  if (dose.drip > 0) put('dripMass', dose.drip, 'g', all);
  if (dose.residue > 0) {
    put('residueMass', dose.residue, 'g', given.residue === undefined ? 'memory' : all);
  }
  if (dose.spare > 0) put('spareMass', dose.spare, 'g', all);
  put('mixedDensity', mix.density, 'g/mL', mix.basis, { digits: 4 });
  put('weightRatio', 100 * mix.weightRatio, '1', mix.basis);
  return figures;
}

/** What is known without a dose: the place, and how well the parts could be measured. */
export function figuresOfNone({ place, measuring }: NoDose): Record<string, Figure> {
  const { figures, put } = collector();
  if (measuring) measured(put, measuring);
  placed(put, place);
  return figures;
}

function measured(put: Put, { readingError, roundingError, smallestPart, by }: Measuring): void {
  put('dosingError', readingError, '%', 'derived', {
    digits: 2,
    note: `Half a division on the smaller part of the smallest cup, ${Number(smallestPart.toPrecision(3))} ${by === 'weight' ? 'g' : 'ml'}; up or down.`,
  });
  put('roundingError', roundingError, '%', 'derived', { digits: 2, note: 'Of the worst cup, as rounded below.' });
}

function placed(put: Put, place: Place): void {
  if (place.footprint) put('area', place.footprint.area, 'mm2', 'derived', { digits: 4 });
  if (place.volume === undefined) return;
  const water = place.from === 'water';
  put('fillVolume', place.volume, 'mL', water ? 'memory' : 'derived', {
    digits: 4,
    ...(water ? { note: 'Weighed water at 0.998 g/ml, its density at 20 °C.' } : {}),
  });
}

function limitWords({ cupLimit, clock, given }: DosePlan): string {
  const mass = grams(cupLimit.mass);
  if (cupLimit.setBy === 'reader') return `None above ${mass}, as you say.`;
  if (cupLimit.setBy === 'time')
    return `None above ${mass}: you place that in half of the time that such a cup can be worked.`;
  const assumed = clock?.massAssumed ? ' (assumed: the sheet does not say)' : '';
  const kind = given.resin?.fromSheet ? '' : ', of a generic kind';
  return `None above ${mass}, the mass that the pot life is stated for${assumed}${kind}.`;
}

function layerWords({ layers, place }: DosePlan): string {
  const { setBy, allowed, stated, shop, hotter } = layers;
  if (setBy === 'reader') return 'As you say.';
  if (setBy === 'coat') return 'A coat, thin enough for one.';
  if (setBy === 'volume') return 'As many as the sheet’s greatest volume or mass of one pour asks for.';
  if (setBy === 'nothing' || allowed === undefined || !place.profile)
    return 'No depth was given, so no layers are planned.';
  const most = amount(allowed, 'mm', 2);
  if (!stated) return `None thicker than ${most}, as you say.`;
  const at = shop ? ` at ${amount(shop.celsius, 'Cel')}${shop.assumed ? ' (assumed)' : ''}` : '';
  return hotter
    ? `None thicker than ${most}, what one pour bears${at}.`
    : `None thicker than ${most}, the greatest depth of one pour${at}.`;
}
