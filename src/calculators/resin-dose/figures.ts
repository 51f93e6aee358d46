import { type Basis, derivedBasis } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { Measuring } from './dosing-words.ts';
import { mostInWords } from './layers.ts';
import { alikeOf } from './pieces.ts';
import type { Place } from './place.ts';
import type { DosePlan, NoDose } from './plan.ts';
import { grams } from './verdict.ts';

/** Resin is weighed in grams and measured in millilitres, whatever a reader measures boards in. */
const mass = (label: string, digits = 4) => ({ label, unit: 'g', digits, kept: true });
const millilitres = (label: string) => ({ label, unit: 'mL', digits: 4, kept: true });

/** What the calculator may tell, in the order in which it is shown. */
export const figures = {
  mass: mass('Mix in all'),
  massA: mass('Part A, resin'),
  massB: mass('Part B, hardener'),
  volumeA: millilitres('Part A by volume'),
  volumeB: millilitres('Part B by volume'),
  cups: { label: 'Cups', unit: '{count}' },
  largestCup: mass('Mix in the largest cup'),
  emptyWithin: { label: 'Empty the largest cup within', unit: 's', digits: 2 },
  layers: { label: 'Layers', unit: '{count}' },
  pieceMass: mass('Mix that fills one piece', 3),
  dosingError: {
    label: 'How far your scale can be out',
    unit: '%',
    digits: 2,
    help: 'Half a division on the smaller part of the smallest cup, up or down.',
  },
  pigment: { ...mass('Pigment in all, on top', 3), help: 'It is in neither part, and the mix grows by it.' },
  fillVolume: { ...millilitres('Volume to fill'), minor: true },
  area: { label: 'Area', unit: 'mm2', digits: 4, minor: true },
  layerThickness: { label: 'Thickness of a layer', unit: 'mm', digits: 3, minor: true },
  roundingError: {
    label: 'Error of the ratio by rounding',
    unit: '%',
    digits: 2,
    help: 'Of the worst cup, as rounded to whole divisions.',
    minor: true,
  },
  volume: { ...millilitres('Mix in all by volume'), minor: true },
  fillMass: { ...mass('Mix that fills it'), minor: true },
  proudMass: { ...mass('Mix that stands proud of the face', 3), minor: true },
  sealMass: { ...mass('Mix for the seal coat', 3), minor: true },
  dripMass: { ...mass('Mix that runs over or stands proud', 3), minor: true },
  residueMass: { ...mass('Mix that stays in the cups', 3), minor: true },
  spareMass: { ...mass('Spare', 3), minor: true },
  mixedDensity: { label: 'Density of the mix', unit: 'g/mL', digits: 4, kept: true, minor: true },
  weightRatio: { label: 'Hardener to 100 of resin by weight', unit: '1', minor: true },
} as const satisfies Record<string, FigureDeclaration>;

type Figures = Partial<Record<keyof typeof figures, FigureValue>>;

/** A figure of something that not every dose has: none where it is nothing. */
const some = <Name extends keyof typeof figures>(name: Name, value: number, basis: Basis, note?: string): Figures =>
  value > 0 ? { [name]: { value, basis, ...(note ? { note } : {}) } } : {};

