import { listed } from '../../model/quantity/index.ts';
import type { MethodPage } from '../page/types.ts';
import { isOwnSheet, type Leaving, saleFacts } from './facts.ts';

const namesDay = ({ kind }: Leaving): boolean => kind !== 'none';

/** What the day of a quote rests on, for the seller and not for the customer: sentences for the screen; none where no day is named. */
export function dayNotes(page: MethodPage): string[] {
  const { leaving, stops } = saleFacts(page);
  if (!namesDay(leaving) || stops.length > 0) return [];
  const { timetable, parameters } = page;
  const clocks = page.steps.flatMap(({ calculations }) => calculations.filter(({ use }) => use === 'cure-clock'));
  const generic = clocks.filter((clock) => !isOwnSheet(clock)).map(({ inputs }) => inputs['resin'] ?? '');
  const kinds = [...new Set(generic)].map(
    (id) => parameters.find(({ texts }) => Object.values(texts).includes(id))?.words.replace(/^[^:]*: /, '') ?? id,
  );
  const people = timetable?.assumedPeople;
  return [
    ...(kinds.length > 0
      ? [
          `The day rests on a kind of resin (${listed(kinds)}) as it usually cures, not on a data sheet that you gave: hold the times against your resin’s own sheet before you promise it.`,
        ]
      : []),
    ...(clocks.some(isOwnSheet) ? ['The day rests on your resin’s data sheet, at the temperatures of this case.'] : []),
    timetable?.assumedHours
      ? 'Nobody told the hours of the shop: the day is by assumed ones, Monday to Friday, 9 to 5.'
      : 'The day rests on the hours of your shop record, or of the calendar that was chosen: other work in them moves it.',
    ...(people === undefined
      ? []
      : [`Nobody told how many work at it: ${people} ${people === 1 ? 'person is' : 'people are'} assumed.`]),
  ];
}
