import type { Column, Content, TableCell } from 'pdfmake/interfaces.js';
import { cellWords, expectedWords } from '../calculators/kit/document-text.ts';
import { drawingInReaderUnits, drawingWords } from '../calculators/kit/drawing-marks.ts';
import { cautionWords, type Drawing, type PaperBlock } from '../model/evidence/index.ts';
import { inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import type { Piece } from './sheet-pdf-flow.ts';
import { codeSvg, drawingSvg, drawnSize, keySvg } from './sheet-svg.ts';

/** Points of a PDF. */
export const mm = (length: number): number => (length * 72) / 25.4;

/** How blocks are set. */
export interface Setting {
  units: ReaderUnits;
  /** Type, pt. */
  size: number;
  /** Room across, mm. */
  width: number;
}

const svgSize = { unit: '', perMm: mm(1), face: 'Roboto' };
const gap: [number, number, number, number] = [0, 0, 0, 2.5];

/** A box to tick, drawn: the face has no letter for it. */
const box = (size: number) => ({
  width: size + 4,
  canvas: [{ type: 'rect' as const, x: 0.5, y: 0.5, w: size, h: size, lineWidth: 0.9, lineColor: '#000' }],
});

/** About how high some blocks stand in a column, pt: whether they may be kept whole is decided by it. */
function heightOf(blocks: readonly PaperBlock[], setting: Setting): number {
  const { size, width } = setting;
  const line = size * 1.32;
  const perLine = mm(width) / (size * 0.5);
  const lines = (text: string, across = perLine) => Math.ceil((text.length + 1) / across) * line + 3;
  const one = (block: PaperBlock): number => {
    switch (block.kind) {
      case 'heading':
        return line * 2;
      case 'text':
        return lines(`${block.lead ?? ''} ${block.text}`) * (block.large ? 1.4 : 1);
      case 'warning':
        return lines(block.text) + line;
      case 'list':
      case 'ticks':
        return block.items.reduce((sum, item) => sum + lines(item), 0) + 4;
      case 'blanks':
        return Math.ceil(block.labels.length / 2) * line * 2;
      case 'table':
        return block.table.rows.reduce(
          (sum, row) => sum + Math.max(...row.map((cell) => lines(`${cell ?? ''}`, perLine / row.length))) + 4,
          line * 2,
        );
      case 'drawing':
        return mm(drawnSize(block.drawing, block.scale ?? fullScale(block.drawing, width))[1]) + line * 3;
      case 'step':
        return line * 2 + heightOf([...block.blocks, ...block.beside], setting);
      case 'measured':
        return block.rows.length * line * 2;
      case 'columns':
        return heightOf(block.blocks, { ...setting, width: width / 2 }) / 2 + line;
      case 'code':
        return mm(30);
    }
  };
  return blocks.reduce((sum, block) => sum + one(block), 0);
}

const fullScale = (drawing: Drawing, width: number) => Math.max(1, drawnSize(drawing, 1)[0] / width);
/** Higher than this, pt, nothing is kept whole: it would leave much of a page empty. */
const mostGroup = 330;

/** Blocks as the library takes them: a heading stays with what follows it, small groups stay whole. */
export function blocksPdf(blocks: readonly PaperBlock[], setting: Setting): Content[] {
  const groups: PaperBlock[][] = [];
  for (const block of blocks) {
    const last = groups.at(-1);
    if (block.kind === 'heading' || !last || last[0]?.kind !== 'heading') groups.push([block]);
    else last.push(block);
  }
  return groups.flatMap((group): Content[] => {
    const pieces = group.map((block) => blockPdf(block, setting));
    if (heightOf(group, setting) <= mostGroup) return [{ stack: pieces, unbreakable: true }];
    const [first, second, ...rest] = pieces;
    if (!first || !second || heightOf(group.slice(0, 2), setting) > mostGroup) return pieces;
    return [{ stack: [first, second], unbreakable: true }, ...rest];
  });
}

/** Two stacks of about the same height. */
function inTwo(blocks: readonly PaperBlock[], setting: Setting): [PaperBlock[], PaperBlock[]] {
  const half = heightOf(blocks, setting) / 2;
  let height = 0;
  let at = 0;
  while (at < blocks.length && height < half - 4) height += heightOf([blocks[at++] as PaperBlock], setting);
  return [blocks.slice(0, at), blocks.slice(at)];
}

function blockPdf(block: PaperBlock, setting: Setting): Content {
  const { units, size } = setting;
  const words = (text: string) => inReaderUnits(text, units);
  switch (block.kind) {
    case 'heading':
      return { text: words(block.text), headlineLevel: 2, bold: true, fontSize: size + 2, margin: [0, 5, 0, 2] };
    case 'text': {
      const { text, large, strong, small, lead } = block;
      return {
        text: [
          ...(lead ? [{ text: `${words(lead)}  `, bold: true }] : []),
          { text: words(text), bold: strong === true },
        ],
        fontSize: large ? size * 1.3 : small ? size - 1 : size,
        margin: gap,
      };
    }
    case 'list':
      return {
        stack: [
          ...(block.heading ? [{ text: words(block.heading), bold: true }] : []),
          { ul: block.items.map(words), markerColor: '#000' },
        ],
        fontSize: size,
        margin: gap,
      };
    case 'ticks':
      return {
        stack: block.items.map((item) => ({
          columns: [box(size), { text: words(item), width: '*' }],
          columnGap: 0,
          margin: [0, 1, 0, 3],
        })),
        fontSize: size,
      };
    case 'blanks':
      return blanksPdf(block.labels.map(words), size);
    case 'warning':
      return {
        table: {
          widths: ['*'],
          body: [[{ text: [{ text: `${cautionWords[block.level]}. `, bold: true }, words(block.text)] }]],
        },
        layout: { hLineWidth: () => 0.6, vLineWidth: (at) => (at === 0 ? 3 : 0.6) },
        fontSize: size,
        margin: gap,
      };
    case 'table':
      return tablePdf(block, setting);
    case 'drawing':
      return drawingPdf(block.drawing, block.scale, setting);
    case 'step':
      return {
        stack: [
          ...stepTitle(block, setting),
          ...[...block.blocks, ...block.beside].map((each) => blockPdf(each, setting)),
        ],
      };
    case 'measured':
      return {
        stack: block.rows.map(({ label, expected, between }) => ({
          text: [
            { text: `${words(label)}  `, bold: true },
            `measured __________ ${words(expectedWords(expected, between))}`,
          ],
        })),
        fontSize: size,
        margin: gap,
      };
    case 'columns': {
      const half = { ...setting, width: (setting.width - 6) / 2 };
      return {
        columns: inTwo(block.blocks, half).map((stack): Column => ({ width: '*', stack: blocksPdf(stack, half) })),
        columnGap: mm(6),
      };
    }
    case 'code':
      return {
        columns: [
          {
            svg: codeSvg(block, 28, svgSize),
            width: mm(28),
            alt: 'A code for a telephone: the address beside it',
          } as Column,
          {
            width: '*',
            text: [`${words(block.text)}\n`, { text: block.address, bold: true }],
            margin: [0, mm(8), 0, 0],
          },
        ],
        columnGap: 8,
        fontSize: size,
      };
  }
}

function blanksPdf(labels: readonly string[], size: number): Content {
  const rows = Array.from({ length: Math.ceil(labels.length / 2) }, (_, row): TableCell[] =>
    [0, 1].map((column) => ({ text: labels[2 * row + column] ?? '', margin: [0, 6, 0, 0] })),
  );
  return {
    table: { widths: ['*', '*'], body: rows },
    layout: {
      hLineWidth: (at) => (at === 0 ? 0 : 0.6),
      vLineWidth: () => 0,
      paddingLeft: () => 0,
      paddingBottom: () => 1,
    },
    fontSize: size,
    margin: [0, 0, 0, 5],
  };
}

/** Room to write in a column, mm. */
const writeWidth = 18;

function tablePdf(
  { table, ticks = [], large = [], write = [] }: Extract<PaperBlock, { kind: 'table' }>,
  { units, size }: Setting,
): Content {
  const labels = [...table.columns.map(({ label }) => label), ...write];
  const title = table.title
    ? [
        [
          { text: inReaderUnits(table.title, units), bold: true, colSpan: labels.length },
          ...labels.slice(1).map(() => ''),
        ],
      ]
    : [];
  const head = labels.map((text): TableCell => ({ text: inReaderUnits(text, units), bold: true }));
  const body = table.rows.map((row): TableCell[] => [
    ...table.columns.map((column, at): TableCell => {
      const value = row[at] ?? null;
      const isLarge = large.includes(column.id);
      // A number stands beside its box and before its unit.
      const text = {
        text: cellWords(value, column, units),
        bold: isLarge,
        fontSize: isLarge ? size * 1.25 : size,
        noWrap: isLarge,
      };
      return value !== null && ticks.includes(column.id) ? { columns: [box(size + 3), { ...text, width: '*' }] } : text;
    }),
    ...write.map((): TableCell => ''),
  ]);
  // A column takes room by its longest text, so that no short one is squeezed.
  const longest = labels.map((label, at) =>
    Math.max(label.length, ...table.rows.map((row) => (typeof row[at] === 'number' ? 8 : `${row[at] ?? ''}`.length))),
  );
  return {
    table: {
      headerRows: 1 + title.length,
      keepWithHeaderRows: 1,
      dontBreakRows: true,
      widths: longest.map((count, at) => (at >= table.columns.length ? mm(writeWidth) : count <= 24 ? 'auto' : '*')),
      body: [...title, head, ...body],
    },
    layout: {
      hLineWidth: () => 0.4,
      vLineWidth: () => 0.4,
      paddingTop: () => 1.2,
      paddingBottom: () => 0.8,
    },
    fontSize: size,
    margin: [0, 2, 0, 5],
  } as Content;
}

const inPairs = <Item>(items: readonly Item[]): Item[][] =>
  Array.from({ length: Math.ceil(items.length / 2) }, (_, at) => items.slice(2 * at, 2 * at + 2));

function drawingPdf(marked: Drawing, scale: number | undefined, { units, size, width }: Setting): Content {
  const drawing = drawingInReaderUnits(marked, units);
  const at = scale ?? fullScale(drawing, width);
  const [wide, high] = drawnSize(drawing, at);
  const key = keySvg(drawing, svgSize);
  return {
    stack: [
      { text: drawing.title, bold: true },
      { svg: drawingSvg(drawing, at, svgSize), width: mm(wide), height: mm(high), alt: drawing.description },
      ...inPairs(key).map((pair) => ({
        columns: pair.flatMap(({ svg, text }): Column[] => [
          { svg, width: mm(8), margin: [0, 2, 0, 0] },
          { text, width: '*' },
        ]),
        columnGap: 4,
      })),
      { text: drawingWords(drawing, scale), fontSize: size - 1 },
    ],
    unbreakable: true,
    fontSize: size,
    margin: gap,
  } as Content;
}

/** Line above a step, its box, its number and title. */
function stepTitle(
  { number, title, when }: Extract<PaperBlock, { kind: 'step' }>,
  { units, size, width }: Setting,
  goesOn = false,
): Content[] {
  const [behind, fontSize] = goesOn ? [', going on', size] : ['', size + 1.5];
  return [
    {
      canvas: [{ type: 'line', x1: 0, y1: 0, x2: mm(width), y2: 0, lineWidth: 0.4 }],
      margin: goesOn ? [0, 2, 0, 3] : [0, 4, 0, 3],
    },
    {
      columns: [
        ...(goesOn ? [] : [box(10)]),
        {
          width: '*',
          headlineLevel: 3,
          text: [
            { text: `${number}. ${inReaderUnits(title, units)}${behind}`, bold: true, fontSize },
            { text: when && !goesOn ? `   ${inReaderUnits(when, units)}` : '', fontSize: size - 0.5 },
          ],
        },
      ],
      columnGap: 0,
      margin: [0, 0, 0, 2],
    },
  ];
}

/** Blocks of two columns as pieces: a heading stays with what follows it, a step may be cut between its blocks where much would stay empty. */
export function piecesPdf(blocks: readonly PaperBlock[], setting: Setting): Piece[] {
  const pieces: Piece[] = [];
  let above: Content[] = [];
  for (const block of blocks) {
    if (block.kind === 'heading') above.push(blockPdf(block, setting));
    else if (block.kind === 'step') {
      const [first, ...rest] = [...block.blocks, ...block.beside].map((each) => blockPdf(each, setting));
      pieces.push({
        parts: [{ stack: [...above, ...stepTitle(block, setting), ...(first ? [first] : [])] }, ...rest],
        again: () => ({ stack: stepTitle(block, setting, true) }),
      });
      above = [];
    } else {
      pieces.push({ parts: [{ stack: [...above, blockPdf(block, setting)] }] });
      above = [];
    }
  }
  return pieces;
}
