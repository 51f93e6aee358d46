import type { Subpath } from '../path.ts';
import { reversed } from '../segments.ts';
import type { Segment } from '../types.ts';

/** Ends closer than this, in mm, are taken for the same place. */
const joinWithin = 0.1;

/** What the subpaths of a drawing come to. */
export interface Runs {
  closed: Segment[][];
  /** Gap between the ends of each run that stayed open, in mm. */
  openGaps: number[];
  notes: string[];
}

/**
 * Close what can be closed: subpaths that end where they start, and open ones whose ends meet those of others.
 *
 * @param subpaths in mm
 */
export function closeRuns(subpaths: readonly Subpath[]): Runs {
  const closed: Segment[][] = [];
  const open: Segment[][] = [];
  let mended = 0;
  for (const { segments, closed: drawnClosed } of subpaths) {
    if (drawnClosed || gapOf(segments) === 0) closed.push(segments);
    else if (gapOf(segments) <= joinWithin) {
      closed.push(withEndsJoined(segments));
      mended++;
    } else open.push([...segments]);
  }
  const notes =
    mended > 0
      ? [
          `${mended === 1 ? 'A path whose ends lay' : `${mended} paths whose ends lay`} within ${joinWithin} mm of each other ${mended === 1 ? 'was' : 'were'} closed.`,
        ]
      : [];
  const { joined, left, pieces } = chain(open);
  if (joined.length > 0) {
    notes.push(
      `${pieces} separate pieces whose ends meet within ${joinWithin} mm were joined into ${joined.length === 1 ? 'a closed path' : `${joined.length} closed paths`}.`,
    );
  }
  return { closed: [...closed, ...joined], openGaps: left.map(gapOf), notes };
}

/** Distance between the two ends of a run, in mm. */
function gapOf(segments: readonly Segment[]): number {
  const [first, last] = [segments[0] as Segment, segments[segments.length - 1] as Segment];
  return Math.hypot(last.x1 - first.x0, last.y1 - first.y0);
}

/** Close a run with a straight piece between its ends. */
function withEndsJoined(segments: Segment[]): Segment[] {
  const [first, last] = [segments[0] as Segment, segments[segments.length - 1] as Segment];
  return gapOf(segments) < 1e-6
    ? segments
    : [...segments, { kind: 'line', x0: last.x1, y0: last.y1, x1: first.x0, y1: first.y0 }];
}

interface End {
  run: number;
  atStart: boolean;
  x: number;
  y: number;
}

/** Join open runs end to end where the ends meet, taking each piece once. */
function chain(open: readonly Segment[][]): { joined: Segment[][]; left: Segment[][]; pieces: number } {
  const cells = new Map<string, End[]>();
  const key = (x: number, y: number) => `${Math.round(x / joinWithin)} ${Math.round(y / joinWithin)}`;
  open.forEach((segments, run) => {
    const [first, last] = [segments[0] as Segment, segments[segments.length - 1] as Segment];
    for (const end of [
      { run, atStart: true, x: first.x0, y: first.y0 },
      { run, atStart: false, x: last.x1, y: last.y1 },
    ]) {
      const cell = cells.get(key(end.x, end.y));
      if (cell) cell.push(end);
      else cells.set(key(end.x, end.y), [end]);
    }
  });
  const used = new Uint8Array(open.length);
  const nearest = (x: number, y: number): End | undefined => {
    let best: End | undefined;
    let least = joinWithin;
    for (const dx of [-joinWithin, 0, joinWithin]) {
      for (const dy of [-joinWithin, 0, joinWithin]) {
        for (const end of cells.get(key(x + dx, y + dy)) ?? []) {
          const off = Math.hypot(end.x - x, end.y - y);
          if (!used[end.run] && off <= least) {
            least = off;
            best = end;
          }
        }
      }
    }
    return best;
  };
  const joined: Segment[][] = [];
  const left: Segment[][] = [];
  let pieces = 0;
  open.forEach((segments, run) => {
    if (used[run]) return;
    used[run] = 1;
    let path = [...segments];
    let taken = 1;
    while (gapOf(path) > joinWithin) {
      const last = path[path.length - 1] as Segment;
      const next = nearest(last.x1, last.y1);
      if (!next) break;
      used[next.run] = 1;
      taken++;
      const piece = open[next.run] as Segment[];
      path = path.concat(next.atStart ? piece : piece.map(reversed).reverse());
    }
    if (gapOf(path) <= joinWithin) {
      joined.push(withEndsJoined(path));
      pieces += taken;
    } else left.push(path);
  });
  return { joined, left, pieces };
}
