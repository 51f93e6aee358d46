import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain, measure } from './kit/lines.ts';

const size = { width: 340, height: 186 };
const board = { x: 24, y: 34, width: 292, height: 96 };
/** How far the outer points stand from the edges, so that a ruler meets wood. */
const inset = 14;
const [columns, rows] = [3, 3];

const at = (index: number, count: number, start: number, length: number) =>
  start + inset + (index * (length - 2 * inset)) / (count - 1);

/** Where the height of a board is measured: a grid of points. */
export function MeasuringGrid() {
  const xs = Array.from({ length: columns }, (_, column) => at(column, columns, board.x, board.width));
  const ys = Array.from({ length: rows }, (_, row) => at(row, rows, board.y, board.height));
  return (
    <Drawing
      title="Where to measure a board, seen from above"
      description={`A board with ${columns * rows} points on it: at both ends and in the middle of its length, each time at one edge, in the middle and at the other edge. The points are numbered in rows across the board, from one end to the other; the spacing along the board is 300 to 400 mm.`}
      {...size}
      caption="Three across, at both ends and every 300 to 400 mm between. Write the heights down in rows, one row across the board at a time, from one end."
    >
      <path className={styles.wood} d={box(board.x, board.y, board.width, board.height)} />
      <path className={styles.grain} d={grain(board.x, board.y, board.width, board.height, 5)} />
      {xs.flatMap((x, column) =>
        ys.map((y, row) => (
          <g key={`${x} ${y}`}>
            <circle className={styles.paper} cx={x} cy={y} r="11" />
            <text x={x} y={y + 5} textAnchor="middle">
              {column * rows + row + 1}
            </text>
          </g>
        )),
      )}
      <text x={board.x} y="22">
        one end
      </text>
      <text x={board.x + board.width} y="22" textAnchor="end">
        other end
      </text>
      <path
        className={styles.arrow}
        d={measure(
          { x: xs[0] ?? 0, y: board.y + board.height + 16 },
          { x: xs[1] ?? 0, y: board.y + board.height + 16 },
        )}
      />
      <text x={((xs[0] ?? 0) + (xs[1] ?? 0)) / 2} y={board.y + board.height + 38} textAnchor="middle">
        300 to 400 mm
      </text>
    </Drawing>
  );
}
