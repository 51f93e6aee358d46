import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';
import { cardSides, cardsOn, layCard, panel } from '../calculators/kit/card-panels.ts';
import { labelPadding, labelType, usualGrid } from '../calculators/kit/label-type.ts';
import type { SheetDocument } from '../method/documents/index.ts';
import type { PaperBlock } from '../model/evidence/index.ts';
import { labelPlaces, labelSheets, labelsOn, wholeSheets } from '../model/outline/label-grids.ts';
import type { PaperName } from '../model/outline/tiles.ts';
import type { ReaderUnits } from '../model/quantity/index.ts';
import { blocksPdf, mm } from './sheet-pdf-blocks.ts';
import type { Maker } from './sheet-pdf-flow.ts';

/** Smallest type that is tried, pt: below it nobody reads it. */
const smallest = 6;

/** What is laid on a panel of a card or on a label: its size and its own margin, mm. */
interface Ground {
  width: number;
  height: number;
  padding: number;
}

const plainPage = (content: Content, size: number): TDocumentDefinitions => ({
  content,
  defaultStyle: { font: 'Roboto', fontSize: size, lineHeight: 1.05 },
  info: { creationDate: new Date(0), modDate: new Date(0) },
});

const set = (blocks: readonly PaperBlock[], ground: Ground, units: ReaderUnits, size: number) =>
  blocksPdf(blocks, { units, size, width: ground.width - 2 * ground.padding });

/** The largest type, from the reckoned one down, in which pieces end within their ground; the smallest where none does, pt. */
async function fittingType(
  library: Maker,
  blocks: readonly PaperBlock[],
  ground: Ground,
  units: ReaderUnits,
  reckoned: number,
): Promise<number> {
  for (let size = reckoned; size > smallest; size -= 0.5) {
    let pages = 0;
    const definition: TDocumentDefinitions = {
      ...plainPage(set(blocks, ground, units, size), size),
      pageSize: { width: mm(ground.width), height: mm(ground.height) },
      pageMargins: mm(ground.padding),
      footer: (_, count) => {
        pages = count;
        return '';
      },
    };
    await library.createPdf(definition).getBuffer();
    if (pages <= 1) return size;
  }
  return smallest;
}

const dashed = {
  hLineWidth: () => 0.3,
  vLineWidth: () => 0.3,
  hLineStyle: () => ({ dash: { length: 1, space: 4 } }),
  vLineStyle: () => ({ dash: { length: 1, space: 4 } }),
  paddingLeft: () => mm(panel.padding),
  paddingRight: () => mm(panel.padding),
  paddingTop: () => mm(panel.padding),
  paddingBottom: () => mm(panel.padding),
};

/**
 * Cards with lines to cut and fold along, side after side of the paper, each in its middle, so that a back lies behind its front.
 *
 * @param left white beside them within the margins of the page, mm
 */
export async function cardsPdf(
  library: Maker,
  document: SheetDocument,
  units: ReaderUnits,
  left: number,
): Promise<Content[]> {
  const laid = (document.cards ?? [document.blocks]).map(layCard);
  const most = Math.max(...laid.map(({ panels }) => panels.length));
  let size = Math.min(...laid.map((one) => one.size));
  for (const { panels } of laid)
    for (const blocks of panels) size = Math.min(size, await fittingType(library, blocks, panel, units, size));
  const count = document.cards?.length ?? wholeSheets(document.needed ?? 1, cardsOn(most));
  return cardSides(count, most).map(({ quarters }, side): Content => {
    const cells = quarters.map((place) => ({
      stack: set((place && laid[document.cards ? place.card : 0]?.panels[place.panel]) ?? [], panel, units, size),
      fontSize: size,
      lineHeight: 1.05,
    }));
    const inner = { width: mm(panel.width - 2 * panel.padding), height: mm(panel.height - 2 * panel.padding) };
    return {
      margin: [mm(left), 0, 0, 0],
      table: {
        widths: [inner.width, inner.width],
        heights: inner.height,
        body: [cells.slice(0, 2), cells.slice(2, 4)],
        dontBreakRows: true,
      },
      layout: dashed,
      ...(side > 0 ? { pageBreak: 'before' as const } : {}),
    } as Content;
  });
}

/** A whole sheet of one label, or a label for each place of a class, on the usual sheet of the paper. */
export async function labelsPdf(
  library: Maker,
  document: SheetDocument,
  paper: PaperName,
  units: ReaderUnits,
): Promise<Content[]> {
  const labels = document.cards ?? [document.blocks];
  const grid = usualGrid(paper, labels[0] ?? []);
  const ground = { width: grid.width, height: grid.height, padding: labelPadding };
  let size = Math.min(...labels.map((blocks) => labelType(blocks, grid) ?? smallest));
  for (const blocks of labels) size = Math.min(size, await fittingType(library, blocks, ground, units, size));
  const places = labelPlaces(grid);
  return labelSheets(grid, document.cards?.length ?? wholeSheets(document.needed ?? 1, labelsOn(grid))).flatMap(
    (sheet, side) =>
      sheet.flatMap((label, at): Content[] => {
        const place = places[at];
        if (label === undefined || !place) return [];
        return [
          {
            absolutePosition: { x: mm(place.left + labelPadding), y: mm(place.top + labelPadding) },
            columns: [
              {
                width: mm(grid.width - 2 * labelPadding),
                stack: set(labels[label % labels.length] ?? [], ground, units, size),
                fontSize: size,
                lineHeight: 1.05,
              },
            ],
            ...(side > 0 && at === 0 ? { pageBreak: 'before' as const } : {}),
          } as Content,
        ];
      }),
  );
}
