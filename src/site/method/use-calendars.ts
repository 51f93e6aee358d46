import useBaseUrl from '@docusaurus/useBaseUrl';
import { useEffect, useState } from 'react';
import type { PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage } from '../../method/page/types.ts';
import type { FieldError } from '../../model/evidence/index.ts';
import { calendarFault } from './question.ts';

/** The hours that an address names for a plan, and how the method is taught. */
export interface NamedHours {
  /** True while they are being looked for: nothing is asked before. */
  pending: boolean;
  calendars: readonly PlanCalendar[];
  taught?: MethodPage['taught'];
  /** Why there are none of that name. */
  faults: readonly FieldError[];
}

const none: NamedHours = { pending: false, calendars: [], faults: [] };
const awaited: NamedHours = { ...none, pending: true };

/**
 * Look the hours up that an address names; nothing is fetched where it names none.
 *
 * @param calendar their name, empty where there is none
 * @param text the method as written; undefined while it is not there
 */
export function useNamedHours(calendar: string, text: string | undefined): NamedHours {
  const address = useBaseUrl('/data/methods/calendars.json');
  const [found, setFound] = useState<{ of: string; hours: NamedHours } | undefined>();
  const named = calendar.trim();
  const key = text === undefined || named === '' ? undefined : `${named}\n${text}`;
  useEffect(() => {
    if (key === undefined || text === undefined) return;
    let gone = false;
    void namedHours(named, text, address).then((hours) => !gone && setFound({ of: key, hours }));
    return () => {
      gone = true;
    };
  }, [key, named, text, address]);
  if (named === '') return none;
  return found !== undefined && found.of === key ? found.hours : awaited;
}

async function namedHours(calendar: string, text: string, address: string): Promise<NamedHours> {
  try {
    const [calendars, { readMethod }] = await Promise.all([
      fetch(address).then((response) =>
        response.ok ? (response.json() as Promise<readonly PlanCalendar[]>) : Promise.reject(new Error()),
      ),
      import('../../method/read.ts'),
    ]);
    const taught = readMethod(text, '').record?.taught;
    return { pending: false, calendars, faults: calendarFault({ calendar }, calendars), ...(taught ? { taught } : {}) };
  } catch {
    const message = `The hours “${calendar.slice(0, 60)}” could not be fetched. Reload the page to try again, or take calendar out of the address.`;
    return { ...none, faults: [{ field: 'calendar', message }] };
  }
}
