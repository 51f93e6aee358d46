import * as z from 'zod/mini';
import {
  amount,
  excerpt,
  parseQuantity,
  type Read,
  type ReaderUnits,
  readerUnit,
  unitLabel,
  withUnit,
} from '../../model/quantity/index.ts';
import { missingCommas, readAll, splitEntries, splitParts, tightCommas } from '../../model/quantity/lists.ts';
import { pointCount } from '../../model/stock/index.ts';
import { isBare, readField } from '../kit/fields.ts';
import { type ListColumn, type ListEntry, type ListRow, listField } from '../kit/list-field.ts';

/** Heights at evenly spaced places: rows across the board, from one end to the other. */
export type HeightGrid = readonly (readonly number[])[];

/** A height at a place of the reader's own choosing, mm. */
export interface PlacedHeight {
  x: number;
  y: number;
  height: number;
}

const largest = 100_000;

const prefix = /^\s*(mm|cm|in|inch|inches)\s*:\s*/i;

/** `in: …` or `mm: …` in front of a list is the unit of its bare numbers. */
function bareUnitOf(text: string): { unit: string; rest: string } {
  const match = prefix.exec(text);
  if (!match) return { unit: 'mm', rest: text };
  const word = (match[1] ?? '').toLowerCase();
  return { unit: word.startsWith('in') ? '[in_i]' : word, rest: text.slice(match[0].length) };
}

/** The reader's unit in front of a list of heights that has none and that holds a bare number. */
function explicitHeights(text: string, reader: ReaderUnits): string {
  if (prefix.test(text)) return text;
  const numbers = splitEntries(text).flatMap(splitRow);
  return numbers.some((number) => number !== '' && isBare(number))
    ? `${unitLabel(readerUnit('length', reader))}: ${text.trimStart()}`
    : text;
}

/** Numbers of a row: parted by commas, or by blanks where there is no comma, no unit and no fraction. */
function splitRow(row: string): string[] {
  const parts = splitParts(row);
  if (parts.length > 1) return parts;
  return /^[\d.,+\-−\s]+$/.test(row) ? row.trim().split(/\s+/) : parts;
}

