import { answer, type EvidenceNote, type Outcome, refuse } from '../../model/evidence/index.ts';
import { dayAndNight, type History, logged, steady } from '../../model/resin/history.ts';
import type { TemperatureLog } from '../kit/temperature-log.ts';

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

/** The history that the reader described in one of three ways, in words too. */
export function historyOf(given: GivenTemperatures): Outcome<{ history: History; note: EvidenceNote }> {
  const { shopTemperature, dayTemperature, nightTemperature, log } = given;
  const swings = [dayTemperature, nightTemperature, given.warmHours, given.warmHoursLeft].some(
    (value) => value !== undefined,
  );
  const ways = [shopTemperature !== undefined, swings, log !== undefined];
  const fields = ['shopTemperature', 'dayTemperature', 'log'] as const;
  if (ways.filter(Boolean).length > 1) {
    return refuse(
      fields[ways.lastIndexOf(true)] as string,
      'The temperature of the shop was given more than once',
      'Keep one of an even temperature, day and night, or a log.',
    );
  }
  if (log) {
    return answer({
      history: logged(log.points),
      note: {
        text: `Temperatures from the log: ${log.note} After its last reading the temperature is taken to stay as it was then.`,
        basis: 'derived',
      },
    });
  }
  if (shopTemperature !== undefined) {
    return answer({
      history: steady(shopTemperature),
      note: { text: 'The shop is taken to keep one temperature, day and night.', basis: 'derived' },
    });
  }
  if (dayTemperature === undefined || nightTemperature === undefined) {
    if (!swings)
      return refuse(
        'shopTemperature',
        'Nothing was said of the temperature',
        'Give it, or that of day and night, or a log.',
      );
    return refuse(
      dayTemperature === undefined ? 'dayTemperature' : 'nightTemperature',
      'Of day and night one temperature is missing',
      'Give both, such as 21 °C and 14 °C.',
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
    note: {
      text: `${warmHours} h of a day at the one temperature and ${24 - warmHours} h at the other, changing over at once; ${left} h of the first were left at mixing.`,
      basis: 'derived',
    },
  });
}
