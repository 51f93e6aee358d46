import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { handHeld } from './kit/feed.ts';
import { box, circle, grain } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 250 };
const board = { x: 52, y: 44, width: 236, height: 150 };
const hole = { x: 112, y: 80, width: 116, height: 76 };
/** How far the middle of the bit stands from the edge that it cuts. */
const beside = 16;
/** The bit seen from above, with the way it turns. */
const mark = { x: 36, y: 228, radius: 11 };

/** Which way a hand-held router goes, outside an outline and inside one. */
export function FeedDirection() {
  const feeds = [...handHeld(board, 'outside', beside), ...handHeld(hole, 'inside', beside)];
  return (
    <Drawing
      title="Which way a hand-held router goes, seen from above"
      description="Around the outside of a board the arrows run anticlockwise: along the near edge from left to right. Around the inside of a hole or pocket they run clockwise: along its near edge from right to left. In both the wood that stays lies to the left of the router as it goes, and the bit, which turns clockwise seen from above, cuts against the feed."
      {...size}
      caption="Hand-held: outside anticlockwise, inside clockwise. The wood that stays is always to the left of the way the router goes."
    >
      <path className={styles.grain} d={grain(board.x, board.y, board.width, hole.y - board.y, 2)} />
      <path
        className={styles.grain}
        d={grain(board.x, hole.y + hole.height, board.width, board.y + board.height - hole.y - hole.height, 1)}
      />
      <path className={styles.wood} d={box(board.x, board.y, board.width, board.height)} />
      <path className={styles.wood} d={box(hole.x, hole.y, hole.width, hole.height)} />
      {feeds.map(({ from, to }) => (
        <Arrow key={`${from.x} ${from.y}`} from={from} to={to} heavy />
      ))}
      <Words x={size.width / 2} y={18} anchor="middle">
        outside: anticlockwise
      </Words>
      <Words x={size.width / 2} y={board.y + board.height - 12} anchor="middle">
        inside: clockwise
      </Words>
      <path className={styles.paper} d={circle(mark.x, mark.y, mark.radius)} />
      <path
        className={styles.arrow}
        d={`M${mark.x - 6} ${mark.y - 2}A6 6 0 1 1 ${mark.x} ${mark.y + 6}m4 -3l-4 3l4 4`}
      />
      <Words x={mark.x + 20} y={mark.y + 5}>
        the bit turns clockwise
      </Words>
    </Drawing>
  );
}
