import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  type PDFPage,
  PDFRawStream,
  PDFRef,
} from 'pdf-lib';

const textOf = (stream: unknown): string =>
  stream instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1') : '';

const characters = (hex: string): string =>
  (hex.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(Number.parseInt(unit, 16))).join('');

/** What each glyph of a font stands for, by the map that the font brings. */
function glyphsOf(map: string): Map<number, string> {
  const glyphs = new Map<number, string>();
  for (const [, block] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, to] of (block ?? '').matchAll(/<([\da-f]+)>\s*<([\da-f]+)>/gi))
      glyphs.set(Number.parseInt(glyph as string, 16), characters(to as string));
  for (const [, block] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, from, to, first] of (block ?? '').matchAll(/<([\da-f]+)>\s*<([\da-f]+)>\s*<([\da-f]+)>/gi)) {
      const [start, end, code] = [from, to, first].map((hex) => Number.parseInt(hex as string, 16)) as [
        number,
        number,
        number,
      ];
      for (let glyph = start; glyph <= end; glyph++) glyphs.set(glyph, String.fromCodePoint(code + glyph - start));
    }
  return glyphs;
}

/** The text of one page as the browser wrote it, without its blanks: where words stand apart is a matter of places, not of characters. */
function pageText(page: PDFPage): string {
  const { context } = page.doc;
  const look = (value: unknown) => (value instanceof PDFRef ? context.lookup(value) : value);
  const fonts = look(page.node.Resources()?.get(PDFName.of('Font')));
  // A face drawn by curves has one byte a glyph, others two.
  const maps = new Map<string, { glyphs: Map<number, string>; digits: number }>();
  if (fonts instanceof PDFDict)
    for (const [name, reference] of fonts.entries()) {
      const font = look(reference);
      if (font instanceof PDFDict) {
        const curves = font.get(PDFName.of('Subtype')) === PDFName.of('Type3');
        maps.set(name.asString(), {
          glyphs: glyphsOf(textOf(look(font.get(PDFName.of('ToUnicode'))))),
          digits: curves ? 2 : 4,
        });
      }
    }
  const contents = page.node.Contents();
  const streams = contents instanceof PDFArray ? contents.asArray().map(look) : [contents];
  let face = { glyphs: new Map<number, string>(), digits: 4 };
  let text = '';
  for (const [, font, shown] of streams
    .map(textOf)
    .join('\n')
    .matchAll(/(\/\S+) [\d.]+ Tf|((?:<[\da-f]*>|\[[^\]]*\])) ?TJ?j?/gi)) {
    if (font) face = maps.get(font) ?? face;
    for (const [, hex] of (shown ?? '').matchAll(/<([\da-f]*)>/gi))
      for (let at = 0; at < (hex ?? '').length; at += face.digits)
        text += face.glyphs.get(Number.parseInt((hex ?? '').slice(at, at + face.digits), 16)) ?? '';
  }
  return text.replace(/\s+/g, '');
}

/** The text of every page of a PDF that a browser printed, without blanks. */
export async function pdfTexts(bytes: Uint8Array): Promise<string[]> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  return document.getPages().map(pageText);
}
