import * as z from 'zod/mini';
import { excerpt, parseQuantity, type Read } from '../../model/quantity/index.ts';
import {
  listUnits,
  missingCommas,
  type PartMeasure,
  readAll,
  readListLength,
  splitEntries,
  splitParts,
  splitSpan,
  tightCommas,
} from '../../model/quantity/lists.ts';
import { type YieldBlank, type YieldBoard, yieldLimits } from '../../model/stock/index.ts';
import { isBare, readField } from '../kit/fields.ts';

const longRange = { minimum: 1, maximum: yieldLimits.longest };
const spanRange = { minimum: 0, maximum: yieldLimits.longest };

const lengthText = z.union([z.string(), z.number()]);
const boardObject = z.strictObject({
  name: z.optional(z.string()),
  length: lengthText,
  width: lengthText,
  defects: z.optional(
    z.array(
      z.strictObject({
        from: lengthText,
        to: lengthText,
        acrossFrom: z.optional(lengthText),
        acrossTo: z.optional(lengthText),
        kind: z.optional(z.string()),
      }),
    ),
  ),
});
const blankObject = z.strictObject({
  name: z.optional(z.string()),
  length: lengthText,
  width: lengthText,
  count: z.optional(z.union([z.string(), z.number()])),
});

/** A board or blank in words before its lengths are read. */
interface BoardText {
  name: string;
  length: string;
  width: string;
  defects: readonly DefectText[];
}

/** A place to cut out in words; `across` where it does not run right across. */
interface DefectText {
  from: string;
  to: string;
  kind: string;
  across?: { from: string; to: string };
}

/** Whether the first part of an entry is its name: a part that is no length in either system, and no row of numbers. */
const named = ([first = '']: readonly string[]) =>
  first !== '' && !isBare(first) && !parseQuantity(first, { dimension: 'length', bareUnit: '[in_i]' }).ok;

/** A leading part that is no length is the name; without one the entry is named by its place. */
function nameFirst(parts: readonly string[], noun: string, at: number): { name: string; rest: string[] } {
  const [first = '', ...others] = parts;
  return named(parts) ? { name: first, rest: others } : { name: `${noun} ${at}`, rest: [...parts] };
}

/** What the parts of an entry measure, its name left out where it has one. */
const behindName =
  (measures: (rest: readonly string[]) => readonly PartMeasure[]) =>
  (parts: readonly string[]): readonly PartMeasure[] =>
    named(parts) ? [undefined, ...measures(parts.slice(1))] : measures(parts);

/** A span along the board, and across it behind the word `across`: `knot 600 to 680 mm across 0 to 60 mm`. */
function splitDefect(text: string): DefectText | undefined {
  const [along = '', across, ...more] = text.split(/\bacross\b/i);
  const span = splitSpan(along.trim());
  if (!span || more.length > 0) return undefined;
  const { from, to, words: kind } = span;
  if (across === undefined) return { from, to, kind };
  const beside = splitSpan(across.trim());
  return beside?.words === '' ? { from, to, kind, across: { from: beside.from, to: beside.to } } : undefined;
}

function boardText(entry: string, at: number): Read<BoardText> {
  const unparted = missingCommas(entry, `Board ${at}`, 'name, length, width');
  if (unparted) return unparted;
  const { name, rest } = nameFirst(splitParts(entry), 'board', at);
  const [length = '', width = '', ...faults] = rest;
  const defects = readAll(faults.filter(Boolean), (fault): Read<DefectText> => {
    const defect = splitDefect(fault);
    return defect
      ? { ok: true, value: defect }
      : {
          ok: false,
          problem: `Board ${at}: “${excerpt(fault)}” is not a span along the board`,
          wayOut:
            'Write a defect as knot 600 to 680 mm, measured from the end, or as knot 600 to 680 mm across 0 to 60 mm.',
        };
  });
  return defects.ok ? { ok: true, value: { name, length, width, defects: defects.value } } : defects;
}

function readBoard(text: BoardText, at: number): Read<YieldBoard> {
  const where = `Board ${at}`;
  const tight = text.width === '' && tightCommas(text.length, where, 1);
  if (tight) return tight;
  const length = readListLength(text.length, `${where}, length`, longRange);
  if (!length.ok) return length;
  const width = readListLength(text.width, `${where}, width`, longRange);
  if (!width.ok) return width;
  const defects = readAll(text.defects, ({ from, to, kind, across }): Read<YieldBoard['defects'][number]> => {
    const start = readListLength(from, `${where}, defect`, spanRange);
    if (!start.ok) return start;
    const end = readListLength(to, `${where}, defect`, spanRange);
    if (!end.ok) return end;
    const whole = { from: start.value, to: end.value, ...(kind ? { kind } : {}) };
    if (!across) return { ok: true, value: whole };
    const low = readListLength(across.from, `${where}, defect across`, spanRange);
    if (!low.ok) return low;
    const high = readListLength(across.to, `${where}, defect across`, spanRange);
    if (!high.ok) return high;
    return { ok: true, value: { ...whole, acrossFrom: low.value, acrossTo: high.value } };
  });
  if (!defects.ok) return defects;
  return { ok: true, value: { name: text.name, length: length.value, width: width.value, defects: defects.value } };
}

