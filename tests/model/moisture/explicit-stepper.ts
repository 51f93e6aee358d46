/** A board of the stepper: half thickness in m, D in m²/s, resistance at the face in s/m; moisture as a share of the change. */
export interface SteppedBoard {
  depth: number;
  diffusion: number;
  resistance: number;
}

/**
 * A plain explicit time-stepper for diffusion into half a board: finite volumes, the middle closed, the face behind a resistance.
 * Another road to what the series gives, as slow as it is simple.
 *
 * @param cells on the half board
 * @param until s
 * @returns share of the change made by the mean, at the face and in the middle, at `until`
 */
export function stepBoard(
  board: SteppedBoard,
  cells: number,
  until: number,
): { mean: number; face: number; middle: number } {
  const width = board.depth / cells;
  // From the middle of the outer cell to the air: half a cell of wood, then coating and air.
  const outer = 1 / (width / 2 / board.diffusion + board.resistance);
  const inner = board.diffusion / width;
  const stable = (0.4 * width) / Math.max(2 * inner, inner + outer);
  const steps = Math.max(1, Math.ceil(until / stable));
  const dt = until / steps;
  let now = new Float64Array(cells);
  let next = new Float64Array(cells);
  for (let step = 0; step < steps; step += 1) {
    for (let cell = 0; cell < cells; cell += 1) {
      const value = now[cell] as number;
      const below = cell === 0 ? 0 : inner * ((now[cell - 1] as number) - value);
      const above = cell === cells - 1 ? outer * (1 - value) : inner * ((now[cell + 1] as number) - value);
      next[cell] = value + (dt / width) * (below + above);
    }
    [now, next] = [next, now];
  }
  const last = now[cells - 1] as number;
  return {
    mean: now.reduce((sum, value) => sum + value, 0) / cells,
    face: 1 - outer * (1 - last) * board.resistance,
    middle: now[0] as number,
  };
}
