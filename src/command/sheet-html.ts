import { cardSides, cardsOn, layCard } from '../calculators/kit/card-panels.ts';
import { cellWords, expectedWords } from '../calculators/kit/document-text.ts';
import { drawingInReaderUnits, drawingWords } from '../calculators/kit/drawing-marks.ts';
import { labelPadding, labelType, usualGrid } from '../calculators/kit/label-type.ts';
import type { MethodPacket, SheetDocument } from '../method/documents/index.ts';
import { cautionWords, type Drawing, type PaperBlock } from '../model/evidence/index.ts';
import { labelPlaces, labelSheets, labelsOn, wholeSheets } from '../model/outline/label-grids.ts';
import { type PaperName, papers } from '../model/outline/tiles.ts';
import { inReaderUnits, type ReaderUnits } from '../model/quantity/index.ts';
import { sheetStyle } from './sheet-style.ts';
import { codeSvg, drawingSvg, drawnSize, escaped, keySvg, tileSvgs } from './sheet-svg.ts';

const svgSize = { unit: 'mm', perMm: 1, face: 'sans-serif' };
/** A drawing without a scale of its own is at most so wide, mm. */
const widest = 120;

const box = '<span class="box"></span>';

/** Writes blocks in one reader's units. */
class Writer {
  readonly #units: ReaderUnits;

  constructor(units: ReaderUnits) {
    this.#units = units;
  }

