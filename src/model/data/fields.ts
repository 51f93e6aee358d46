import * as z from 'zod/mini';
import { day, hour, minute, week } from '../quantity/seconds.ts';

/** A text of one line or more, never empty. */
export const words = z.string().check(z.minLength(1));

/** Id of a record: lower case with hyphens; also the name of its file. */
export const recordId = z
  .string()
  .check(
    z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'An id is in lower case with hyphens, such as mineral-oil.'),
    z.describe('Lower case with hyphens; also the name of the file, and how addresses name it.'),
  );

/** Where a record stands among those that are listed with it. */
export const recordOrder = z
  .int()
  .check(z.minimum(1), z.describe('Its place among those that it is listed with, from 1.'));

const secondsOf: Readonly<Record<string, number>> = { min: minute, h: hour, d: day, wk: week };

/** A length of time as a record writes it, `40 min`, `12 h`, `3 d` or `4 wk`; read as s. */
export const timeText = z.pipe(
  z
    .string()
    .check(z.regex(/^\d+(\.\d+)? (min|h|d|wk)$/, 'Write a number and its unit: min, h, d or wk, such as 12 h.')),
  z.transform((text: string) => {
    const [number, unit = ''] = text.split(' ');
    return Number(number) * (secondsOf[unit] ?? Number.NaN);
  }),
);

/** A figure that is called published says where it is printed. */
export const citesWhatIsPublished = z.refine<{ basis: string; citation?: unknown }>(
  ({ basis, citation }) => basis !== 'published' || citation !== undefined,
  'A figure that is published says where: add its citation.',
);
