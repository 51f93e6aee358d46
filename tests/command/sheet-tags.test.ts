import {
  decodePDFRawStream,
  PDFArray,
  PDFBool,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFRawStream,
  PDFString,
} from 'pdf-lib';
import { beforeAll, describe, expect, test } from 'vitest';
import { packetPdf } from '../../src/command/sheet-pdf.ts';
import { packetOf } from '../../src/method/documents/index.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { pageOf } from '../method/documents/pages.ts';

interface Element {
  kind: string;
  alt?: string;
  scope?: string;
  held: Element[];
  /** Pieces of its own in the text of the pages. */
  pieces: number;
}

const wordsOf = (value: unknown) =>
  value instanceof PDFString || value instanceof PDFHexString ? value.decodeText() : undefined;

/** The tree of elements that a reader is handed, below some element. */
function elementOf(document: PDFDocument, value: unknown): Element {
  const dictionary = document.context.lookup(value as never, PDFDict);
  const look = (name: string) => document.context.lookup(dictionary.get(PDFName.of(name)));
  const inside = look('K');
  const kids = inside instanceof PDFArray ? inside.asArray() : inside === undefined ? [] : [inside];
  const isElement = (kid: unknown) => {
    const found = document.context.lookup(kid as never);
    return found instanceof PDFDict && found.has(PDFName.of('S'));
  };
  const attributes = look('A');
  const scope = attributes instanceof PDFDict ? `${attributes.get(PDFName.of('Scope')) ?? ''}` : '';
  const alt = wordsOf(look('Alt'));
  return {
    kind: `${look('S')}`.slice(1),
    ...(alt === undefined ? {} : { alt }),
    ...(scope === '' ? {} : { scope }),
    held: kids.filter(isElement).map((kid) => elementOf(document, kid)),
    pieces: kids.filter((kid) => !isElement(kid)).length,
  };
}

const all = (element: Element): Element[] => [element, ...element.held.flatMap(all)];

/** What is drawn on a page outside every piece that is marked, as operators; the pieces themselves by what marks them. */
function drawnOutside(document: PDFDocument, at: number): { outside: string[]; marks: string[] } {
  const contents = document.getPage(at).node.normalizedEntries().Contents?.asArray() ?? [];
  const text = contents
    .map((reference) => document.context.lookup(reference))
    .map((stream) =>
      stream instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1') : '',
    )
    .join('\n');
  let depth = 0;
  const outside: string[] = [];
  const marks: string[] = [];
  // What is said with a mark stands on lines of its own.
  for (const line of text.replace(/\n(?=[^<>]*>> BDC)/g, ' ').split('\n')) {
    const [, mark] = /^\/(\w+) .*BDC$/.exec(line) ?? [];
    if (mark) marks.push(mark);
    if (mark) depth += 1;
    else if (line === 'EMC') depth -= 1;
    else if (depth === 0 && /(TJ|Tj|^S|^f|^B|Do)$/.test(line)) outside.push(line);
  }
  expect(depth).toBe(0);
  return { outside, marks };
}

let tray: MethodPage;
let document: PDFDocument;
let tree: Element;
beforeAll(async () => {
  tray = await pageOf('first-tray');
  const packet = packetOf(tray, { paper: 'a4', made: '2027-01-10', address: 'https://boards.example/methods/tray' });
  document = await PDFDocument.load(await packetPdf(packet, defaultUnits), { updateMetadata: false });
  const root = document.catalog.lookup(PDFName.of('StructTreeRoot'), PDFDict);
  tree = elementOf(document, root.lookup(PDFName.of('K'), PDFArray).get(0));
}, 120_000);

describe('a packet as PDF for whoever has it read aloud', () => {
  test('says its language and its title', () => {
    expect(wordsOf(document.catalog.lookup(PDFName.of('Lang')))).toBe('en');
    expect(document.getTitle()).toContain('A first tray');
    const viewer = document.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
    expect(viewer.get(PDFName.of('DisplayDocTitle'))).toBe(PDFBool.True);
    expect(document.catalog.lookup(PDFName.of('MarkInfo'), PDFDict).get(PDFName.of('Marked'))).toBe(PDFBool.True);
  });

  test('is a part a document, each with headings, and has a heading a step', () => {
    expect(tree.kind).toBe('Document');
    const packet = packetOf(tray, { paper: 'a4', made: '2027-01-10' });
    expect(tree.held.map(({ kind }) => kind)).toEqual(packet.documents.map(() => 'Sect'));
    const student = all(tree.held[0] as Element);
    expect(student.filter(({ kind }) => kind === 'H1').length).toBe(1);
    expect(student.filter(({ kind }) => kind === 'H2').length).toBeGreaterThanOrEqual(3);
    // A step that is cut has its title again where it goes on.
    expect(student.filter(({ kind }) => kind === 'H3').length).toBeGreaterThanOrEqual(tray.steps.length);
  });

  test('has tables of rows, whose first are heads, and lists of items', () => {
    const tables = all(tree).filter(({ kind }) => kind === 'Table');
    expect(tables.length).toBeGreaterThan(5);
    for (const { held } of tables) {
      expect(new Set(held.map(({ kind }) => kind))).toEqual(new Set(['TR']));
      const heads = held.flatMap((row) => row.held).filter(({ kind }) => kind === 'TH');
      expect(heads.length).toBeGreaterThan(1);
      for (const { scope } of heads) expect(scope).toBe('/Column');
    }
    for (const { held } of all(tree).filter(({ kind }) => kind === 'LI'))
      expect(held.map(({ kind }) => kind)).toEqual(['LBody']);
  });

  test('says in words what each drawing shows, the code and the template too', () => {
    const figures = all(tree).filter(({ kind }) => kind === 'Figure');
    expect(figures.length).toBeGreaterThan(3);
    for (const { alt = '' } of figures) expect(alt).not.toMatch(/^.{0,19}$|[⟦⟧]/);
    expect(figures.some(({ alt }) => /code for a telephone/.test(alt ?? ''))).toBe(true);
    expect(figures.some(({ alt }) => /sheet 1 of \d/.test(alt ?? ''))).toBe(true);
  });

  test('draws nothing that is neither in the tree nor told as ornament', () => {
    for (let at = 0; at < document.getPageCount(); at++) {
      const { outside, marks } = drawnOutside(document, at);
      expect(outside).toEqual([]);
      // The running title and the number of the page are read as neither.
      expect(marks).toContain('Artifact');
    }
    for (const { held, pieces } of all(tree)) expect(held.length + pieces).toBeGreaterThan(0);
  });
});
