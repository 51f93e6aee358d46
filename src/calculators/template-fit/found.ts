import type {
  BoardFit,
  InsideRadius,
  NeckReport,
  Nest,
  Pocket,
  Routing,
  Shape,
  TearOut,
} from '../../model/outline/index.ts';
import type { TemplateCutPlan } from '../../model/stock/index.ts';
import type { Inputs } from './inputs.ts';

/** All that was measured of an outline, from which figures, tables, drawing and cautions are made. */
export interface Found {
  given: Inputs;
  shape: Shape;
  /** What is cut of sheet: the shape, with a window over an inlay that stands proud. */
  template: Shape;
  /** Length and width of that window, mm; undefined where none was asked for. */
  window: { length: number; width: number } | undefined;
  /** Angle from the outline's length to the grain, in degrees. */
  grain: number;
  /** mm */
  clearance: number;
  routing: Routing;
  inside: InsideRadius | undefined;
  pockets: readonly Pocket[];
  necks: NeckReport;
  tears: TearOut;
  fit: BoardFit | undefined;
  nest: Nest | undefined;
  notes: readonly string[];
  /** Widest bit that reaches the hollows of the edge that this one leaves, mm; 0 where one is a sharp corner. */
  widestBit: number | undefined;
  /** The cut with this bit, its bearing by the shank; undefined where a size is missing. */
  cut: TemplateCutPlan | undefined;
}

/** Whether a bit that is given does not enter a hole, so that the hole is bored or sawn and not routed. */
export function isNotRouted({ pockets }: Found, loop: number): boolean {
  return pockets.some((pocket) => pocket.kind === 'hole' && pocket.loop === loop);
}
