import { assumedHours, usualPeople } from '../plan/index.ts';
import { remembered } from '../remembered.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { readOpeningHours } from '../schedule/hours.ts';
import type { Shop } from '../shop/index.ts';
import { dayFault } from './case-day.ts';
import type { MethodQuestion } from './types.ts';

/** When somebody is there, from which day on, and what of it nobody told. */
export interface CaseTimes {
  /** As the planner takes them. */
  hours: OpeningHours;
  start: string;
  end?: string;
  people: number;
  /** True where no day was named: `start` is then a Monday that means nothing, in a zone whose clocks never change. */
  relative: boolean;
  assumedHours: boolean;
  /** Set where nobody told how many are there. */
  assumedPeople?: number;
  /** Zone of the hours as they were told. */
  zone: string;
}

/** Something wrong with a case beside its file: the field of the question, and the sentence. */
export interface CaseFault {
  field: string;
  message: string;
}

/** A Monday far from every holiday and session of a real calendar. */
const someMonday = '2001-01-01';

const fault = (field: string, message: string): CaseFault[] => [{ field, message }];

/** Everybody of the record; undefined where it names nobody. */
const peopleOf = (shop: Shop | undefined) =>
  (shop?.people ?? []).reduce((sum, { count }) => sum + count, 0) || undefined;

/** Hours as they were read: a case is asked again and again in the same. */
const hoursRead = remembered((told) => readOpeningHours(JSON.parse(told)), 20);

const hasWeek = ({ week = {} }: OpeningHours) => Object.values(week).some((ranges) => ranges.length > 0);

/** First day of the single sessions of hours that have no week. */
const firstSession = ({ sessions = [] }: OpeningHours) => [...sessions].sort()[0]?.slice(0, 10);

/**
 * The times of a case: what was asked, else what the shop record says, else assumed hours; without a day the plan counts its own days.
 *
 * @param here zone of the reader, for hours that are assumed
 */
export function timesOf(
  question: Pick<MethodQuestion, 'start' | 'end' | 'people' | 'hours'>,
  shop: Shop | undefined,
  here: string,
): { ok: true; times: CaseTimes } | { ok: false; faults: readonly CaseFault[] } {
  const { start, end } = question;
  const told = question.hours ?? shop?.calendar;
  const read = hoursRead(JSON.stringify(told ?? assumedHours(shop?.zone ?? here)));
  const toldPeople = question.people ?? peopleOf(shop);
  const people = toldPeople ?? usualPeople;
  const wrongDay = (field: 'start' | 'end') => {
    const text = question[field];
    const wrong = text === undefined ? undefined : dayFault(text);
    return wrong === undefined ? [] : fault(field, wrong);
  };
  const faults = [
    ...wrongDay('start'),
    ...wrongDay('end'),
    ...(Number.isInteger(people) && people >= 1 && people <= 999
      ? []
      : fault('people', `${people} people were asked for. Give a whole number from 1 to 999.`)),
    ...(read.ok
      ? []
      : read.faults.map(({ field, text }) => ({ field: field === '' ? 'hours' : `hours.${field}`, message: text }))),
  ];
  if (faults.length > 0 || !read.ok) return { ok: false, faults };
  if (start !== undefined && end !== undefined && end.slice(0, 10) < start.slice(0, 10))
    return {
      ok: false,
      faults: fault('end', `${end} lies before the start, ${start}. Give a later end, or an earlier start.`),
    };
  const { hours } = read;
  // Of single evenings the days are known, whether or not one was named.
  const known = start ?? (end === undefined && hasWeek(hours) ? undefined : (firstSession(hours) ?? daysBefore(end)));
  const relative = known === undefined;
  return {
    ok: true,
    times: {
      hours: relative ? { ...hours, zone: 'UTC' } : hours,
      start: known ?? someMonday,
      ...(end === undefined ? {} : { end }),
      people,
      relative,
      assumedHours: told === undefined,
      ...(toldPeople === undefined ? { assumedPeople: people } : {}),
      zone: hours.zone,
    },
  };
}

/** Room before a wanted end where no start was named: a plan that must be ready by a day begins as late as it can. */
const roomBefore = 120 * 86_400_000;

function daysBefore(end: string | undefined): string | undefined {
  return end === undefined ? undefined : new Date(Date.parse(end.slice(0, 10)) - roomBefore).toISOString().slice(0, 10);
}
