import { asTyped, excerpt, parseQuantity, type Read } from '../../model/quantity/index.ts';
import { readAll, readListLength, splitParts, withCommas } from '../../model/quantity/lists.ts';
import { type Colour, pigmentKinds } from '../../model/resin/batches.ts';
import type { DepthProfile, FillShape } from '../../model/resin/shapes.ts';
import { type ListColumn, listField } from '../kit/list-field.ts';

const most = { shapes: 60, pieces: 200, depths: 60, colours: 12, name: 160 };
/** Smaller shares of a mix, in percent, cannot be measured. */
const leastShare = 0.1;
const lengths = { minimum: 0.5, maximum: 10_000 };

/** A line of the list of shapes. */
const anExample = asTyped({ metric: 'channel, 900 mm, 12 mm', inch: 'channel, 36 in, 1/2 in' });

const refused = (problem: string, wayOut: string) => ({ ok: false, problem, wayOut }) as const;

const shapeColumns = [
  {
    name: 'kind',
    label: 'Shape',
    example: 'channel',
    options: [
      { value: 'channel', label: 'Channel' },
      { value: 'rectangle', label: 'Rectangle' },
      { value: 'oval', label: 'Oval' },
      { value: 'ring', label: 'Ring' },
    ],
  },
  { name: 'length', label: 'Length, or outer diameter', example: '900 mm', measure: 'length' },
  { name: 'width', label: 'Width, or inner diameter', example: '12 mm', measure: 'length' },
  { name: 'count', label: 'How many', example: '4', optional: true },
] as const satisfies readonly ListColumn[];

/** Shapes to fill, one a line: `channel, 900 mm, 12 mm`, with a fourth part for how many there are of it. */
export const shapesField = (group: string) =>
  listField(
    {
      label: 'Shapes',
      group,
      help: `One a line: rectangle, oval or channel with length and width, or ring with two diameters, such as ${anExample}; then how many, if more than one.`,
      noun: 'shape',
      columns: shapeColumns,
      examples: ['channel, 900 mm, 12 mm', 'oval, 5 in, 3 in; rectangle, 3 in, 1 in, 4'],
    },
    (rows) => readShapes(rows.map(({ entry }) => entry)),
  );

function readShapes(entries: readonly string[]): Read<FillShape[]> {
  if (entries.length === 0) return refused('There is no shape in the list', `Write one, such as ${anExample}.`);
  if (entries.length > most.shapes)
    return refused(`${entries.length} lines are more than ${most.shapes}`, 'Add shapes up.');
  const read = readAll(entries, (entry, at) => readShape(entry, at));
  if (!read.ok) return read;
  const shapes = read.value.flat();
  return shapes.length > most.pieces
    ? refused(`${shapes.length} pieces are more than ${most.pieces}`, 'Give their volume instead.')
    : { ok: true, value: shapes };
}

function readShape(entry: string, at: number): Read<FillShape[]> {
  const [word = '', first = '', second = '', many] = splitParts(entry);
  const where = `Shape ${at}, “${excerpt(entry)}”`;
  const kind = word.toLowerCase();
  if (kind !== 'rectangle' && kind !== 'oval' && kind !== 'channel' && kind !== 'ring') {
    if (/^(rectangle|oval|channel|ring)\b/.test(kind)) return noCommas(entry, at);
    return refused(
      `${where}: “${excerpt(word)}” is not rectangle, oval, channel or ring`,
      'Begin the line with one of these.',
    );
  }
  if (second === '' && /\d\s+\d/.test(first) && splitParts(withCommas(entry)).length > 2) return noCommas(entry, at);
  const one = readListLength(first, where, lengths);
  if (!one.ok) return one;
  const two = readListLength(second, where, lengths);
  if (!two.ok) return two;
  const count = many === undefined ? 1 : Number(many);
  if (!(Number.isInteger(count) && count >= 1 && count <= most.pieces)) {
    return refused(`${where}: “${excerpt(many ?? '')}” is not a whole number of pieces`, 'Write, for example, 4.');
  }
  const [larger, smaller] = [Math.max(one.value, two.value), Math.min(one.value, two.value)];
  if (kind === 'ring' && larger === smaller) {
    return refused(
      `${where}: both diameters are the same, so nothing lies between them`,
      'Give the outer and the inner one.',
    );
  }
  const shape: FillShape =
    kind === 'ring' ? { kind, outer: larger, inner: smaller } : { kind, length: one.value, width: two.value };
  return { ok: true, value: Array.from({ length: count }, () => shape) };
}

