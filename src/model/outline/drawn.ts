import { pathNumber } from './path.ts';

/** Ten-millionths of a millimetre are far below any tolerance here; they keep arcs tangent to their neighbours. */
const places = 7;

const n = (value: number) => pathNumber(value, places);

/** A path that is put together step by step, y down, in mm; steps of no length are left out. */
class Pen {
  readonly #parts: string[] = [];
  #x: number;
  #y: number;

  constructor(x: number, y: number) {
    this.#parts.push(`M${n(x)} ${n(y)}`);
    this.#x = x;
    this.#y = y;
  }

  line(x: number, y: number): this {
    if (this.#moves(x, y)) this.#parts.push(`L${n(x)} ${n(y)}`);
    return this.#to(x, y);
  }

  /** A circular arc, clockwise on paper unless told, at most half a circle unless `large`. */
  arc(radius: number, x: number, y: number, { hollow = false, large = false } = {}): this {
    if (this.#moves(x, y)) {
      this.#parts.push(`A${n(radius)} ${n(radius)} 0 ${large ? 1 : 0} ${hollow ? 0 : 1} ${n(x)} ${n(y)}`);
    }
    return this.#to(x, y);
  }

  close(): string {
    return `${this.#parts.join('')}Z`;
  }

  #moves(x: number, y: number): boolean {
    return Math.hypot(x - this.#x, y - this.#y) > 1e-6;
  }

  #to(x: number, y: number): this {
    this.#x = x;
    this.#y = y;
    return this;
  }
}

/** A rectangle from (0, 0) with round corners. */
export function roundedRectangle(length: number, width: number, radius: number): string {
  return new Pen(radius, 0)
    .line(length - radius, 0)
    .arc(radius, length, radius)
    .line(length, width - radius)
    .arc(radius, length - radius, width)
    .line(radius, width)
    .arc(radius, 0, width - radius)
    .line(0, radius)
    .arc(radius, radius, 0)
    .close();
}

/** An ellipse that touches both axes. */
export function oval(length: number, width: number): string {
  const [rx, ry] = [length / 2, width / 2];
  const arc = (x: number) => `A${n(rx)} ${n(ry)} 0 0 1 ${n(x)} ${n(ry)}`;
  return `M0 ${n(ry)}${arc(length)}${arc(0)}Z`;
}

/** A circle about (x, y). */
export function circlePath(x: number, y: number, radius: number): string {
  const arc = (end: number) => `A${n(radius)} ${n(radius)} 0 0 1 ${n(end)} ${n(y)}`;
  return `M${n(x - radius)} ${n(y)}${arc(x + radius)}${arc(x - radius)}Z`;
}

/**
 * A circular segment over a straight edge, its two corners rounded.
 *
 * A corner's circle lies `corner` above the straight edge and touches the large arc from within, so its centre is
 * R − corner from the centre of that arc.
 */
export function halfMoon(length: number, rise: number, corner: number): string {
  const radius = (length * length) / (8 * rise) + rise / 2;
  // y down: the top of the arc lies on y = 0, the straight edge on y = rise, the arc's centre on y = radius.
  const middle = length / 2;
  const down = rise - corner - radius;
  const across = Math.sqrt(Math.max(0, (radius - corner) ** 2 - down * down));
  const touchX = (across * radius) / (radius - corner);
  const touchY = radius + (down * radius) / (radius - corner);
  return new Pen(middle + across, rise)
    .line(middle - across, rise)
    .arc(corner, middle - touchX, touchY)
    .arc(radius, middle + touchX, touchY, { large: touchY > radius })
    .arc(corner, middle + across, rise)
    .close();
}

/** Two equal arcs between two tips, the tips rounded by circles that touch both arcs from within. */
export function leaf(length: number, width: number, tip: number): string {
  const radius = (length * length) / (4 * width) + width / 4;
  const [middle, axis] = [length / 2, width / 2];
  // The arcs' centres lie this far from the long axis.
  const offset = radius - width / 2;
  const across = Math.sqrt(Math.max(0, (radius - tip) ** 2 - offset * offset));
  const touchX = (across * radius) / (radius - tip);
  const touchY = (offset * radius) / (radius - tip) - offset;
  return new Pen(middle - touchX, axis - touchY)
    .arc(radius, middle + touchX, axis - touchY)
    .arc(tip, middle + touchX, axis + touchY)
    .arc(radius, middle - touchX, axis + touchY)
    .arc(tip, middle - touchX, axis - touchY)
    .close();
}

/** A rounded blade at the left and a handle at the right, joined by two hollow shoulders. */
export function paddle(v: {
  length: number;
  width: number;
  cornerRadius: number;
  handleLength: number;
  handleWidth: number;
  shoulderRadius: number;
  endRadius: number;
}): string {
  const { length, width, cornerRadius, shoulderRadius, endRadius } = v;
  const end = length + v.handleLength;
  const top = (width - v.handleWidth) / 2;
  const bottom = (width + v.handleWidth) / 2;
  return new Pen(cornerRadius, 0)
    .line(length - cornerRadius, 0)
    .arc(cornerRadius, length, cornerRadius)
    .line(length, top - shoulderRadius)
    .arc(shoulderRadius, length + shoulderRadius, top, { hollow: true })
    .line(end - endRadius, top)
    .arc(endRadius, end, top + endRadius)
    .line(end, bottom - endRadius)
    .arc(endRadius, end - endRadius, bottom)
    .line(length + shoulderRadius, bottom)
    .arc(shoulderRadius, length, bottom + shoulderRadius, { hollow: true })
    .line(length, width - cornerRadius)
    .arc(cornerRadius, length - cornerRadius, width)
    .line(cornerRadius, width)
    .arc(cornerRadius, 0, width - cornerRadius)
    .line(0, cornerRadius)
    .arc(cornerRadius, cornerRadius, 0)
    .close();
}
