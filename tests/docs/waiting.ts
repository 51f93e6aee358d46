/**
 * Days until a bare board with both faces open has gone part of the way to rest: the series for diffusion in a plate with a
 * surface coefficient (Crank, The mathematics of diffusion, chapter 4; numbering from memory).
 *
 * @param thickness mm
 * @param part 0.5 for half-way
 * @param diffusion m²/s across the grain; the default is the page's, from memory
 * @param surface surface coefficient, m/s; the default is the page's, from memory
 */
export function daysToRest(thickness: number, part: number, diffusion = 0.5e-10, surface = 1e-7): number {
  const half = thickness / 2000;
  const biot = (surface * half) / diffusion;
  const roots = Array.from({ length: 60 }, (_, n) =>
    bisect((beta) => beta * Math.tan(beta) - biot, n * Math.PI, (n + 0.5) * Math.PI - 1e-9),
  );
  const gone = (seconds: number) =>
    1 -
    roots.reduce(
      (sum, beta) =>
        sum +
        (2 * biot ** 2 * Math.exp((-(beta ** 2) * diffusion * seconds) / half ** 2)) /
          (beta ** 2 * (beta ** 2 + biot ** 2 + biot)),
      0,
    );
  return bisect((days) => gone(days * 86_400) - part, 1e-3, 1e4);
}

/** Where a rising function crosses zero. */
function bisect(of: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 100; step += 1) {
    const middle = (low + high) / 2;
    if (of(middle) < 0) low = middle;
    else high = middle;
  }
  return low;
}
