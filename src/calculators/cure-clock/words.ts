import { formatQuantity } from '../../model/quantity/index.ts';
import type { CureEvent, CureEventId } from '../../model/resin/timetable.ts';
import { temperatureInBoth } from '../kit/both-units.ts';

/** What each event is called. */
export const eventLabels: Readonly<Record<CureEventId, string>> = {
  work: 'Too thick to work',
  gel: 'Gelled',
  recoatOpens: 'Next coat from',
  recoatCloses: 'Next coat without sanding until',
  sandable: 'On to the next stage: turn, trim, sand for a coat',
  lightUse: 'Light use, dry and cool',
  fullCure: 'Fully cured',
  oil: 'Oil or wax over it',
  foodService: 'Food, if the maker declares it for food',
};

/** The same in the timetable, short enough for a phone. */
export const tableLabels: Readonly<Record<CureEventId, string>> = {
  work: 'Too thick',
  gel: 'Gel',
  recoatOpens: 'Coat from',
  recoatCloses: 'Coat until',
  sandable: 'Next stage',
  lightUse: 'Light use',
  fullCure: 'Full cure',
  oil: 'Oil or wax',
  foodService: 'Food',
};

/** A time in the unit that suits it. */
export function wait(seconds: number): string {
  return formatQuantity(seconds, 's', undefined, { digits: 2 });
}

/** Where an event's time comes from, in a word or two. */
export function originWords({ id, origin, stated }: CureEvent): string {
  if (origin === 'sheet') return 'data sheet';
  if (origin === 'kind') return 'generic kind';
  if (origin === 'clock') return stated ? 'clock, set by the sheet’s opening' : 'clock';
  return id === 'foodService' ? 'common practice; ask the maker' : 'common practice';
}

/** Where an event's time comes from, in a sentence. */
export function originNote(event: CureEvent): string {
  const { id, origin, stated, time } = event;
  if (!stated || time === null) return 'By the clock alone: neither sheet nor kind says it.';
  const said = `${wait(stated.time)} at ${temperatureInBoth(stated.celsius)}`;
  const carried = Math.abs(time / stated.time - 1) < 0.005 ? '' : ', carried over to this temperature';
  if (origin === 'sheet') return `The sheet says ${said}${carried}.`;
  if (origin === 'kind') return `Of this kind of resin: ${said}${carried}. Your own sheet comes first.`;
  if (origin === 'clock') return 'The sheet says when the window opens; the clock, set by that, when it shuts.';
  if (id === 'foodService')
    return `Nothing says that this resin may touch food: ask the maker. Shown is the time to full cure, ${said}${carried}; to wait for that is common practice.`;
  if (id === 'oil') return 'Common practice: not before the full cure, or oil stays soft over it.';
  if (id === 'lightUse')
    return `Common practice: three of the seven days to the full cure, and not before the next stage${carried}.`;
  return `Common practice, ${said}${carried}.`;
}
