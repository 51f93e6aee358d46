import { answer, type Outcome, refuse } from '../../evidence/index.ts';
import { convexHull } from '../board.ts';
import { flattenLoop } from '../flatten.ts';
import { EdgeGrid } from '../grid.ts';
import { axisBox } from '../measure.ts';
import { mergeRings, type Ring, ringArea } from '../offset.ts';
import { isInside, signedArea } from '../shape.ts';
import { simplifyClosed } from '../simplify.ts';
import type { Loop, Point, Segment } from '../types.ts';

/** The closed runs that make the outline. */
export interface Chosen {
  outer: readonly Segment[];
  holes: (readonly Segment[])[];
  notes: string[];
}

/** Loops smaller than this, in mm², are specks. */
const smallest = 1;

/** More points than this are thinned out, and refused where that does not help. */
const mostPoints = 20_000;

/** A path that crosses itself more often than this is a scribble and is not mended. */
const mostCrossings = 40;

/** A path may lose or gain this share of its area when crossings of it are mended; more changes what was drawn. */
const mendable = 0.02;

/**
 * Pick the outline among closed runs: the largest is the outline, those inside it are holes, and everything else is left
 * out and said.
 *
 * @param runs closed, in mm
 * @param tolerance of the polylines that are compared, in mm
 */
export function chooseLoops(runs: readonly (readonly Segment[])[], tolerance: number, field: string): Outcome<Chosen> {
  const notes: string[] = [];
  const sized = runs
    .map((segments) => ({ segments, area: Math.abs(signedArea(segments)) }))
    .filter(({ area }) => area >= smallest)
    .sort((p, q) => q.area - p.area);
  const specks = runs.length - sized.length;
  if (specks > 0)
    notes.push(
      `${counted(specks, 'path')} around less than ${smallest} mm² ${specks === 1 ? 'was' : 'were'} left out.`,
    );
  if (sized.length === 0 && runs.some(isCrossed)) {
    return refuse(
      field,
      'The outline crosses itself, so that its two sides cancel out',
      'Redraw it as one path that does not cross itself.',
    );
  }
  if (sized.length === 0)
    return refuse(field, 'The drawing holds no path that goes around anything', 'Draw the outline as one closed path.');
  let loops = sized.map(({ segments }) => flattenLoop(segments, false, tolerance));
  if (pointsIn(loops) > mostPoints) {
    loops = loops.map((loop) => thinned(loop, tolerance));
    const points = pointsIn(loops);
    if (points > mostPoints) {
      return refuse(
        field,
        `The drawing has ${points} points even to ${tolerance} mm; at most ${mostPoints} are measured`,
        'Simplify the paths, save only the outline and its holes, and try again.',
      );
    }
    notes.push(`The drawing was thinned out to ${points} points; it stays within ${tolerance} mm.`);
  }
  const crossing = new EdgeGrid(loops, 2).crossings();
  const origin = axisBox(loops[0] as Loop);
  const place = ({ x, y }: Point) =>
    `${(x - origin.left).toFixed(1)} mm from the left and ${(origin.top - y).toFixed(1)} mm from the top of the outline`;
  const unclear = new Set<number>();
  for (const { at, lines, count } of crossing) {
    if (lines[0] !== lines[1]) continue;
    const index = lines[0];
    const mended = count <= mostCrossings ? mend(loops[index] as Loop, tolerance) : undefined;
    if (mended) {
      loops[index] = mended;
      notes.push(
        `${index === 0 ? 'The outline' : 'A hole'} crosses or touches itself ${place(at)}; the loop there was merged away.`,
      );
    } else if (index === 0) {
      return refuse(
        field,
        `The outline crosses itself, ${place(at)}, and it is not clear which side is wood`,
        'Redraw it as one path that does not cross itself.',
      );
    } else {
      notes.push(`A path that crosses itself, ${place(at)}, was left out.`);
      unclear.add(index);
    }
  }
  const outer = loops[0] as Loop;
  const inner: Loop[] = [];
  const outerBox = axisBox(outer);
  let [copies, beside, across, islands] = [0, 0, 0, 0];
  const pairs = new Set(crossing.map(({ lines }) => `${lines[0]} ${lines[1]}`));
  const crosses = (one: number, two: number) => pairs.has(`${Math.min(one, two)} ${Math.max(one, two)}`);
  const taken: number[] = [];
  loops.forEach((loop, index) => {
    if (index === 0 || unclear.has(index)) return;
    const [x, y] = [loop.x[0] as number, loop.y[0] as number];
    if (isCopy(loop, outer, outerBox, sized[index]?.area ?? 0, sized[0]?.area ?? 0)) copies++;
    else if (crosses(0, index)) across++;
    else if (!isInside(outer, x, y)) beside++;
    else if (taken.some((hole) => crosses(hole, index))) across++;
    else if (inner.some((hole) => isInside(hole, x, y))) islands++;
    else {
      inner.push(loop);
      taken.push(index);
    }
  });
  if (copies > 0)
    notes.push(
      `${counted(copies, 'path')} that repeat${copies === 1 ? 's' : ''} the outline ${copies === 1 ? 'was' : 'were'} left out.`,
    );
  if (beside > 0)
    notes.push(`${counted(beside, 'smaller path')} outside the outline ${beside === 1 ? 'was' : 'were'} left out.`);
  if (across > 0)
    notes.push(
      `${counted(across, 'path')} that cross${across === 1 ? 'es' : ''} the outline or a hole ${across === 1 ? 'was' : 'were'} left out.`,
    );
  if (islands > 0) notes.push(`${counted(islands, 'path')} inside a hole ${islands === 1 ? 'was' : 'were'} left out.`);
  const largest = inner[0] ? Math.abs(signedArea(inner[0].segments)) / Math.abs(signedArea(outer.segments)) : 0;
  if (largest > 0.8)
    notes.push(
      'The largest hole takes more than four fifths of the outline. If the two paths are the sides of a drawn line, keep only one of them.',
    );
  return answer({ outer: outer.segments, holes: inner.map((loop) => loop.segments), notes });
}

