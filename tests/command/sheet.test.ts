import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { packetHtml } from '../../src/command/sheet-html.ts';
import { packetPdf } from '../../src/command/sheet-pdf.ts';
import { packetOf, styleString } from '../../src/method/documents/index.ts';
import type { MethodPage } from '../../src/method/page/types.ts';
import { papers } from '../../src/model/outline/tiles.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { pageOf } from '../method/documents/pages.ts';
import { kerf } from './run.ts';

const pointsPerMm = 72 / 25.4;
let folder = '';
let tray: MethodPage;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'kerf-sheet-'));
  tray = await pageOf('first-tray');
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const method = [
  'methods/first-tray.yaml',
  '--shop',
  'methods/shop.yaml',
  '--start',
  '2027-01-12',
  '--date',
  '2027-01-10',
];

/** Lengths of the level and upright straight lines of a page, pt, after every change of its coordinates. */
function lineLengths(document: PDFDocument, at: number): number[] {
  const contents = document.getPage(at).node.normalizedEntries().Contents;
  const text = (contents?.asArray() ?? [])
    .map((reference) => document.context.lookup(reference))
    .map((stream) =>
      stream instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1') : '',
    )
    .join('\n');
  let matrix = [1, 0, 0, 1, 0, 0];
  const kept: number[][] = [];
  let from: number[] = [];
  const lengths: number[] = [];
  const stack: number[] = [];
  const placed = ([x = 0, y = 0]: number[]) => {
    const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix;
    return [a * x + c * y + e, b * x + d * y + f];
  };
  for (const word of text.split(/\s+/)) {
    if (/^-?[\d.]+$/.test(word)) stack.push(Number(word));
    else {
      if (word === 'q') kept.push(matrix);
      else if (word === 'Q') matrix = kept.pop() ?? matrix;
      else if (word === 'cm') {
        const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = matrix;
        const [p = 1, q = 0, r = 0, s = 1, t = 0, u = 0] = stack.slice(-6);
        matrix = [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
      } else if (word === 'm') from = placed(stack.slice(-2));
      else if (word === 'l') {
        const to = placed(stack.slice(-2));
        lengths.push(Math.hypot((to[0] ?? 0) - (from[0] ?? 0), (to[1] ?? 0) - (from[1] ?? 0)));
        from = to;
      }
      stack.length = 0;
    }
  }
  return lengths;
}

describe('a packet as PDF', () => {
  test.each(['a4', 'letter'] as const)(
    'on %s has that size on every page, and a first tray is short',
    async (paper) => {
      const packet = packetOf(tray, { paper, made: '2027-01-10', only: ['student'] });
      const bytes = await packetPdf(packet, defaultUnits);
      const document = await PDFDocument.load(bytes, { updateMetadata: false });
      const { width, height } = papers[paper];
      for (const each of document.getPages()) {
        expect(each.getWidth()).toBeCloseTo(width * pointsPerMm, 1);
        expect(each.getHeight()).toBeCloseTo(height * pointsPerMm, 1);
      }
      expect(document.getPageCount()).toBeLessThanOrEqual(6);
      // The line above a step is as wide as its column: the first stands on the first page.
      const column = ((width - 2 * 15 - 6) / 2) * pointsPerMm;
      for (let at = 0; at < document.getPageCount(); at++)
        expect(lineLengths(document, at).some((length) => Math.abs(length - column) < 0.5)).toBe(true);
      expect(document.getTitle()).toContain('A first tray');
    },
    30_000,
  );

  test('is the same, byte for byte, each time', async () => {
    const packet = packetOf(tray, { paper: 'a4', made: '2027-01-10', only: ['teacher', 'label'] });
    const [one, other] = [await packetPdf(packet, defaultUnits), await packetPdf(packet, defaultUnits)];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  }, 30_000);

  test.each(['a4', 'letter'] as const)(
    'keeps a template at true size on %s: the bars of 100 mm and the edges of the tray',
    async (paper) => {
      const packet = packetOf(tray, { paper, made: '2027-01-10', only: ['template'] });
      const document = await PDFDocument.load(await packetPdf(packet, defaultUnits));
      const pages = document.getPageCount();
      expect(pages).toBeGreaterThan(1);
      const last = lineLengths(document, pages - 1);
      expect(last.filter((length) => Math.abs(length - 100 * pointsPerMm) < 0.05).length).toBe(2);
      // The straight part of an end: 230 mm of width without two corners of 25 mm.
      const all = Array.from({ length: pages }, (_, at) => lineLengths(document, at)).flat();
      expect(all.some((length) => Math.abs(length - 180 * pointsPerMm) < 0.5)).toBe(true);
    },
    30_000,
  );

  test('draws no picture that a text names, and opens no file', async () => {
    const bytes = await packetPdf(packetOf(planted(), { paper: 'a4', made: '2027-01-10' }), defaultUnits);
    const document = await PDFDocument.load(bytes);
    const kinds = document.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) => (object instanceof PDFRawStream ? [`${object.dict.get(PDFName.of('Subtype'))}`] : []));
    expect(kinds).not.toContain('/Image');
  }, 30_000);
});

