import type { Basis, Series, Timeline } from '../../model/evidence/index.ts';
import { type Acclimatisation, showingTimes } from '../../model/moisture/index.ts';
import { day } from '../../model/quantity/seconds.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';
import type { InRoom } from './cautions.ts';

/** What the calculator may tell, the headline first. */
export const figures = {
  withinOne: {
    label: 'Time until within 1 % of balance',
    unit: 's',
    digits: 2,
    help: 'Percentage points of moisture content, by the mean of the board.',
  },
  halfWay: { label: 'Time until half-way', unit: 's', digits: 2 },
  balance: { label: 'Moisture content at balance', unit: '%', digits: 2 },
  change: { label: 'Change to come', unit: '%', digits: 2, help: 'Below zero the board dries.' },
} as const satisfies Record<string, FigureDeclaration>;

const band =
  'Half and twice the time: diffusion coefficients differ by a factor of two between boards and ways of measuring.';
const shownPoints = 40;

/** The figures of a board that settles; its times rest on `basis`. */
export function figuresOf(
  { withinOne, halfWay, band: ends }: Acclimatisation,
  { start, balance }: InRoom,
  basis: Basis,
): Record<keyof typeof figures, FigureValue> {
  const time = (value: number, [low, high]: readonly [number, number]) => ({ value, low, high, band, basis });
  return {
    withinOne: {
      ...time(withinOne, ends.withinOne),
      ...(withinOne === 0 ? { note: 'The mean is within one percent of balance already.' } : {}),
    },
    halfWay: time(halfWay, ends.halfWay),
    balance: { value: balance, basis: 'derived', citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' } },
    change: { value: balance - start, basis: 'derived' },
  };
}

/** When the board is half-way and when it is ready; nothing is left to wait for where it comes in so near to balance. */
export function timelineOf({ withinOne, halfWay, band: ends }: Acclimatisation, basis: Basis): Timeline {
  const event = (id: string, label: string, at: number, [low, high]: readonly [number, number]) => ({
    id,
    label,
    at,
    low,
    high,
    basis,
  });
  const ready = event('ready', 'Within one point of balance: ready, if the meter agrees', withinOne, ends.withinOne);
  const events = withinOne === 0 ? [ready] : [event('half-way', 'Half-way to balance', halfWay, ends.halfWay), ready];
  return { zero: 'the day the board comes in', events: events.sort((one, other) => one.at - other.at) };
}

/** Moisture of face, middle and whole while the board settles. */
export function moistureSeries(board: Acclimatisation, { start, balance }: InRoom): Series {
  const points = showingTimes(board, shownPoints).map((time) => board.at(time));
  const line = (id: 'mean' | 'shell' | 'core', label: string) => ({
    id,
    label,
    unit: '%',
    values: points.map((point) => point[id]),
  });
  return {
    id: 'moisture',
    title: 'Moisture content of the board',
    axis: {
      label: 'Time in the room',
      unit: 'd',
      values: points.map((point) => Number((point.time / day).toPrecision(4))),
    },
    lines: [
      {
        ...line('mean', 'Mean, with its band'),
        low: points.map((point) => Math.min(point.mean, point.meanLow)),
        high: points.map((point) => Math.max(point.mean, point.meanHigh)),
      },
      line('shell', 'At the face'),
      line('core', 'In the middle'),
    ],
    description: `The mean moisture content goes from ${start.toFixed(1)} % towards ${balance.toFixed(1)} %, half-way in ${(board.halfWay / day).toPrecision(2)} days; the face leads and the middle follows.`,
  };
}
