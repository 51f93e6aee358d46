/** A point of a drawing, in its own units, y downwards. */
export interface Point {
  x: number;
  y: number;
}

/** Length of an arrow's head, and half of its breadth. */
const head = { length: 8, half: 4 };

/** Two decimals are finer than any screen or printer. */
const round = (value: number) => Math.round(value * 100) / 100;

/** The path of an arrow from one point to another, its head at the other. */
export function arrow(from: Point, to: Point): string {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [along, across] = [
    { x: (to.x - from.x) / length, y: (to.y - from.y) / length },
    { x: -(to.y - from.y) / length, y: (to.x - from.x) / length },
  ];
  const barb = (side: number) =>
    `${round(to.x - head.length * along.x + side * head.half * across.x)} ${round(to.y - head.length * along.y + side * head.half * across.y)}`;
  return `M${round(from.x)} ${round(from.y)}L${round(to.x)} ${round(to.y)}M${barb(1)}L${round(to.x)} ${round(to.y)}L${barb(-1)}`;
}

/** The path of a measure between two points: an arrow at either end. */
export function measure(from: Point, to: Point): string {
  return arrow(from, to) + arrow(to, from);
}

/** The path of a closed box. */
export function box(x: number, y: number, width: number, height: number): string {
  return `M${round(x)} ${round(y)}h${round(width)}v${round(height)}h${round(-width)}Z`;
}

/**
 * The path of a board that cups, seen on its end: `rise` is how far its middle stands above its edges, below zero for a hollow
 * side up; `lift` is how far its right edge stands above its left one.
 */
export function cupped(
  x: number,
  y: number,
  { width, thickness, rise, lift = 0 }: { width: number; thickness: number; rise: number; lift?: number },
): string {
  const [right, middle] = [x + width, x + width / 2];
  // The control point of the curve stands twice as high as its middle.
  const control = y - lift / 2 - 2 * rise;
  return `M${round(x)} ${round(y)}Q${round(middle)} ${round(control)} ${round(right)} ${round(y - lift)}V${round(y - lift - thickness)}Q${round(middle)} ${round(control - thickness)} ${round(x)} ${round(y - thickness)}Z`;
}

/** Some lines of grain across a box, evenly apart. */
export function grain(x: number, y: number, width: number, height: number, lines: number): string {
  return Array.from(
    { length: lines },
    (_, line) => `M${round(x)} ${round(y + ((line + 1) * height) / (lines + 1))}h${round(width)}`,
  ).join('');
}

/** The path of the rings of a piece seen on its end: circles around the middle of the tree, as far as the piece reaches. */
export function rings(width: number, height: number, pith: Point, apart: number): string {
  const outside = (value: number, length: number) => Math.max(-value, value - length, 0);
  const nearest = Math.hypot(outside(pith.x, width), outside(pith.y, height));
  const furthest = Math.hypot(Math.max(pith.x, width - pith.x), Math.max(pith.y, height - pith.y));
  const first = Math.floor(nearest / apart) + 1;
  return Array.from({ length: Math.max(0, Math.ceil(furthest / apart) - first) }, (_, at) => {
    const radius = round((first + at) * apart);
    return `M${round(pith.x - radius)} ${round(pith.y)}a${radius} ${radius} 0 1 1 ${2 * radius} 0a${radius} ${radius} 0 1 1 ${-2 * radius} 0`;
  }).join('');
}

/** The path of a box with round corners. */
export function rounded(x: number, y: number, width: number, height: number, radius: number): string {
  const corner = (dx: number, dy: number) => `a${round(radius)} ${round(radius)} 0 0 1 ${round(dx)} ${round(dy)}`;
  const [across, down] = [round(width - 2 * radius), round(height - 2 * radius)];
  return `M${round(x + radius)} ${round(y)}h${across}${corner(radius, radius)}v${down}${corner(-radius, radius)}h${-across}${corner(-radius, -radius)}v${-down}${corner(radius, -radius)}Z`;
}

/** The path of a circle. */
export function circle(x: number, y: number, radius: number): string {
  return `M${round(x - radius)} ${round(y)}a${radius} ${radius} 0 1 1 ${2 * radius} 0a${radius} ${radius} 0 1 1 ${-2 * radius} 0Z`;
}
