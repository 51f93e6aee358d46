import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { atTable } from './kit/feed.ts';
import { box, circle, grain } from './kit/lines.ts';
import { Arrow, Never, Words } from './kit/marks.tsx';

const size = { width: 340, height: 246 };
const table = { y: 26, width: 156, height: 150 };
const [good, bad] = [6, 178];
const bit = 11;
const work = { width: 116, height: 48 };
const place = { x: good + table.width / 2, y: table.y + 40 };
const trap = { x: bad + table.width / 2, y: table.y + 96 };

/** The way that a bit turns at a table, seen from above: anticlockwise. */
const turning = ({ x, y }: { x: number; y: number }) =>
  `M${x + 5} ${y - 1}A5.5 5.5 0 1 0 ${x} ${y + 5.5}m-4 -3l4 3l-4 4`;

/** Which way the work is fed at a router table, and where it may never lie. */
export function TableFeed() {
  const feed = atTable(place, 52, bit + work.height / 2);
  return (
    <Drawing
      title="Which way the work goes at a router table, seen from above"
      description="Left: the person stands at the near side. The work lies between the person and the bit, touches the bit with its far edge, and is fed from right to left. The bit, upside down in the table, turns anticlockwise seen from above, so that it cuts against the feed. A starting pin stands to the right of the bit. Right, crossed out: the work lies between bit and fence. There the bit turns with the feed and snatches the work out of the hands."
      {...size}
      caption="At a table: work between you and the bit, from right to left, begun against the pin. Never between bit and fence."
    >
      {[good, bad].map((x) => (
        <path key={x} className={styles.dimension} d={box(x, table.y, table.width, table.height)} />
      ))}
      <path className={styles.grain} d={grain(place.x - work.width / 2, place.y + bit, work.width, work.height, 4)} />
      <path className={styles.wood} d={box(place.x - work.width / 2, place.y + bit, work.width, work.height)} />
      <path className={styles.paper} d={circle(place.x, place.y, bit)} />
      <path className={styles.arrow} d={turning(place)} />
      <path className={styles.solid} d={circle(place.x + 42, place.y + bit - 6, 5)} />
      <Arrow {...feed} heavy />
      <Words x={place.x + 34} y={place.y - 2}>
        pin
      </Words>
      <Words x={place.x - 18} y={place.y - 2} anchor="end">
        bit
      </Words>
      <Words x={place.x} y={place.y + bit + work.height + 22} anchor="middle">
        right to left
      </Words>
      <path className={styles.solid} d={box(bad + 4, table.y + 6, table.width - 8, 12)} />
      <path
        className={styles.grain}
        d={grain(trap.x - work.width / 2, table.y + 18, work.width, trap.y - bit - table.y - 18, 5)}
      />
      <path
        className={styles.wood}
        d={box(trap.x - work.width / 2, table.y + 18, work.width, trap.y - bit - table.y - 18)}
      />
      <path className={styles.paper} d={circle(trap.x, trap.y, bit)} />
      <path className={styles.arrow} d={turning(trap)} />
      <Never x={trap.x} y={table.y + 52} size={18} />
      <Words x={trap.x} y={table.y - 8} anchor="middle">
        fence
      </Words>
      <Words x={trap.x} y={table.y + table.height - 10} anchor="middle">
        it snatches
      </Words>
      {[good, bad].map((x) => (
        <g key={x}>
          <path className={styles.wood} d={circle(x + table.width / 2, table.y + table.height + 20, 9)} />
          <Words x={x + table.width / 2 + 16} y={table.y + table.height + 25} muted>
            you
          </Words>
        </g>
      ))}
      <Words x={place.x} y={size.height - 4} anchor="middle">
        so
      </Words>
      <Words x={trap.x} y={size.height - 4} anchor="middle">
        never so
      </Words>
    </Drawing>
  );
}
