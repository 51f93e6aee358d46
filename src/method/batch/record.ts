import * as z from 'zod/mini';
import { schemaFaults } from '../../model/data/issue.ts';
import { openingHours } from '../schedule/hours.ts';

/** Longest texts of a record, characters. */
const longest = { line: 200, words: 4_000, name: 120, method: 131_072, shop: 131_072 };

/** Entries of one batch at most: a week of writing every minute of every working day. */
export const mostEntries = 5_000;

const moment = z.string().check(
  z.maxLength(40),
  z.regex(
    /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d{1,9})?)?(Z|[+-]\d\d:\d\d)$/,
    'A moment is a day, a time and the distance from universal time (RFC 3339), such as 2027-01-12T18:30:00-06:00.',
  ),
  z.refine<string>((text) => Number.isFinite(Date.parse(text)) && isDay(text), 'There is no such day or time.'),
);

/** Whether the day of a text is one of the calendar: the clock of a browser takes the 30th of February for the 2nd of March. */
function isDay(text: string): boolean {
  const [year, month, day] = text.slice(0, 10).split('-').map(Number) as [number, number, number];
  return new Date(Date.UTC(year, month - 1, day)).getUTCMonth() + 1 === month;
}

const id = z
  .string()
  .check(
    z.regex(
      /^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/,
      'An id is 1 to 64 letters, digits and hyphens, and begins with a letter or digit.',
    ),
  );

const line = z.string().check(z.minLength(1), z.maxLength(longest.line));
const words = z.string().check(z.minLength(1), z.maxLength(longest.words));
const name = z.string().check(z.minLength(1), z.maxLength(longest.name));

const piece = z.int().check(z.minimum(1), z.maximum(200));
const pieces = z.tuple([piece, piece]).check(
  z.refine<[number, number]>(([first, last]) => first <= last, 'The first piece comes before the last: write [1, 4].'),
  z.describe('First and last piece, from 1; all of them where left out.'),
);

const written = {
  id: id.check(z.describe('Its own, given by whoever wrote it; by it the same entry is known again in another file.')),
  at: moment.check(z.describe('When it was written down.')),
};
const when = moment.check(z.describe('When it happened, as the maker wrote it.'));
const step = name.check(z.describe('Name of the step in the method.'));

const started = z
  .strictObject({ kind: z.literal('started'), ...written, step, pieces: z.exactOptional(pieces), when })
  .check(z.describe('Work on a step began.'));
const finished = z
  .strictObject({ kind: z.literal('finished'), ...written, step, pieces: z.exactOptional(pieces), when })
  .check(z.describe('Work on a step was over.'));
const reading = z
  .strictObject({
    kind: z.literal('reading'),
    ...written,
    step: step.check(z.describe('Name of the step at which it was read.')),
    calculation: name.check(z.describe('Name of the calculation that asks for it.')),
    input: name.check(z.describe('Name of its input, such as dayTemperature.')),
    value: line.check(z.describe('As it was read, with its unit: 16 °C.')),
    when,
  })
  .check(z.describe('Something measured. It stands in place of what the method says.'));
const lot = z
  .strictObject({
    kind: z.literal('lot'),
    ...written,
    material: z.exactOptional(name.check(z.describe('Name of the material in the method.'))),
    what: z.exactOptional(line.check(z.describe('What it is, where the method has no name for it.'))),
    lot: line.check(z.describe('Number or name of the lot, as it stands on the can, the bag or the board.')),
  })
  .check(z.describe('The lot of something that went into the pieces.'));
const deviation = z
  .strictObject({
    kind: z.literal('deviation'),
    ...written,
    step: z.exactOptional(step),
    text: words.check(z.describe('What was done otherwise than the method says, and why.')),
    when,
  })
  .check(z.describe('What was done otherwise.'));
const correction = z
  .strictObject({
    kind: z.literal('correction'),
    ...written,
    strikes: id.check(z.describe('Id of the entry that does not hold. It stays in the record, struck.')),
    why: words.check(z.describe('What was wrong with it.')),
  })
  .check(z.describe('Strikes another entry. Nothing is erased.'));

export const batchEntry = z.discriminatedUnion('kind', [started, finished, reading, lot, deviation, correction]);

