import { answer, type FieldError, type Outcome } from '../evidence/index.ts';
import { amount, atLeast } from '../quantity/index.ts';
import { circlePath, halfMoon, leaf, oval, paddle, roundedRectangle } from './drawn.ts';
import type { Outline } from './types.ts';

/** One measure of a parametric outline. */
export interface OutlineParameter {
  name: string;
  label: string;
  help: string;
  /** Usual value and allowed range, in mm. */
  usual: number;
  minimum: number;
  maximum: number;
}

/** An outline of our own, drawn from a few measures in mm. Its length lies along the x axis. */
export interface ParametricOutline {
  id: string;
  title: string;
  /** What it looks like, in one sentence. */
  about: string;
  parameters: readonly OutlineParameter[];
  /**
   * Draw it.
   *
   * @param values mm by parameter name; a missing one takes its usual value
   * @returns a refusal that names the parameter where a value is out of range or does not go with the others
   */
  draw(values: Readonly<Record<string, number>>): Outcome<Outline>;
}

type Values<Name extends string> = Record<Name, number>;

/** A rule between parameters: the one at fault and what is wrong, or undefined. */
type Rule<Name extends string> = (values: Values<Name>) => FieldError | undefined;

function parametric<const Name extends string>(definition: {
  id: string;
  title: string;
  about: string;
  parameters: readonly (OutlineParameter & { name: Name })[];
  rules: readonly Rule<NoInfer<Name>>[];
  path(values: Values<NoInfer<Name>>): Outline;
}): ParametricOutline {
  const { id, title, about, parameters, rules, path } = definition;
  return {
    id,
    title,
    about,
    parameters,
    draw(given) {
      const errors: FieldError[] = [];
      const values = {} as Values<Name>;
      for (const { name, label, usual, minimum, maximum } of parameters) {
        const value = given[name] ?? usual;
        values[name] = value;
        if (!(value >= minimum && value <= maximum)) {
          errors.push({
            field: name,
            message: `${label} ${measure(value)} is outside ${measure(minimum)} to ${measure(maximum)}. Give a value in that range, such as ${measure(usual)}.`,
          });
        }
      }
      if (errors.length === 0) {
        for (const rule of rules) {
          const error = rule(values);
          if (error) errors.push(error);
        }
      }
      return errors.length > 0 ? { ok: false, errors } : answer(path(values));
    },
  };
}

function measure(value: number): string {
  return Number.isFinite(value) ? amount(Number(value.toFixed(2)), 'mm', 5) : 'that is not a number';
}

/** A rule that one parameter may be at most so much. */
function atMost<Name extends string>(
  name: NoInfer<Name>,
  label: string,
  limit: (values: Values<Name>) => number,
  why: string,
): Rule<Name> {
  return (values) => {
    const most = limit(values);
    const value = values[name];
    if (value <= most + 1e-9) return undefined;
    const least = Math.max(0, most);
    return {
      field: name,
      message: `${label} ${measure(value)} is more than the ${measure(least)} that ${why}. Make it smaller, or the outline larger.`,
    };
  };
}

const length = {
  name: 'length',
  label: 'Length',
  help: 'Along the grain of the drawing.',
  minimum: 20,
  maximum: 3000,
} as const;
const width = { name: 'width', label: 'Width', help: 'Across the length.', minimum: 20, maximum: 1500 } as const;

