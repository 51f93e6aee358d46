import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Measure, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 232 };
const bench = 178;
const board = { x: 70, y: 140, width: 200, height: 28 };
const channel = { x: 110, width: 120, depth: 9 };

/** A tray levelled on wedges under a dust tent that is open at two sides. */
export function DustTent() {
  return (
    <Drawing
      title="Level the tray, and put a tent over it that lets heat out"
      description="A tray lies on a bench on thin wedges under its corners; a spirit level on it shows level, and is turned to check the other way too. Over it stands a tent of film on a frame, a hand’s breadth above the resin, closed on top and open at two opposite sides, so that dust stays off and warmth and vapour leave. Nothing lies on the tray."
      {...size}
      caption="Wedges or card under the corners; level along and across before the pour. Tent a hand above it, open at two sides, never a lid."
    >
      <path className={styles.axis} d={`M4 ${bench}H${size.width - 4}`} />
      <path
        className={styles.grain}
        d={grain(board.x, board.y + channel.depth, board.width, board.height - channel.depth, 2)}
      />
      <path className={styles.wood} d={box(board.x, board.y, board.width, board.height)} />
      <Resin d={box(channel.x, board.y, channel.width, channel.depth)} />
      <path
        className={styles.solid}
        d={`M${board.x - 22} ${bench}h44v-9ZM${board.x + board.width + 22} ${bench}h-44v-7Z`}
      />
      <path className={styles.wood} d={'M26 58L170 26L314 58'} />
      <path className={styles.line} d={`M26 62V${bench - 4}M314 62V${bench - 4}`} />
      <path className={styles.paper} d={box(138, board.y - 16, 64, 13)} />
      <path className={styles.wedge} d={`M160 ${board.y - 16}v13M180 ${board.y - 16}v13`} />
      <Words x={170} y={board.y - 24} anchor="middle">
        level: both ways
      </Words>
      <Measure from={{ x: 96, y: 46 }} to={{ x: 96, y: board.y }} />
      <Words x={104} y={88}>
        a hand’s breadth
      </Words>
      <Arrow from={{ x: 48, y: 120 }} to={{ x: 8, y: 120 }} heavy />
      <Arrow from={{ x: 292, y: 120 }} to={{ x: 332, y: 120 }} heavy />
      <Words x={4} y={20}>
        film on a frame
      </Words>
      <Words x={board.x} y={bench + 22} anchor="middle">
        wedge
      </Words>
      <Words x={board.x + board.width} y={bench + 22} anchor="middle">
        wedge
      </Words>
      <Words x={size.width / 2} y={size.height - 8} anchor="middle">
        open at two sides: heat and vapour leave
      </Words>
    </Drawing>
  );
}
