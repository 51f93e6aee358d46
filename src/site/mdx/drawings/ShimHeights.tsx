import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, circle } from './kit/lines.ts';
import { Words } from './kit/marks.tsx';

/** Shims under the salvaged ash of the page, mm: a row across the board at each end and in the middle; tests hold them to the calculator. */
export const shims = [
  [0.5, 3.25, 0],
  [0.5, 3.25, 0],
  [0, 3.25, 0.5],
] as const;
/** Where those rows lie along the board, mm. */
export const shimsAlong = [0, 253.975, 507.95] as const;

const size = { width: 340, height: 222 };
const board = { x: 34, y: 44, width: 272, height: 126 };
const inset = { x: 34, y: 24 };
const rail = 12;

/** A board between two rails, from above, with the height of the shim under each point written on it. */
export function ShimHeights() {
  const at = (place: number, length: number, free: number) => free + (place * (length - 2 * free)) / 2;
  return (
    <Drawing
      title="The shims under the board, with their heights"
      description={`A board between two rails, seen from above, with nine points, three across at each end and in the middle. At each stands the height of the shim under it in millimetres: ${shims.map((row, end) => `at ${Math.round(shimsAlong[end] ?? 0)} mm ${row.join(', ')}`).join('; ')}. A circle with 0 is where the board rests by itself.`}
      {...size}
      caption="Copy the heights onto the board in pencil, each beside its point, before a shim goes under it. 0 means that it rests there. In mm."
    >
      {[board.y - 20, board.y + board.height + 8].map((y) => (
        <path key={y} className={styles.wood} d={box(8, y, size.width - 16, rail)} />
      ))}
      <path
        className={styles.grain}
        d={[0.33, 0.67].map((part) => `M${board.x} ${board.y + part * board.height}h${board.width}`).join('')}
      />
      <path className={styles.wood} d={box(board.x, board.y, board.width, board.height)} />
      {shims.flatMap((row, end) =>
        row.map((height, across) => {
          const [x, y] = [board.x + at(end, board.width, inset.x), board.y + at(across, board.height, inset.y)];
          return (
            <g key={`${x} ${y}`}>
              <path className={styles.paper} d={circle(x, y, 18)} />
              <Words x={x} y={y + 5} anchor="middle">
                {String(height)}
              </Words>
            </g>
          );
        }),
      )}
      <Words x={12} y={16} muted>
        rail
      </Words>
      {shimsAlong.map((along, end) => (
        <Words key={along} x={board.x + at(end, board.width, inset.x)} y={size.height - 12} anchor="middle">
          {String(Math.round(along))}
        </Words>
      ))}
    </Drawing>
  );
}
