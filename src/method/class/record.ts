import * as z from 'zod/mini';
import type { DataProblem } from '../../model/data/problem.ts';
import { readYamlRecord } from '../../model/data/yaml.ts';

/** Places of a class, at most: no teacher looks after more at machines, and no sheet shows more. */
export const mostPlaces = 30;

/** Characters of a class as a file, at most: it may hold a method and a shop record of the greatest length, with each line end written as two. */
export const longestClass = 640_000;

const asTyped = (what: string, most = 4000) =>
  z
    .string()
    .check(z.maxLength(most, `It is longer than the ${most} characters that are taken. Shorten it.`), z.describe(what));

const set = z
  .record(asTyped('Name of a parameter, or of a measure of an outline: outline.length.', 80), asTyped('Its value.'))
  .check(z.describe('Parameters that differ from the method, by name, as typed.'));

const file = z.strictObject({
  file: asTyped('Name under which its problems are told.', 200),
  text: asTyped('The file itself (YAML).', 131_072),
});

const count = (what: string) =>
  z.int().check(z.minimum(0, 'It is 0 or more.'), z.maximum(20, 'It is 20 at most.'), z.describe(what));

/** A place of a class: one student, one piece. */
const place = z.strictObject({
  id: z
    .string()
    .check(
      z.regex(/^[^\s\p{Cc}]{1,12}$/u, 'A place is called by up to 12 characters without a space, such as 7 or B3.'),
      z.describe('What the place is called on the lists: a number, a bench.'),
    ),
  name: z.optional(asTyped('Who has it: initials are enough. It stays where the class is kept.', 80)),
  set,
});

/**
 * A class: one method, what is the same for everybody, and how each place differs. Everything is kept as it was typed, so that what cannot be
 * read yet is not lost.
 */
export const classRecord = z
  .strictObject({
    class: z
      .literal(1, { error: 'class is 1, the number of this format.' })
      .check(z.describe('The format of this file: 1.')),
    name: asTyped('What the class is called.', 120),
    method: z
      .union([z.strictObject({ id: asTyped('Id of a method of this site.', 80) }), file], {
        error: 'A method is named by its id, or given whole as file and text.',
      })
      .check(z.describe('The method that all places follow.')),
    common: z
      .strictObject({
        set,
        zone: z.optional(asTyped('Time zone of the evenings by its IANA name; the reader’s own where left out.', 60)),
        sessions: asTyped(
          'When somebody is there, one session a line: 2027-02-09 18:30-21:00, with teacher only behind one without students.',
        ),
        shop: z.optional(file),
      })
      .check(z.describe('What is the same for all places.')),
    people: z
      .strictObject({ teachers: count('Teachers in the room.'), helpers: count('Helpers in the room.') })
      .check(z.describe('Who is there beside the students.')),
    places: z.array(place).check(
      z.maxLength(mostPlaces, `A class has ${mostPlaces} places at most. Plan the others as a class of their own.`),
      z.refine<{ id: string }[]>(
        (places) => new Set(places.map(({ id }) => id)).size === places.length,
        'Two places are called the same. Give each a name of its own.',
      ),
      z.describe('The places, in the order in which they come to a machine.'),
    ),
  })
  .check(z.describe('A class of one method: what is the same for everybody, and how each place differs.'));

/** A class as it is kept and handed on. */
export type ClassRecord = z.output<typeof classRecord>;
export type ClassPlace = ClassRecord['places'][number];

/** A class as a file: JSON. */
export const classText = (record: ClassRecord): string => `${JSON.stringify(record, null, 2)}\n`;

/**
 * Read a class from the text of a file.
 *
 * @returns the class, or everything wrong with the text, each with its line and column
 */
export function readClass(
  text: string,
  name: string,
): { ok: true; record: ClassRecord } | { ok: false; problems: readonly DataProblem[] } {
  const { record, problems } = readYamlRecord(text.replace(/^\uFEFF/, ''), classRecord, name, longestClass);
  return record ? { ok: true, record } : { ok: false, problems };
}
