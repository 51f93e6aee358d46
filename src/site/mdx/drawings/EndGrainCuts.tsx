import { Drawing } from './kit/Drawing.tsx';
import { EndGrain, Words } from './kit/marks.tsx';

const size = { width: 340, height: 132 };
const piece = { width: 96, height: 38, y: 34 };
/** Middle of the tree below the face, beside the piece at half a right angle, and far to its side. */
const cuts = [
  { x: 8, pith: { x: 48, y: 92 }, name: 'flatsawn', angle: '0 to 30°' },
  { x: 122, pith: { x: -72, y: 140 }, name: 'rift', angle: '30 to 60°' },
  { x: 236, pith: { x: -190, y: 19 }, name: 'quartersawn', angle: '60 to 90°' },
] as const;

/** Three boards seen on their ends: how the rings tell flatsawn, rift and quartersawn apart. */
export function EndGrainCuts() {
  return (
    <Drawing
      title="Flatsawn, rift and quartersawn, read from the end of a board"
      description="Three ends of boards. Flatsawn: the rings lie as flat arcs, nearly along the wide face. Rift: the rings cross the end slantwise, at about 45 degrees to the face. Quartersawn: the rings stand nearly upright between the two faces."
      {...size}
      caption="Look at the end, not at the face: the angle between rings and wide face. The bounds at 30 and 60° are common practice."
    >
      {cuts.map(({ x, pith, name, angle }) => (
        <g key={name}>
          <EndGrain x={x} y={piece.y} width={piece.width} height={piece.height} pith={pith} apart={7} />
          <Words x={x + piece.width / 2} y={piece.y - 12} anchor="middle">
            {name}
          </Words>
          <Words x={x + piece.width / 2} y={piece.y + piece.height + 22} anchor="middle" muted>
            {angle}
          </Words>
        </g>
      ))}
      <Words x={size.width / 2} y={size.height - 6} anchor="middle">
        rings to wide face
      </Words>
    </Drawing>
  );
}
