import type { ResultTable, Timeline } from '../../model/evidence/index.ts';
import type { CureEventId, Timetable } from '../../model/resin/timetable.ts';
import { eventLabels, noSureWindow, originWords, sandedLabel, tableLabels, timedIds } from './words.ts';

/** Events that have no time where the shop is too cold for the cure. */
const waitsForCure: readonly CureEventId[] = ['lightUse', 'fullCure', 'oil', 'foodService'];

/** What happens when, from mixing; an event that never comes, or too far off, is none. */
export function timelineOf({ events, noWindow }: Timetable): Timeline {
  return {
    zero: 'mixing',
    events: events
      .flatMap((event) => {
        const { id, time, low, high, basis, decidedBy } = event;
        if (time === null) return [];
        return [
          {
            id: timedIds[id],
            label: noWindow && id === 'recoatOpens' ? sandedLabel : eventLabels[id],
            at: time,
            ...(low === null || high === null ? {} : { low, high }),
            ...(decidedBy === 'fullCure' || decidedBy === 'sandable' ? { after: timedIds[decidedBy] } : {}),
            basis,
            note: originWords(event),
          },
        ];
      })
      .sort((one, other) => one.at - other.at),
  };
}

/** The same as a table, with the cure that the clock has reached by then and where each time comes from. */
export function timetableTable({ events, noWindow }: Timetable): ResultTable {
  return {
    id: 'timetable',
    title: 'Timetable from mixing',
    columns: [
      { id: 'event', label: 'What' },
      { id: 'time', label: 'After', unit: 's', digits: 2 },
      { id: 'cure', label: 'Cure', unit: '%', digits: 2 },
      { id: 'origin', label: 'From' },
      { id: 'clock', label: 'Clock alone', unit: 's', digits: 2 },
    ],
    rows: [...events]
      .sort((one, other) => (one.time ?? Number.MAX_VALUE) - (other.time ?? Number.MAX_VALUE))
      .map((event) => [
        tableLabels[event.id],
        noWindow && event.id === 'recoatOpens'
          ? noSureWindow
          : (event.time ?? (waitsForCure.includes(event.id) ? 'not at this temperature' : null)),
        event.conversion === null ? null : 100 * event.conversion,
        originWords(event),
        event.clock,
      ]),
    basis: 'memory',
  };
}
