import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { packetPdf } from '../../src/command/sheet-pdf.ts';
import { packetOf } from '../../src/method/documents/index.ts';
import type { PaperName } from '../../src/model/outline/tiles.ts';
import { defaultUnits } from '../../src/model/quantity/index.ts';
import { pageOf } from '../method/documents/pages.ts';

const address = 'https://boards.example/methods/one?start=2027-01-12';

/** Sheets of a document of a packet, as each paper's own readers get it: A4 in millimetres, Letter in inches. */
async function sheetsOf(page: Awaited<ReturnType<typeof pageOf>>, paper: PaperName, sheet: string): Promise<number> {
  const packet = packetOf(page, { paper, made: '2027-01-10', address, only: [sheet] });
  const units = { ...defaultUnits, system: paper === 'a4' ? ('metric' as const) : ('inch' as const) };
  return (await PDFDocument.load(await packetPdf(packet, units), { updateMetadata: false })).getPageCount();
}

// More sheets than these are paper that nobody needs: somebody has looked at every one of them.
test.each([
  ['first-tray', { student: [5, 6], template: [3, 3] }],
  ['making-a-template', { student: [4, 4], template: [4, 4] }],
  ['repair-and-reoil', { student: [5, 5], teacher: [5, 5], 'mixing-sheet': [1, 1], card: [2, 2] }],
] as const)(
  '%s takes no more sheets than before',
  async (id, most) => {
    const page = await pageOf(id);
    for (const [sheet, counts] of Object.entries(most))
      for (const [at, paper] of (['a4', 'letter'] as const).entries())
        expect(await sheetsOf(page, paper, sheet), `${sheet} on ${paper}`).toBeLessThanOrEqual(counts[at]);
  },
  120_000,
);
