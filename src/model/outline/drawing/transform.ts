import type { Matrix } from '../path.ts';
import { readLength, readNumbers } from './units.ts';

export const identity: Matrix = [1, 0, 0, 1, 0, 0];

/** The map that applies `inner` first, then `outer`. */
export function compose(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [g, h, i, j, k, l] = inner;
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}

/** How many numbers each kind of transform takes. */
const counts: Readonly<Record<string, readonly number[]>> = {
  matrix: [6],
  translate: [1, 2],
  scale: [1, 2],
  rotate: [1, 3],
  skewX: [1],
  skewY: [1],
};

/** Read a `transform` attribute; undefined where it cannot be read. */
export function readTransform(text: string): Matrix | undefined {
  let whole = identity;
  const rest = text.replace(/([a-zA-Z]+)\s*\(([^()]*)\)\s*,?/g, (_all, name: string, list: string) => {
    const n = readNumbers(list);
    const one = n && counts[name]?.includes(n.length) ? single(name, n) : undefined;
    if (!one) return '?';
    whole = compose(whole, one);
    return '';
  });
  return rest.trim() === '' && whole.every(Number.isFinite) ? whole : undefined;
}

function single(name: string, n: readonly number[]): Matrix {
  const [p = 0, q = 0, r = 0, s = 0, t = 0, u = 0] = n;
  const angle = (p * Math.PI) / 180;
  switch (name) {
    case 'matrix':
      return [p, q, r, s, t, u];
    case 'translate':
      return [1, 0, 0, 1, p, q];
    case 'scale':
      return [p, 0, 0, n.length > 1 ? q : p, 0, 0];
    case 'skewX':
      return [1, 0, Math.tan(angle), 1, 0, 0];
    case 'skewY':
      return [1, Math.tan(angle), 0, 1, 0, 0];
    default: {
      const [c, d] = [Math.cos(angle), Math.sin(angle)];
      return compose(compose([1, 0, 0, 1, q, r], [c, d, -d, c, 0, 0]), [1, 0, 0, 1, -q, -r]);
    }
  }
}

/**
 * The map from the axes inside an `svg` element to those around it, by its `viewBox` and `preserveAspectRatio`.
 *
 * @param width and height of the element in the units outside it
 */
export function viewBoxMap(
  viewBox: readonly number[],
  width: number,
  height: number,
  preserveAspectRatio: string | undefined,
): Matrix {
  const [left = 0, top = 0, wide = 1, high = 1] = viewBox;
  let [sx, sy] = [width / wide, height / high];
  const words = (preserveAspectRatio ?? '').trim().split(/\s+/);
  const align = words[0] || 'xMidYMid';
  if (align !== 'none') sx = sy = words.includes('slice') ? Math.max(sx, sy) : Math.min(sx, sy);
  const share = (word: string) => (word === 'Min' ? 0 : word === 'Max' ? 1 : 0.5);
  const restX = align === 'none' ? 0 : (width - wide * sx) * share(align.slice(1, 4));
  const restY = align === 'none' ? 0 : (height - high * sy) * share(align.slice(5, 8));
  return [sx, 0, 0, sy, restX - left * sx, restY - top * sy];
}

/** A `viewBox` of four numbers with a positive width and height. */
export function readViewBox(text: string | undefined): readonly number[] | undefined {
  const numbers = readNumbers(text);
  return numbers?.length === 4 && (numbers[2] as number) > 0 && (numbers[3] as number) > 0 ? numbers : undefined;
}

/** Whether a length attribute is a plain physical one. */
export function isPhysical(text: string | undefined): boolean {
  const length = readLength(text);
  return (
    length !== undefined && length.unit !== '' && length.unit !== '%' && length.unit !== 'other' && length.value > 0
  );
}