  words(text: string): string {
    return escaped(inReaderUnits(text, this.#units));
  }

  blocks(blocks: readonly PaperBlock[]): string {
    return blocks.map((block) => this.#block(block)).join('\n');
  }

  #block(block: PaperBlock): string {
    const words = (text: string) => this.words(text);
    switch (block.kind) {
      case 'heading':
        return `<h2>${words(block.text)}</h2>`;
      case 'text': {
        const { text, large, strong, small, lead } = block;
        const shown = `${lead ? `<b>${words(lead)}</b> ` : ''}${strong ? `<b>${words(text)}</b>` : words(text)}`;
        return `<p${large ? ' class="large"' : small ? ' class="small"' : ''}>${shown}</p>`;
      }
      case 'list':
        return `${block.heading ? `<p><b>${words(block.heading)}</b></p>` : ''}<ul>${block.items.map((item) => `<li>${words(item)}</li>`).join('')}</ul>`;
      case 'ticks':
        return `<ul class="ticks">${block.items.map((item) => `<li>${box}${words(item)}</li>`).join('')}</ul>`;
      case 'blanks':
        return `<p class="blanks">${block.labels.map((label) => `<span>${words(label)}</span>`).join('')}</p>`;
      case 'warning':
        return `<p class="warning ${block.level}"><b>${cautionWords[block.level]}.</b> ${words(block.text)}</p>`;
      case 'table':
        return this.#table(block);
      case 'drawing':
        return this.#drawing(block.drawing, block.scale);
      case 'step':
        return `<section class="step"><h3>${box}${block.number}. ${words(block.title)}${block.when ? ` <small>${words(block.when)}</small>` : ''}</h3>${this.blocks(block.blocks)}${this.blocks(block.beside)}</section>`;
      case 'measured':
        return `<ul class="measured">${block.rows.map(({ label, expected, between }) => `<li><b>${words(label)}</b> measured <span class="reading"></span> ${words(expectedWords(expected, between))}</li>`).join('')}</ul>`;
      case 'columns':
        return `<div class="columns">${this.blocks(block.blocks)}</div>`;
      case 'code':
        return `<div class="code">${codeSvg(block, 28, svgSize)}<p>${words(block.text)}<br><b>${escaped(block.address)}</b></p></div>`;
    }
  }

  #table({ table, ticks = [], large = [], write = [] }: Extract<PaperBlock, { kind: 'table' }>): string {
    const heads = [...table.columns.map(({ label }) => label), ...write].map(
      (label) => `<th scope="col">${this.words(label)}</th>`,
    );
    const rows = table.rows.map((row) => {
      const cells = table.columns.map((column, at) => {
        const value = row[at] ?? null;
        const text = escaped(cellWords(value, column, this.#units));
        const shown = large.includes(column.id) ? `<b class="large">${text}</b>` : text;
        return `<td>${value !== null && ticks.includes(column.id) ? box : ''}${shown}</td>`;
      });
      return `<tr>${cells.join('')}${write.map(() => '<td class="write"></td>').join('')}</tr>`;
    });
    return `<table>${table.title ? `<caption>${this.words(table.title)}</caption>` : ''}<thead><tr>${heads.join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
  }

  #drawing(marked: Drawing, scale: number | undefined): string {
    const drawing = drawingInReaderUnits(marked, this.#units);
    const at = scale ?? Math.max(1, drawnSize(drawing, 1)[0] / widest);
    const key = keySvg(drawing, svgSize).map(({ svg, text }) => `<span>${svg} ${escaped(text)}</span>`);
    return `<figure><figcaption><b>${escaped(drawing.title)}</b></figcaption>${drawingSvg(drawing, at, svgSize)}<p class="key">${key.join(' ')}</p><p class="small">${escaped(drawingWords(drawing, scale))}</p></figure>`;
  }

  /** Cards with lines to cut and fold along, a side of the paper each. */
  #cards({ cards, blocks, needed = 1 }: SheetDocument): string {
    const laid = (cards ?? [blocks]).map(layCard);
    const most = Math.max(...laid.map(({ panels }) => panels.length));
    const size = Math.min(...laid.map((one) => one.size));
    return cardSides(cards?.length ?? wholeSheets(needed, cardsOn(most)), most)
      .map(({ quarters }) => {
        const panels = quarters.map((place) => {
          const shown = (place && laid[cards ? place.card : 0]?.panels[place.panel]) ?? [];
          return `<div class="card" style="font-size:${size}pt">${this.blocks(shown)}</div>`;
        });
        return `<article class="cards">${panels.join('')}</article>`;
      })
      .join('\n');
  }

  /** A whole sheet of one label, or a label for each place of a class, on the usual sheet of the paper. */
  #labels({ cards, blocks, needed = 1 }: SheetDocument, paper: PaperName): string {
    const labels = cards ?? [blocks];
    const grid = usualGrid(paper, labels[0] ?? []);
    const size = Math.min(...labels.map((each) => labelType(each, grid) ?? 5));
    const places = labelPlaces(grid);
    const { width, height } = papers[paper];
    return labelSheets(grid, cards?.length ?? wholeSheets(needed, labelsOn(grid)))
      .map((sheet) => {
        const shown = sheet.map((label, at) => {
          const place = places[at];
          if (label === undefined || !place) return '';
          const style = `left:${place.left}mm;top:${place.top}mm;width:${grid.width}mm;height:${grid.height}mm;padding:${labelPadding}mm;font-size:${size}pt`;
          return `<div class="label" style="${style}">${this.blocks(labels[label % labels.length] ?? [])}</div>`;
        });
        return `<article class="labels" style="width:${width}mm;height:${height}mm">${shown.join('')}</article>`;
      })
      .join('\n');
  }

  document(document: SheetDocument, paper: PaperName): string {
    const title = `<h1>${this.words(document.title)}</h1>`;
    if (document.form === 'card') return this.#cards(document);
    if (document.form === 'labels') return this.#labels(document, paper);
    if (document.form === 'sheet') return `<article>${title}${this.blocks(document.blocks)}</article>`;
    const words = document.blocks.filter(({ kind }) => kind !== 'drawing');
    const shown = inReaderUnits(document.title, this.#units);
    const tiles = document.blocks.flatMap((block) =>
      block.kind === 'drawing' ? tileSvgs(block.drawing, shown, this.#units, svgSize) : [],
    );
    return [
      ...(words.length > 0 ? [`<article>${title}${this.blocks(words)}</article>`] : []),
      ...tiles.map((svg) => `<article class="tile">${svg}</article>`),
    ].join('\n');
  }
}

/** A packet as one page that needs nothing else: no script, no picture or face from elsewhere; every text in it is text. */
export function packetHtml(packet: MethodPacket, units: ReaderUnits): string {
  const writer = new Writer(units);
  const running = `${inReaderUnits(packet.running, units)} · printed ${packet.made}`;
  return `<!doctype html>
<html lang="${escaped(packet.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(running)}</title>
<style>
${sheetStyle(packet.paper, running)}
</style>
</head>
<body>
${packet.documents.map((document) => writer.document(document, packet.paper)).join('\n')}
</body>
</html>
`;
}