/** Parts that no comma parts: the very line with commas put in, where that is a shape. */
function noCommas(entry: string, at: number): Read<never> {
  const mended = withCommas(entry);
  const reads = mended !== entry && readShape(mended, at).ok;
  return refused(
    `Shape ${at}, “${excerpt(entry)}” has no commas between its parts`,
    reads ? `Write ${excerpt(mended, 200)}.` : `Write, for example, ${anExample}.`,
  );
}

const nameColumns = [{ name: 'name', label: 'Name', example: 'Oak tray' }] as const satisfies readonly ListColumn[];

/** What the pieces are called, one a line, in the order of the shapes. */
export const pieceNamesField = (group: string) =>
  listField(
    {
      label: 'Names of the pieces',
      group,
      help: 'One a line, as many as there are shapes, in their order: the cups then name the pieces that they fill. Empty: pieces are numbered.',
      noun: 'name',
      columns: nameColumns,
      examples: ['Oak tray; ash tray; small board'],
    },
    (rows) => readNames(rows.map(({ cells: { name } }) => name)),
  );

function readNames(entries: readonly string[]): Read<string[]> {
  const names = entries.map((entry) => excerpt(entry.trim(), most.name));
  const empty = names.indexOf('');
  if (names.length === 0 || empty >= 0)
    return refused(`Name ${empty + 1 || 1} is empty`, 'Write a name for each piece, or leave the field empty.');
  return { ok: true, value: names };
}

const depthColumns = [
  { name: 'depth', label: 'Depth', example: '8 mm', measure: 'length' },
  { name: 'share', label: 'Share of the area', example: '60 %', optional: true },
] as const satisfies readonly ListColumn[];

/** Depths at places spread evenly, or each with its share of the area: `8 mm, 60 %; 15 mm, 40 %`. */
export const depthsField = (group: string) =>
  listField(
    {
      label: 'Depths',
      group,
      help: `Measured at places spread evenly, one a line; or each with its share of the area, such as ${asTyped({ metric: '8 mm, 60 %', inch: '5/16 in, 60 %' })}.`,
      noun: 'depth',
      columns: depthColumns,
      examples: ['8 mm; 12 mm; 10 mm', '5/16 in; 1/2 in'],
    },
    (rows) => readDepths(rows.map(({ entry }) => entry)),
  );

function readDepths(entries: readonly string[]): Read<DepthProfile> {
  if (entries.length === 0)
    return refused(
      'There is no depth in the list',
      `Write depths, such as ${asTyped({ metric: '8 mm; 12 mm; 10 mm', inch: '5/16 in; 1/2 in; 3/8 in' })}.`,
    );
  if (entries.length > most.depths)
    return refused(`${entries.length} depths are more than ${most.depths}`, 'Measure at fewer places.');
  const read = readAll(entries, (entry, at): Read<{ depth: number; share: number | undefined }> => {
    const [first = '', second] = splitParts(entry);
    const where = `Depth ${at}, “${excerpt(entry)}”`;
    const depth = readListLength(first, where, { minimum: 0.1, maximum: 300 });
    if (!depth.ok) return depth;
    const share = second === undefined ? undefined : readShare(second, where);
    if (share && !share.ok) return share;
    return { ok: true, value: { depth: depth.value, share: share?.value } };
  });
  if (!read.ok) return read;
  const shares = sharesOf(
    read.value.map(({ share }) => share),
    'depths',
  );
  if (!shares.ok) return shares;
  return { ok: true, value: read.value.map(({ depth }, index) => ({ depth, share: shares.value[index] ?? 0 })) };
}

function readShare(text: string, where: string): Read<number> {
  const parsed = parseQuantity(text, { dimension: 'percent', bareUnit: '%' });
  if (!parsed.ok) return { ...parsed, problem: `${where}: ${parsed.problem}` };
  return parsed.value >= leastShare && parsed.value <= 100
    ? { ok: true, value: parsed.value }
    : refused(`${where}: ${excerpt(text)} is not a share from ${leastShare} to 100 %`, 'Write, for example, 60 %.');
}

/** Shares as fractions that sum to 1: equal ones where none is given. */
function sharesOf(given: readonly (number | undefined)[], what: string): Read<number[]> {
  if (given.every((share) => share === undefined)) return { ok: true, value: given.map(() => 1 / given.length) };
  if (given.some((share) => share === undefined)) {
    return refused(`Some of the ${what} have a share and some have none`, 'Give a share to all of them or to none.');
  }
  const sum = given.reduce<number>((total, share) => total + (share ?? 0), 0);
  if (Math.abs(sum - 100) > 1) {
    return refused(`The shares of the ${what} sum to ${Number(sum.toFixed(1))} %, not 100 %`, 'Correct one of them.');
  }
  return { ok: true, value: given.map((share) => (share ?? 0) / sum) };
}