/** Whether a run goes around something though it encloses nothing in sum. */
function isCrossed(segments: readonly Segment[]): boolean {
  return segments.length > 2 && ringArea(convexHull(flattenLoop(segments, false, 1))) > 25 * smallest;
}

function counted(count: number, what: string): string {
  return count === 1 ? `A ${what}` : `${count} ${what}s`;
}

/** Whether a path is the outline drawn once more, as a fill and its border often are. */
function isCopy(
  loop: Loop,
  outer: Loop,
  outerBox: ReturnType<typeof axisBox>,
  area: number,
  outerArea: number,
): boolean {
  if (loop === outer || Math.abs(area - outerArea) > 0.005 * outerArea) return false;
  const box = axisBox(loop);
  const off = Math.max(
    Math.abs(box.left - outerBox.left),
    Math.abs(box.right - outerBox.right),
    Math.abs(box.bottom - outerBox.bottom),
    Math.abs(box.top - outerBox.top),
  );
  return off < 0.2;
}

/** Merge a path that crosses itself into one that does not, where that changes little. */
function mend(loop: Loop, tolerance: number): Loop | undefined {
  const rings = mergeRings([loop]);
  const areaOf = (ring: Ring) => Math.abs(ringArea(ring.points));
  const solid = rings.filter((ring) => !ring.hole).sort((p, q) => areaOf(q) - areaOf(p));
  const main = solid[0];
  if (!main) return undefined;
  const whole = rings.reduce((sum, ring) => sum + areaOf(ring), 0);
  const drawn = Math.abs(signedArea(loop.segments));
  if (whole - areaOf(main) > mendable * whole || Math.abs(areaOf(main) - drawn) > mendable * drawn) return undefined;
  return flattenLoop(linesThrough(main.points), false, tolerance);
}

function pointsIn(loops: readonly Loop[]): number {
  return loops.reduce((sum, loop) => sum + loop.x.length, 0);
}

/** A loop of straight pieces within a tolerance of another. */
function thinned(loop: Loop, tolerance: number): Loop {
  const { x, y } = simplifyClosed(loop, tolerance);
  return flattenLoop(linesThrough(Array.from(x, (px, i) => ({ x: px, y: y[i] as number }))), false, tolerance);
}

/** Straight segments through the points of a closed ring. */
function linesThrough(points: readonly Point[]): Segment[] {
  return points.map(({ x, y }, index) => {
    const next = points[(index + 1) % points.length] as Point;
    return { kind: 'line', x0: x, y0: y, x1: next.x, y1: next.y };
  });
}
