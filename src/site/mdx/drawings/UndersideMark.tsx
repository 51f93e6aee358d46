import { tray } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, circle, rounded } from './kit/lines.ts';
import { Arrow, Measure, Words } from './kit/marks.tsx';

/** How far a mark stays from the edges, mm (common practice). */
export const markFromEdge = 20;

const size = { width: 340, height: 240 };
/** Units of the drawing to a millimetre. */
const scale = 0.72;
const board = {
  x: (size.width - tray.length * scale) / 2,
  y: 30,
  width: tray.length * scale,
  height: tray.width * scale,
};

/** Where a board is signed: on the underside, clear of edges and feet; the paper label is tied to it and not stuck on. */
export function UndersideMark() {
  const free = markFromEdge * scale;
  const mark = { x: board.x + 92, y: board.y + 46, width: 118, height: 66 };
  const [right, bottom] = [board.x + board.width, board.y + board.height];
  return (
    <Drawing
      title="The mark on the underside"
      description={`The underside of the tray with a foot near each corner. In the middle, on bare wood, at least ${markFromEdge} mm from the edges and away from the feet, stand the maker’s name, the year and the number of the batch. A paper label is tied to the tray or lies in its box; it is not glued to the wood.`}
      {...size}
      caption={`Underside, ${markFromEdge} mm from the edges, away from feet: name, year, number of the batch. The paper label goes into the box or is tied on.`}
    >
      <path
        className={styles.grain}
        d={[0.12, 0.24, 0.76, 0.88]
          .map((part) => `M${board.x + 6} ${board.y + part * board.height}h${board.width - 12}`)
          .join('')}
      />
      <path
        className={styles.wood}
        d={rounded(board.x, board.y, board.width, board.height, tray.cornerRadius * scale)}
      />
      <path
        className={styles.line}
        d={box(board.x + free, board.y + free, board.width - 2 * free, board.height - 2 * free)}
      />
      {[board.x + 34, right - 34].flatMap((x) =>
        [board.y + 34, bottom - 34].map((y) => <path key={`${x} ${y}`} className={styles.paper} d={circle(x, y, 9)} />),
      )}
      <path className={styles.paper} d={box(mark.x, mark.y, mark.width, mark.height)} />
      <Words x={mark.x + mark.width / 2} y={mark.y + 20} anchor="middle">
        {['name', 'year', 'batch no.']}
      </Words>
      <Measure from={{ x: mark.x + 20, y: bottom - free }} to={{ x: mark.x + 20, y: bottom }} />
      <Words x={mark.x + 28} y={bottom + 20}>
        {`${markFromEdge} mm`}
      </Words>
      <Arrow from={{ x: board.x + 30, y: 20 }} to={{ x: board.x + 34, y: board.y + 22 }} />
      <Words x={board.x} y={16}>
        foot
      </Words>
      <Words x={size.width / 2} y={size.height - 3} anchor="middle" muted>
        paper label: tied on, or in the box
      </Words>
    </Drawing>
  );
}
