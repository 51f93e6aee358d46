import { type InsideRadius, leastInsideRadius, meshOf, type Shape } from '../../model/outline/index.ts';
import {
  type TemplateCutPlan,
  templateCut,
  usualBeyond,
  usualContact,
  usualDepthOfPass,
} from '../../model/stock/index.ts';
import type { Inputs } from './inputs.ts';

/** The widest bit that reaches every hollow of the outer edge, mm: a hole that it does not enter is bored. 0 where one is a sharp corner. */
export function widestBitOf(shape: Shape, inside: InsideRadius | undefined): number | undefined {
  if (shape.holes.length === 0) return inside && 2 * inside.radius;
  const whole: Shape = { ...shape, loops: [shape.outer], holes: [] };
  const outer = leastInsideRadius(whole, meshOf(whole));
  return outer && 2 * outer.radius;
}

/** The cut with the bit given, its bearing by the shank, where stock and template can be judged. */
export function cutOf({ bitDiameter, cuttingLength, stock, template }: Inputs): TemplateCutPlan | undefined {
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
