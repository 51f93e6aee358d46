import type { Block, Inline } from './text.ts';

function plainLine(parts: readonly Inline[], figure: (pointer: string) => string): string {
  return parts
    .map((part) => {
      switch (part.kind) {
        case 'text':
        case 'code':
          return part.text;
        case 'break':
          return '\n';
        case 'pointer':
          return figure(part.pointer);
        case 'quantity':
          return part.marked;
        case 'link':
          return `${plainLine(part.parts, figure)} (${part.href})`;
        default:
          return plainLine(part.parts, figure);
      }
    })
    .join('');
}

/**
 * The text of a step without any marks, for a terminal, a search or a spoken page: an empty line between paragraphs, list items behind a dash or
 * their number, indented by two spaces a level. Quantities stay marked (`inReaderUnits`).
 *
 * @param figure what is written for a reference
 */
export function plainText(blocks: readonly Block[], figure: (pointer: string) => string): string {
  return blocks
    .map((block) => {
      if (block.kind === 'paragraph') return plainLine(block.parts, figure);
      return block.items
        .map((item, at) => {
          const mark = block.start === undefined ? '- ' : `${block.start + at}. `;
          return `${mark}${plainText(item, figure).replace(/\n+/g, '\n').replaceAll('\n', '\n  ')}`;
        })
        .join('\n');
    })
    .join('\n\n');
}
