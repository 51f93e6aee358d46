import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { arrow, box, cupped } from './kit/lines.ts';

const size = { width: 340, height: 236, bench: 186 };
const rail = { width: 26, height: 92, left: 24, right: 290 };
const board = { x: 76, width: 188, thickness: 34, rise: 11, lift: 12 };
const carriage = { height: 12, overhang: 14 };
const bit = { width: 26, x: 190 };
const shim = { width: 22 };

const railTop = size.bench - rail.height;
const boardEnd = board.x + board.width;
/** The plane of the flat face: a little under the lowest corner of the upper face. */
const plane = size.bench - board.thickness + 2;

/** A board on shims between two rails, seen on its end, with the router on its carriage above. */
export function RouterSled() {
  return (
    <Drawing
      title="A board on shims between two rails, seen on its end"
      description="Two rails of one height stand on a bench. Between them lies a cupped board, hollow side down, on its two edges; a shim fills the gap under the edge that does not touch, and wedges hold it from both sides. A carriage lies across the rails and carries the router, whose wide flat bit cuts everything above a level dashed line: the flat face."
      {...size}
      caption="Hollow side down, shims where it does not touch, wedges at the sides. The rails stand for the flat face: the bit takes off what is above the dashed line."
    >
      <path className={styles.axis} d={`M4 ${size.bench}H${size.width - 4}`} />
      <path className={styles.wood} d={cupped(board.x, size.bench, board)} />
      <path
        className={styles.solid}
        d={box(boardEnd - shim.width, size.bench - board.lift + 1, shim.width, board.lift - 1)}
      />
      {[rail.left, rail.right].map((x) => (
        <path key={x} className={styles.wood} d={box(x, railTop, rail.width, rail.height)} />
      ))}
      <path
        className={styles.wedge}
        d={`M${rail.left + rail.width} ${size.bench}H${board.x}L${rail.left + rail.width} ${size.bench - 20}ZM${rail.right} ${size.bench}H${boardEnd}L${rail.right} ${size.bench - 20}Z`}
      />
      <path
        className={styles.wood}
        d={box(
          rail.left - carriage.overhang,
          railTop - carriage.height,
          rail.right + rail.width - rail.left + 2 * carriage.overhang,
          carriage.height,
        )}
      />
      <path className={styles.wood} d={box(bit.x - 24, railTop - carriage.height - 44, 48, 44)} />
      <path className={styles.solid} d={box(bit.x - 4, railTop, 8, plane - railTop - 14)} />
      <path className={styles.solid} d={box(bit.x - bit.width / 2, plane - 14, bit.width, 14)} />
      <path className={styles.line} d={`M${board.x - 16} ${plane}H${boardEnd + 16}`} />
      <text x={bit.x + 32} y="56">
        router
      </text>
      <text x={rail.left - carriage.overhang} y={railTop - carriage.height - 8}>
        carriage
      </text>
      <text x={rail.left - 20} y={size.bench + 20}>
        rail
      </text>
      <text x={board.x} y={size.bench + 20}>
        wedge
      </text>
      <text x="142" y={size.bench + 20}>
        hollow
      </text>
      <text x="222" y={size.bench + 20}>
        shim
      </text>
      <text x={rail.right} y={size.bench + 20}>
        rail
      </text>
      <path className={styles.arrow} d={arrow({ x: 166, y: size.bench + 8 }, { x: 166, y: size.bench - 6 })} />
      <text x="170" y={size.bench + 42} textAnchor="middle" className={styles.marks}>
        bench
      </text>
    </Drawing>
  );
}
