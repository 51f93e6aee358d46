import { decodePDFRawStream, PDFDocument, PDFRawStream } from 'pdf-lib';
import { expect, test } from 'vitest';
import { packetPdf } from '../../src/command/sheet-pdf.ts';
import type { MethodPacket } from '../../src/method/documents/index.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';

const sentence = 'Read the board before you cut it, and write what you read beside what was expected of it here.';

/** A sheet for the hand of so many lines of the same words. */
const packetOf = (lines: number): MethodPacket => ({
  title: 'Lines',
  paper: 'letter',
  made: '2027-01-10',
  language: 'en',
  running: 'Lines',
  documents: [
    {
      id: 'student',
      sheet: 'student',
      steps: [],
      title: 'Lines',
      form: 'sheet',
      blocks: Array.from({ length: lines }, () => ({ kind: 'text' as const, text: sentence })),
    },
  ],
  sheets: [],
});

/** Pages of a packet, the type of its lines, pt, and how many lines its last page holds. */
async function setOf(lines: number): Promise<{ pages: number; type: number; last: number }> {
  const document = await PDFDocument.load(await packetPdf(packetOf(lines), defaultUnits), { updateMetadata: false });
  const texts = document.getPages().map((page) =>
    (page.node.normalizedEntries().Contents?.asArray() ?? [])
      .map((reference) => document.context.lookup(reference))
      .map((stream) =>
        stream instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1') : '',
      )
      .join('\n'),
  );
  const types = [...(texts[0] ?? '').matchAll(/\/F\d+ ([\d.]+) Tf/g)].map(([, size]) => Number(size));
  // The title is larger and the foot of the page smaller; every line of words begins a paragraph of its own.
  const counts = new Map<number, number>();
  for (const size of types) counts.set(size, (counts.get(size) ?? 0) + 1);
  const [type = 0] = [...counts].sort(([, one], [, other]) => other - one)[0] ?? [];
  return { pages: texts.length, type, last: (texts.at(-1)?.match(/MCID/g) ?? []).length };
}

test('a sheet for the hand is set closer only where that saves a page that would be nearly empty', async () => {
  const usual = 9;
  let lines = 42;
  let before = await setOf(lines);
  expect([before.pages, before.type]).toEqual([1, usual]);
  const one = async () => {
    lines += 1;
    before = await setOf(lines);
  };
  while (before.pages === 1 && before.type === usual) await one();
  // The first line too many: the type gives way, and the page holds it.
  expect(before.pages).toBe(1);
  expect(before.type).toBeLessThan(usual);
  let closest = before.type;
  while (before.pages === 1) {
    expect(before.type).toBeGreaterThanOrEqual(8.4);
    expect(before.type).toBeLessThanOrEqual(closest);
    closest = before.type;
    await one();
  }
  // More than any closer type takes: the usual one, over two pages, the second of which is worth its paper.
  expect([before.pages, before.type]).toEqual([2, usual]);
  expect(before.last).toBeGreaterThan(3);
}, 60_000);
