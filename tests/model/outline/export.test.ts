import { decodePDFRawStream, PDFArray, PDFDocument, type PDFPage, PDFRawStream } from 'pdf-lib';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { sheetDxf } from '../../../src/model/outline/export-dxf.ts';
import { sheetPdf } from '../../../src/model/outline/export-pdf.ts';
import {
  areaOfShape,
  nestCopies,
  nestedSheet,
  type PaperName,
  papers,
  readDrawing,
  ringArea,
  sheetSvg,
  templateSheet,
  tilesFor,
  withoutScale,
} from '../../../src/model/outline/index.ts';
import { drawn, sound } from './reference.ts';

const paddle = sound(drawn('paddle'));
const sheet = templateSheet(paddle, { clearance: 3, grainDegrees: 0 });
const pointsPerMm = 72 / 25.4;

/** Straight lines that a page draws, in mm from its lower left corner: read back from its content, not from our code. */
async function linesOf(page: PDFPage): Promise<[number, number, number, number][]> {
  const contents = page.node.Contents();
  const parts =
    contents instanceof PDFArray ? contents.asArray().map((ref) => page.doc.context.lookup(ref)) : [contents];
  const text = parts
    .map((part) => (part instanceof PDFRawStream ? new TextDecoder().decode(decodePDFRawStream(part).decode()) : ''))
    .join('\n');
  const lines: [number, number, number, number][] = [];
  let at: [number, number] | undefined;
  for (const line of text.split('\n')) {
    const match = /^(-?[\d.]+) (-?[\d.]+) ([ml])$/.exec(line.trim());
    if (!match) continue;
    const place: [number, number] = [Number(match[1]) / pointsPerMm, Number(match[2]) / pointsPerMm];
    if (match[3] === 'l' && at) lines.push([...at, ...place]);
    at = place;
  }
  // A transformation would make these numbers mean something else.
  expect(text).not.toMatch(/ cm$/m);
  return lines;
}

const lengthOf = ([ax, ay, bx, by]: [number, number, number, number]) => Math.hypot(bx - ax, by - ay);