/** Our own outlines, the plainest first. */
export const parametricOutlines: readonly ParametricOutline[] = [
  parametric({
    id: 'rounded-rectangle',
    title: 'Rounded rectangle',
    about: 'A rectangle with four equal round corners.',
    parameters: [
      { ...length, usual: 400 },
      { ...width, usual: 250 },
      {
        name: 'cornerRadius',
        label: 'Corner radius',
        help: '0 leaves the corners square.',
        usual: 25,
        minimum: 0,
        maximum: 750,
      },
    ],
    rules: [
      atMost('cornerRadius', 'Corner radius', (v) => Math.min(v.length, v.width) / 2, 'half the shorter side allows'),
    ],
    path: ({ length: long, width: wide, cornerRadius }) => ({
      outer: roundedRectangle(long, wide, cornerRadius),
      holes: [],
    }),
  }),
  parametric({
    id: 'oval',
    title: 'Oval',
    about: 'An ellipse.',
    parameters: [
      { ...length, usual: 420 },
      { ...width, usual: 260 },
    ],
    rules: [],
    path: ({ length: long, width: wide }) => ({ outer: oval(long, wide), holes: [] }),
  }),
  parametric({
    id: 'half-moon',
    title: 'Half-moon',
    about: 'A straight edge and the arc of a circle over it, with rounded corners where they meet.',
    parameters: [
      { ...length, label: 'Straight edge', help: 'From corner to corner before they are rounded.', usual: 420 },
      {
        name: 'rise',
        label: 'Rise',
        help: 'From the straight edge to the top of the arc.',
        usual: 200,
        minimum: 10,
        maximum: 1500,
      },
      {
        name: 'cornerRadius',
        label: 'Corner radius',
        help: '0 leaves the two corners sharp.',
        usual: 15,
        minimum: 0,
        maximum: 500,
      },
    ],
    rules: [
      atMost(
        'rise',
        'Rise',
        (v) => v.length / 2,
        'half the straight edge allows: a half-moon is at most half a circle',
      ),
      atMost('cornerRadius', 'Corner radius', (v) => v.rise / 3, 'a third of the rise allows'),
    ],
    path: (v) => ({ outer: halfMoon(v.length, v.rise, v.cornerRadius), holes: [] }),
  }),
  parametric({
    id: 'leaf',
    title: 'Leaf',
    about: 'Two equal arcs that meet in two rounded tips.',
    parameters: [
      { ...length, help: 'From tip to tip before they are rounded.', usual: 450 },
      { ...width, usual: 200 },
      {
        name: 'tipRadius',
        label: 'Tip radius',
        help: '0 leaves the tips sharp, and sharp tips break.',
        usual: 12,
        minimum: 0,
        maximum: 500,
      },
    ],
    rules: [
      atMost(
        'width',
        'Width',
        (v) => v.length * 0.95,
        'a leaf of this length allows: nearly as wide as long it would be a circle',
      ),
      atMost('tipRadius', 'Tip radius', (v) => v.width / 3, 'a third of the width allows'),
    ],
    path: (v) => ({ outer: leaf(v.length, v.width, v.tipRadius), holes: [] }),
  }),
  parametric({
    id: 'paddle',
    title: 'Paddle with a handle',
    about: 'A rounded blade, a straight handle that joins it with two hollow shoulders, and a hole to hang it by.',
    parameters: [
      { ...length, label: 'Blade length', help: 'Without the handle.', usual: 320 },
      { ...width, label: 'Blade width', usual: 200 },
      {
        name: 'cornerRadius',
        label: 'Blade corner radius',
        help: 'Of its four corners.',
        usual: 30,
        minimum: 0,
        maximum: 750,
      },
      {
        name: 'handleLength',
        label: 'Handle length',
        help: 'From the blade to the handle’s end.',
        usual: 130,
        minimum: 20,
        maximum: 800,
      },
      {
        name: 'handleWidth',
        label: 'Handle width',
        help: 'The same over its length.',
        usual: 45,
        minimum: 10,
        maximum: 400,
      },
      {
        name: 'shoulderRadius',
        label: 'Shoulder radius',
        help: 'Of the hollow between blade and handle; 0 leaves a sharp inside corner.',
        usual: 20,
        minimum: 0,
        maximum: 400,
      },
      {
        name: 'endRadius',
        label: 'Handle end radius',
        help: 'Of the two corners of the handle’s end.',
        usual: 20,
        minimum: 0,
        maximum: 200,
      },
      { name: 'holeDiameter', label: 'Hole diameter', help: '0 for no hole.', usual: 12, minimum: 0, maximum: 100 },
      {
        name: 'holeFromEnd',
        label: 'Hole from end',
        help: 'From the handle’s end to the middle of the hole.',
        usual: 25,
        minimum: 5,
        maximum: 400,
      },
    ],
    rules: [
      atMost(
        'cornerRadius',
        'Blade corner radius',
        (v) => Math.min(v.length, v.width) / 2,
        'half the shorter side of the blade allows',
      ),
      atMost(
        'handleWidth',
        'Handle width',
        (v) => v.width - 2 * v.cornerRadius - 2 * v.shoulderRadius,
        'is left between the corners and shoulders of the blade',
      ),
      atMost('shoulderRadius', 'Shoulder radius', (v) => v.handleLength - v.endRadius, 'the handle’s length allows'),
      atMost('endRadius', 'Handle end radius', (v) => v.handleWidth / 2, 'half the handle’s width allows'),
      (v) =>
        v.holeDiameter > 0 && v.holeDiameter < 3
          ? {
              field: 'holeDiameter',
              message: `A hole of ${measure(v.holeDiameter)} takes no string. Give at least ${atLeast(3, 'mm')}, or 0 for no hole.`,
            }
          : undefined,
      atMost(
        'holeDiameter',
        'Hole diameter',
        (v) => v.handleWidth - 6,
        `leaves ${amount(3, 'mm')} of wood on either side`,
      ),
      (v) =>
        v.holeDiameter > 0 && v.holeFromEnd < v.holeDiameter / 2 + 3
          ? {
              field: 'holeFromEnd',
              message: `A hole of ${measure(v.holeDiameter)} with its middle ${measure(v.holeFromEnd)} from the end leaves less than ${amount(3, 'mm')} of wood. Give at least ${atLeast(v.holeDiameter / 2 + 3, 'mm', 4)}.`,
            }
          : undefined,
      (v) =>
        v.holeDiameter > 0 && v.holeFromEnd + v.holeDiameter / 2 > v.handleLength
          ? {
              field: 'holeFromEnd',
              message: `The hole reaches past the handle of ${measure(v.handleLength)} into the blade. Give at most ${measure(v.handleLength - v.holeDiameter / 2)}.`,
            }
          : undefined,
    ],
    path: (v) => ({
      outer: paddle(v),
      holes:
        v.holeDiameter > 0
          ? [circlePath(v.length + v.handleLength - v.holeFromEnd, v.width / 2, v.holeDiameter / 2)]
          : [],
    }),
  }),
];

/** One of our outlines by its id. */
export function parametricOutline(id: string): ParametricOutline | undefined {
  return parametricOutlines.find((candidate) => candidate.id === id);
}
