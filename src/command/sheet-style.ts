import { styleString } from '../method/documents/index.ts';
import type { PaperName } from '../model/outline/tiles.ts';

/** Style of the page that holds a packet: as paper on the screen, black on white, and the same on paper. */
export const sheetStyle = (paper: PaperName, running: string): string => `
@page {
  size: ${paper === 'a4' ? 'A4' : 'letter'};
  margin: 16mm 15mm 18mm;
  @bottom-left { content: ${styleString(running)}; font: 8pt sans-serif; }
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8pt sans-serif; white-space: nowrap; }
}
@page labels {
  margin: 0;
  @bottom-left { content: none; }
  @bottom-right { content: none; }
}
:root { color: #000; background: #fff; font: 9pt/1.3 Arial, Helvetica, "Liberation Sans", sans-serif; }
body { max-width: 180mm; margin: 0 auto; }
article { margin: 8mm 0; }
h1 { margin: 0 0 2mm; font-size: 15pt; }
h2 { margin: 3mm 0 1mm; font-size: 11pt; break-after: avoid; }
h3 { margin: 0 0 1mm; font-size: 10pt; break-after: avoid; }
h3 small { font-weight: normal; font-size: 9pt; }
p, ul { margin: 0 0 1mm; }
ul { padding-left: 4mm; }
.ticks, .measured { padding: 0; list-style: none; }
.large { font-size: 1.3em; }
.small { font-size: 0.88em; }
.box { display: inline-block; box-sizing: border-box; width: 4mm; height: 4mm; margin-right: 2mm; border: 0.35mm solid #000; vertical-align: -0.7mm; }
.blanks { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm 6mm; margin-bottom: 2mm; }
.blanks span { min-height: 6mm; border-bottom: 0.2mm solid #000; }
.reading { display: inline-block; width: 18mm; border-bottom: 0.2mm solid #000; }
.warning { padding: 1mm 2mm; border: 0.2mm solid #000; border-left-width: 1mm; break-inside: avoid; }
.warning.danger { border-width: 0.5mm; border-left-width: 2mm; }
.columns { columns: 2 80mm; column-gap: 6mm; }
.columns > p { break-inside: avoid; }
.step { margin: 0 0 2.5mm; padding-top: 1mm; border-top: 0.15mm solid #000; }
.step > * { break-inside: avoid; }
table { width: 100%; margin: 1mm 0 2mm; border-collapse: collapse; }
caption { text-align: left; font-weight: bold; }
thead { display: table-header-group; }
tr, figure, .code { break-inside: avoid; }
th, td { padding: 0.5mm 1.5mm; border: 0.15mm solid #000; text-align: left; vertical-align: top; }
.write { min-width: 18mm; }
figure { margin: 0 0 2mm; }
figure svg { max-width: 100%; }
.key span { margin-right: 3mm; white-space: nowrap; }
.code { display: flex; gap: 3mm; align-items: center; overflow-wrap: anywhere; }
.code svg { flex: none; }
.cards { display: grid; grid-template-columns: 87mm 87mm; grid-auto-rows: 119mm; justify-content: center; }
.card { box-sizing: border-box; padding: 5mm; border: 0.1mm dashed #000; overflow: hidden; line-height: 1.25; }
.card p { margin: 0 0 1mm; }
.card p:has(+ ul) { margin: 0; }
.card ul { padding-left: 1em; list-style: none; }
.card h2 { margin: 0 0 1mm; font-size: 1.3em; line-height: 1.2; }
.card .large { font-size: 1.12em; }
:is(.card, .label) .small { font-size: 0.85em; }
.card .blanks { display: block; }
.card .blanks span { display: block; height: 8mm; min-height: 0; font-size: 0.85em; }
.labels { position: relative; page: labels; overflow: hidden; }
.label { position: absolute; box-sizing: border-box; overflow: hidden; line-height: 1.25; }
.label p { margin: 0; }
.label .blanks { gap: 0 3mm; margin: 0; }
.label .blanks span { min-height: 1.25em; }
.tile svg { display: block; }
@media print {
  body { max-width: none; }
  article { margin: 0; break-before: page; }
  article:first-child { break-before: auto; }
  .tile { height: 244mm; overflow: hidden; }
}`;
