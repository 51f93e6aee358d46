import type { DataProblem } from '../../model/data/problem.ts';
import type { CaseOptions } from '../case/types.ts';
import { assumedHours, usualPeople } from '../plan/index.ts';
import { type MethodReading, readMethod } from '../read.ts';
import { type PlanClock, planClock } from '../schedule/calendar.ts';
import type { OpeningHours } from '../schedule/hours.ts';
import { readShop } from '../shop/index.ts';
import type { BatchRecord } from './record.ts';

/** A batch with what it was opened with, read. */
export interface OpenedCase {
  read: MethodReading;
  options: Pick<CaseOptions, 'pieces' | 'set' | 'shop'>;
  hours: OpeningHours;
  /** True where nobody told the hours. */
  assumedHours: boolean;
  people: number;
  /** Set where nobody told how many are there. */
  assumedPeople?: number;
  /** Day or local time at which the work was to begin: that of the case, else the day on which the batch was opened. */
  start: string;
}

/** Read what a batch was opened with, or everything wrong with its method and its shop record. */
export async function openedCase({
  method,
  case: told,
  opened,
  zone,
}: BatchRecord): Promise<{ ok: true; opened: OpenedCase } | { ok: false; problems: readonly DataProblem[] }> {
  const read = readMethod(method.text, method.file);
  const shopRead = told.shop === undefined ? undefined : readShop(told.shop);
  const problems = [...read.problems, ...(shopRead?.problems ?? [])];
  if (problems.length > 0) return { ok: false, problems };
  const shop = shopRead?.shop;
  const hours = (told.hours as OpeningHours | undefined) ?? shop?.calendar;
  const toldPeople = told.people ?? ((shop?.people ?? []).reduce((sum, { count }) => sum + count, 0) || undefined);
  const options = {
    ...(told.pieces === undefined ? {} : { pieces: told.pieces }),
    ...(told.set === undefined ? {} : { set: told.set }),
    ...(shop ? { shop } : {}),
  };
  const known = hours ?? assumedHours(shop?.zone ?? zone);
  return {
    ok: true,
    opened: {
      read,
      options,
      hours: known,
      assumedHours: hours === undefined,
      people: toldPeople ?? usualPeople,
      ...(toldPeople === undefined ? { assumedPeople: usualPeople } : {}),
      start: told.start ?? (await clockFrom(known.zone, opened)).momentAt(0).date,
    },
  };
}

/** A clock of a zone that counts from an instant. */
export const clockFrom = (zone: string, instant: string): Promise<PlanClock> =>
  planClock(zone, new Date(Math.floor(Date.parse(instant) / 60_000) * 60_000).toISOString());
