import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import {
  type BoardState,
  type BoardYear,
  outline,
  type PanelState,
  type PanelYear,
  type Point,
  ringArcs,
  ringMap,
  type Strains,
} from '../../model/movement/index.ts';

/** Steps by which a change may be enlarged. */
const enlargements = [1, 2, 3, 5, 10, 20];
/** Share of the width that an enlarged change should show as, so that it can be seen on a phone. */
const visible = 0.05;

/** How much to enlarge a change so that it can be seen, in a round number. */
function enlargement(change: number): number {
  return enlargements.reduce((best, factor) => (factor * change <= visible ? factor : best), 1);
}

const enlarged = ({ radial, tangential }: Strains, factor: number): Strains => ({
  radial: radial * factor,
  tangential: tangential * factor,
});

const percent = (change: number) => `${Math.abs(change * 100).toFixed(1)} % ${change < 0 ? 'narrower' : 'wider'}`;

function cupWords({ cup }: BoardState): string {
  const mm = cup.bark.value;
  if (Math.abs(mm) < 0.05) return 'flat';
  return mm > 0 ? 'hollow on the bark side' : 'hollow on the heart side';
}

/** The end grain of a board with its rings, as it is now, at its driest and at its wettest. */
export function boardDrawing(year: BoardYear): Drawing {
  const { section, states } = year;
  const dry = states.find((state) => state.label === year.narrowest.label) as BoardState;
  const wet = states.find((state) => state.label === year.widest.label) as BoardState;
  const greatest = Math.max(Math.abs(dry.change.value), Math.abs(wet.change.value)) / section.width;
  const factor = enlargement(greatest);
  const moved = (state: BoardState, points: readonly Point[]) =>
    points.map(ringMap(section, enlarged(state.strains, factor)));
  const face = outline(section);
  const shapes: DrawingShape[] = [
    ...ringArcs(section).map((points): DrawingShape => ({ role: 'ring', closed: false, points })),
    { role: 'outline-dry', closed: true, points: moved(dry, face) },
    { role: 'outline-wet', closed: true, points: moved(wet, face) },
    { role: 'outline-now', closed: true, points: face },
  ];
  return {
    id: 'end-grain',
    title: 'End grain',
    description: `End grain with growth rings, bark side up, rings at ${Math.round(year.ringAngle)}° to the face. In ${dry.label} the board is ${percent(dry.change.value / section.width)} than now and ${cupWords(dry)}; in ${wet.label} it is ${percent(wet.change.value / section.width)} and ${cupWords(wet)}.${year.pithAssumed ? ' The place of the pith is assumed.' : ''}`,
    shapes,
    exaggeration: factor,
  };
}

/** The end grain of a panel: its staves with their rings, and its outline at its driest and wettest. */
export function panelDrawing(year: PanelYear): Drawing {
  const width = year.staves.reduce((sum, stave) => sum + stave.section.width, 0);
  const thickness = year.staves[0]?.section.thickness ?? 0;
  const dry = year.states.find((state) => state.label === year.narrowest.label) as PanelState;
  const wet = year.states.find((state) => state.label === year.widest.label) as PanelState;
  const factor = enlargement(Math.max(Math.abs(dry.change.value), Math.abs(wet.change.value)) / width);
  let at = -width / 2;
  const staves = year.staves.flatMap(({ section }): DrawingShape[] => {
    const middle = at + section.width / 2;
    at += section.width;
    const shifted = (points: readonly Point[]) => points.map(([x, y]): Point => [x + middle, y]);
    return [
      ...ringArcs(section).map((points): DrawingShape => ({ role: 'ring', closed: false, points: shifted(points) })),
      { role: 'stave', closed: true, points: shifted(outline(section)) },
    ];
  });
  const box = (state: PanelState, role: DrawingShape['role']): DrawingShape => {
    const half = (width + state.change.value * factor) / 2;
    const top = thickness / 2;
    return {
      role,
      closed: true,
      points: [
        [-half, -top],
        [half, -top],
        [half, top],
        [-half, top],
      ],
    };
  };
  return {
    id: 'end-grain',
    title: 'End grain',
    description: `A panel of ${year.staves.length} ${year.staves.length === 1 ? 'stave' : 'staves'}, seen on the end grain. In ${dry.label} it is ${percent(dry.change.value / width)} than now; in ${wet.label} it is ${percent(wet.change.value / width)}.`,
    shapes: [...staves, box(dry, 'outline-dry'), box(wet, 'outline-wet')],
    exaggeration: factor,
  };
}
