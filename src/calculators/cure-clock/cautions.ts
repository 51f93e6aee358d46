import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { ResinKinetics } from '../../model/resin/fit.ts';
import { sheetWarnings } from '../../model/resin/resin.ts';
import { shopAirCautions } from '../../model/resin/shop-air.ts';
import type { CureEvent, CureEventId, Timetable } from '../../model/resin/timetable.ts';
import type { Resin } from '../../model/resin/types.ts';
import { sheetTolerance } from '../../model/resin/waits.ts';
import type { GivenHistory } from './history.ts';
import { shortOfCure } from './verdict.ts';
import { eventLabels, wait } from './words.ts';

export const standing = ['resin-dust', 'resin-skin', 'resin-food'];

/** What to beware of in this timetable, its own dangers first, and with all curing resin. */
export function cautionsOf(resin: Resin, known: ResinKinetics, given: GivenHistory, timetable: Timetable): Caution[] {
  const of = (id: CureEventId) => timetable.events.find((event) => event.id === id);
  return [
    ...neverCured(of('fullCure'), timetable),
    ...tooFar(timetable),
    ...later(of('fullCure')),
    ...shopAirCautions(given.air),
    ...given.cautions,
    ...assumed(resin, timetable),
    ...(timetable.noWindow ? [noWindow] : []),
    ...(of('sandable')?.time ? [byHand] : []),
    ...((of('foodService')?.origin ?? 'sheet') === 'sheet' ? [] : [askMaker]),
    ...window(of('recoatCloses')),
    ...sheetWarnings(resin),
    ...known.cautions,
    thinOnly,
    ...standing.flatMap((id) => cautionById(id) ?? []),
  ];
}

/** A shop in which the resin never comes as far as its sheet means. */
function neverCured(full: CureEvent | undefined, timetable: Timetable): Caution[] {
  if (full?.time !== null) return [];
  const short = shortOfCure(timetable);
  return [
    {
      id: 'never-cured',
      level: 'danger',
      own: true,
      text: 'Do not oil it, use it or hand it over: in this shop it never cures as far as its sheet means. Once it has gelled through and is cold again, warm it slowly for a day, no hotter than its sheet allows; then count its days.',
      why: `${short ? `${short.charAt(0).toUpperCase()}${short.slice(1)}. ` : ''}A resin stops hardening when its glass transition has climbed above the room. What has not reacted by then stays in it: it can make skin allergic, pass into food, soften and smell.`,
      basis: 'memory',
    },
  ];
}

function tooFar({ events }: Timetable): Caution[] {
  // Those that wait for the cure are spoken of above.
  const ids: readonly CureEventId[] = ['lightUse', 'fullCure', 'oil', 'foodService'];
  const far = events.filter(({ time, id }) => time === null && !ids.includes(id)).map(({ id }) => eventLabels[id]);
  if (far.length === 0) return [];
  return [
    {
      id: 'too-far-off',
      level: 'warning',
      own: true,
      text: `Warm the shop: too far off to plan for are ${far.map((label) => label.toLowerCase()).join('; ')}.`,
      basis: 'memory',
    },
  ];
}

/** A shop in which full cure comes, later than by age. */
function later(full: CureEvent | undefined): Caution[] {
  if (full?.decidedBy !== 'cure' || full.time === null || !full.stated) return [];
  return [
    {
      id: 'cures-late',
      level: 'warning',
      own: true,
      text: `Before machine, oil or food wait the whole ${wait(full.time)} from the last coat or pour, or warm it for a day once it has gelled through and is cold again: ${wait(full.stated.time)} at ${amount(full.stated.celsius, 'Cel')} are not enough in this shop.`,
      why: `In the cold a resin not only cures more slowly: it turns glassy before it has come as far, and creeps from there. The time shown is when this shop has brought it as far as the stated time does at its own temperature, less a tolerance of ${amount(sheetTolerance, 'K', 1)}.`,
      basis: 'memory',
    },
  ];
}

/** Times of a sheet that names no temperature for them. */
function assumed(resin: Resin, { events }: Timetable): Caution[] {
  const said = events.filter(({ stated, origin }) => stated?.assumed && origin === 'sheet');
  const [first] = said;
  if (!first?.stated) return [];
  const warmest = Math.max(...said.map(({ stated }) => stated?.celsius ?? 0));
  return [
    {
      id: 'times-temperature-assumed',
      level: 'warning',
      own: true,
      text: `Ask for the temperature of the times of ${resin.name}: its sheet names none for a shop, and ${amount(warmest, 'Cel')} is assumed.`,
      why: 'Taken so warm, no wait comes out short in a cooler shop. The end of the recoat window is taken for cold resin, so that it does not come out late.',
      basis: 'memory',
    },
  ];
}

const noWindow: Caution = {
  id: 'no-window',
  level: 'warning',
  own: true,
  text: 'Sand before the next coat: this sheet leaves no sure window.',
  why: 'Where figures of a sheet leave two answers, the window opens at the later and shuts at the earlier. Here less is left between the two than a coat takes, or than its ends are sure to: a shop two degrees warmer or colder moves both.',
  basis: 'derived',
};

const byHand: Caution = {
  id: 'sand-by-hand',
  level: 'danger',
  text: 'Sand for a coat by hand, wet, or with mask and gloves. No machine before the full cure.',
  why: 'Hard enough to sand is not cured. Dust of resin that has not cured through can make skin and airways allergic for life, and a machine throws it everywhere.',
  basis: 'shop-practice',
};

const askMaker: Caution = {
  id: 'ask-maker-food',
  level: 'warning',
  text: 'Ask the maker for a written declaration before this resin touches food, and for its conditions.',
  why: 'No sheet given here says when, or whether, it may. The time shown is that of the full cure and clears nothing.',
  basis: 'shop-practice',
};

const thinOnly: Caution = {
  id: 'thin-layers-only',
  level: 'note',
  text: 'A deeper pour warms itself and gels sooner, down to a quarter of the time, and its window shuts sooner too: go by the finger test, and sand when in doubt.',
  why: 'The clock is that of a coat or a thin layer.',
  basis: 'memory',
};

/** Where sheet or kind leave the window open for longer than the clock does. */
function window(shuts: CureEvent | undefined): Caution[] {
  if (!shuts?.stated || shuts.clock === null || shuts.time === null || shuts.clock > 0.9 * shuts.time) return [];
  return [
    {
      id: 'window-by-clock',
      level: 'warning',
      text: `Pour early in the window, or sand: after ${wait(shuts.clock)} the bond is less sure, long before ${wait(shuts.time)}.`,
      why: 'By the clock alone a thin layer is then past three quarters of its cure.',
      basis: 'memory',
    },
  ];
}
