import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';

/** The part of the library that is used; its own types have the module as a global too. */
export interface Maker {
  setFonts(fonts: Record<string, Record<string, string>>): void;
  setUrlAccessPolicy(allowed: (url: string) => boolean): void;
  setLocalAccessPolicy(allowed: (path: string) => boolean): void;
  createPdf(definition: TDocumentDefinitions): { getBuffer(): Promise<Buffer> };
}

/** Pieces made anew: the library writes into those that it lays out, so that they serve once. */
export type Make = () => Content[];

/** Higher than any page that is measured on, pt. */
const endless = 100_000;

/** How high each of some pieces stands in a column `width` wide, pt: they are laid out once, one under another, on a page that never ends. */
async function heightsOf(library: Maker, make: Make, width: number, size: number): Promise<number[]> {
  const pieces = make();
  const tops: number[] = [];
  const mark = (at: number): Content => ({ text: ' ', fontSize: 1, lineHeight: 0.001, id: `mark-${at}` });
  const definition: TDocumentDefinitions = {
    content: [...pieces.flatMap((piece, at): Content[] => [mark(at), piece]), mark(pieces.length)],
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
  return pieces.map((_, at) => (tops[at + 1] ?? 0) - (tops[at] ?? 0));
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

/**
 * Pieces in two columns, page after page: down the left one, then down the right one, and no piece cut in two. The two columns of the last page are about
 * equally long. The library's own flow of columns cuts its pieces, so they are laid by their heights.
 */
export async function inColumns(library: Maker, make: Make, flow: Flow): Promise<Content[]> {
  const { width, gap, size, first, full } = flow;
  const heights = await heightsOf(library, make, width, size);
  const pieces = make();
  const pages: number[][][] = [];
  let columns: number[][] = [[], []];
  let column = 0;
  let used = 0;
  let room = first;
  for (const [at, height] of heights.entries()) {
    while (used + height > room && (used > 0 || room < full)) {
      column += 1;
      used = 0;
      if (column < 2) {
        // A first column too low for its first piece is of no use, nor is the second.
        if (columns[0]?.length || room === full) continue;
      }
      pages.push(columns);
      columns = [[], []];
      column = 0;
      room = full;
    }
    columns[column]?.push(at);
    used += height;
  }
  pages.push(balanced(columns, heights));
  return pages.map(
    (page, at): Content => ({
      columns: page.map((places) => ({ width, stack: places.map((place) => pieces[place] as Content) })),
      columnGap: gap,
      ...(at > 0 ? { pageBreak: 'before' as const } : {}),
    }),
  );
}

/** The pieces of a last page in the same order, its two columns as even as they can be. */
function balanced(columns: readonly (readonly number[])[], heights: readonly number[]): number[][] {
  const all = columns.flat();
  const sum = (places: readonly number[]) => places.reduce((total, at) => total + (heights[at] ?? 0), 0);
  let best = columns.map((column) => [...column]);
  let least = Math.max(...best.map(sum));
  for (let cut = 1; cut <= all.length; cut++) {
    const halves = [all.slice(0, cut), all.slice(cut)];
    const high = Math.max(...halves.map(sum));
    if (high < least) [best, least] = [halves, high];
  }
  return best;
}
