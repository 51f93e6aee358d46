import { axisBox } from '../measure.ts';
import { polygonPath } from '../path.ts';
import { outlineOf } from '../shape.ts';
import { simplifyClosed } from '../simplify.ts';
import type { Loop, Shape } from '../types.ts';

/** A shape as path data that an address can hold. */
export interface CompactDrawing {
  /** All loops in mm, one after the other, as `readDrawing` takes them. */
  text: string;
  /** How far the text may lie from the shape, in mm, where it was thinned out to be shorter. */
  thinnedTo?: number;
}

/** Longest path data that is kept as it is, in characters: servers refuse addresses that are much longer. */
const longest = 6000;

/** Distances to which a long shape is thinned out, in mm, tried in turn. */
const steps = [0.02, 0.05, 0.1, 0.2] as const;

/** Write a shape as short path data: with its true curves where that is short enough, else as polygons. */
export function compactDrawing(shape: Shape): CompactDrawing {
  const box = axisBox(shape.outer);
  const outline = outlineOf(shape, { x: box.left, y: box.top });
  const curves = [outline.outer, ...outline.holes].join('');
  if (curves.length <= longest) return { text: curves };
  let text = '';
  for (const thinnedTo of steps) {
    text = shape.loops.map((loop) => polygon(loop, thinnedTo, box.left, box.top)).join('');
    if (text.length <= longest) return { text, thinnedTo };
  }
  return { text, thinnedTo: steps[steps.length - 1] as number };
}

function polygon(loop: Loop, tolerance: number, left: number, top: number): string {
  const { x, y } = simplifyClosed(loop, tolerance);
  return polygonPath(
    Array.from(x, (px, i) => ({ x: px - left, y: (y[i] as number) - top })),
    2,
  );
}
