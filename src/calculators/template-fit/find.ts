import { answer, type Outcome } from '../../model/evidence/index.ts';
import {
  bitLeaves,
  findNecks,
  fitOnBoard,
  type InsideRadius,
  leastInsideRadius,
  meshOf,
  nestCopies,
  type Shape,
  tearOut,
  withWindow,
} from '../../model/outline/index.ts';
import {
  type TemplateCutPlan,
  templateCut,
  usualBeyond,
  usualContact,
  usualDepthOfPass,
} from '../../model/stock/index.ts';
import type { Found } from './found.ts';
import { type Inputs, usual } from './inputs.ts';

/** The window in the template over an inlay that stands proud, mm; undefined where no inlay was given. */
export function windowOf({ inlayLength, inlayWidth, inlayRoom = usual.inlayRoom }: Inputs): Found['window'] {
  if (inlayLength === undefined || inlayWidth === undefined) return undefined;
  return { length: inlayLength + 2 * inlayRoom, width: inlayWidth + 2 * inlayRoom };
}

/** What is cut of sheet for a shape; a refusal where its window leaves too little around it. */
export function templateOf(given: Inputs, shape: Shape): Outcome<Shape> {
  const window = windowOf(given);
  return window ? withWindow(shape, window, 'inlayLength') : answer(shape);
}

/** Measure an outline: its hollows and thin places, how the cut meets the grain, how it lies on the board and on the template blank. */
export function findAll(given: Inputs, shape: Shape, template: Shape, notes: readonly string[]): Found {
  const grain = given.grain ?? usual.grain;
  const routing = given.routing ?? usual.routing;
  const mesh = meshOf(shape);
  const inside = leastInsideRadius(shape, mesh);
  const { bitDiameter } = given;
  // A bit no wider than the tightest hollow reaches everything.
  const pockets =
    bitDiameter !== undefined && inside && inside.radius < bitDiameter / 2 ? bitLeaves(shape, bitDiameter) : [];
  return {
    given,
    shape,
    template,
    window: windowOf(given),
    grain,
    clearance: given.clearance ?? usual.clearance,
    routing,
    inside,
    pockets,
    necks: findNecks(shape, mesh, grain, given.shortGrainBelow ?? usual.shortGrainBelow),
    tears: tearOut(shape, grain, routing),
    fit: fitOf(given, shape),
    nest: nestOf(given, template),
    notes,
    widestBit: pockets.some(({ kind }) => kind === 'corner') ? widestBitOf(shape, inside) : undefined,
    cut: cutOf(given),
  };
}

function fitOf(given: Inputs, shape: Shape): Found['fit'] {
  const { boardLength, boardWidth } = given;
  if (boardLength === undefined || boardWidth === undefined) return undefined;
  return fitOnBoard(shape, {
    grainDegrees: given.grain ?? usual.grain,
    clearance: given.clearance ?? usual.clearance,
    boardLength,
    boardWidth,
    mostSwing: given.mostSwing ?? usual.mostSwing,
  });
}

/** The copies on their template blank; undefined where none was given. */
export function nestOf(given: Inputs, shape: Shape): Found['nest'] {
  const { sheetLength, sheetWidth } = given;
  if (sheetLength === undefined || sheetWidth === undefined) return undefined;
  return nestCopies(shape, {
    grainDegrees: given.grain ?? usual.grain,
    sheetLength,
    sheetWidth,
    spacing: given.spacing ?? usual.spacing,
    ...(given.copies === undefined ? {} : { copies: given.copies }),
  });
}

/** The widest bit that reaches every hollow of the outer edge, mm: a hole that it does not enter is bored. 0 where one is a sharp corner. */
function widestBitOf(shape: Shape, inside: InsideRadius | undefined): number | undefined {
  if (shape.holes.length === 0) return inside && 2 * inside.radius;
  const whole: Shape = { ...shape, loops: [shape.outer], holes: [] };
  const outer = leastInsideRadius(whole, meshOf(whole));
  return outer && 2 * outer.radius;
}

/** The cut with the bit given, its bearing by the shank, where stock and template can be judged. */
function cutOf({ bitDiameter, cuttingLength, stock, template }: Inputs): TemplateCutPlan | undefined {
  if (bitDiameter === undefined || cuttingLength === undefined || stock === undefined) return undefined;
  return templateCut({
    diameter: bitDiameter,
    cuttingLength,
    bearing: 'shank',
    stock,
    template: template ?? Number.POSITIVE_INFINITY,
    contact: usualContact,
    beyond: usualBeyond,
    depthOfPass: usualDepthOfPass(bitDiameter),
  });
}
