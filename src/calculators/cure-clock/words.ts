import { amount } from '../../model/quantity/index.ts';
import { foodBeforeCure } from '../../model/resin/resin.ts';
import type { CureEvent, CureEventId } from '../../model/resin/timetable.ts';
import type { Resin } from '../../model/resin/types.ts';

/** What each event is called. */
export const eventLabels: Readonly<Record<CureEventId, string>> = {
  work: 'Too thick to work',
  gel: 'Gelled',
  recoatOpens: 'Next coat from',
  recoatCloses: 'Next coat without sanding until',
  sandable: 'On to the next stage: turn, trim, sand by hand for a coat',
  lightUse: 'Light use, dry and cool',
  fullCure: 'Fully cured',
  oil: 'Sand by machine, oil or wax',
  foodService: 'Food, if the maker declares it for food',
};

/** The names by which a timeline knows them; `food` is what every calculator calls the day from which food may touch a board. */
export const timedIds: Readonly<Record<CureEventId, string>> = {
  work: 'work',
  gel: 'gel',
  recoatOpens: 'recoat-opens',
  recoatCloses: 'recoat-closes',
  sandable: 'sandable',
  lightUse: 'light-use',
  fullCure: 'full-cure',
  oil: 'oil',
  foodService: 'food',
};

/** What the opening of the window is called where there is none to be sure of, and the coat goes on sanded resin. */
export const sandedLabel = 'Next coat, sanded first, from';

/** The same in the timetable, short enough for a phone. */
export const tableLabels: Readonly<Record<CureEventId, string>> = {
  work: 'Too thick',
  gel: 'Gel',
  recoatOpens: 'Coat from',
  recoatCloses: 'Coat until',
  sandable: 'Next stage',
  lightUse: 'Light use',
  fullCure: 'Full cure',
  oil: 'Machine, oil',
  foodService: 'Food',
};

/** What stands in place of a recoat window that is too narrow to be sure of. */
export const noSureWindow = 'no sure window: sand first';

/** A time for a sentence, in the unit that suits it. */
export function wait(seconds: number): string {
  return amount(seconds, 's', 2);
}

/** Where an event's time comes from, in a word or two. */
export function originWords({ id, origin, stated }: CureEvent): string {
  if (origin === 'sheet') return stated?.assumed ? 'data sheet, temperature assumed' : 'data sheet';
  if (origin === 'kind') return 'generic kind';
  if (origin === 'clock') return stated ? 'clock, set by the sheet’s opening' : 'clock';
  return id === 'foodService' ? 'common practice; ask the maker' : 'common practice';
}

/** What held a wait back beyond the time that was stated; empty where nothing did. */
function heldBack({ id, decidedBy }: CureEvent, resin: Resin): string {
  if (decidedBy === 'cure')
    return ' By then this shop has cured it as far as that time does at its own temperature; by age alone it would come sooner.';
  if (decidedBy === 'fullCure') {
    const why = foodBeforeCure(resin);
    return ` Shown is the full cure${why ? `: ${why}.` : ', which is later: nothing is lent to food before it.'}`;
  }
  if (decidedBy === 'sandable' && id !== 'recoatOpens')
    return ' Shown is the time to the next stage, which is later: nothing is cured before it is hard enough to sand.';
  return '';
}

/** Where an event's time comes from, in a sentence or two that fit the figure. */
export function originNote(event: CureEvent, resin: Resin): string {
  const { id, origin, stated, time, decidedBy } = event;
  if (!stated || time === null) return 'By the clock alone: neither sheet nor kind says it.';
  const at = stated.assumed
    ? `${amount(stated.celsius, 'Cel')}, which is assumed: it names no temperature`
    : amount(stated.celsius, 'Cel');
  const said = `${wait(stated.time)} at ${at}`;
  const same = decidedBy !== 'stated' || Math.abs(time / stated.time - 1) < 0.005;
  const carried = same ? '' : ', carried over to this temperature';
  const held = heldBack(event, resin);
  if (decidedBy === 'sandable' && id === 'recoatOpens')
    return `It leaves no sure window: sand by hand, wet or with mask and gloves, and coat. The time is that to the next stage, ${said}.`;
  if (origin === 'sheet') return `The sheet says ${said}${carried}.${held}`;
  if (origin === 'kind') return `Of this kind of resin: ${said}${carried}. Your own sheet comes first.${held}`;
  if (origin === 'clock') return 'The sheet says when the window opens; the clock, set by that, when it shuts.';
  if (id === 'foodService')
    return `Nothing says that this resin may touch food: ask the maker. Shown is the time to full cure, ${said}${carried}; to wait for that is common practice.${held}`;
  if (id === 'oil') return 'Common practice: not before the full cure, or oil stays soft over it.';
  if (id === 'lightUse')
    return `Common practice: three of the seven days to the full cure, and not before the next stage${carried}.${held}`;
  return `Common practice, ${said}${carried}.${held}`;
}
