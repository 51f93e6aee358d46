import { answer, type Caution, type EvidenceNote, type Outcome, refuse } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { dayAndNight, type History, logGoesOn, logged, steady } from '../../model/resin/history.ts';
import { type AirOfShop, steadyAir } from '../../model/resin/shop-air.ts';
import type { TemperatureLog } from '../../model/resin/temperature-log.ts';

/** What the reader said of the temperature, in °C and hours. */
export interface GivenTemperatures {
  shopTemperature?: number | undefined;
  dayTemperature?: number | undefined;
  nightTemperature?: number | undefined;
  warmHours?: number | undefined;
  warmHoursLeft?: number | undefined;
  log?: TemperatureLog | undefined;
}

/** Hours of warmth a day where none are given. */
const usualWarmHours = 10;

/** The temperatures that the reader described, in words too. */
export interface GivenHistory {
  history: History;
  /** How cold and how warm it becomes, and what was given of day and night. */
  air: AirOfShop;
  /** The temperature as it stands in a sentence: ‘at 20 °C’. */
  words: string;
  note: EvidenceNote;
  /** What was taken for granted of the time that nobody described. */
  cautions: readonly Caution[];
}

/** The history that the reader described in one of three ways. */
export function historyOf(given: GivenTemperatures): Outcome<GivenHistory> {
  const { shopTemperature, dayTemperature, nightTemperature, log } = given;
  if (log) return answer(ofLog(log));
  if (shopTemperature !== undefined) {
    return answer({
      history: steady(shopTemperature),
      air: steadyAir(shopTemperature),
      words: `at ${amount(shopTemperature, 'Cel')}`,
      note: { text: 'The shop is taken to keep one temperature, day and night.', basis: 'derived' },
      cautions: [],
    });
  }
  if (dayTemperature === undefined || nightTemperature === undefined) {
    return refuse(
      'shopTemperature',
      'Nothing was said of the temperature',
      'Give it, or that of day and night, or a log.',
    );
  }
  const warmHours = given.warmHours ?? usualWarmHours;
  const left = given.warmHoursLeft ?? warmHours;
  if (left > warmHours) {
    return refuse(
      'warmHoursLeft',
      `${left} h of warmth cannot be left of ${warmHours} h a day`,
      'Give at most the warm hours of a day.',
    );
  }
  return answer({
    history: dayAndNight({ warm: dayTemperature, cool: nightTemperature }, warmHours, left),
    air: {
      lowest: Math.min(dayTemperature, nightTemperature),
      highest: Math.max(dayTemperature, nightTemperature),
      day: dayTemperature,
      night: nightTemperature,
    },
    words: `at ${amount(dayTemperature, 'Cel')} by day and ${amount(nightTemperature, 'Cel')} by night`,
    cautions: [],
    note: {
      text: `${warmHours} h of a day at the one temperature and ${24 - warmHours} h at the other, changing over at once; ${left} h of the first were left at mixing.`,
      basis: 'derived',
    },
  });
}

/** A log, and how it is taken to go on after its last reading. */
function ofLog({ points, note }: TemperatureLog): GivenHistory {
  const goesOn = logGoesOn(points);
  const end = points.at(-1)?.time ?? 0;
  const after =
    goesOn.as === 'last-day'
      ? 'Its last 24 hours are taken to come again every day.'
      : `It covers less than a day, so its coldest reading, ${amount(goesOn.celsius, 'Cel')}, is taken to stay.`;
  return {
    history: logged(points),
    air: {
      lowest: Math.min(...points.map(({ celsius }) => celsius)),
      highest: Math.max(...points.map(({ celsius }) => celsius)),
    },
    words: 'by your log',
    note: { text: `Temperatures from the log: ${note} ${after}`, basis: 'derived' },
    cautions: [
      {
        id: 'log-goes-on',
        level: 'warning',
        own: true,
        text: `After the ${amount(end, 's', 2)} of your log the temperature is assumed: ${after.charAt(0).toLowerCase()}${after.slice(1)} Log on, and ask again.`,
        why: 'A reading of a warm moment must not stand for all the nights that follow. A log of a whole day shows what its night does.',
        basis: 'shop-practice',
      },
    ],
  };
}
