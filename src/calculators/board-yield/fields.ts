import * as z from 'zod/mini';
import { asTyped, excerpt, type Read, withUnit } from '../../model/quantity/index.ts';
import {
  missingCommas,
  readAll,
  readListLength,
  splitParts,
  splitSpan,
  tightCommas,
} from '../../model/quantity/lists.ts';
import { type YieldBlank, type YieldBoard, yieldLimits } from '../../model/stock/index.ts';
import { type ListColumn, type ListRow, listField } from '../kit/list-field.ts';

const longRange = { minimum: 1, maximum: yieldLimits.longest };
const spanRange = { minimum: 0, maximum: yieldLimits.longest };

const alongTheBoard = asTyped({ metric: 'knot 600 to 680 mm', inch: 'knot 24 to 27 in' });
export const acrossTheBoard = asTyped({ metric: 'across 0 to 60 mm', inch: 'across 0 to 2 1/2 in' });

const lengthText = z.union([z.string(), z.number()]);

/** A place to cut out as an object of a file; across the whole width unless told. */
const defectObject = z.strictObject({
  from: lengthText,
  to: lengthText,
  acrossFrom: z.optional(lengthText),
  acrossTo: z.optional(lengthText),
  kind: z.optional(z.string()),
});

/** A number of a file is in millimetres, whatever unit its other end has. */
const inFile = (end: string | number | undefined) => withUnit(String(end ?? ''), 'mm');

function defectWords({ from, to, acrossFrom, acrossTo, kind = '' }: z.output<typeof defectObject>): string {
  const along = `${kind.replaceAll(/[^\p{L} '-]/gu, ' ').trim()} ${inFile(from)} to ${inFile(to)}`.trim();
  return acrossFrom === undefined && acrossTo === undefined
    ? along
    : `${along} across ${inFile(acrossFrom)} to ${inFile(acrossTo)}`;
}

type Range = 'name' | 'length' | 'width';

const name: ListColumn<Range> = { name: 'name', label: 'Name', example: 'ash A', leading: true };

const boardColumns: readonly ListColumn<Range | 'defects'>[] = [
  name,
  { name: 'length', label: 'Length', example: '2400 mm', measure: 'length' },
  { name: 'width', label: 'Width', example: '260 mm', measure: 'length' },
  {
    name: 'defects',
    label: 'Places to cut out',
    example: 'knot 700 to 780 mm',
    measure: 'span',
    optional: true,
    wide: true,
    rest: { object: defectObject, written: defectWords },
  },
];

const blankColumns: readonly ListColumn<Range | 'count'>[] = [
  { ...name, example: 'tray' },
  { name: 'length', label: 'Length', example: '450 mm', measure: 'length' },
  { name: 'width', label: 'Width', example: '240 mm', measure: 'length' },
  { name: 'count', label: 'How many', example: '6', optional: true },
];

/** A place to cut out in words; `across` where it does not run right across. */
interface DefectText {
  from: string;
  to: string;
  kind: string;
  across?: { from: string; to: string };
}

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

function readDefect(fault: string, where: string): Read<YieldBoard['defects'][number]> {
  const text = splitDefect(fault);
  if (!text) {
    return {
      ok: false,
      problem: `${where}: “${excerpt(fault)}” is not a span along the board`,
      wayOut: `Write a defect as ${alongTheBoard}, measured from the end, or as ${alongTheBoard} ${acrossTheBoard}.`,
    };
  }
  const { from, to, kind, across } = text;
  const ends = readAll([from, to], (end) => readListLength(end, `${where}, defect`, spanRange));
  if (!ends.ok) return ends;
  const [start = 0, end = 0] = ends.value;
  const whole = { from: start, to: end, ...(kind ? { kind } : {}) };
  if (!across) return { ok: true, value: whole };
  const beside = readAll([across.from, across.to], (edge) =>
    readListLength(edge, `${where}, defect across`, spanRange),
  );
  if (!beside.ok) return beside;
  const [acrossFrom = 0, acrossTo = 0] = beside.value;
  return { ok: true, value: { ...whole, acrossFrom, acrossTo } };
}

/** Name and size, which boards and blanks have alike. */
function readSize(
  { cells, entry }: ListRow<Range>,
  noun: string,
  at: number,
  parts: string,
): Read<{ name: string; length: number; width: number }> {
  const where = `${noun} ${at}`;
  const wrong = missingCommas(entry, where, parts) ?? (cells.width === '' && tightCommas(cells.length, where, 1));
  if (wrong) return wrong;
  const length = readListLength(cells.length, `${where}, length`, longRange);
  if (!length.ok) return length;
  const width = readListLength(cells.width, `${where}, width`, longRange);
  if (!width.ok) return width;
  return {
    ok: true,
    value: { name: cells.name || `${noun.toLowerCase()} ${at}`, length: length.value, width: width.value },
  };
}

function readBoard(row: ListRow<Range | 'defects'>, at: number): Read<YieldBoard> {
  const size = readSize(row, 'Board', at, 'name, length, width');
  if (!size.ok) return size;
  const faults = splitParts(row.cells.defects).filter(Boolean);
  const defects = readAll(faults, (fault) => readDefect(fault, `Board ${at}`));
  return defects.ok ? { ok: true, value: { ...size.value, defects: defects.value } } : defects;
}

function readBlank(row: ListRow<Range | 'count'>, at: number): Read<YieldBlank> {
  const size = readSize(row, 'Blank', at, 'name, length, width, count');
  if (!size.ok) return size;
  const { count } = row.cells;
  const pieces = count === '' ? 1 : Number(count.replace(/^[×x]\s*|\s*(pieces?|pcs?|off)$/gi, ''));
  if (!Number.isInteger(pieces) || pieces < 1 || pieces > yieldLimits.blanks) {
    return {
      ok: false,
      problem: `Blank ${at}: “${excerpt(count)}” is not a count from 1 to ${yieldLimits.blanks}`,
      wayOut: 'Write how many are wanted as a whole number after the width.',
    };
  }
  return { ok: true, value: { ...size.value, count: pieces } };
}

/** Boards on the rack: name, length, width, places to cut out. */
export const boardsField = (words: { label: string; help?: string }) =>
  listField(
    {
      ...words,
      noun: 'board',
      columns: boardColumns,
      examples: [
        'ash A, 2400 mm, 260 mm, knot 700 to 780 mm across 150 to 260 mm; ash B, 1900 mm, 255 mm, check 1780 to 1900 mm; ash C, 1250 mm, 290 mm',
        'ash A, 8 ft, 10 1/4 in, knot 27 1/2 in to 30 3/4 in; ash B, 6 ft 3 in, 10 in, check 70 in to 75 in; ash C, 49 in, 11 1/2 in',
      ],
    },
    (rows) => readAll(rows, readBoard),
  );

/** Blanks wanted: name, length, width, how many. */
export const blanksField = (words: { label: string; help?: string }) =>
  listField(
    {
      ...words,
      noun: 'blank',
      columns: blankColumns,
      examples: [
        'tray, 450 mm, 240 mm, 6; paddle, 600 mm, 200 mm, 2',
        'tray, 18 in, 9 1/2 in, 6; paddle, 24 in, 8 in, 2',
      ],
    },
    (rows) => readAll(rows, readBlank),
  );
