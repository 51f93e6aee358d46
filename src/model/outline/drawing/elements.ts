import { inUserUnits, readNumbers } from './units.ts';

/** Attributes of an element by name. */
export type Attributes = Readonly<Record<string, string | undefined>>;

/** Elements that draw a shape. */
export const shapeNames = ['path', 'rect', 'circle', 'ellipse', 'polygon', 'polyline', 'line'] as const;
export type ShapeName = (typeof shapeNames)[number];

/**
 * The path data of a shape element in its own axes, as SVG 2 says that each basic shape is drawn.
 *
 * @returns undefined where its attributes draw nothing or cannot be read
 */
export function pathOfElement(name: ShapeName, attributes: Attributes): string | undefined {
  const number = (key: string, missing?: number): number | undefined =>
    attributes[key] === undefined ? missing : inUserUnits(attributes[key]);
  switch (name) {
    case 'path':
      return attributes.d?.trim() || undefined;
    case 'rect':
      return rect(number('x', 0), number('y', 0), number('width'), number('height'), number('rx'), number('ry'));
    case 'circle': {
      const r = number('r');
      return ellipse(number('cx', 0), number('cy', 0), r, r);
    }
    case 'ellipse': {
      const [rx, ry] = [number('rx'), number('ry')];
      return ellipse(number('cx', 0), number('cy', 0), rx ?? ry, ry ?? rx);
    }
    case 'line': {
      const ends = [number('x1', 0), number('y1', 0), number('x2', 0), number('y2', 0)];
      return ends.every((end) => end !== undefined) ? `M${ends[0]} ${ends[1]}L${ends[2]} ${ends[3]}` : undefined;
    }
    default: {
      const numbers = readNumbers(attributes.points);
      if (!numbers || numbers.length < 4) return undefined;
      // An odd last number draws nothing.
      const even = numbers.slice(0, numbers.length - (numbers.length % 2));
      return `M${even.join(' ')}${name === 'polygon' ? 'Z' : ''}`;
    }
  }
}

function rect(
  x: number | undefined,
  y: number | undefined,
  width: number | undefined,
  height: number | undefined,
  rxGiven: number | undefined,
  ryGiven: number | undefined,
): string | undefined {
  if (x === undefined || y === undefined || !width || !height || width < 0 || height < 0) return undefined;
  const rx = Math.min(Math.max(0, rxGiven ?? ryGiven ?? 0), width / 2);
  const ry = Math.min(Math.max(0, ryGiven ?? rxGiven ?? 0), height / 2);
  if (rx === 0 || ry === 0) return `M${x} ${y}h${width}v${height}h${-width}Z`;
  const arc = (dx: number, dy: number) => `a${rx} ${ry} 0 0 1 ${dx} ${dy}`;
  const [flat, upright] = [width - 2 * rx, height - 2 * ry];
  return `M${x + rx} ${y}h${flat}${arc(rx, ry)}v${upright}${arc(-rx, ry)}h${-flat}${arc(-rx, -ry)}v${-upright}${arc(rx, -ry)}Z`;
}

function ellipse(
  cx: number | undefined,
  cy: number | undefined,
  rx: number | undefined,
  ry: number | undefined,
): string | undefined {
  if (cx === undefined || cy === undefined || !rx || !ry || rx < 0 || ry < 0) return undefined;
  const arc = (x: number) => `A${rx} ${ry} 0 0 1 ${x} ${cy}`;
  return `M${cx - rx} ${cy}${arc(cx + rx)}${arc(cx - rx)}Z`;
}
