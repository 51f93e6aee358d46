import {
  type Block,
  cautionWords,
  type PaperBlock,
  type PaperDocument,
  type ResultTable,
} from '../../model/evidence/index.ts';
import { formatQuantity, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { drawingWords } from './drawing-marks.ts';
import { textTable } from './text-table.ts';

/** A line to write on, in characters. */
const line = '________________';

/**
 * What stands in a cell of a table, in the reader's units.
 *
 * @param value a number in the unit of its column, words, or nothing
 */
export function cellWords(
  value: string | number | null,
  column: ResultTable['columns'][number],
  units: ReaderUnits,
): string {
  if (value === null) return '';
  if (typeof value === 'string') return inReaderUnits(value, units);
  return formatQuantity(value, column.unit ?? '1', units, column);
}

/** What a reading should be, and the ends that it may lie between. */
export const expectedWords = (expected: string, between?: string): string =>
  `expected ${expected}${between ? ` (${between})` : ''}`;

/**
 * A document as plain text: what a reader copies and what the command line prints. A drawing is told in words.
 *
 * @param units in which its quantities are written
 * @returns lines without one at the end; the title first where the paper bears it
 */
export function documentText(document: PaperDocument, units: ReaderUnits): string {
  const pieces = document.blocks
    .map((block) => ({ kind: block.kind, text: blockText(block, units) }))
    .filter(({ text }) => text !== '');
  const text = pieces.reduce((whole, piece, at) => {
    if (at === 0) return piece.text;
    // Single lines follow each other; what has lines of its own stands apart.
    const apart = piece.kind === 'heading' || piece.text.includes('\n') || pieces[at - 1]?.text.includes('\n');
    return `${whole}\n${apart ? '\n' : ''}${piece.text}`;
  }, '');
  return inReaderUnits(
    document.form === 'card' || document.form === 'labels' ? text : `${document.title}\n\n${text}`,
    units,
  ).trim();
}

function blockText(block: PaperBlock, units: ReaderUnits): string {
  switch (block.kind) {
    case 'heading':
      return block.text;
    case 'text':
      return block.lead ? `${block.lead}: ${block.text}` : block.text;
    case 'list':
      return [...(block.heading ? [`${block.heading}:`] : []), ...block.items.map((item) => `- ${item}`)].join('\n');
    case 'ticks':
      return block.items.map((item) => `[ ] ${item}`).join('\n');
    case 'blanks':
      return block.labels.map((label) => `${label}: ${line}`).join('\n');
    case 'warning':
      return `${cautionWords[block.level]}. ${block.text}`;
    case 'table':
      return tableText(block, units);
    case 'drawing':
      return `${block.drawing.title}: ${drawingWords(block.drawing, block.scale)}`;
    case 'step': {
      const when = block.when ? ` (${block.when})` : '';
      const lines = [...block.blocks, ...block.beside].map((piece) => blockText(piece, units)).join('\n');
      return `[ ] ${block.number}. ${block.title}${when}\n${lines.replace(/^(?=.)/gm, '    ')}`;
    }
    case 'measured':
      return block.rows
        .map(({ label, expected, between }) => `${label}: measured ${line} ${expectedWords(expected, between)}`)
        .join('\n');
    case 'columns':
      return block.blocks.map((piece) => blockText(piece, units)).join('\n');
    case 'code':
      return `${block.text} ${block.address}`;
  }
}

function tableText({ table, ticks = [], write = [] }: Extract<Block, { kind: 'table' }>, units: ReaderUnits): string {
  const columns = [
    ...table.columns.map(({ id, label }, at) => ({
      heading: label,
      numeric: !ticks.includes(id) && table.rows.every((row) => typeof row[at] === 'number'),
    })),
    ...write.map((heading) => ({ heading })),
  ];
  const rows = table.rows.map((row) => [
    ...table.columns.map((column, at) => {
      const value = row[at] ?? null;
      const words = cellWords(value, column, units);
      return value !== null && ticks.includes(column.id) ? `[ ] ${words}`.trim() : words;
    }),
    ...write.map(() => line.slice(0, 8)),
  ]);
  return `${table.title}\n${textTable(columns, rows)}`;
}