/** The figures of a plan. */
export function figuresOf(plan: DosePlan): Figures {
  const { mix, place, dose, parts, cups, given, layers, clock, cup } = plan;
  // A weight asked for is divided by the ratio alone; a volume needs the densities too. Allowances are the reader's own or usual.
  const assumed: Basis[] = [
    ...(dose.residue > 0 && given.residue === undefined ? ['memory' as const] : []),
    ...(dose.spare > 0 && given.spare === undefined ? ['shop-practice' as const] : []),
  ];
  const filled = derivedBasis(place.from === 'mass' ? [] : [mix.densityBasis]);
  const all = derivedBasis([filled, ...assumed]);
  const part = derivedBasis([all, mix.basis]);
  const pigment = cups.reduce((sum, each) => sum + each.pigment, 0);
  return {
    mass: { value: dose.total, basis: all },
    massA: { value: parts.massA, basis: part },
    massB: { value: parts.massB, basis: part },
    volumeA: { value: parts.volumeA, basis: part },
    volumeB: { value: parts.volumeB, basis: part },
    cups: { value: cups.length, basis: 'derived', note: limitWords(plan) },
    largestCup: { value: plan.largestCup, basis: part },
    ...(clock && cup.empty !== undefined
      ? {
          emptyWithin: {
            value: cup.empty,
            basis: 'memory',
            note: `From the moment that B is in, at ${amount(clock.celsius, 'Cel')}${clock.assumed ? ' (assumed: no shop was given)' : ''}: half of its working time, rounded down.`,
          },
        }
      : {}),
    layers: { value: layers.count, basis: 'derived', note: layerWords(plan) },
    ...onePiece(plan),
    ...measured(plan),
    ...some('pigment', pigment, part),
    ...placed(place),
    ...(layers.thickness === undefined ? {} : { layerThickness: { value: layers.thickness, basis: 'derived' } }),
    volume: { value: parts.volumeA + parts.volumeB, basis: part },
    fillMass: { value: dose.fill, basis: filled },
    ...some('proudMass', (place.proud ?? 0) * mix.density, filled, 'Within the mix that fills it.'),
    ...some('sealMass', dose.seal, 'derived'),
    ...some('dripMass', dose.drip, all),
    ...some('residueMass', dose.residue, given.residue === undefined ? 'memory' : all),
    ...some('spareMass', dose.spare, all),
    mixedDensity: { value: mix.density, basis: mix.basis },
    weightRatio: { value: 100 * mix.weightRatio, basis: mix.basis },
  };
}

/** What is known without a dose: the place, and how well the parts could be measured. */
export function figuresOfNone({ place, measuring }: NoDose): Figures {
  return { ...(measuring ? measured(measuring) : {}), ...placed(place) };
}

function onePiece(plan: DosePlan): Figures {
  const [alike, ...others] = alikeOf(plan);
  if (!alike || others.length > 0) return {};
  return {
    pieceMass: {
      value: alike.fill,
      basis: derivedBasis([plan.mix.densityBasis]),
      note: `${alike.to === 1 ? 'The one piece' : `Each of ${alike.to}`}${alike.seal > 0 ? `, and ${grams(alike.seal)} of the seal coat` : ''}${plan.given.proud ? `, ${amount(plan.given.proud, 'mm', 2)} proud of the face` : ''}, without what stays in the cups.`,
    },
  };
}

function measured({ readingError, roundingError, smallestPart, by }: Measuring): Figures {
  const least = `${Number(smallestPart.toPrecision(3))} ${by === 'weight' ? 'g' : 'ml'}`;
  return {
    dosingError: { value: readingError, basis: 'derived', note: `The smaller part of the smallest cup is ${least}.` },
    roundingError: { value: roundingError, basis: 'derived' },
  };
}

function placed({ footprint, volume, from }: Place): Figures {
  const water = from === 'water';
  return {
    ...(footprint ? { area: { value: footprint.area, basis: 'derived' } } : {}),
    ...(volume === undefined
      ? {}
      : {
          fillVolume: {
            value: volume,
            basis: water ? 'memory' : 'derived',
            ...(water ? { note: `Weighed water at 0.998 g/ml, its density at ${amount(20, 'Cel')}.` } : {}),
          },
        }),
  };
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
  const most = mostInWords(layers);
  if (!stated) return `None thicker than ${most}, as you say.`;
  const at = shop ? ` at ${amount(shop.celsius, 'Cel')}${shop.assumed ? ' (assumed)' : ''}` : '';
  return hotter
    ? `None thicker than ${most}, what one pour bears${at}.`
    : `None thicker than ${most}, the greatest depth of one pour${at}.`;
}
