import type { Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { foodBeforeCure, sheetWarnings } from '../../model/resin/resin.ts';
import { shopAirCautions } from '../../model/resin/shop-air.ts';
import type { CureEventId, Timetable } from '../../model/resin/timetable.ts';
import type { Resin } from '../../model/resin/types.ts';
import type { GivenHistory } from './history.ts';
import { noSureWindow, wait } from './words.ts';

const percent = (conversion: number) => `${Math.round(100 * conversion)} %`;

/** ‘it comes to 88 % of the cure, where its sheet’s own time and temperature bring 93 %’; undefined where even that is too far off. */
export function shortOfCure({ cured }: Timetable): string | undefined {
  if (!cured) return undefined;
  return `after ${wait(cured.at)} it comes to ${percent(cured.here)} of the cure, where ${wait(cured.stated.time)} at ${amount(cured.stated.celsius, 'Cel')} bring ${percent(cured.asStated)}`;
}

/**
 * The timetable in a sentence: when to coat, to sand, and to oil and lend it to food; or that this shop is too cold for it.
 *
 * Only a sheet's own cure at a temperature that it names, in a shop that suits it, has nothing to mind.
 */
export function verdictOf(resin: Resin, timetable: Timetable, { words, cautions, air }: GivenHistory): Verdict {
  const of = (id: CureEventId) => timetable.events.find((event) => event.id === id);
  const time = (id: CureEventId) => of(id)?.time ?? null;
  const [opens, closes, sand, full, food] = (
    ['recoatOpens', 'recoatCloses', 'sandable', 'fullCure', 'foodService'] as const
  ).map(time);
  const windowSaid = timetable.noWindow || of('recoatOpens') !== undefined;
  const next = timetable.noWindow
    ? [`next coat: ${noSureWindow}`]
    : !windowSaid
      ? []
      : opens === null || closes === null
        ? []
        : [`next coat from ${wait(opens as number)} to ${wait(closes as number)}`];
  const sanding = typeof sand === 'number' ? [`sand by hand for a coat after ${wait(sand)}`] : [];
  const before = [...next, ...sanding].join('; ');
  if (!of('fullCure')) {
    const missing = `names no full cure${windowSaid ? '' : ' and gives no window for the next coat'}`;
    return {
      level: 'unknown',
      text: `Your sheet ${missing}, so that no day can be given for machine, oil, food or handing over. Ask the maker.${before ? ` By the sheet, ${words}: ${before}.` : ''}`,
    };
  }
  if (typeof full !== 'number') {
    const short = shortOfCure(timetable);
    return {
      level: 'stop',
      text: `Not ${words}: it never cures as far as its sheet means${short ? ` (${short})` : ''}, so that no day can be given for oil, food or handing over. Warm it first.${before ? ` Until then: ${before}.` : ''}`,
    };
  }
  const declared = of('foodService')?.origin === 'sheet' ? '' : ', if its maker declares it for food';
  const use =
    typeof food !== 'number'
      ? `machine and oil after ${wait(full)}; for food it never cures far enough here`
      : Math.abs(food - full) < 1
        ? `machine and oil after ${wait(full)}, food then too${declared}`
        : `machine and oil after ${wait(full)}, food after ${wait(food)}${declared}`;
  const sentence = [before, use].filter(Boolean).join('; ');
  const sure =
    of('fullCure')?.origin === 'sheet' &&
    of('foodService')?.origin === 'sheet' &&
    typeof food === 'number' &&
    timetable.events.every(({ stated, decidedBy }) => !stated?.assumed && decidedBy !== 'cure') &&
    !timetable.noWindow &&
    of('recoatOpens') !== undefined &&
    cautions.length === 0 &&
    sheetWarnings(resin).every(({ level }) => level === 'note') &&
    shopAirCautions(air).length === 0;
  const whose = resin.fromSheet
    ? windowSaid
      ? ''
      : ' Your sheet gives no window for the next coat: ask the maker, or sand.'
    : ' Times of a kind of resin, not of yours: your sheet comes first.';
  const early = foodBeforeCure(resin);
  const why = early ? ` For food ${early}.` : '';
  const text = `${words.charAt(0).toUpperCase()}${words.slice(1)}: ${sentence}.${why}${whose}`;
  return { level: sure ? 'good' : 'care', text };
}
