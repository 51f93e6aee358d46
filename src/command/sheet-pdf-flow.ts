import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';

/** The part of the library that is used; its own types have the module as a global too. */
export interface Maker {
  setFonts(fonts: Record<string, Record<string, string>>): void;
  setUrlAccessPolicy(allowed: (url: string) => boolean): void;
  setLocalAccessPolicy(allowed: (path: string) => boolean): void;
  createPdf(definition: TDocumentDefinitions): { getBuffer(): Promise<Buffer> };
}

/** What stands together in a column; cut between its parts only where much of the column would stay empty. */
export interface Piece {
  parts: readonly Content[];
  /** What stands above the rest where it was cut, made anew each time; a piece without it is never cut. */
  again?: () => Content;
}

/** Pieces made anew: the library writes into those that it lays out, so that they serve once. */
export type Make = () => Piece[];

/** Higher than any page that is measured on, pt. */
const endless = 100_000;

/** How high each of some contents stands in a column `width` wide, pt: they are laid out once, one under another, on a page that never ends. */
async function heightsOf(library: Maker, contents: readonly Content[], width: number, size: number): Promise<number[]> {
  const tops: number[] = [];
  const mark = (at: number): Content => ({ text: ' ', fontSize: 1, lineHeight: 0.001, id: `mark-${at}` });
  const definition: TDocumentDefinitions = {
    content: [...contents.flatMap((piece, at): Content[] => [mark(at), piece]), mark(contents.length)],
    pageSize: { width, height: endless },
    pageMargins: 0,
    defaultStyle: { font: 'Roboto', fontSize: size, lineHeight: 1.12 },
    pageBreakBefore: (node) => {
      const [, at] = /^mark-(\d+)$/.exec(node.id ?? '') ?? [];
      if (at !== undefined) tops[Number(at)] = node.startPosition.top;
      return false;
    },
  };
  await library.createPdf(definition).getBuffer();
  return contents.map((_, at) => (tops[at + 1] ?? 0) - (tops[at] ?? 0));
}

/** Where what stands before the columns ends, pt from the top of its page. */
export async function endOf(
  library: Maker,
  before: readonly Content[],
  page: Partial<TDocumentDefinitions>,
): Promise<number> {
  let top = 0;
  const definition: TDocumentDefinitions = {
    ...page,
    content: [...before, { text: ' ', fontSize: 1, id: 'end' }],
    pageBreakBefore: (node) => {
      if (node.id === 'end') top = node.startPosition.top;
      return false;
    },
  };
  await library.createPdf(definition).getBuffer();
  return top;
}

interface Flow {
  /** Width of a column and the gap between two, pt. */
  width: number;
  gap: number;
  size: number;
  /** Room from the first piece to the foot of its page, and of every page after it, pt. */
  first: number;
  full: number;
}

/** Emptier than this, pt, no column stays for the sake of a piece in one. */
const mostEmpty = 60;

/** By how much the columns of the last page are lowered at a time until they are even, pt. */
const step = 6;

/** Where a flow has come to: a piece, and of it a part. */
interface Place {
  piece: number;
  part: number;
}

/** A run of parts of one piece in one column. */
interface Run extends Place {
  count: number;
}

interface Heights {
  parts: readonly number[];
  again?: number;
}

const sum = (lengths: readonly number[]) => lengths.reduce((total, each) => total + each, 0);

/**
 * What stands in one column from a place on.
 *
 * @param must whether something stands in it though it be too high
 */
function columnFrom(
  pieces: readonly Heights[],
  from: Place,
  room: number,
  must: boolean,
): { runs: Run[]; next: Place } {
  const runs: Run[] = [];
  let [used, { piece, part }] = [0, from];
  for (let at = pieces[piece]; at; at = pieces[piece]) {
    const rest = at.parts.slice(part);
    const above = part > 0 ? (at.again ?? 0) : 0;
    if (used + above + sum(rest) <= room) {
      runs.push({ piece, part, count: rest.length });
      used += above + sum(rest);
      [piece, part] = [piece + 1, 0];
      continue;
    }
    let count = 0;
    while (used + above + sum(rest.slice(0, count + 1)) <= room) count += 1;
    // Under its title at least two parts stand, or it begins in the next column.
    const cut = at.again !== undefined && count >= (part === 0 ? 2 : 1) && room - used > mostEmpty;
    const forced = must && runs.length === 0;
    if (!cut && !forced) break;
    const taken = cut ? count : at.again === undefined ? rest.length : Math.max(1, count);
    runs.push({ piece, part, count: taken });
    part += taken;
    if (part >= at.parts.length) [piece, part] = [piece + 1, 0];
    break;
  }
  return { runs, next: { piece, part } };
}

/** The two columns of a page from a place on. */
function pageFrom(pieces: readonly Heights[], from: Place, room: number, must: boolean) {
  const left = columnFrom(pieces, from, room, must);
  const right = columnFrom(pieces, left.next, room, must);
  return { columns: [left.runs, right.runs], next: right.next };
}

/**
 * Pieces in two columns, page after page: down the left one, then down the right one. A piece is cut only between its parts and only where more than a
 * little of a column stayed empty else. The two columns of the last page are about equally long. The library's own flow of columns cuts lines of a
 * piece apart, so they are laid by their heights.
 */
export async function inColumns(library: Maker, make: Make, flow: Flow): Promise<Content[]> {
  const { width, gap, size, first, full } = flow;
  const measured = make();
  const flat = await heightsOf(
    library,
    measured.flatMap(({ parts, again }) => [...parts, ...(again === undefined ? [] : [again()])]),
    width,
    size,
  );
  let taken = 0;
  const heights = measured.map(({ parts, again }): Heights => {
    const own = flat.slice(taken, taken + parts.length);
    taken += parts.length + (again === undefined ? 0 : 1);
    return { parts: own, ...(again === undefined ? {} : { again: flat[taken - 1] ?? 0 }) };
  });
  const pages: Run[][][] = [];
  let place: Place = { piece: 0, part: 0 };
  while (place.piece < heights.length) {
    const room = pages.length === 0 ? first : full;
    let page = pageFrom(heights, place, room, room === full);
    if (page.next.piece >= heights.length)
      for (let low = room - step; low > 0; low -= step) {
        const lower = pageFrom(heights, place, low, false);
        if (lower.next.piece < heights.length) break;
        page = lower;
      }
    pages.push(page.columns);
    place = page.next;
  }
  const pieces = make();
  return pages.map(
    (page, at): Content => ({
      columns: page.map((runs) => ({
        width,
        stack: runs.flatMap(({ piece, part, count }) => {
          const { parts, again } = pieces[piece] as Piece;
          return [...(part > 0 && again ? [again()] : []), ...parts.slice(part, part + count)];
        }),
      })),
      columnGap: gap,
      ...(at > 0 ? { pageBreak: 'before' as const } : {}),
    }),
  );
}
