import type { RawInputs } from '../../calculators/kit/calculator.ts';
import type { AddressedCase } from '../../method/documents/address.ts';
import { askedWith, type PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage, MethodQuestion } from '../../method/page/types.ts';
import type { DataProblem } from '../../model/data/problem.ts';
import type { FieldError } from '../../model/evidence/index.ts';
import { caseFields } from './case-form.ts';

const counted = ['pieces', 'people'] as const;

/** A whole number as typed; undefined where it is none. */
const countOf = (text: string) => (/^\s*\d{1,4}\s*$/.test(text) ? Number(text) : undefined);

/** What is wrong with the counts of a case, before anything is asked. */
export function countFaults(own: RawInputs): FieldError[] {
  return counted.flatMap((field) => {
    const text = own[field];
    if (text === undefined || text.trim() === '' || countOf(text) !== undefined) return [];
    return [{ field, message: `“${text.slice(0, 40)}” is not a whole number. Give one, such as 6.` }];
  });
}

/**
 * A question from what a reader changed; an empty field asks nothing.
 *
 * @param calendars those that may be chosen by name
 * @param taught how the method is taught, where it says so
 */
export function questionOf(
  base: Pick<MethodQuestion, 'text' | 'file' | 'shop'>,
  own: RawInputs,
  { calendars = [], taught }: { calendars?: readonly PlanCalendar[]; taught?: MethodPage['taught'] } = {},
): MethodQuestion {
  const given = Object.entries(own).filter(([, text]) => text.trim() !== '');
  const own1 = Object.fromEntries(given);
  const set = Object.fromEntries(given.filter(([name]) => !(caseFields as readonly string[]).includes(name)));
  const { start, end } = own1;
  const [pieces, people] = counted.map((name) => countOf(own1[name] ?? ''));
  const calendar = calendars.find(({ id }) => id === own1.calendar);
  const asked: MethodQuestion = {
    ...base,
    ...(Object.keys(set).length > 0 ? { set } : {}),
    ...(pieces === undefined ? {} : { pieces }),
    ...(people === undefined ? {} : { people }),
    ...(start === undefined ? {} : { start }),
    ...(end === undefined ? {} : { end }),
  };
  return calendar ? { ...asked, ...askedWith(calendar, taught ? { taught } : {}, asked) } : asked;
}

/** What was asked as an address holds it, with the name of the hours that were chosen. */
export function caseOfAddress(own: RawInputs): AddressedCase {
  const calendar = own.calendar?.trim() ?? '';
  const { set, pieces, start, end, people } = questionOf({ text: '', file: '' }, own);
  return {
    ...(set === undefined ? {} : { set }),
    ...(pieces === undefined ? {} : { pieces }),
    ...(start === undefined ? {} : { start }),
    ...(end === undefined ? {} : { end }),
    ...(people === undefined ? {} : { people }),
    ...(calendar === '' ? {} : { calendar }),
  };
}

/** A calendar of the address that is not there: nothing is planned by hours that nobody meant. */
export function calendarFault(own: RawInputs, calendars: readonly PlanCalendar[]): FieldError[] {
  const asked = own.calendar?.trim() ?? '';
  if (asked === '' || calendars.some(({ id }) => id === asked)) return [];
  const names = calendars.map(({ id }) => id).join(', ') || 'none';
  return [
    { field: 'calendar', message: `There is no calendar “${asked.slice(0, 60)}” here. Those that are: ${names}.` },
  ];
}

/** The field of a case that a problem is about; undefined where it is about none that a reader can change here. */
export function fieldOfProblem({ field }: DataProblem, page: Pick<MethodPage, 'parameters'>): string | undefined {
  const [branch = '', name = ''] = field.split('.');
  if ((caseFields as readonly string[]).includes(branch)) return branch;
  if (branch === 'makes') return 'pieces';
  if (branch !== 'parameters') return undefined;
  const parameter = page.parameters.find((each) => each.name === name);
  return parameter && Object.keys(parameter.texts)[0];
}
