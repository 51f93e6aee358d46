// PDF and DXF are not here: their libraries are large, so `export-pdf.ts` and `export-dxf.ts` are imported by themselves,
// and only when such a file is wanted.
export * from './board.ts';
export { type CompactDrawing, compactDrawing } from './drawing/compact.ts';
export {
  type DrawingOptions,
  type DrawingReading,
  largestDrawing,
  readDrawing,
} from './drawing/read.ts';
export type { LengthUnit } from './drawing/units.ts';
export * from './export-svg.ts';
export { usualTolerance } from './flatten.ts';
export * from './inside-radius.ts';
export { largestSize, leftToSand } from './limits.ts';
export * from './measure.ts';
export { type Mesh, meshOf } from './mesh.ts';
export * from './motion.ts';
export * from './necks.ts';
export * from './nest.ts';
export * from './offset.ts';
export * from './parametric.ts';
export { polygonPath } from './path.ts';
export * from './reach.ts';
export * from './remedies.ts';
export { isInside, isInWood, outlineOf, prepare } from './shape.ts';
export * from './sheet.ts';
export * from './tear-out.ts';
export * from './tiles.ts';
export type { Gap, Loop, Outline, Point, Shape } from './types.ts';
export { leastFrame, withWindow } from './window.ts';
