import { type FieldError, type Outcome, refuse } from '../../model/evidence/index.ts';
import { priceOf } from './price.ts';
import type { PriceRequest } from './price-request.ts';

/** One thing that a price depends on. */
export interface PriceInput {
  /** Path of it in the request: `materials`, `hands.0.rate`. */
  id: string;
  label: string;
  /** As it stands, in the unit of the request. */
  value: number;
  /** The same request with another value of it. */
  put(request: PriceRequest, value: number): PriceRequest;
  /** Whether only whole numbers make sense. */
  whole?: true;
}

/** What an input does to the price. */
export interface Bar {
  id: string;
  label: string;
  value: number;
  /** Its own low and high. */
  low: number;
  high: number;
  /** Price at each end; null where there is none, and `why` says so. */
  atLow: number | null;
  atHigh: number | null;
  why?: string;
  /** How far the price moves from one end to the other; null where an end has no price. */
  spread: number | null;
}

/** What changes a price most, the widest first. */
export interface Tornado {
  price: number;
  bars: readonly Bar[];
}

/** The usual reach of an input: a fifth less, a fifth more. */
export const usualReach = 0.2;

/**
 * Everything that the price of a request depends on and that is not nothing: materials and consumables (used and bought together), the time and rate
 * of each, overhead, energy, other costs, fees, pieces, and the margin or mark-up.
 */
export function priceInputs(request: PriceRequest): PriceInput[] {
  const { materials, consumables, hands, overhead, energy, other = [], fees = [], aim, pieces, count } = request;
  const inputs: PriceInput[] = [
    {
      id: 'materials',
      label: 'Materials',
      value: materials[count],
      put: (to, value) => ({ ...to, materials: scaled(materials, value / materials[count]) }),
    },
  ];
  if (consumables) {
    inputs.push({
      id: 'consumables',
      label: 'Consumables',
      value: consumables[count],
      put: (to, value) => ({ ...to, consumables: scaled(consumables, value / consumables[count]) }),
    });
  }
  for (const [at, { what, setUp, each, rate = 0 }] of hands.entries()) {
    const change = (to: PriceRequest, part: Partial<(typeof hands)[number]>) => ({
      ...to,
      hands: to.hands.map((one, place) => (place === at ? { ...one, ...part } : one)),
    });
    const minutes = setUp + pieces * each;
    inputs.push(
      {
        id: `hands.${at}.minutes`,
        label: `${what}: time`,
        value: minutes,
        put: (to, value) => change(to, { setUp: (setUp * value) / minutes, each: (each * value) / minutes }),
      },
      { id: `hands.${at}.rate`, label: `${what}: rate`, value: rate, put: (to, value) => change(to, { rate: value }) },
    );
  }
  if (overhead && 'perHour' in overhead) {
    inputs.push({
      id: 'overhead.perHour',
      label: 'Overhead for an hour',
      value: overhead.perHour,
      put: (to, perHour) => ({ ...to, overhead: { perHour } }),
    });
  } else if (overhead) {
    inputs.push(
      {
        id: 'overhead.perMonth',
        label: 'Overhead for a month',
        value: overhead.perMonth,
        put: (to, perMonth) => ({ ...to, overhead: { ...overhead, perMonth } }),
      },
      {
        id: 'overhead.hoursPerMonth',
        label: 'Hours worked in a month',
        value: overhead.hoursPerMonth,
        put: (to, hoursPerMonth) => ({ ...to, overhead: { ...overhead, hoursPerMonth } }),
      },
    );
  }
  if (energy) {
    inputs.push({
      id: 'energy',
      label: 'Energy',
      value: energy.amount * energy.price,
      // Its amount and its price move the cost alike: one of them speaks for both.
      put: (to, value) => ({ ...to, energy: { amount: energy.amount, price: value / energy.amount } }),
    });
  }
  for (const [at, { what, cost }] of other.entries()) {
    inputs.push({
      id: `other.${at}`,
      label: what,
      value: cost,
      put: (to, value) => ({
        ...to,
        other: (to.other ?? []).map((one, place) => (place === at ? { ...one, cost: value } : one)),
      }),
    });
  }
  for (const [at, { what, share = 0, fixed = 0 }] of fees.entries()) {
    const change = (to: PriceRequest, part: Partial<(typeof fees)[number]>) => ({
      ...to,
      fees: (to.fees ?? []).map((one, place) => (place === at ? { ...one, ...part } : one)),
    });
    inputs.push(
      {
        id: `fees.${at}.share`,
        label: `${what}: share`,
        value: share,
        put: (to, value) => change(to, { share: value }),
      },
      {
        id: `fees.${at}.fixed`,
        label: `${what}: fixed sum`,
        value: fixed,
        put: (to, value) => change(to, { fixed: value }),
      },
    );
  }
  inputs.push({
    id: 'pieces',
    label: 'Good pieces from the same batch',
    value: pieces,
    put: (to, value) => ({ ...to, ...spreadOver(request, value) }),
    whole: true,
  });
  if ('margin' in aim)
    inputs.push({ id: 'aim', label: 'Margin', value: aim.margin, put: (to, margin) => ({ ...to, aim: { margin } }) });
  else if ('markup' in aim)
    inputs.push({ id: 'aim', label: 'Mark-up', value: aim.markup, put: (to, markup) => ({ ...to, aim: { markup } }) });
  return inputs.filter(({ value }) => value > 0);
}

