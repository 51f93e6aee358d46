import * as z from 'zod/mini';
import { recordId, recordOrder, words } from '../data/fields.ts';

const grade = z.int().check(z.minimum(12), z.maximum(5000));
const common = { id: recordId, order: recordOrder, label: words, basis: z.enum(['shop-practice', 'memory']) };

/** What a tool leaves on wood or resin, and the grade that takes its marks out. */
const surface = z.strictObject({
  ...common,
  is: z.literal('surface'),
  first: grade.check(z.describe('P number of the grade to start with.')),
  why: words,
});

/** A finish, by what it asks of the surface, and the last grade before it: the sheet of the finish wins. */
const finish = z.strictObject({
  ...common,
  is: z.literal('finish'),
  last: grade.check(z.describe('P number of the last grade.')),
  waterBased: z.boolean().check(z.describe('Whether the finish itself holds water and raises the grain.')),
  why: words,
});

/** How the sanding is done, and how fast. */
const method = z.strictObject({
  ...common,
  is: z.literal('method'),
  minutes: z.number().check(z.positive(), z.describe('Minutes for a square metre and one grade.')),
  coarse: z.number().check(z.positive(), z.describe('Square metres from one disc or sheet, up to P150.')),
  fine: z.number().check(z.positive(), z.describe('Square metres from one disc or sheet, finer than P150.')),
});

/** One record of sanding as entered: a surface that it starts from, a finish that it ends at, or a way to do it. */
export const abrasiveRecordSchema = z.discriminatedUnion('is', [surface, finish, method]);
export type AbrasiveRecord = z.infer<typeof abrasiveRecordSchema>;