/** The record of a batch as a file holds it. Photographs are left out: it is text alone, and small enough to keep for years. */
export const batchRecord = z.strictObject({
  batch: z.literal(1).check(z.describe('Version of this format.')),
  id: id.check(z.describe('Id of the batch.')),
  title: line.check(z.describe('What the shop calls it.')),
  opened: moment.check(z.describe('When it was opened.')),
  zone: name.check(z.describe('Time zone of the shop, by its name in the IANA list.')),
  method: z
    .strictObject({
      file: line.check(z.describe('Name of the file of the method.')),
      text: z
        .string()
        .check(z.minLength(1), z.maxLength(longest.method), z.describe('The whole method as it was on that day.')),
    })
    .check(z.describe('The method, kept as it was.')),
  case: z
    .strictObject({
      pieces: z.exactOptional(piece.check(z.describe('How many are made; as many as the method says where left out.'))),
      set: z.exactOptional(
        z.record(name, z.string().check(z.maxLength(longest.words))).check(z.describe('Parameters by name, as texts.')),
      ),
      start: z.exactOptional(
        z
          .string()
          .check(
            z.regex(/^\d{4}-\d\d-\d\d( \d\d:\d\d)?$/, 'A day, 2027-01-12, or a local time, 2027-01-12 18:30.'),
            z.describe('When the work was to begin.'),
          ),
      ),
      people: z.exactOptional(z.int().check(z.minimum(1), z.maximum(100), z.describe('How many work at it.'))),
      hours: z.exactOptional(
        openingHours.check(z.describe('When somebody is there; as the shop record says where left out.')),
      ),
      // Earlier versions wrote it, and what they wrote is read.
      first: z.exactOptional(line.check(z.describe('Left over from earlier versions; nothing is reckoned from it.'))),
      calendar: z.exactOptional(name.check(z.describe('Name that addresses of the site have for these hours.'))),
      shop: z.exactOptional(
        z.string().check(z.maxLength(longest.shop), z.describe('The shop record as it was on that day (YAML).')),
      ),
    })
    .check(z.describe('How this making differs from the method’s own, kept as it was.')),
  entries: z.array(batchEntry).check(z.maxLength(mostEntries), z.describe('What was written down, in any order.')),
});

export type BatchRecord = z.output<typeof batchRecord>;
export type BatchEntry = z.output<typeof batchEntry>;
export type EntryKind = BatchEntry['kind'];
export type EntryOf<Kind extends EntryKind> = Extract<BatchEntry, { kind: Kind }>;

/** More than this is no list of batches, characters. */
export const largestBatches = 10_000_000;

/** Name of the file of a package that holds the batches whole: what an import reads. */
export const batchesFile = 'batches.json';

/** Batches as the text of a file that `readBatches` reads. */
export const batchesText = (batches: readonly BatchRecord[]): string => `${JSON.stringify({ batches }, null, 1)}\n`;

/** Batches of a text, or what is wrong with it: the text is taken whole or refused whole. */
export type BatchReading = { ok: true; batches: BatchRecord[] } | { ok: false; problems: string[] };

/**
 * Read the text of a file of batches: one batch, a list of them, or `{ batches: […] }`. Whoever wrote it, it is read as data alone.
 *
 * @param file its name, for messages
 */
export function readBatches(text: string, file: string): BatchReading {
  const refuse = (...problems: string[]): BatchReading => ({
    ok: false,
    problems: problems.map((problem) => `${file}: ${problem} Nothing was taken from it.`),
  });
  if (text.length > largestBatches)
    return refuse(
      `it has ${text.length} characters; ${largestBatches} are read at most. Export fewer batches at a time.`,
    );
  let data: unknown;
  let reserved = false;
  try {
    data = JSON.parse(text, (key, value) => {
      reserved ||= key === '__proto__';
      return value;
    });
  } catch (error) {
    return refuse(
      `it is not whole JSON (${(error as Error).message.slice(0, 120)}). Export the batches again where they are kept.`,
    );
  }
  // The schema would leave such a field out in silence.
  if (reserved) return refuse('a field of it is called __proto__, which none may be. Take that field out.');
  const list = listIn(data);
  if (!list)
    return refuse(
      'it holds no batch: one is a group of fields that begins with "batch": 1. Export it again where it is kept.',
    );
  const batches: BatchRecord[] = [];
  const problems: string[] = [];
  for (const [at, entry] of list.entries()) {
    const read = readBatch(entry);
    if (read.ok) batches.push(read.batch);
    else problems.push(...read.problems.map((problem) => `batch ${at + 1}, ${problem}`));
    if (problems.length >= 10) break;
  }
  return problems.length > 0 ? refuse(...problems.slice(0, 10)) : { ok: true, batches };
}

/** One batch out of data, or everything wrong with it: field, what was read, what is allowed. */
export function readBatch(data: unknown): { ok: true; batch: BatchRecord } | { ok: false; problems: string[] } {
  const read = z.safeParse(batchRecord, data);
  if (read.success) return { ok: true, batch: read.data };
  const faults = read.error.issues.slice(0, 10).flatMap((issue) => schemaFaults([issue], data, batchRecord));
  return { ok: false, problems: faults.map(({ path, message }) => `${path.join('.') || 'the whole'}: ${message}`) };
}

function listIn(data: unknown): readonly unknown[] | undefined {
  if (Array.isArray(data)) return data;
  if (typeof data !== 'object' || data === null) return undefined;
  if (Object.hasOwn(data, 'batches')) {
    const { batches } = data as { batches: unknown };
    return Array.isArray(batches) ? batches : undefined;
  }
  return Object.hasOwn(data, 'batch') ? [data] : undefined;
}
