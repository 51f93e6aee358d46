import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { grain, rounded } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 200 };
const board = { width: 152, height: 104, y: 38 };
const [machine, hand] = [6, 182];
const lanes = [20, 44, 68, 92];

/** How a sander and how a block go over a face. */
export function SandingPasses() {
  return (
    <Drawing
      title="How the sander goes, and how the block goes, seen from above"
      description="Left: a random-orbit sander goes up and down the board in straight lanes along the grain, each lane half over the last, and then once across in the same way with the coarse grits. Right: a sanding block by hand goes along the grain only, in full strokes from end to end, and never across or in circles."
      {...size}
      caption="Machine: lanes along, each half over the last; with coarse grits once across too (common practice). By hand: a block, along the grain only."
    >
      {[machine, hand].map((x) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, board.y, board.width, board.height, 8)} />
          <path className={styles.wood} d={rounded(x, board.y, board.width, board.height, 12)} />
        </g>
      ))}
      {lanes.map((down, at) => {
        const [left, right] = [
          { x: machine + 14, y: board.y + down },
          { x: machine + board.width - 14, y: board.y + down },
        ];
        return at % 2 === 0 ? (
          <Arrow key={down} from={left} to={right} heavy />
        ) : (
          <Arrow key={down} from={right} to={left} heavy />
        );
      })}
      {[40, 76, 112].map((along, at) => (
        <path
          key={along}
          className={styles.line}
          d={
            at % 2 === 0
              ? `M${machine + along} ${board.y + 8}v88l-4 -8m4 8l4 -8`
              : `M${machine + along} ${board.y + 96}v-88l-4 8m4 -8l4 8`
          }
        />
      ))}
      {[26, 52, 78].map((down) => (
        <Arrow
          key={down}
          from={{ x: hand + 14, y: board.y + down }}
          to={{ x: hand + board.width - 14, y: board.y + down }}
          heavy
        />
      ))}
      <path className={styles.paper} d={rounded(hand + 60, board.y + 40, 34, 24, 3)} />
      <Words x={machine + board.width / 2} y={24} anchor="middle">
        sander
      </Words>
      <Words x={hand + board.width / 2} y={24} anchor="middle">
        block by hand
      </Words>
      <Words x={machine + board.width / 2} y={board.y + board.height + 22} anchor="middle">
        {['along; dashed:', 'across, if coarse']}
      </Words>
      <Words x={hand + board.width / 2} y={board.y + board.height + 22} anchor="middle">
        {['with the grain,', 'never across']}
      </Words>
    </Drawing>
  );
}
