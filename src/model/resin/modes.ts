/**
 * Shapes in which a row of cells that pass heat to each other cools: each decays at its own rate and keeps its form. In these
 * shapes conduction needs no steps of time, so no step can be too long for it.
 */
export interface Modes {
  count: number;
  /** Decay of each shape, the eigenvalues of the row's matrix. */
  decays: Float64Array;
  /** Shapes by column, row by row: cell i of shape p stands at `i * count + p`. They are orthonormal. */
  shapes: Float64Array;
}

const sweeps = 40;
/** What is left beside the diagonal, as a share of its largest entry, where the rotations end. */
const precision = 1e-12;

/**
 * Shapes and decays of a symmetric matrix that couples neighbours only, by Jacobi's rotations. For a few cells these are as fast
 * as anything, and they keep the shapes orthonormal to the last digit.
 *
 * @param diagonal its diagonal, at least one entry
 * @param beside the entries next to it, one fewer
 */
export function modesOf(diagonal: readonly number[], beside: readonly number[]): Modes {
  const n = diagonal.length;
  const a = new Float64Array(n * n);
  const shapes = new Float64Array(n * n);
  for (const [i, value] of diagonal.entries()) {
    a[i * n + i] = value;
    shapes[i * n + i] = 1;
    const next = beside[i];
    if (next === undefined) continue;
    a[i * n + i + 1] = next;
    a[(i + 1) * n + i] = next;
  }
  const size = Math.max(...diagonal.map(Math.abs));
  for (let sweep = 0; sweep < sweeps && largestBeside(a, n) > precision * size; sweep += 1) {
    for (let p = 0; p < n; p += 1) for (let q = p + 1; q < n; q += 1) rotate(a, shapes, n, p, q);
  }
  return { count: n, decays: Float64Array.from(diagonal, (_, i) => at(a, i * n + i)), shapes };
}

const at = (values: Float64Array, index: number): number => values[index] as number;

function largestBeside(a: Float64Array, n: number): number {
  let largest = 0;
  for (let i = 0; i < n; i += 1) for (let j = 0; j < i; j += 1) largest = Math.max(largest, Math.abs(at(a, i * n + j)));
  return largest;
}

/** One rotation in the plane of p and q, chosen so that the entry that couples them vanishes. */
function rotate(a: Float64Array, shapes: Float64Array, n: number, p: number, q: number): void {
  const coupling = at(a, p * n + q);
  if (coupling === 0) return;
  const theta = (at(a, q * n + q) - at(a, p * n + p)) / (2 * coupling);
  const tangent = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const cosine = 1 / Math.sqrt(tangent * tangent + 1);
  const sine = tangent * cosine;
  for (let k = 0; k < n; k += 1) turn(a, k * n + p, k * n + q, cosine, sine);
  for (let k = 0; k < n; k += 1) turn(a, p * n + k, q * n + k, cosine, sine);
  for (let k = 0; k < n; k += 1) turn(shapes, k * n + p, k * n + q, cosine, sine);
}

/** Turn the pair of entries at two places. */
function turn(values: Float64Array, one: number, other: number, cosine: number, sine: number): void {
  const x = at(values, one);
  const y = at(values, other);
  values[one] = cosine * x - sine * y;
  values[other] = sine * x + cosine * y;
}

/**
 * A matrix times a matrix, row by row.
 *
 * @param rows rows of the left one
 * @param inner columns of the left one and rows of the right one
 * @param columns columns of the right one
 * @param out receives the product, `rows * columns` entries
 */
export function multiply(
  left: Float64Array,
  right: Float64Array,
  rows: number,
  inner: number,
  columns: number,
  out: Float64Array,
): void {
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      let sum = 0;
      for (let k = 0; k < inner; k += 1) sum += at(left, row * inner + k) * at(right, k * columns + column);
      out[row * columns + column] = sum;
    }
  }
}
