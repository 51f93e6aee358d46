import { answer, type Drawing, type ResultDocument } from '../../model/evidence/index.ts';
import { offsetShape } from '../../model/outline/index.ts';
import { calculator } from '../kit/calculator.ts';
import { outlineOfFields } from '../kit/outline-fields.ts';
import { cautionsOf } from './cautions.ts';
import { nestDrawing, outlineDrawing } from './drawing.ts';
import { evidenceOf } from './evidence.ts';
import { figures, figuresOf } from './figures.ts';
import { findAll, templateOf } from './find.ts';
import { inputs } from './inputs.ts';
import { copiesDocument, templateDocument } from './sheets.ts';
import { arcTable, placesOf, placeTable } from './tables.ts';
import { verdictOf } from './verdict.ts';

const paddle = {
  shape: 'paddle',
  routing: 'handheld',
};

export const templateFitCalculator = calculator({
  id: 'template-fit',
  title: 'Outline, bit and board',
  question: 'Can this outline be cut with the bit at hand, where will it tear, and does it fit the board?',
  summary:
    'From an outline, a bit and a board: where it tears, which corners the bit misses, and a template to print at true size.',
  heavy: 'always',
  inputs,
  together: [
    { fields: ['boardLength', 'boardWidth'], why: 'A board has a length and a width' },
    { fields: ['inlayLength', 'inlayWidth'], why: 'An inlay has a length and a width' },
    { fields: ['sheetLength', 'sheetWidth'], why: 'A template blank has a length and a width' },
  ],
  taken: () => ({
    clearance: '3 mm',
    routing: 'handheld',
    grain: '0°',
    mostSwing: '5°',
    shortGrainBelow: '60 mm',
    inlayRoom: '20 mm',
    spacing: '15 mm',
  }),
  example: {
    metric: {
      ...paddle,
      length: '400 mm',
      width: '210 mm',
      cornerRadius: '32 mm',
      handleLength: '140 mm',
      handleWidth: '45 mm',
      shoulderRadius: '19 mm',
      endRadius: '19 mm',
      holeDiameter: '10 mm',
      holeFromEnd: '25 mm',
      clearance: '3 mm',
      bitDiameter: '12.7 mm',
      cuttingLength: '25.4 mm',
      stock: '20 mm',
      template: '12 mm',
      grain: '0 °',
      boardLength: '610 mm',
      boardWidth: '235 mm',
      mostSwing: '5 °',
      sheetLength: '1220 mm',
      sheetWidth: '610 mm',
      spacing: '16 mm',
    },
    inch: {
      ...paddle,
      length: '15 3/4 in',
      width: '8 1/4 in',
      cornerRadius: '1 1/4 in',
      handleLength: '5 1/2 in',
      handleWidth: '1 3/4 in',
      shoulderRadius: '3/4 in',
      endRadius: '3/4 in',
      holeDiameter: '3/8 in',
      holeFromEnd: '1 in',
      clearance: '1/8 in',
      bitDiameter: '1/2 in',
      cuttingLength: '1 in',
      stock: '13/16 in',
      template: '1/2 in',
      grain: '0 °',
      boardLength: '24 in',
      boardWidth: '9 1/4 in',
      mostSwing: '5 °',
      sheetLength: '48 in',
      sheetWidth: '24 in',
      spacing: '5/8 in',
    },
  },
  figures,
  compute(given) {
    const outline = outlineOfFields(given);
    if (!outline.ok) return outline;
    const { shape, notes } = outline.value;
    const template = templateOf(given, shape);
    if (!template.ok) return template;
    const found = findAll(given, shape, template.value, notes);
    const places = placesOf(found);
    // The cut line and the templates are half of the work, and a method that asks for figures alone never looks at them.
    let drawings: readonly Drawing[] | undefined;
    let documents: readonly ResultDocument[] | undefined;
    return answer({
      verdict: verdictOf(found),
      figures: figuresOf(found),
      tables: [...arcTable(found), ...placeTable(found, places)],
      get drawings() {
        drawings ??= [
          outlineDrawing(found, offsetShape(shape, found.clearance), places),
          ...nestDrawing(found.nest, given.sheetLength ?? 0, given.sheetWidth ?? 0),
        ];
        return drawings;
      },
      get documents() {
        documents ??= [templateDocument(found), ...copiesDocument(found)];
        return documents;
      },
      cautions: cautionsOf(found),
      evidence: evidenceOf(found),
    });
  },
});