/** What is wrong with `0 3/16 0`: where a blank may stand before a fraction, blanks cannot part numbers. */
function blanksBetween(part: string, where: string): Read<never> | undefined {
  if (!/\d\s+\d/.test(part) || !part.includes('/') || /^[-−+]?\d+\s+\d+\s*\/\s*\d+(?:\s*[a-z"″]+)?$/i.test(part))
    return undefined;
  return {
    ok: false,
    problem: `${where}: “${excerpt(part)}” cannot be told apart by its blanks, since 1 3/16 is one number`,
    wayOut: 'Put a comma between two heights, such as 0, 3/16, 0.',
  };
}

/** A height, which may lie below the reference: quantities of a shop have no sign, so it is taken off first. */
function readHeight(text: string, where: string, unit: string): Read<number> {
  const wrong = tightCommas(text, where) ?? blanksBetween(text, where);
  if (wrong) return wrong;
  const signed = /^\s*([-−+])\s*(.*)$/s.exec(text);
  const parsed = parseQuantity(signed?.[2] ?? text, { dimension: 'length', bareUnit: unit });
  if (!parsed.ok) return { ...parsed, problem: `${where}: ${parsed.problem}` };
  if (Math.abs(parsed.value) > largest) {
    return {
      ok: false,
      problem: `${where}: ${excerpt(text)} is on no board`,
      wayOut: 'Check the number and its unit.',
    };
  }
  return { ok: true, value: signed && signed[1] !== '+' ? -parsed.value : parsed.value };
}

/** The first entry whose numbers are not parted as they were meant. */
const misparted = (rows: readonly (readonly string[])[], name: string): Read<never> | undefined =>
  rows
    .flatMap((row, at) =>
      row.map((part) => tightCommas(part, `${name} ${at + 1}`) ?? blanksBetween(part, `${name} ${at + 1}`)),
    )
    .find((wrong) => wrong !== undefined);

function tooMany(count: number): Read<never> | undefined {
  if (count <= pointCount.most) return undefined;
  return {
    ok: false,
    problem: `${count} heights are more than ${pointCount.most}`,
    wayOut: 'Measure at fewer places.',
  };
}

function readGrid(text: string): Read<HeightGrid> {
  const { unit, rest } = bareUnitOf(text);
  const rows = splitEntries(rest).map(splitRow);
  const long = tooMany(rows.reduce((sum, row) => sum + row.length, 0));
  if (long) return long;
  const wrong = misparted(rows, 'Row');
  if (wrong) return wrong;
  const width = rows[0]?.length ?? 0;
  const odd = rows.findIndex((row) => row.length !== width);
  if (rows.length < 2 || width < 2 || odd >= 0) {
    return {
      ok: false,
      problem:
        odd >= 0
          ? `Row ${odd + 1} has ${rows[odd]?.length} heights where the first has ${width}`
          : `${rows.length} ${rows.length === 1 ? 'row' : 'rows'} of ${width} ${width === 1 ? 'height' : 'heights'} ${rows.length === 1 ? 'does' : 'do'} not span a board`,
      wayOut: `Give at least two rows across the board of two heights or more, all of one length, such as 0, 2; 1, 0.${
        rows.some((row) => row.some((part) => /\d,\d/.test(part)))
          ? ' A comma between two digits is a decimal mark: put a blank after a comma that parts two heights.'
          : ''
      }`,
    };
  }
  return readAll(rows, (row, at) =>
    readAll(row, (value, across) => readHeight(value, `Row ${at}, height ${across}`, unit)),
  );
}

type Place = keyof PlacedHeight;

/** Places with commas between their numbers, and the unit of `in: …` behind each of them that has none. */
function plainPlaces(text: string): string {
  const headed = prefix.test(text);
  const { unit, rest } = bareUnitOf(text);
  if (!headed && splitEntries(text).every((entry) => splitRow(entry).length === splitParts(entry).length)) return text;
  return splitEntries(rest)
    .map((entry) =>
      splitRow(entry)
        .map((part) => (headed ? withUnit(part, unit) : part))
        .join(', '),
    )
    .join('\n');
}

function readPlaces(rows: readonly ListRow<Place>[]): Read<PlacedHeight[]> {
  const long = tooMany(rows.length);
  if (long) return long;
  return readAll(rows, ({ cells, entry }, at): Read<PlacedHeight> => {
    const where = `Place ${at}`;
    const apart = missingCommas(entry, where, 'distance along, distance across, height');
    if (apart) return apart;
    const parts = placeColumns.map(({ name }) => cells[name]);
    const wrong = misparted([parts], `${where}, part`);
    if (wrong) return wrong;
    const given = parts.filter((part) => part !== '').length;
    if (given < parts.length) {
      return {
        ok: false,
        problem: `${where}: “${excerpt(entry)}” has ${given} ${given === 1 ? 'number' : 'numbers'} where three are needed`,
        wayOut: 'Write each place as distance along the board, distance across it, height.',
      };
    }
    const numbers = readAll(parts, (part) => readHeight(part, where, 'mm'));
    if (!numbers.ok) return numbers;
    const [x = 0, y = 0, height = 0] = numbers.value;
    return { ok: true, value: { x, y, height } };
  });
}

/** A place that is farther from an edge than a tape misreads, mm, is not on the board. */
const misread = 1;

/**
 * The first place that does not lie on the board, in words.
 *
 * @param length of the board along x, mm
 * @param width of the board along y, mm
 */
export function offTheBoard(
  places: readonly PlacedHeight[],
  length: number,
  width: number,
): { problem: string; wayOut: string } | undefined {
  for (const [at, { x, y }] of places.entries()) {
    const [way, place, size, noun] =
      x < -misread || x > length + misread
        ? (['along', x, length, 'long'] as const)
        : (['across', y, width, 'wide'] as const);
    if (place >= -misread && place <= size + misread) continue;
    return {
      problem: `Place ${at + 1}: ${amount(place, 'mm', 5)} ${way} is off the board, which is ${amount(size, 'mm', 5)} ${noun}`,
      wayOut: 'Correct the number, its unit, or the size of the board.',
    };
  }
  return undefined;
}

const numberText = z.union([z.string(), z.number()]);

/** A grid of heights: rows parted by `;` or line ends, numbers by commas or spaces; in a file also a list of lists. */
export function gridField(words: {
  label: string;
  help?: string;
}): z.ZodMiniType<HeightGrid, string | (string | number)[][]> {
  return readField(
    z.union([z.string(), z.array(z.array(numberText))]),
    (value) => readGrid(typeof value === 'string' ? value : value.map((row) => row.join(', ')).join('; ')),
    {
      ...words,
      kind: 'list',
      explicit: explicitHeights,
      examples: [
        '3, 1, 0, 2; 2, 0, 0, 1.5; 2.5, 0.5, 1, 3',
        'in: 1/8, 1/32, 0, 3/32; 3/32, 0, 0, 1/16; 3/32, 1/32, 1/32, 1/8',
      ],
    },
  );
}

const placeColumns: readonly ListColumn<Place>[] = [
  { name: 'x', label: 'Distance along', example: '900 mm', measure: 'length' },
  { name: 'y', label: 'Distance across', example: '260 mm', measure: 'length' },
  { name: 'height', label: 'Height', example: '3 mm', measure: 'length' },
];

/** Heights at places of one's own: `along, across, height`, one a line; in a file also a list of objects. */
export const placesField = (words: {
  label: string;
  help?: string;
}): z.ZodMiniType<PlacedHeight[], string | ListEntry[]> =>
  listField(
    {
      ...words,
      noun: 'place',
      columns: placeColumns,
      plain: plainPlaces,
      examples: ['0, 0, 3; 0, 260, 2; 900, 0, 0; 900, 260, 4', 'in: 0, 0, 1/8; 0, 10, 1/16; 36, 0, 0; 36, 10, 5/32'],
    },
    readPlaces,
  );
