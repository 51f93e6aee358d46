import { answer, refuse } from '../../model/evidence/index.ts';
import {
  bitLeaves,
  findNecks,
  fitOnBoard,
  leastInsideRadius,
  meshOf,
  nestCopies,
  offsetShape,
  tearOut,
} from '../../model/outline/index.ts';
import { calculator } from '../kit/calculator.ts';
import { outlineOfFields } from '../kit/outline-fields.ts';
import { cutOf, widestBitOf } from './bit.ts';
import { cautionsOf } from './cautions.ts';
import { nestDrawing, outlineDrawing } from './drawing.ts';
import { evidenceOf } from './evidence.ts';
import { figuresOf } from './figures.ts';
import { inputs, usual } from './inputs.ts';
import { templateFitLabels } from './labels.ts';
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
  inputs,
  example: {
    metric: {
      ...paddle,
      length: '420 mm',
      width: '220 mm',
      cornerRadius: '30 mm',
      handleLength: '140 mm',
      handleWidth: '45 mm',
      shoulderRadius: '20 mm',
      endRadius: '20 mm',
      holeDiameter: '12 mm',
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
      spacing: '15 mm',
    },
    inch: {
      ...paddle,
      length: '16 1/2 in',
      width: '8 1/2 in',
      cornerRadius: '1 1/4 in',
      handleLength: '5 1/2 in',
      handleWidth: '1 3/4 in',
      shoulderRadius: '3/4 in',
      endRadius: '3/4 in',
      holeDiameter: '1/2 in',
      holeFromEnd: '1 in',
      clearance: '1/8 in',
      bitDiameter: '1/2 in',
      cuttingLength: '1 in',
      stock: '3/4 in',
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
  figures: Object.fromEntries(Object.entries(templateFitLabels).map(([name, label]) => [name, { label }])),
  compute(given) {
    if (given.copies !== undefined && !Number.isInteger(given.copies)) {
      return refuse('copies', `${given.copies} is not a whole number of copies`, 'Give a whole number, such as 4.');
    }
    const halfBoard = (['boardLength', 'boardWidth'] as const).filter((name) => given[name] === undefined);
    if (halfBoard.length === 1) {
      return refuse(
        halfBoard[0] as string,
        'One measure of the board was given and this one is missing',
        'Give both, or leave both empty.',
      );
    }
    const halfSheet = (['sheetLength', 'sheetWidth'] as const).filter((name) => given[name] === undefined);
    if (halfSheet.length === 1) {
      return refuse(
        halfSheet[0] as string,
        'One measure of the template blank was given and this one is missing',
        'Give both, or leave both empty.',
      );
    }
    const outline = outlineOfFields(given);
    if (!outline.ok) return outline;
    const { shape, notes } = outline.value;
    const grain = given.grain ?? usual.grain;
    const clearance = given.clearance ?? usual.clearance;
    const routing = given.routing ?? usual.routing;
    const mesh = meshOf(shape);
    const inside = leastInsideRadius(shape, mesh);
    const { bitDiameter } = given;
    // A bit no wider than the tightest hollow reaches everything.
    const pockets =
      bitDiameter !== undefined && inside && inside.radius < bitDiameter / 2 ? bitLeaves(shape, bitDiameter) : [];
    const necks = findNecks(shape, mesh, grain, given.shortGrainBelow ?? usual.shortGrainBelow);
    const tears = tearOut(shape, grain, routing);
    const { boardLength, boardWidth, sheetLength, sheetWidth } = given;
    const fit =
      boardLength !== undefined && boardWidth !== undefined
        ? fitOnBoard(shape, {
            grainDegrees: grain,
            clearance,
            boardLength,
            boardWidth,
            mostSwing: given.mostSwing ?? usual.mostSwing,
          })
        : undefined;
    const nest =
      sheetLength !== undefined && sheetWidth !== undefined
        ? nestCopies(shape, {
            grainDegrees: grain,
            sheetLength,
            sheetWidth,
            spacing: given.spacing ?? usual.spacing,
            ...(given.copies === undefined ? {} : { copies: given.copies }),
          })
        : undefined;
    const corners = pockets.some(({ kind }) => kind === 'corner');
    const widestBit = corners ? widestBitOf(shape, inside) : undefined;
    const cut = cutOf(given);
    const found = {
      given,
      shape,
      grain,
      clearance,
      routing,
      inside,
      pockets,
      necks,
      tears,
      fit,
      nest,
      notes,
      widestBit,
      cut,
    };
    const places = placesOf(found);
    return answer({
      verdict: verdictOf(found),
      figures: figuresOf(found),
      tables: [...arcTable(found), ...placeTable(found, places)],
      drawings: [
        outlineDrawing(found, offsetShape(shape, clearance), places),
        ...nestDrawing(nest, sheetLength ?? 0, sheetWidth ?? 0),
      ],
      cautions: cautionsOf(found),
      evidence: evidenceOf(found),
    });
  },
});
