import type { Content } from 'pdfmake/interfaces.js';

type Kind =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'LBody'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure';

/** What a text or a drawing is to whoever has it read aloud, and what holds it. */
export interface Tag {
  kind: Kind;
  within?: Tag;
  /** What a drawing shows, in words. */
  alt?: string;
}

/** The parts of the library's contents that are walked; what else they hold stays as it is. */
interface Node {
  text?: string | readonly (string | Node)[];
  stack?: readonly Content[];
  columns?: readonly Content[];
  section?: readonly Content[];
  ul?: readonly Content[];
  table?: { headerRows?: number; body: readonly (readonly Content[])[] };
  svg?: string;
  alt?: string;
  headlineLevel?: number;
  tag?: Tag;
}

const isText = (content: unknown): content is string => typeof content === 'string';

const headings: Readonly<Record<number, Kind>> = { 1: 'H1', 2: 'H2', 3: 'H3' };

/**
 * Contents with a tag at every text and at every drawing that says what it shows (`alt`); the rest, as lines and boxes, is ornament. Headings bear a
 * `headlineLevel`; a table without heads is there for its looks, and its cells are paragraphs.
 */
export function tagged(content: Content, within: Tag, kind: Kind = 'P'): Content {
  const inside = (contents: readonly Content[], holder: Tag, each: Kind = 'P') =>
    contents.map((one) => tagged(one, holder, each));
  // An empty cell is nothing to read.
  if (isText(content) && content.trim() === '') return content;
  if (isText(content)) return { text: [{ text: content, tag: { kind, within } }] } as Content;
  if (Array.isArray(content)) return inside(content, within, kind) as Content;
  const node = content as Node;
  if (node.stack) return { ...node, stack: inside(node.stack, within, kind) } as Content;
  if (node.section) return { ...node, section: inside(node.section, within, kind) } as Content;
  if (node.columns) return { ...node, columns: inside(node.columns, within, kind) } as Content;
  if (node.ul) {
    const list: Tag = { kind: 'L', within };
    return { ...node, ul: node.ul.map((item) => tagged(item, { kind: 'LI', within: list }, 'LBody')) } as Content;
  }
  if (node.table) return { ...node, table: taggedTable(node.table, within) } as Content;
  if (node.svg !== undefined)
    return (node.alt === undefined ? node : { ...node, tag: { kind: 'Figure', within, alt: node.alt } }) as Content;
  if (node.text !== undefined) {
    if (isText(node.text) && node.text.trim() === '') return content;
    const tag: Tag = { kind: headings[node.headlineLevel ?? 0] ?? kind, within };
    const parts = isText(node.text) ? [node.text] : node.text;
    return { ...node, text: parts.map((part) => (isText(part) ? { text: part, tag } : { ...part, tag })) } as Content;
  }
  return content;
}

function taggedTable(table: NonNullable<Node['table']>, within: Tag): Node['table'] {
  const { headerRows, body } = table;
  if (headerRows === undefined) return { ...table, body: body.map((row) => row.map((cell) => tagged(cell, within))) };
  const whole: Tag = { kind: 'Table', within };
  return {
    ...table,
    body: body.map((row, at) => {
      const line: Tag = { kind: 'TR', within: whole };
      return row.map((cell) => tagged(cell, line, at < headerRows ? 'TH' : 'TD'));
    }),
  };
}

/** The part of the library's document that tags are written with. */
interface TaggedDocument {
  options: { tagged?: boolean };
  page: object;
  struct(kind: Kind, options?: { alt?: string; scope?: string }): Element;
  addStructure(element: Element): void;
  markStructureContent(kind: Kind): unknown;
  markContent(kind: 'Artifact', options: { type: string }): void;
  endMarkedContent(): void;
}

interface Element {
  add(child: unknown): void;
}

/** What draws a document: one call a line of text, a line or box, a drawing. */
interface Drawer {
  pdfDocument: TaggedDocument;
}

type Draw<Item> = (this: Drawer, item: Item, ...place: number[]) => void;

interface Drawing {
  renderLine: Draw<{ inlines: readonly { tag?: Tag }[] }>;
  renderVector: Draw<unknown>;
  renderSVG: Draw<{ tag?: Tag }>;
}

/** The elements of each document by their tags, and the page on which each was first drawn. */
const elements = new WeakMap<TaggedDocument, Map<Tag, { element: Element; page: object }>>();

function elementOf(document: TaggedDocument, tag: Tag): { element: Element; page: object } {
  const known = elements.get(document) ?? new Map<Tag, { element: Element; page: object }>();
  elements.set(document, known);
  const before = known.get(tag);
  if (before) return before;
  const { kind, within, alt } = tag;
  const element = document.struct(kind, {
    ...(alt === undefined ? {} : { alt }),
    ...(kind === 'TH' ? { scope: 'Column' } : {}),
  });
  if (within) elementOf(document, within).element.add(element);
  else document.addStructure(element);
  const made = { element, page: document.page };
  known.set(tag, made);
  return made;
}

/** Draw something as part of its element, or as ornament where it has none: so is the head of a table on every page after its first. */
function mark(document: TaggedDocument, tag: Tag | undefined, draw: () => void): void {
  if (document.options.tagged !== true) {
    draw();
    return;
  }
  const found = tag && elementOf(document, tag);
  if (found && (tag.kind !== 'TH' || found.page === document.page))
    found.element.add(document.markStructureContent(tag.kind));
  else document.markContent('Artifact', { type: tag ? 'Pagination' : 'Layout' });
  draw();
  document.endMarkedContent();
}

const taught = new WeakSet<Drawing>();

/** The library knows how to write tags and has no way to ask for them: what draws its pages is taught to, once. */
export function teachTags(drawing: Drawing): void {
  if (taught.has(drawing)) return;
  taught.add(drawing);
  const { renderLine, renderVector, renderSVG } = drawing;
  drawing.renderLine = function (line, ...place) {
    mark(this.pdfDocument, line.inlines[0]?.tag, () => renderLine.call(this, line, ...place));
  };
  drawing.renderVector = function (vector) {
    mark(this.pdfDocument, undefined, () => renderVector.call(this, vector));
  };
  drawing.renderSVG = function (svg) {
    mark(this.pdfDocument, svg.tag, () => renderSVG.call(this, svg));
  };
}
