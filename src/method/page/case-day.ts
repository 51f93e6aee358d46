/** What is wrong with a day or a local time of a case, as a sentence; undefined where it is one. */
export function dayFault(text: string): string | undefined {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)(?: ([01]\d|2[0-3]):[0-5]\d)?$/.exec(text) ?? [];
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  if (year !== undefined && date.getUTCMonth() + 1 === Number(month) && date.getUTCDate() === Number(day))
    return undefined;
  return `“${text.slice(0, 40)}” is not a day of the calendar. Write year-month-day, such as 2027-01-12, with a time behind it where it matters: 2027-01-12 18:30.`;
}
