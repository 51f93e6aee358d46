import type { Drawing, DrawingShape } from '../evidence/index.ts';
import type { Strains } from './formulas.ts';
import type { PanelYear } from './panel.ts';
import { outline, ringArcs } from './rings.ts';
import type { BoardYear } from './season.ts';
import { type Point, pithOf, ringMap, type Section } from './section.ts';

/** Enlargements used, so that a reader can take them in. */
const enlargements = [1, 2, 5, 10, 20, 50, 100];
/** Part of the width that the largest movement should fill in a drawing. */
const visiblePart = 0.03;

/** A board's outline now and after a change, point by point. */
interface Moved {
  from: readonly Point[];
  to: readonly Point[];
}

/** Where the outline of a board goes on a free change of moisture. */
export function movedOutline(section: Section, strains: Strains): Moved {
  const from = outline(section);
  return { from, to: from.map(ringMap(section, strains)) };
}

/** The outline after the change, with its movement enlarged: true where `times` is 1. */
function enlarged({ from, to }: Moved, times: number): Point[] {
  return from.map(([x, y], at) => {
    const [toX, toY] = to[at] as Point;
    return [x + times * (toX - x), y + times * (toY - y)];
  });
}

/** How many times movement must be enlarged to be seen: the largest of a few round numbers that keeps it small in the drawing. */
function enlargement(section: Section, outlines: readonly Moved[]): number {
  const steps = outlines.flatMap(({ from, to }) =>
    from.map(([x, y], at) => {
      const [toX, toY] = to[at] as Point;
      return Math.sqrt((toX - x) ** 2 + (toY - y) ** 2);
    }),
  );
  const most = Math.max(...steps);
  return enlargements.findLast((times) => times === 1 || times * most <= visiblePart * section.width) as number;
}

/** A cross at the pith, where it is near enough to be drawn without making the board small. */
function pithShapes(section: Section): DrawingShape[] {
  const [x, y] = pithOf(section);
  const beyondEdge = Math.max(0, Math.abs(x) - section.width / 2);
  if (Math.hypot(beyondEdge, section.pithDepth) > section.width / 2) return [];
  const arm = section.thickness / 8;
  const points: Point[] = [
    [x - arm, y],
    [x + arm, y],
    [x, y],
    [x, y + arm],
    [x, y - arm],
  ];
  return [{ role: 'pith', closed: false, points }];
}

const ringShapes = (section: Section): DrawingShape[] =>
  ringArcs(section).map((points) => ({ role: 'ring', closed: false, points }));

const millimetres = (value: number) => `${Math.abs(value).toFixed(1)} mm`;

/** A cup in words: `hollow by 0.8 mm on the bark side`. */
function cupWords(cup: number): string {
  if (Math.abs(cup) < 0.05) return 'flat to within 0.1 mm';
  return `hollow by ${millimetres(cup)} on the ${cup > 0 ? 'bark' : 'heart'} side`;
}

/**
 * The end of a board, drawn as it is now with its rings, and as it is at its narrowest and widest with the movement
 * enlarged. The bark side is up.
 */
export function boardDrawing(year: BoardYear): Drawing {
  const { section, states, narrowest, widest, pithAssumed } = year;
  const extremes = (
    [
      ['outline-dry', narrowest],
      ['outline-wet', widest],
    ] as const
  ).flatMap(([role, { label }]) => {
    const state = states.find((candidate) => candidate.label === label);
    return state ? [{ role, state, moved: movedOutline(section, state.strains) }] : [];
  });
  const exaggeration = enlargement(
    section,
    extremes.map(({ moved }) => moved),
  );
  const words = extremes.map(
    ({ role, state }) =>
      `${role === 'outline-dry' ? 'Narrowest' : 'Widest'}, ${state.label}: ${millimetres(state.width.value)} wide, ${cupWords(state.cup.bark.value)}.`,
  );
  return {
    id: 'end-grain',
    title: 'End grain, bark side up',
    description: [
      `A board ${millimetres(section.width)} wide and ${millimetres(section.thickness)} thick, rings at ${Math.round(year.ringAngle)}° to the face in its middle${pithAssumed ? ', the place of the pith assumed' : ''}.`,
      ...words,
    ].join(' '),
    exaggeration,
    shapes: [
      ...ringShapes(section),
      ...pithShapes(section),
      { role: 'outline-now', label: 'now', closed: true, points: outline(section) },
      ...extremes.map(
        ({ role, state, moved }): DrawingShape => ({
          role,
          label: state.label,
          closed: true,
          points: enlarged(moved, exaggeration),
        }),
      ),
    ],
  };
}

/** The end of a panel as it is now: its staves side by side, each with its rings, all with the bark side up. */
export function panelDrawing(panel: PanelYear): Drawing {
  const total = panel.staves.reduce((sum, { section }) => sum + section.width, 0);
  let left = -total / 2;
  const shapes = panel.staves.flatMap(({ section }, index): DrawingShape[] => {
    const middle = left + section.width / 2;
    left += section.width;
    const drawn: DrawingShape[] = [
      ...ringShapes(section),
      { role: 'stave', label: `stave ${index + 1}`, closed: true, points: outline(section) },
    ];
    return drawn.map((shape) => ({ ...shape, points: shape.points.map(([x, y]): Point => [x + middle, y]) }));
  });
  const staves = panel.staves.map(
    ({ section, ringAngle }) => `${millimetres(section.width)} with rings at ${Math.round(ringAngle)}°`,
  );
  return {
    id: 'end-grain',
    title: 'End grain of the panel as it is now',
    description: `A panel ${millimetres(total)} wide of ${panel.staves.length} staves, from left to right: ${staves.join('; ')}.`,
    shapes,
  };
}
