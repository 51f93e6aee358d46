import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import type { YieldBlank, YieldBoard, YieldPlan } from '../../model/stock/index.ts';

type Points = [number, number][];

const box = (from: number, to: number, bottom: number, top: number): Points => [
  [from, bottom],
  [to, bottom],
  [to, top],
  [from, top],
];

/** Boards drawn one under another, at most this many: more would be too small to read, and stand in the table. */
export const mostDrawn = 12;

/** Each board that is cut, with its blanks, the places cut out and what is left over, in true proportion. */
export function cutDrawing(
  plan: YieldPlan,
  boards: readonly YieldBoard[],
  blanks: readonly YieldBlank[],
): Drawing | undefined {
  const shown = plan.boards.slice(0, mostDrawn);
  if (shown.length === 0) return undefined;
  const gap = Math.max(...shown.map(({ board }) => (boards[board] as YieldBoard).length)) * 0.06;
  const shapes: DrawingShape[] = [];
  let top = 0;
  for (const { board, cuts, offcuts } of shown) {
    const { name, length, width, defects } = boards[board] as YieldBoard;
    const bottom = top - width;
    shapes.push({ role: 'board', closed: true, points: box(0, length, bottom, top), label: name });
    for (const defect of defects) {
      const [from, to] = [Math.min(defect.from, defect.to), Math.min(length, Math.max(defect.from, defect.to))];
      const { acrossFrom = 0, acrossTo = width } = defect;
      const [low, high] = [Math.min(acrossFrom, acrossTo), Math.min(width, Math.max(acrossFrom, acrossTo))];
      shapes.push({ role: 'defect', closed: true, points: box(from, to, bottom + low, bottom + high) });
    }
    for (const { blank, from, to, low, high } of cuts) {
      const { name: label } = blanks[blank] as YieldBlank;
      shapes.push({ role: 'blank', closed: true, points: box(from, to, bottom + low, bottom + high), label });
    }
    for (const { from, to, low, high } of offcuts)
      shapes.push({ role: 'offcut', closed: true, points: box(from, to, bottom + low, bottom + high) });
    top = bottom - gap;
  }
  const pieces = shown.reduce((sum, { cuts }) => sum + cuts.length, 0);
  return {
    id: 'boards',
    title: 'Boards with their cuts',
    description: `${pieces} blanks on ${shown.length === 1 ? 'one board' : `${shown.length} boards`}, along from the left end, across from the lower edge, in true proportion.${
      plan.boards.length > mostDrawn ? ` The other ${plan.boards.length - mostDrawn} boards stand in the table.` : ''
    }`,
    shapes,
  };
}
