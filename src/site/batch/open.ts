import { withOffset } from '../../method/batch/moment.ts';
import type { BatchRecord } from '../../method/batch/record.ts';
import { askedWith, type PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage } from '../../method/page/types.ts';
import { addressNames, reservedNames } from '../../method/record/address-names.ts';
import { newId } from '../kept/database.ts';

/** Names of an address that are about the case, or what is done with it, and no parameter of a method. */
const reserved: readonly string[] = [...reservedNames, ...addressNames];

/** A method as its text, with the name of its file. */
export interface MethodText {
  file: string;
  text: string;
}

const named = /^[a-z0-9][a-z0-9-]{0,80}$/;

/** Id of the method of the site that a batch was opened of; undefined where it was a file of the maker's own. */
export const houseMethod = (file: string): string | undefined => {
  const id = /^methods\/(.+)\.yaml$/.exec(file)?.[1];
  return id !== undefined && named.test(id) ? id : undefined;
};

/** Fetch a method of the site by its id. */
export async function methodText(id: string, href: (path: string) => string): Promise<MethodText | undefined> {
  if (!named.test(id)) return undefined;
  try {
    const answer = await fetch(href(`/data/methods/${id}.yaml`));
    if (!answer.ok) return undefined;
    const text = await answer.text();
    // A server may answer with a page where there is no such file.
    return /^\s*</.test(text) ? undefined : { file: `methods/${id}.yaml`, text };
  } catch {
    return undefined;
  }
}

/** A whole number of an address. */
const count = (text: string | null) => (text !== null && /^\d{1,3}$/.test(text) ? Number(text) : undefined);

/**
 * A new batch of a method and a case as an address says it: `pieces`, `start`, `people`, and parameters under their own names.
 *
 * @param shop the shop record (YAML) that stands now; it is kept with the batch
 * @param named calendars that the address may name, and how the method is taught: the hours of the one named are kept with the batch
 */
export function newBatch(
  { file, text }: MethodText,
  title: string,
  asked: URLSearchParams,
  now: number,
  shop?: string,
  { calendars = [], taught }: { calendars?: readonly PlanCalendar[]; taught?: MethodPage['taught'] } = {},
): BatchRecord {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const set = Object.fromEntries([...asked].filter(([name]) => !reserved.includes(name)));
  const [pieces, people, start] = [count(asked.get('pieces')), count(asked.get('people')), asked.get('start')];
  const own = {
    ...(start !== null && /^\d{4}-\d\d-\d\d( \d\d:\d\d)?$/.test(start) ? { start } : {}),
    ...(people === undefined ? {} : { people }),
  };
  const calendar = calendars.find(({ id }) => id === asked.get('calendar'));
  return {
    batch: 1,
    id: newId(),
    title,
    opened: withOffset(zone, now),
    zone,
    method: { file, text },
    case: {
      ...(pieces === undefined ? {} : { pieces }),
      ...(Object.keys(set).length > 0 ? { set } : {}),
      ...own,
      ...(calendar ? hoursOf(calendar, taught, own) : {}),
      ...(shop === undefined ? {} : { shop }),
    },
    entries: [],
  };
}

/** What a calendar says of a batch: its hours with their name, and the day and the people that it brings. From which evening on students are there, a batch does not ask. */
function hoursOf(
  calendar: PlanCalendar,
  taught: MethodPage['taught'],
  own: Pick<BatchRecord['case'], 'start' | 'people'>,
): Partial<BatchRecord['case']> {
  const { first: _, ...asked } = askedWith(calendar, taught ? { taught } : {}, own);
  return { ...(asked as Partial<BatchRecord['case']>), calendar: calendar.id };
}