describe('the SVG of a template', () => {
  const text = sheetSvg(sheet);
  const paths: Record<string, string[]> = {};
  let root: Record<string, string> = {};
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    const plain = attributes as unknown as Record<string, string>;
    if (name === 'svg') root = plain;
    if (name === 'path') {
      const role = plain.class ?? '';
      paths[role] = [...(paths[role] ?? []), plain.d ?? ''];
    }
  });
  parser.write(text).close();

  test('has one unit to the millimetre', () => {
    expect(root.width).toBe(`${sheet.width}mm`);
    expect(root.viewBox).toBe(`0 0 ${sheet.width} ${sheet.height}`);
  });

  test('has a bar of 100 mm', () => {
    const bars = (paths.scale ?? []).map(
      (data) => /^M(\S+) (\S+)L(\S+) (\S+)$/.exec(data)?.slice(1).map(Number) as [number, number, number, number],
    );
    expect(Math.max(...bars.map(lengthOf))).toBeCloseTo(100, 9);
  });

  test('gives the same outline when it is read back', () => {
    // Only the outline and its hole: the rough line lies around them.
    const only = `<svg width="${sheet.width}mm" height="${sheet.height}mm" viewBox="0 0 ${sheet.width} ${sheet.height}">${(paths.outline ?? []).map((d) => `<path d="${d}"/>`).join('')}</svg>`;
    const again = readDrawing(only);
    expect(again.ok).toBe(true);
    if (again.ok) expect(areaOfShape(sound(again.value.outline)) / areaOfShape(paddle)).toBeCloseTo(1, 5);
  });

  test('draws the rough line around the outline, inside the hole, and a cross at the hole', () => {
    expect(paths.rough).toHaveLength(2);
    expect(paths.centre).toHaveLength(4);
    expect(paths.grain).toHaveLength(1);
  });

  test('holds no number that is not one', () => {
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('the PDF of a template', () => {
  test.each<PaperName>(['a4', 'letter'])('on %s has pages of that size, each with a bar of 100 mm', async (paper) => {
    const document = await PDFDocument.load(await sheetPdf(sheet, paper));
    const { width, height } = withoutScale(sheet);
    const tiling = tilesFor(width, height, paper);
    expect(document.getPageCount()).toBe(tiling.columns * tiling.rows);
    for (const page of document.getPages()) {
      expect(page.getWidth() / pointsPerMm).toBeCloseTo(papers[paper].width, 6);
      expect(page.getHeight() / pointsPerMm).toBeCloseTo(papers[paper].height, 6);
      // The bar at the foot: level, below the frame, from its left side on.
      const bars = (await linesOf(page)).filter(
        ([ax, ay, bx, by]) => Math.abs(ax - 10) < 1e-6 && Math.abs(ay - by) < 1e-9 && ay < tiling.bottom && bx > ax,
      );
      expect(bars.map(lengthOf)).toHaveLength(1);
      expect(bars.map(lengthOf)[0]).toBeCloseTo(100, 6);
      // And the one up the side, left of the frame: printers stretch the two directions differently.
      const upright = (await linesOf(page)).filter(
        ([ax, ay, bx, by]) => Math.abs(ax - 6) < 1e-6 && Math.abs(bx - 6) < 1e-6 && Math.abs(by - ay) > 50,
      );
      expect(upright.map(lengthOf)).toEqual([expect.closeTo(100, 6)]);
    }
  });

  test.each([
    ['the class’s tray', { outer: 'M0 0H610V229H0Z', holes: [] }, 3, 4],
    ['an oval that fits one page', { outer: 'M0 75A90 75 0 0 1 180 75A90 75 0 0 1 0 75Z', holes: [] }, 0, 1],
    ['a board of 350 by 170 mm', { outer: 'M0 0H350V170H0Z', holes: [] }, 0, 2],
  ])('%s costs no sheet for a bar that every page has', async (_, outline, clearance, pages) => {
    const document = await PDFDocument.load(
      await sheetPdf(templateSheet(sound(outline), { clearance, grainDegrees: 0 }), 'a4', {
        title: 'paddle 560 × 220 mm, “ours”',
        date: '2026-03-27',
      }),
    );
    expect(document.getPageCount()).toBe(pages);
  });

  test('shows bars at true size, along and up', async () => {
    const document = await PDFDocument.load(
      await sheetPdf(
        templateSheet(sound(drawn('oval', { length: 120, width: 100 })), { clearance: 0, grainDegrees: 0 }),
        'a4',
      ),
    );
    expect(document.getPageCount()).toBe(1);
    const lines = await linesOf(document.getPage(0));
    expect(lines.filter((line) => Math.abs(lengthOf(line) - 100) < 1e-6)).toHaveLength(2);
  });

  test('marks every seam at the same place of the sheet on both pages', async () => {
    const whole = withoutScale(sheet);
    const tiling = tilesFor(whole.width, whole.height, 'a4');
    expect(tiling.columns).toBeGreaterThan(1);
    const document = await PDFDocument.load(await sheetPdf(sheet, 'a4'));
    const shown = new Map<string, number>();
    for (const [index, tile] of tiling.tiles.entries()) {
      for (const [ax, ay, bx, by] of await linesOf(document.getPage(index))) {
        if (Math.abs(ay - by) > 1e-9 || Math.abs(bx - ax - 6) > 1e-6) continue;
        const [x, y] = [(ax + bx) / 2 - tiling.left + tile.x, ay - tiling.bottom + tile.y];
        const mark = tiling.marks.findIndex((each) => Math.hypot(each.x - x, each.y - y) < 1e-4);
        const inside = x > tile.x && x < tile.x + tiling.tileWidth && y > tile.y && y < tile.y + tiling.tileHeight;
        if (mark >= 0 && inside) shown.set(`${mark}`, (shown.get(`${mark}`) ?? 0) + 1);
      }
    }
    expect([...shown.values()]).toEqual(tiling.marks.map(() => 2));
  });

  test('is the same file each time', async () => {
    expect(await sheetPdf(sheet, 'a4')).toEqual(await sheetPdf(sheet, 'a4'));
  });
});

describe('the DXF of a template', () => {
  /** Group codes and values, as DXF writes them: a line with the code, a line with the value. */
  const rows = sheetDxf(sheet).split(/\r?\n/);
  const pairs = Array.from(
    { length: Math.floor(rows.length / 2) },
    (_, k) => [Number(rows[2 * k]), rows[2 * k + 1]?.trim() ?? ''] as const,
  );
  const polylines: { layer: string; closed: boolean; points: [number, number][] }[] = [];
  let current: (typeof polylines)[number] | undefined;
  for (const [code, text] of pairs) {
    if (code === 0) {
      current = text === 'LWPOLYLINE' ? { layer: '', closed: false, points: [] } : undefined;
      if (current) polylines.push(current);
    } else if (current && code === 8) current.layer = text;
    else if (current && code === 70) current.closed = (Number(text) & 1) === 1;
    else if (current && code === 10) current.points.push([Number(text), 0]);
    else if (current && code === 20) (current.points[current.points.length - 1] as [number, number])[1] = Number(text);
  }

  test('is in millimetres', () => {
    const at = pairs.findIndex(([code, text]) => code === 9 && text === '$INSUNITS');
    expect(pairs[at + 1]).toEqual([70, '4']);
  });

  test('has a bar of 100 mm', () => {
    const bars = polylines
      .filter(({ layer }) => layer === 'SCALE')
      .map(({ points: [a = [0, 0], b = [0, 0]] }) => lengthOf([...a, ...b]));
    expect(Math.max(...bars)).toBeCloseTo(100, 9);
  });

  test('has the outline and its hole closed, on a layer of their own, with the area of the shape', () => {
    const loops = polylines.filter(({ layer }) => layer === 'OUTLINE');
    expect(loops.map(({ closed }) => closed)).toEqual([true, true]);
    const [outer = 0, hole = 0] = loops.map(({ points }) => Math.abs(ringArea(points.map(([x, y]) => ({ x, y })))));
    expect(Math.abs(outer - hole - areaOfShape(paddle))).toBeLessThan(0.02 * 1500);
  });
});

describe('tiles', () => {
  test.each([
    [100, 100, 1, 1],
    [190, 265, 1, 1],
    [191, 265, 2, 1],
    [370, 520, 2, 2],
    [371, 521, 3, 3],
  ])('of a sheet of %d × %d mm on A4 are %d × %d', (width, height, columns, rows) => {
    const tiling = tilesFor(width, height, 'a4');
    expect([tiling.columns, tiling.rows]).toEqual([columns, rows]);
    // They cover the sheet, and neighbours overlap.
    expect(Math.min(...tiling.tiles.map(({ x }) => x))).toBeLessThanOrEqual(1e-9);
    expect(Math.max(...tiling.tiles.map(({ x }) => x + tiling.tileWidth))).toBeGreaterThanOrEqual(width - 1e-9);
    expect(Math.min(...tiling.tiles.map(({ y }) => y))).toBeLessThanOrEqual(1e-9);
    expect(Math.max(...tiling.tiles.map(({ y }) => y + tiling.tileHeight))).toBeGreaterThanOrEqual(height - 1e-9);
  });
});

describe('a sheet of nested copies', () => {
  test('has every copy, its holes and the sheet’s edge', () => {
    const nest = nestCopies(paddle, { grainDegrees: 0, sheetLength: 1000, sheetWidth: 500, spacing: 12 });
    const many = nestedSheet(nest, { length: 1000, width: 500 }, 0);
    expect(many.lines.filter(({ role }) => role === 'outline')).toHaveLength(2 * nest.placements.length);
    expect(many.lines.filter(({ role }) => role === 'edge')).toHaveLength(1);
    expect(nest.placements.length).toBeGreaterThan(1);
  });
});
