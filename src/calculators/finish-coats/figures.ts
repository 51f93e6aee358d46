import {
  type Basis,
  derivedBasis,
  type Figure,
  type TimedEvent,
  type Timeline,
  type Use,
  weakestBasis,
} from '../../model/evidence/index.ts';
import type { CoatsPlan, Finish } from '../../model/finish/index.ts';
import { inMonths } from '../../model/food/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { type FigureDeclaration, type FigureValue, figureValueOf } from '../kit/calculator.ts';
import type { Inputs } from './inputs.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  volume: { label: 'To have at hand, all coats', unit: 'mL', digits: 2 },
  mass: { label: 'The same by weight', unit: 'g', digits: 2 },
  firstCoat: { label: 'First coat', unit: 'mL', digits: 2 },
  nextCoat: { label: 'Each further coat', unit: 'mL', digits: 2 },
  area: { label: 'Area that is coated', unit: 'mm2' },
  light: { label: 'Until the boards may be handled', unit: 's', digits: 2 },
  use: { label: 'Until the finish is ready for food and water', unit: 's', digits: 2 },
  recoat: { label: 'Wait between coats', unit: 's', digits: 2 },
  soak: { label: 'Soak before wiping', unit: 's', digits: 2 },
  upkeep: { label: 'From one renewal to the next, in a home', unit: 'mo', digits: 2 },
  coats: { label: 'Coats', unit: '{count}', minor: true },
} as const satisfies Record<string, FigureDeclaration>;

const rateBand =
  'What the usual spreading rates leave open: dense planed wood takes little, open and sanded wood much.';
const ownRate = 'By the reader’s own spreading rate.';
const usualWaits = 'What is usual in the trade, at room temperature; the sheet of the finish decides.';
const ofTheFinish =
  'Of the finish alone: the resin waits for the full cure on its own sheet, often a week or more from the pour.';

/** What the amounts rest on: the weakest of the spreading rates that were used. */
export function amountBasis(given: Inputs, { figures: known }: Finish, plan: CoatsPlan): Basis {
  const own = 'supplier-sheet' as const;
  const first = given.spreadingFirst === undefined ? known.spreadingFirst.basis : own;
  const next = given.spreadingNext === undefined ? known.spreadingNext.basis : own;
  return derivedBasis(plan.coats.length > 1 ? [first, next] : [first]);
}

/** g of so many mL, and how it is known. */
function weighed(given: Inputs, finish: Finish, plan: CoatsPlan): FigureValue {
  const { density } = finish.figures;
  const { low, high } = plan.volume;
  return {
    value: plan.mass,
    ...(low < high ? { low: low * density.value, high: high * density.value, band: rateBand } : {}),
    basis: weakestBasis([amountBasis(given, finish, plan), density.basis]),
    note: `At ${density.value} g/ml.`,
  };
}

/**
 * The figures of a plan.
 *
 * @param area that is coated, of all boards, mm²
 */
export function figuresOf(
  given: Inputs,
  finish: Finish,
  plan: CoatsPlan,
  area: number,
): Partial<Record<keyof typeof figures, FigureValue>> {
  const known = finish.figures;
  const basis = amountBasis(given, finish, plan);
  const volume = ({ value, low, high }: CoatsPlan['volume']): FigureValue => ({
    value,
    ...(low < high ? { low, high, band: rateBand } : { note: ownRate }),
    basis,
  });
  const [first, next] = plan.coats;
  return {
    volume: volume(plan.volume),
    mass: weighed(given, finish, plan),
    ...(first ? { firstCoat: volume(first.volume) } : {}),
    ...(next ? { nextCoat: volume(next.volume) } : {}),
    area: {
      value: area,
      basis: 'derived',
      note: given.boards === undefined || given.boards === 1 ? 'Of the board.' : `Of ${given.boards} boards together.`,
    },
    light: { value: plan.light, basis: 'shop-practice', note: 'From the first coat.' },
    use: {
      ...plan.use,
      band: usualWaits,
      basis: 'shop-practice',
      note: `From the first coat. ${
        known.fullCure === null ? 'It never cures: when it is wiped dry.' : 'Cured throughout, and without a smell.'
      }${given.resin === 'inlay' ? ` ${ofTheFinish}` : ''}`,
    },
    recoat: figureValueOf(known.recoat),
    ...(known.soak ? { soak: figureValueOf(known.soak) } : {}),
    coats: { value: plan.coats.length, basis: given.coats === undefined ? known.coats.basis : 'derived' },
    ...(known.upkeep ? { upkeep: { ...figureValueOf(inMonths(known.upkeep)), note: finish.upkeepWords } } : {}),
  };
}

/** What happens when, from the first coat. With an inlay nothing here says when food may touch the board: its resin does. */
export function timelineOf(given: Inputs, finish: Finish, plan: CoatsPlan): Timeline {
  const { recoat, lightUse } = finish.figures;
  const last = plan.coats.length;
  const waits = (count: number, of: Figure) => ({
    ...(of.low === undefined || of.high === undefined ? {} : { low: count * of.low, high: count * of.high }),
  });
  const coats = plan.coats.flatMap(({ number, start, wipe }): TimedEvent[] => [
    {
      id: `coat-${number}`,
      label: `Coat ${number} goes on`,
      at: start,
      ...(number > 1 ? { ...waits(number - 1, recoat), after: `coat-${number - 1}` } : {}),
      basis: recoat.basis,
    },
    ...(wipe === null
      ? []
      : [
          {
            id: `wipe-${number}`,
            label: `Coat ${number} is wiped off`,
            at: wipe,
            after: `coat-${number}`,
            basis: finish.figures.soak?.basis ?? recoat.basis,
          },
        ]),
  ]);
  const after = `coat-${last}`;
  const ready = { at: plan.use.value, low: plan.use.low, high: plan.use.high, after, basis: 'shop-practice' as const };
  return {
    zero: 'the first coat',
    events: [
      ...coats,
      { id: 'handle', label: 'The boards may be handled', at: plan.light, after, basis: lightUse.basis },
      ...(given.resin === 'inlay'
        ? [{ id: 'finish-ready', label: 'The finish is ready for food and water', ...ready, note: ofTheFinish }]
        : [
            { id: 'food', label: 'Food and water may touch the boards', ...ready },
            { id: 'hand-over', label: 'The boards may be handed over', ...ready },
          ]),
    ].sort((one, other) => one.at - other.at),
  };
}

/** What is used up: the finish, by volume as it is sold; its weight stands beside it. */
export function usesOf(given: Inputs, finish: Finish, plan: CoatsPlan): readonly Use[] {
  const { value, low, high } = plan.volume;
  return [
    {
      id: 'finish',
      what: finish.name,
      amount: value,
      unit: 'mL',
      ...(low < high ? { low, high } : {}),
      basis: amountBasis(given, finish, plan),
      note: `All coats, spare included: ${amount(plan.mass, 'g', 2)} by weight.`,
    },
  ];
}
