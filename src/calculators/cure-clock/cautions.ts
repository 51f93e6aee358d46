import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { glassTransition } from '../../model/resin/clock.ts';
import type { ResinKinetics } from '../../model/resin/fit.ts';
import type { History } from '../../model/resin/history.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import type { CureEvent, CureEventId, Timetable } from '../../model/resin/timetable.ts';
import type { Resin } from '../../model/resin/types.ts';
import { temperatureInBoth } from '../kit/both-units.ts';
import { eventLabels, wait } from './words.ts';

const standing = ['resin-skin', 'resin-dust', 'resin-food'];

/** Below this most sheets say no, °C; common practice. */
const coldShop = 15;
/** Conversion lost to cold that is worth a word. */
const worthSaying = 0.015;

/** What to beware of in this timetable, and with all curing resin. */
export function cautionsOf(resin: Resin, known: ResinKinetics, history: History, timetable: Timetable): Caution[] {
  const of = (id: CureEventId) => timetable.events.find((event) => event.id === id);
  return [
    ...softer(timetable, known),
    ...(history.lowest < coldShop ? [cold] : []),
    ...(of('foodService')?.origin === 'sheet' ? [] : [askMaker]),
    ...window(of('recoatCloses')),
    ...tooFar(timetable),
    ...sheetWarnings(resin),
    ...known.cautions,
    thinOnly,
    ...standing.flatMap((id) => cautionById(id) ?? []),
  ];
}

/** A shop colder than the sheet's temperature: later, and softer for good until it is warmed. */
function softer({ cured }: Timetable, { glass }: ResinKinetics): Caution[] {
  if (!cured || cured.here > cured.asStated - worthSaying) return [];
  const [here, there] = [cured.here, cured.asStated].map((conversion) => ({
    share: Math.round(100 * conversion),
    glass: temperatureInBoth(Math.round(glassTransition(conversion, glass))),
  }));
  return [
    {
      id: 'stays-softer',
      level: 'warning',
      text: `At this temperature the resin stays softer than the sheet means, however long it waits: its cure comes to about ${here?.share} % instead of ${there?.share} %, and it turns leathery from about ${here?.glass} instead of ${there?.glass}. Once it has gelled, warm it slowly for a day, no hotter than its sheet allows.`,
      basis: 'memory',
    },
  ];
}

const cold: Caution = {
  id: 'cold-shop',
  level: 'warning',
  text: 'Below about 15 °C (59 °F) most sheets say no: resin thickens and holds its bubbles, a damp waxy blush forms on it that the next coat does not hold to, and the cure stalls. Warm the shop, day and night, before you mix.',
  basis: 'shop-practice',
};

const askMaker: Caution = {
  id: 'ask-maker-food',
  level: 'warning',
  text: 'No sheet given here says when, or whether, this resin may touch food. Ask the maker for a written declaration and its conditions. The time shown is that of the full cure and clears nothing.',
  basis: 'shop-practice',
};

const thinOnly: Caution = {
  id: 'thin-layers-only',
  level: 'note',
  text: 'The clock is that of a coat or a thin layer. A deeper pour warms itself and gels sooner, down to a quarter of the time, and its window shuts sooner too: go by the finger test, and sand when in doubt.',
  basis: 'memory',
};

/** Where sheet or kind leave the window open for longer than the clock does. */
function window(shuts: CureEvent | undefined): Caution[] {
  if (!shuts?.stated || shuts.clock === null || shuts.time === null || shuts.clock > 0.9 * shuts.time) return [];
  return [
    {
      id: 'window-by-clock',
      level: 'note',
      text: `By the clock alone a thin layer would be past three quarters of its cure after ${wait(shuts.clock)}, before ${wait(shuts.time)}. Between the two the bond is less sure: pour early in the window, or sand.`,
      basis: 'memory',
    },
  ];
}

function tooFar({ events }: Timetable): Caution[] {
  const far = events.filter(({ time }) => time === null).map(({ id }) => eventLabels[id].toLowerCase());
  if (far.length === 0) return [];
  return [
    {
      id: 'too-far-off',
      level: 'warning',
      text: `Too far off to plan for at this temperature: ${far.join('; ')}. Warm the shop.`,
      basis: 'memory',
    },
  ];
}
