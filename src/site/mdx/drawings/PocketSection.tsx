import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { arrow, grain, measure } from './kit/lines.ts';
import { Resin } from './kit/marks.tsx';

const size = { width: 340, height: 196 };
const board = { left: 8, right: 332, top: 66, bottom: 156 };
const pocket = { left: 92, right: 248, depth: 30, proud: 9 };
const floor = board.top + pocket.depth;

/** A pocket in section: depth, floor, seal coat, what is left under it, and how high it is filled. */
export function PocketSection() {
  return (
    <Drawing
      title="A pocket in section, filled proud"
      description="A board with a pocket about a third as deep as the board is thick. Its floor is flat and its walls stand upright. A thick line along walls and floor is the seal coat. Resin fills the pocket and stands a little proud of the face, domed at the rim; the dashed line is the face, to which it is levelled after cure. Under the floor two thirds of the thickness are left."
      {...size}
      caption="Seal coat on every wall and on the floor (thick line). The dashed line is the face: fill 0.5 to 1 mm over it, and level it after the cure."
    >
      <path
        className={styles.wood}
        d={`M${board.left} ${board.top}H${pocket.left}V${floor}H${pocket.right}V${board.top}H${board.right}V${board.bottom}H${board.left}Z`}
      />
      <path className={styles.grain} d={grain(board.left, floor, board.right - board.left, board.bottom - floor, 4)} />
      <Resin
        d={`M${pocket.left} ${board.top}C${pocket.left + 8} ${board.top - pocket.proud - 2} ${pocket.left + 24} ${board.top - pocket.proud} ${pocket.left + 40} ${board.top - pocket.proud}H${pocket.right - 40}C${pocket.right - 24} ${board.top - pocket.proud} ${pocket.right - 8} ${board.top - pocket.proud - 2} ${pocket.right} ${board.top}V${floor}H${pocket.left}Z`}
      />
      <path className={styles.line} d={`M${pocket.left} ${board.top}H${pocket.right}`} />
      <path className={styles.seal} d={`M${pocket.left} ${board.top}V${floor}H${pocket.right}V${board.top}`} />
      <text x="170" y={floor - 9} textAnchor="middle">
        resin
      </text>
      <path
        className={styles.arrow}
        d={measure({ x: pocket.left - 16, y: board.top }, { x: pocket.left - 16, y: floor })}
      />
      <text x={pocket.left - 24} y={(board.top + floor) / 2 + 5} textAnchor="end">
        depth
      </text>
      <path
        className={styles.arrow}
        d={measure({ x: pocket.right + 16, y: floor }, { x: pocket.right + 16, y: board.bottom })}
      />
      {['wood', 'left'].map((word, line) => (
        <text key={word} x={pocket.right + 24} y={(floor + board.bottom) / 2 - 2 + 18 * line}>
          {word}
        </text>
      ))}
      <path className={styles.arrow} d={arrow({ x: 170, y: 34 }, { x: 170, y: board.top - pocket.proud - 2 })} />
      <text x="170" y="26" textAnchor="middle">
        proud of the face
      </text>
      <path className={styles.arrow} d={arrow({ x: 120, y: 172 }, { x: 120, y: floor + 3 })} />
      <text x="120" y="188" textAnchor="middle">
        floor, with seal coat
      </text>
    </Drawing>
  );
}
