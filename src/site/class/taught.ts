import { classLines, type PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage } from '../../method/page/types.ts';
import { readMethod } from '../../method/read.ts';

/**
 * Sessions and zone that a class of a method begins with: those of the calendar that is asked for, else of the one that the method is taught by.
 *
 * @param calendar its name; undefined where nobody asked for one
 * @param known how the method is taught, where it is read already
 * @returns undefined where there is none, or it cannot be fetched: the teacher then writes the sessions
 */
export async function taughtAt(
  id: string,
  calendar: string | undefined,
  href: (path: string) => string,
  known?: MethodPage['taught'],
): Promise<{ sessions: string; zone: string } | undefined> {
  try {
    const [taught, calendars] = await Promise.all([
      known ??
        fetch(href(`/data/methods/${id}.yaml`))
          .then((answer) => (answer.ok ? answer.text() : ''))
          .then((text) => readMethod(text, id).record?.taught),
      fetch(href('/data/methods/calendars.json')).then((answer) => answer.json() as Promise<readonly PlanCalendar[]>),
    ]);
    const found = calendars.find((each) => each.id === (calendar ?? taught?.calendar));
    if (!found) return undefined;
    const evenings = taught?.calendar === found.id ? taught.evenings : (found.hours.sessions?.length ?? 0);
    return { sessions: classLines(found, evenings).join('\n'), zone: found.hours.zone };
  } catch {
    return undefined;
  }
}
