import { Drawing } from './Drawing.tsx';
import styles from './drawings.module.css';
import { arrow, box, grain } from './lines.ts';

const size = { width: 340, height: 250 };
const board = { x: 52, y: 44, width: 236, height: 150 };
const hole = { x: 118, y: 84, width: 104, height: 70 };
/** How far the router's path stands from the edge that it cuts. */
const beside = 16;
/** What of a side is left free at either end of its arrow, as a part of it: an arrow longer than its side would point back. */
const free = 0.16;
/** The bit seen from above, with the way it turns. */
const mark = { x: 36, y: 228, radius: 11 };

/** The four sides of the path around a box, each an arrow; seen from above, anticlockwise or clockwise. */
function around(x: number, y: number, width: number, height: number, turn: 'anticlockwise' | 'clockwise'): string {
  const [right, bottom] = [x + width, y + height];
  const [alongX, alongY] = [free * width, free * height];
  const sides = [
    [
      { x: x + alongX, y: bottom },
      { x: right - alongX, y: bottom },
    ],
    [
      { x: right, y: bottom - alongY },
      { x: right, y: y + alongY },
    ],
    [
      { x: right - alongX, y },
      { x: x + alongX, y },
    ],
    [
      { x, y: y + alongY },
      { x, y: bottom - alongY },
    ],
  ] as const;
  return sides.map(([from, to]) => (turn === 'anticlockwise' ? arrow(from, to) : arrow(to, from))).join('');
}

/** Which way a hand-held router goes, outside an outline and inside one. */
export function FeedDirection() {
  return (
    <Drawing
      title="Which way a hand-held router goes, seen from above"
      description="Around the outside of a board the arrows run anticlockwise: along the near edge from left to right. Around the inside of a hole or pocket they run clockwise: along its near edge from right to left. In both the wood that stays lies to the left of the router as it goes, and the bit, which turns clockwise seen from above, cuts against the feed."
      {...size}
      caption="Outside anticlockwise, inside clockwise: the wood that stays is always to the left of the way the router goes. At a router table feed the work from right to left, between you and the bit."
    >
      <path className={styles.wood} d={box(board.x, board.y, board.width, board.height)} />
      <path className={styles.grain} d={grain(board.x, board.y, board.width, hole.y - board.y, 2)} />
      <path
        className={styles.grain}
        d={grain(board.x, hole.y + hole.height, board.width, board.y + board.height - hole.y - hole.height, 1)}
      />
      <path className={styles.paper} d={box(hole.x, hole.y, hole.width, hole.height)} />
      <path
        className={styles.arrow}
        d={around(
          board.x - beside,
          board.y - beside,
          board.width + 2 * beside,
          board.height + 2 * beside,
          'anticlockwise',
        )}
      />
      <path
        className={styles.arrow}
        d={around(hole.x + beside, hole.y + beside, hole.width - 2 * beside, hole.height - 2 * beside, 'clockwise')}
      />
      <text x={size.width / 2} y="18" textAnchor="middle">
        outside: anticlockwise
      </text>
      <text x={size.width / 2} y={board.y + board.height - 5} textAnchor="middle">
        inside: clockwise
      </text>
      <circle className={styles.paper} cx={mark.x} cy={mark.y} r={mark.radius} />
      <path
        className={styles.arrow}
        d={`M${mark.x - 6} ${mark.y - 2}A6 6 0 1 1 ${mark.x} ${mark.y + 6}m4 -3l-4 3l4 4`}
      />
      <text x={mark.x + 20} y={mark.y + 5}>
        the bit turns clockwise
      </text>
    </Drawing>
  );
}