const nasty = '</p><script>alert(1)</script><img src=x onerror=alert(1)></svg><image href="file:///etc/passwd"/>';

/** The tray with marks of other languages in every place where somebody's words may stand. */
function planted(): MethodPage {
  return {
    ...tray,
    title: nasty,
    makes: { ...tray.makes, what: nasty },
    parameters: tray.parameters.map((each) => ({ ...each, words: nasty })),
    steps: tray.steps.map((step) => ({
      ...step,
      title: nasty,
      does: [{ kind: 'paragraph', parts: [{ kind: 'text', text: nasty }] }],
      tools: step.tools.map((each) => ({ ...each, what: nasty })),
      calculations: step.calculations.map((each) => ({
        ...each,
        drawings: each.drawings.map((drawing) => ({
          ...drawing,
          title: nasty,
          shapes: [
            ...drawing.shapes,
            {
              role: 'board' as const,
              label: nasty,
              closed: true,
              points: [
                [0, 0],
                [900, 0],
                [900, 90],
              ] as const,
            },
          ],
        })),
      })),
    })),
  };
}

describe('a packet as HTML', () => {
  test('stands alone, and holds nothing that runs or is fetched', () => {
    const html = packetHtml(packetOf(tray, { paper: 'letter', made: '2027-01-10' }), defaultUnits);
    expect(html).toContain("default-src 'none'");
    expect(html).toContain('size: letter');
    expect(html).not.toMatch(
      /<(script|img|image|iframe|link|object|embed|use|foreignObject)\b|\s(src|href|on\w+)=|url\(|@import/i,
    );
    expect(html.match(/<section class="step">/g)?.length).toBe(tray.steps.length);
  });

  test('shows marks of another language as the text that they are', () => {
    const html = packetHtml(packetOf(planted(), { paper: 'a4', made: '2027-01-10', for: nasty }), defaultUnits);
    expect(html).not.toMatch(/<(script|img|image)\b/i);
    expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(html.match(/<style>/g)?.length).toBe(1);
    expect(html.match(/<\/style>/g)?.length).toBe(1);
  });

  test('a text in its style sheet ends no string', () => {
    expect(styleString('a"; } </style><b> \n é')).toBe('"a\\22 \\3b  \\7d  \\3c \\2f style\\3e \\3c b\\3e  \\a  é"');
  });
});

describe('kerf sheet', () => {
  test('writes a PDF, a page and a calendar, by the ending of the file', async () => {
    for (const [name, begins] of [
      ['a.pdf', '%PDF-'],
      ['a.html', '<!doctype html>'],
      ['a.ics', 'BEGIN:VCALENDAR'],
    ] as const) {
      const file = join(folder, name);
      const { code, out, err } = await kerf('sheet', ...method, '-o', file, '--only', 'student', '--for', 'Table 3');
      expect([code, err]).toEqual([0, '']);
      expect(readFileSync(file, 'latin1').slice(0, begins.length)).toBe(begins);
      if (name !== 'a.ics') expect(out).toContain('A first tray in bought maple, oil only');
    }
    expect(readFileSync(join(folder, 'a.html'), 'utf8')).toContain('<b>Made for</b> Table 3');
  }, 60_000);

  test('writes the address of the very case under its code', async () => {
    const file = join(folder, 'b.html');
    const { code } = await kerf(
      'sheet',
      ...method,
      '-o',
      file,
      '--pieces',
      '2',
      '--set',
      'wood=black-cherry',
      '--site',
      'https://boards.example/',
    );
    expect(code).toBe(0);
    const html = readFileSync(file, 'utf8');
    expect(html).toContain(
      '<b>boards.example/methods/first-tray?pieces=2&amp;start=2027-01-12&amp;wood=black-cherry</b>',
    );
    expect(html).toContain('Wood: black cherry');
  }, 30_000);

  test.each([
    [['-o', 'a.doc'], 'a.doc does not end in .pdf, .html, .ics'],
    [[], 'no file is named to write to'],
    [['-o', 'a.pdf', '--paper', 'a3'], '--paper “a3” is not known; there are a4 and letter'],
    [['-o', 'a.pdf', '--date', '2027-02-30'], '--date “2027-02-30” is not a day of the calendar'],
    [['-o', 'a.pdf', '--site', 'boards'], '--site “boards” is not the address of a site'],
    [['-o', 'a.pdf', '--only', 'student,poster'], 'it has student, teacher, template, label, card'],
    [['-o', 'a.pdf', '--pieces', '0'], 'sheet: --pieces 0 is not a whole number'],
    [['-o', '/no/such/folder/a.html'], '/no/such/folder/a.html cannot be written'],
  ])(
    '%j is refused with a way out',
    async (args, words) => {
      const { code, err } = await kerf('sheet', ...method, ...args);
      expect(code).toBe(2);
      expect(err).toContain(words);
    },
    30_000,
  );

  test('says what is wrong with a case', async () => {
    const { code, err } = await kerf('sheet', ...method, '-o', join(folder, 'c.pdf'), '--set', 'wood=balsa');
    expect(code).toBe(1);
    expect(err).toContain('wood');
  }, 30_000);
});
