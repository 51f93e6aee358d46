import type { Polyline } from './types.ts';

/**
 * A closed polyline with fewer points, none of whose left-out points lies further than the tolerance (mm) from it:
 * Douglas and Peucker's halving, from two points that lie far apart.
 */
export function simplifyClosed(line: Polyline, tolerance: number): Polyline {
  const { x, y } = line;
  const count = x.length;
  if (count <= 4) return line;
  const keep = new Uint8Array(count);
  const far = farthestFrom(line, farthestFrom(line, 0));
  const opposite = farthestFrom(line, far);
  const [first, second] = far < opposite ? [far, opposite] : [opposite, far];
  keep[first] = 1;
  keep[second] = 1;
  // Ranges run past the end of the arrays and are read modulo their length.
  const waiting = [first, second, second, first + count];
  const limit = tolerance * tolerance;
  while (waiting.length > 0) {
    const end = waiting.pop() as number;
    const start = waiting.pop() as number;
    const [ax, ay] = [x[start % count] as number, y[start % count] as number];
    const dx = (x[end % count] as number) - ax;
    const dy = (y[end % count] as number) - ay;
    const square = dx * dx + dy * dy;
    let worst = limit;
    let at = -1;
    for (let i = start + 1; i < end; i++) {
      const k = i >= count ? i - count : i;
      const px = (x[k] as number) - ax;
      const py = (y[k] as number) - ay;
      const t = square === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / square));
      const ex = px - t * dx;
      const ey = py - t * dy;
      const off = ex * ex + ey * ey;
      if (off > worst) {
        worst = off;
        at = i;
      }
    }
    if (at >= 0) {
      keep[at % count] = 1;
      waiting.push(start, at, at, end);
    }
  }
  const kept: number[] = [];
  for (let i = 0; i < count; i++) if (keep[i]) kept.push(i);
  if (kept.length < 3) return line;
  return { x: Float64Array.from(kept, (i) => x[i] as number), y: Float64Array.from(kept, (i) => y[i] as number) };
}

/** How far a thinned loop may lie from the loop itself, in mm. */
export const thinning = 0.02;

const known = new WeakMap<Polyline, Polyline>();

/** A loop thinned out to `thinning`, worked out once for each loop. */
export function thinnedLoop(loop: Polyline): Polyline {
  const before = known.get(loop);
  if (before) return before;
  const thin = simplifyClosed(loop, thinning);
  known.set(loop, thin);
  return thin;
}

function farthestFrom({ x, y }: Polyline, from: number): number {
  let best = 0;
  let most = -1;
  for (let i = 0; i < x.length; i++) {
    const dx = (x[i] as number) - (x[from] as number);
    const dy = (y[i] as number) - (y[from] as number);
    const square = dx * dx + dy * dy;
    if (square > most) {
      most = square;
      best = i;
    }
  }
  return best;
}
