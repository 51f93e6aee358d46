import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Words } from './kit/marks.tsx';

const size = { width: 340, height: 246 };
const part = { width: 96, template: 30, board: 54, top: 64 };
/** The window in the template, from its far edge, and the inlay that stands proud in it. */
const window = { from: 12, width: 26, inlay: 14, proud: 4, deep: 16 };
const bit = { width: 28, bearing: 16, shank: 10 };
const board = part.top + part.template;
const bottom = board + part.board;

/** Hand-held the bit comes from above and hangs from its shank; at a table it comes from below, so that its tip is on top. */
const views = [
  {
    x: 4,
    words: ['hand-held: bearing', 'by the shank'],
    shank: [18, part.top + 6],
    bearing: part.top + 6,
    edge: [part.top + 6 + bit.bearing, bottom + 8],
  },
  {
    x: 184,
    words: ['at a table: bearing', 'at the tip'],
    shank: [bottom + 8, bottom + 34],
    bearing: part.top + 7,
    edge: [part.top + 7 + bit.bearing, bottom + 8],
  },
] as const;

/** A template bit in section, in a hand-held router and in a table: in both the bearing runs on the template. */
export function BearingSection() {
  return (
    <Drawing
      title="A template bit in section: hand-held, and at a table"
      description="In both pictures the template lies on top of the board; through a window in it stands the inlay, proud of the face, and touches nothing. Left, hand-held: the bit comes from above; its bearing sits by the shank, above the cutting edge, and runs on the template. Right, at a table: the bit comes from below, so that its tip is on top; its bearing sits at the tip and runs on the template, and the edge below it must be longer than the board is thick, or the shank rubs. In both the bearing is as wide as the edge, so the board gets the template’s size."
      {...size}
      caption="Black: shank and bearing; dashed: the cutting edge. The bearing must lie on the template before the edge meets the wood: look from the side, with the router unplugged."
    >
      {views.map(({ x, words, shank: [shankFrom, shankTo], bearing, edge: [from, to] }) => {
        const middle = x + part.width + bit.width / 2;
        return (
          <g key={words[0]}>
            <path className={styles.grain} d={grain(x, board, part.width, part.board, 4)} />
            <path
              className={styles.wood}
              d={
                box(x, part.top, window.from, part.template) +
                box(x + window.from + window.width, part.top, part.width - window.from - window.width, part.template) +
                box(x, board, part.width, part.board)
              }
            />
            <path
              className={styles.resin}
              d={box(
                x + window.from + (window.width - window.inlay) / 2,
                board - window.proud,
                window.inlay,
                window.proud + window.deep,
              )}
            />
            <Words
              x={x + (part.width + window.from + window.width) / 2}
              y={part.top + part.template / 2 + 5}
              anchor="middle"
            >
              template
            </Words>
            <Words x={x + part.width / 2} y={board + part.board / 2 + 12} anchor="middle">
              board
            </Words>
            <path className={styles.solid} d={box(middle - bit.shank / 2, shankFrom, bit.shank, shankTo - shankFrom)} />
            <path className={styles.cutter} d={box(middle - bit.width / 2, from, bit.width, to - from)} />
            <path className={styles.solid} d={box(middle - bit.width / 2, bearing, bit.width, bit.bearing)} />
            <Words x={x} y={bottom + 60}>
              {words}
            </Words>
          </g>
        );
      })}
      <path className={styles.axis} d={`M${views[1].x - 2} ${bottom + 4}h${part.width + bit.width + 20}`} />
      <Words x={views[1].x} y={bottom + 24} muted>
        table
      </Words>
      <Words x={views[0].x + part.width - 6} y={34} anchor="end" muted>
        router
      </Words>
    </Drawing>
  );
}