function readBlank(
  { name, length, width, count }: { name: string; length: string; width: string; count: string },
  at: number,
): Read<YieldBlank> {
  const where = `Blank ${at}`;
  const tight = width === '' && tightCommas(length, where, 1);
  if (tight) return tight;
  const long = readListLength(length, `${where}, length`, longRange);
  if (!long.ok) return long;
  const wide = readListLength(width, `${where}, width`, longRange);
  if (!wide.ok) return wide;
  const pieces = count === '' ? 1 : Number(count.replace(/^[×x]\s*|\s*(pieces?|pcs?|off)$/gi, ''));
  if (!Number.isInteger(pieces) || pieces < 1 || pieces > yieldLimits.blanks) {
    return {
      ok: false,
      problem: `${where}: “${excerpt(count)}” is not a count from 1 to ${yieldLimits.blanks}`,
      wayOut: 'Write how many are wanted as a whole number after the width.',
    };
  }
  return { ok: true, value: { name, length: long.value, width: wide.value, count: pieces } };
}

const textOf = (value: string | number | undefined) => (value === undefined ? '' : String(value));

/** Boards on the rack: `name, length, width, defects`, one a line or parted by semicolons; in a file also a list of objects. */
export function boardsField(words: {
  label: string;
  help?: string;
}): z.ZodMiniType<YieldBoard[], string | z.input<typeof boardObject>[]> {
  return readField(
    z.union([z.string(), z.array(boardObject)]),
    (value): Read<YieldBoard[]> => {
      const texts =
        typeof value === 'string'
          ? readAll(splitEntries(value), boardText)
          : readAll(
              value,
              (board, at): Read<BoardText> => ({
                ok: true,
                value: {
                  name: board.name ?? `board ${at}`,
                  length: textOf(board.length),
                  width: textOf(board.width),
                  defects: (board.defects ?? []).map(({ from, to, acrossFrom, acrossTo, kind }) => ({
                    from: textOf(from),
                    to: textOf(to),
                    kind: kind ?? '',
                    ...(acrossFrom === undefined && acrossTo === undefined
                      ? {}
                      : { across: { from: textOf(acrossFrom), to: textOf(acrossTo) } }),
                  })),
                },
              }),
            );
      return texts.ok ? readAll(texts.value, readBoard) : texts;
    },
    {
      ...words,
      kind: 'list',
      explicit: listUnits(behindName(([, , ...faults]) => ['length', 'length', ...faults.map(() => 'span' as const)])),
      examples: [
        'ash A, 2400 mm, 260 mm, knot 700 to 780 mm across 150 to 260 mm; ash B, 1900 mm, 255 mm, check 1780 to 1900 mm; ash C, 1250 mm, 290 mm',
        'ash A, 8 ft, 10 1/4 in, knot 27 1/2 in to 30 3/4 in; ash B, 6 ft 3 in, 10 in, check 70 in to 75 in; ash C, 49 in, 11 1/2 in',
      ],
    },
  );
}

/** Blanks wanted: `name, length, width, count`, one a line or parted by semicolons; in a file also a list of objects. */
export function blanksField(words: {
  label: string;
  help?: string;
}): z.ZodMiniType<YieldBlank[], string | z.input<typeof blankObject>[]> {
  return readField(
    z.union([z.string(), z.array(blankObject)]),
    (value): Read<YieldBlank[]> =>
      typeof value === 'string'
        ? readAll(splitEntries(value), (entry, at) => {
            const unparted = missingCommas(entry, `Blank ${at}`, 'name, length, width, count');
            if (unparted) return unparted;
            const { name, rest } = nameFirst(splitParts(entry), 'blank', at);
            const [length = '', width = '', count = ''] = rest;
            return readBlank({ name, length, width, count }, at);
          })
        : readAll(value, (blank, at) =>
            readBlank(
              {
                name: blank.name ?? `blank ${at}`,
                length: textOf(blank.length),
                width: textOf(blank.width),
                count: textOf(blank.count),
              },
              at,
            ),
          ),
    {
      ...words,
      kind: 'list',
      explicit: listUnits(behindName(() => ['length', 'length'])),
      examples: [
        'tray, 450 mm, 240 mm, 6; paddle, 600 mm, 200 mm, 2',
        'tray, 18 in, 9 1/2 in, 6; paddle, 24 in, 8 in, 2',
      ],
    },
  );
}
