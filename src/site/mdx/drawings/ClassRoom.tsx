import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, circle } from './kit/lines.ts';
import { Words } from './kit/marks.tsx';

/** Places of a class and its stations, as the pages plan them. */
export const classRoom = { students: 12, routers: 4 } as const;

const size = { width: 340, height: 306 };
const room = { x: 6, y: 22, width: 328, height: 238 };
const bench = { width: 50, height: 30 };

/** Plan of a room for a class: exits, tap, extinguisher, routers with clear floor, mixing by the window, drying apart. */
export function ClassRoom() {
  const routers = Array.from({ length: classRoom.routers }, (_, at) => ({ at, x: room.x + 18 + at * 78 }));
  const [right, foot] = [room.x + room.width, room.y + room.height];
  return (
    <Drawing
      title={`A room for a class of ${classRoom.students}, seen from above`}
      description={`Plan of a room. Two exits on different walls, both free. Along the upper wall ${classRoom.routers} router benches, each with a dashed line around it, a metre of clear floor behind whoever works there, so that only the one who works stands there. In the middle a table with ${classRoom.students} seats. At the window, far from the routers, the mixing table, with the tap beside it, where eyes can be rinsed. The drying rack stands in a corner with a door or curtain. An extinguisher hangs at each exit. The rag can stands outdoors.`}
      {...size}
      caption="Both exits free. A metre of clear floor behind everybody at a machine (common practice). Mixing at the window by the tap, on another evening than sanding. The rag can stands outdoors."
    >
      <path
        className={styles.wood}
        d={`M${room.x + 34} ${foot}H${room.x}V${room.y}H${right}V${foot - 88}M${right} ${foot - 52}V${foot}H${room.x + 74}`}
      />
      <path
        className={styles.dimension}
        d={`M${room.x + 34} ${foot}a40 40 0 0 1 40 -40v40M${right} ${foot - 88}a36 36 0 0 0 -36 36h36`}
      />
      {routers.map(({ at, x }) => (
        <g key={x}>
          <path className={styles.line} d={box(x - 8, room.y + 4, bench.width + 16, bench.height + 38)} />
          <path className={styles.paper} d={box(x, room.y + 8, bench.width, bench.height)} />
          <path className={styles.wood} d={circle(x + bench.width / 2, room.y + 52, 7)} />
          <Words x={x + bench.width / 2} y={room.y + 28} anchor="middle">
            {`R${at + 1}`}
          </Words>
        </g>
      ))}
      <path className={styles.paper} d={box(room.x + 96, room.y + 108, 118, 40)} />
      <Words x={room.x + 155} y={room.y + 133} anchor="middle">
        {`${classRoom.students} seats`}
      </Words>
      {Array.from({ length: classRoom.students }, (_, at) => ({
        x: room.x + 106 + (at % 6) * 19.5,
        y: room.y + (at < 6 ? 98 : 158),
      })).map(({ x, y }) => (
        <path key={`${x} ${y}`} className={styles.wood} d={circle(x, y, 6)} />
      ))}
      <path className={styles.paper} d={box(room.x + 128, foot - 44, 78, 34)} />
      <Words x={room.x + 167} y={foot - 22} anchor="middle">
        mixing
      </Words>
      <path className={styles.solid} d={box(room.x + 120, foot - 3, 94, 6)} />
      <Words x={room.x + 167} y={foot + 20} anchor="middle" muted>
        window
      </Words>
      <path className={styles.paper} d={box(room.x + 214, foot - 44, 34, 34)} />
      <Words x={room.x + 231} y={foot - 22} anchor="middle">
        tap
      </Words>
      <path className={styles.paper} d={box(room.x + 6, room.y + 86, 62, 76)} />
      <path className={styles.dimension} d={`M${room.x + 10} ${room.y + 98}h54M${room.x + 10} ${room.y + 142}h54`} />
      <Words x={room.x + 37} y={room.y + 126} anchor="middle">
        drying
      </Words>
      {[
        { x: room.x + 88, y: foot - 14 },
        { x: right - 16, y: foot - 102 },
      ].map(({ x, y }) => (
        <g key={x}>
          <path className={styles.solid} d={box(x - 5, y - 9, 10, 18)} />
          <path className={styles.arrow} d={`M${x} ${y - 9}v-5h7`} />
        </g>
      ))}
      <Words x={right - 26} y={foot - 106} anchor="end" muted>
        extinguisher
      </Words>
      <Words x={room.x + 26} y={foot + 20}>
        exit
      </Words>
      <Words x={right - 40} y={foot - 58} anchor="end">
        exit
      </Words>
      <path className={styles.wood} d={circle(right - 14, foot + 22, 10)} />
      <Words x={right - 30} y={foot + 27} anchor="end">
        rag can
      </Words>
      <Words x={size.width / 2} y={size.height - 2} anchor="middle" muted>
        R: router, dashed: clear floor
      </Words>
      <Words x={room.x} y={15} muted>
        extraction on this wall
      </Words>
    </Drawing>
  );
}
