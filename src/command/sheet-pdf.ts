import { createRequire } from 'node:module';
import { dirname, join, sep } from 'node:path';
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';
import { panel as card } from '../calculators/kit/card-panels.ts';
import { drawingInReaderUnits } from '../calculators/kit/drawing-marks.ts';
import type { MethodPacket, SheetDocument } from '../method/documents/index.ts';
import type { PaperBlock } from '../model/evidence/index.ts';
import { eitherPaper, type PaperName, papers } from '../model/outline/tiles.ts';
import { inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import { blocksPdf, mm, piecesPdf, type Setting } from './sheet-pdf-blocks.ts';
import { cardsPdf, labelsPdf } from './sheet-pdf-cards.ts';
import { endOf, inColumns, type Maker } from './sheet-pdf-flow.ts';
import { type Tag, tagged, teachTags } from './sheet-pdf-tags.ts';
import { tileSvgs } from './sheet-svg.ts';

const load = createRequire(import.meta.url);

/** The library with its own four faces and nothing else in its reach: no address, no other file of the machine. */
function maker(): Maker {
  const folder = join(dirname(load.resolve('pdfmake/package.json')), 'fonts', 'Roboto');
  const library = load('pdfmake') as Maker;
  library.setFonts({
    Roboto: {
      normal: join(folder, 'Roboto-Regular.ttf'),
      bold: join(folder, 'Roboto-Medium.ttf'),
      italics: join(folder, 'Roboto-Italic.ttf'),
      bolditalics: join(folder, 'Roboto-MediumItalic.ttf'),
    },
  });
  teachTags(load('pdfmake/js/Renderer.js').default.prototype);
  library.setUrlAccessPolicy(() => false);
  library.setLocalAccessPolicy((path) => path.startsWith(folder + sep));
  return library;
}

/** Margins of a page, mm; those of a sheet of labels end below its last row. */
const margins = { side: 15, top: 16, foot: 18, labelFoot: 12 };

/** Type of what is read in the hand, and of what lies beside the scale, pt. */
const usualSize = 9;
const benchSizes = [10.5, 10, 9.5, 9, 8.5];
/** Smaller types in which a sheet for the hand is tried where its last page would be nearly empty, pt. */
const closerSizes = [8.8, 8.6, 8.4];
/** A last page that holds less than this part of a page is not worth its paper. */
const leastFilled = 0.22;
const isBench = ({ sheet }: SheetDocument) => sheet !== 'student' && sheet !== 'teacher';

const titlePdf = (title: string, units: ReaderUnits): Content => ({
  text: inReaderUnits(title, units),
  headlineLevel: 1,
  fontSize: 15,
  bold: true,
  margin: [0, 0, 0, 4],
});

/** Gap between two columns, mm. */
const columnGap = 6;

/** A sheet: its title and blocks; steps run in two columns. */
async function sheetPdf(
  library: Maker,
  title: string,
  blocks: readonly PaperBlock[],
  setting: Setting,
  page: Partial<TDocumentDefinitions> & { height: number },
): Promise<Content[]> {
  const at = blocks.findIndex((block) => block.kind === 'columns' && block.blocks.some(({ kind }) => kind === 'step'));
  const head = () => [titlePdf(title, setting.units), ...blocksPdf(at < 0 ? blocks : blocks.slice(0, at), setting)];
  const steps = blocks[at];
  if (steps?.kind !== 'columns') return head();
  const { height, ...layout } = page;
  const foot = height - mm(margins.foot) - 4;
  const first = foot - (await endOf(library, head(), layout));
  const width = (setting.width - columnGap) / 2;
  const columns = await inColumns(library, () => piecesPdf(steps.blocks, { ...setting, width }), {
    width: mm(width),
    gap: mm(columnGap),
    size: setting.size,
    first,
    full: foot - mm(margins.top),
  });
  return [...head(), ...columns, ...blocksPdf(blocks.slice(at + 1), setting)];
}

async function documentPdf(
  library: Maker,
  document: SheetDocument,
  setting: Setting,
  paper: PaperName,
  page: Partial<TDocumentDefinitions> & { height: number },
): Promise<Content[]> {
  const { units } = setting;
  if (document.form === 'card') return cardsPdf(library, document, units, (setting.width - 2 * card.width) / 2);
  if (document.form === 'labels') return labelsPdf(library, document, paper, units);
  const words = document.blocks.filter(({ kind }) => document.form === 'sheet' || kind !== 'drawing');
  const sheet = words.length === 0 ? [] : await sheetPdf(library, document.title, words, setting, page);
  if (document.form === 'sheet') return sheet;
  const title = inReaderUnits(document.title, units);
  const tiles = document.blocks.flatMap((block) => {
    if (block.kind !== 'drawing') return [];
    const { description } = drawingInReaderUnits(block.drawing, units);
    const svgs = tileSvgs(block.drawing, title, units, { unit: '', perMm: mm(1), face: 'Roboto' });
    return svgs.map((svg, at) => ({ svg, alt: `${title}, sheet ${at + 1} of ${svgs.length}. ${description}` }));
  });
  return [
    ...sheet,
    ...tiles.map(
      (tile, at): Content => ({
        ...tile,
        width: mm(eitherPaper.width),
        height: mm(eitherPaper.height),
        ...(at > 0 || sheet.length > 0 ? { pageBreak: 'before' as const } : {}),
      }),
    ),
  ];
}

/** The type in which a sheet for the bench ends on its page, the largest first, so that no line of it goes overleaf; the largest where none does, pt. */
async function sizeForOne(
  library: Maker,
  set: (size: number) => Promise<Content[]>,
  page: Partial<TDocumentDefinitions>,
): Promise<number> {
  for (const size of benchSizes) {
    let pages = 0;
    const footer = (_: number, count: number) => {
      pages = count;
      return '';
    };
    await library.createPdf({ ...page, content: [{ stack: await set(size), fontSize: size }], footer }).getBuffer();
    if (pages <= 1) return size;
  }
  return benchSizes[0] as number;
}

/** The type of a sheet for the hand: the usual one, or the largest closer one that saves a last page which would be nearly empty, pt. */
async function sizeWorthItsPaper(
  library: Maker,
  set: (size: number) => Promise<Content[]>,
  { height, ...page }: Partial<TDocumentDefinitions> & { height: number },
): Promise<number> {
  const endAt = async (size: number) => {
    let end = { page: 1, top: 0 };
    const definition: TDocumentDefinitions = {
      ...page,
      content: [
        { stack: await set(size), fontSize: size },
        { text: ' ', fontSize: 1, id: 'end' },
      ],
      pageBreakBefore: ({ id, startPosition }) => {
        if (id === 'end') end = { page: startPosition.pageNumber, top: startPosition.top };
        return false;
      },
    };
    await library.createPdf(definition).getBuffer();
    return end;
  };
  const usual = await endAt(usualSize);
  if (usual.page === 1 || usual.top - mm(margins.top) > leastFilled * height) return usualSize;
  for (const size of closerSizes) if ((await endAt(size)).page < usual.page) return size;
  return usualSize;
}

/**
 * A packet as one PDF, made without a browser: the same packet always gives the same bytes. Black on white, a step or a row never cut in two where it
 * fits a page, heads of tables again on each page; the running title and the number of the page at the foot.
 *
 * @returns the bytes of the file
 */
export async function packetPdf(packet: MethodPacket, units: ReaderUnits): Promise<Uint8Array> {
  const library = maker();
  const { width, height } = papers[packet.paper];
  const setting: Setting = { units, size: usualSize, width: width - 2 * margins.side };
  const page = {
    pageSize: { width: mm(width), height: mm(height) },
    pageMargins: [mm(margins.side), mm(margins.top), mm(margins.side), mm(margins.foot)] as [
      number,
      number,
      number,
      number,
    ],
    defaultStyle: { font: 'Roboto', fontSize: setting.size, lineHeight: 1.12 },
  };
  const content: Content[] = [];
  const whole: Tag = { kind: 'Document' };
  for (const document of packet.documents) {
    const set = (size: number) =>
      documentPdf(library, document, { ...setting, size }, packet.paper, { ...page, height: mm(height) });
    const size =
      document.form !== 'sheet'
        ? usualSize
        : isBench(document)
          ? await sizeForOne(library, set, page)
          : await sizeWorthItsPaper(library, set, { ...page, height: mm(height) });
    const foot = document.form === 'labels' ? margins.labelFoot : margins.foot;
    // A section of its own begins on a page of its own, and may have other margins.
    const stack: Content = { stack: await set(size), fontSize: size };
    content.push({
      section: [tagged(stack, { kind: 'Sect', within: whole })],
      pageMargins: [mm(margins.side), mm(margins.top), mm(margins.side), mm(foot)],
    } as Content);
  }
  const running = inReaderUnits(packet.running, units);
  return library
    .createPdf({
      content,
      ...page,
      footer: (at, pages) => ({
        margin: [mm(margins.side), mm(4), mm(margins.side), 0],
        fontSize: 8,
        columns: [
          { text: `${running} · printed ${packet.made}`, width: '*' },
          { text: `page ${at} of ${pages}`, width: mm(28), alignment: 'right' },
        ],
      }),
      info: { title: running, creationDate: new Date(0), modDate: new Date(0) },
      language: packet.language,
      version: '1.7',
      tagged: true,
      displayTitle: true,
    })
    .getBuffer();
}