const scaled = ({ used, bought }: PriceRequest['materials'], by: number) => ({ used: used * by, bought: bought * by });

/** The costs of the batch as they stand, over another number of pieces: what was spoilt or not sold must be paid by the rest. */
function spreadOver(request: PriceRequest, pieces: number): Partial<PriceRequest> {
  const by = request.pieces / pieces;
  return {
    pieces,
    hands: request.hands.map((one) => ({ ...one, each: one.each * by })),
    ...(request.other
      ? { other: request.other.map((one) => (one.per === 'piece' ? { ...one, cost: one.cost * by } : one)) }
      : {}),
  };
}

/**
 * What changes the price most: the price with each input at its low and its high, all others as they stand, the widest first.
 *
 * @param bands own low and high of an input by its id; a fifth less and a fifth more where none is given
 * @returns an error where the request itself has no price, its price is asked and not worked out, or a band is none
 */
export function tornadoOf(
  request: PriceRequest,
  bands: Readonly<Record<string, { low: number; high: number }>> = {},
): Outcome<Tornado> {
  if ('price' in request.aim)
    return refuse(
      'aim',
      'The price is asked and not worked out, so that nothing changes it',
      'Give a margin or a mark-up.',
    );
  const base = priceOf(request);
  if (!base.ok) return base;
  const inputs = priceInputs(request);
  const wrong = bandFaults(bands, inputs);
  if (wrong.length > 0) return { ok: false, errors: wrong };
  const bars = inputs.map((input): Bar => {
    const { id, label, value, put, whole } = input;
    const band = Object.hasOwn(bands, id) ? bands[id] : undefined;
    const low = band?.low ?? ends(value, -usualReach, whole);
    const high = band?.high ?? ends(value, usualReach, whole);
    const [atLow, atHigh] = [priceOf(put(request, low)), priceOf(put(request, high))];
    const why = [atLow, atHigh].flatMap((end) => (end.ok ? [] : end.errors.map(({ message }) => message)))[0];
    const prices = { atLow: atLow.ok ? atLow.value.price : null, atHigh: atHigh.ok ? atHigh.value.price : null };
    const { atLow: one, atHigh: other } = prices;
    const spread =
      one === null || other === null ? null : Number(Math.abs(other - one).toFixed(request.currency.digits));
    return { id, label, value, low, high, ...prices, spread, ...(why === undefined ? {} : { why }) };
  });
  // What leaves no price at all at one end changes it most.
  const width = ({ spread }: Bar) => spread ?? Number.POSITIVE_INFINITY;
  const widest = bars
    .map((bar, at) => ({ bar, at }))
    .sort((one, other) =>
      width(one.bar) === width(other.bar) ? one.at - other.at : width(other.bar) - width(one.bar),
    );
  return { ok: true, value: { price: base.value.price, bars: widest.map(({ bar }) => bar) } };
}

/** A value a share less or more; of whole things at least one less or more, and never none. */
function ends(value: number, by: number, whole?: true): number {
  const moved = Number((value * (1 + by)).toPrecision(12));
  if (!whole) return moved;
  return by < 0 ? Math.max(1, Math.min(value - 1, Math.round(moved))) : Math.max(value + 1, Math.round(moved));
}

function bandFaults(
  bands: Readonly<Record<string, { low: number; high: number }>>,
  inputs: readonly PriceInput[],
): FieldError[] {
  return Object.entries(bands).flatMap(([id, { low, high }]): FieldError[] => {
    const input = inputs.find((one) => one.id === id);
    if (!input) {
      return [
        {
          field: id,
          message: `Nothing that this price depends on is called so; it depends on ${inputs.map((one) => one.id).join(', ')}. Take one of these.`,
        },
      ];
    }
    if (low >= 0 && low <= input.value && input.value <= high && Number.isFinite(high)) return [];
    return [
      {
        field: id,
        message: `The band of ${input.label}, ${low} to ${high}, does not hold its value, ${input.value}. Give a low end up to it and a high end from it.`,
      },
    ];
  });
}