const pigmentPattern = /^([a-z ]+?)\s+([\d.,]+)\s*%?$/i;
const mostPigment = 50;

const colourColumns = [
  { name: 'name', label: 'Colour', example: 'moss green' },
  { name: 'share', label: 'Share of the mix', example: '60 %', optional: true },
  { name: 'pigment', label: 'Pigment', example: 'paste 3 %', optional: true },
] as const satisfies readonly ListColumn[];

/** Colours, one a line: name, share of the mix, and what colours it: `moss green, 60 %, paste 3 %`; either of the two may be left out. */
export const coloursField = (group: string) =>
  listField(
    {
      label: 'Colours',
      group,
      help: 'One a line: name, share of the mix such as 60 %, pigment (paste, powder or ink) in percent of its mass. Without shares they are equal; empty, it is clear.',
      noun: 'colour',
      columns: colourColumns,
      examples: ['moss green, , paste 3 %; amber, , ink 1 %', 'moss green, powder 2 %'],
    },
    (rows) => readColours(rows.map(({ entry }) => entry)),
  );

function readColours(entries: readonly string[]): Read<Colour[]> {
  if (entries.length === 0) return refused('There is no colour in the list', 'Write one, or leave the field empty.');
  if (entries.length > most.colours)
    return refused(`${entries.length} colours are more than ${most.colours}`, 'Mix fewer.');
  const read = readAll(entries, readColour);
  if (!read.ok) return read;
  const shares = sharesOf(
    read.value.map(({ share }) => share),
    'colours',
  );
  if (!shares.ok) {
    const unsure = read.value.some(({ share, pigment }) => share !== undefined && pigment === 0);
    return unsure
      ? { ...shares, wayOut: `${shares.wayOut} A pigment is written with what it is, such as paste 3 %.` }
      : shares;
  }
  return { ok: true, value: read.value.map((colour, index) => ({ ...colour, share: shares.value[index] ?? 0 })) };
}

type ReadColour = Omit<Colour, 'share'> & { share: number | undefined };

function readColour(entry: string, at: number): Read<ReadColour> {
  const [name = '', ...others] = splitParts(entry);
  // Where the share is left out the pigment follows the name, as an empty cell or none between.
  const parts = others.filter(Boolean);
  const where = `Colour ${at}, “${excerpt(entry)}”`;
  if (name === '') return refused(`${where} has no name`, 'Begin the line with the name of the colour.');
  const isPigment = (part: string) => /[a-z]/i.test(part);
  const [share, ...extraShares] = parts.filter((part) => !isPigment(part));
  const [pigment, ...extraPigments] = parts.filter(isPigment);
  // The last of two percentages, or what stands behind an empty share, is a pigment that does not say what it is.
  const nameless =
    others.length > 1 && (parts.length === 1 || parts.length === 2) && pigment === undefined ? parts.at(-1) : undefined;
  if (nameless !== undefined) {
    const percent = `${nameless.replace(/\s*%$/, '')} %`;
    return refused(
      `${where}, pigment: “${excerpt(nameless)}” says how much, and not of what`,
      `Write ${pigmentKinds.map(({ kind }) => `${kind} ${excerpt(percent)}`).join(', or ')}: what colours it, and its percentage of the mass, up to ${mostPigment} %.`,
    );
  }
  if (extraShares.length > 0 || extraPigments.length > 0) {
    return refused(`${where} has more parts than a name, a share and a pigment`, 'Write one colour a line.');
  }
  const readOf = share === undefined ? undefined : readShare(share, where);
  if (readOf && !readOf.ok) return readOf;
  const plain: ReadColour = { name: excerpt(name), share: readOf?.value, pigment: 0 };
  if (pigment === undefined) return { ok: true, value: plain };
  const match = pigmentPattern.exec(pigment);
  const word = match?.[1]?.toLowerCase().trim() ?? '';
  const kind = pigmentKinds.find((one) => word === one.kind || word === one.label || word.endsWith(` ${one.kind}`));
  const amount = Number((match?.[2] ?? '').replace(',', '.'));
  if (!kind || !Number.isFinite(amount) || amount > mostPigment) {
    return refused(
      `${where}: “${excerpt(pigment)}” is not a pigment with its percentage, up to ${mostPigment} %`,
      'Write paste, powder or ink and the percentage, such as paste 3 %.',
    );
  }
  return { ok: true, value: { ...plain, pigment: amount, kind: kind.kind } };
}
