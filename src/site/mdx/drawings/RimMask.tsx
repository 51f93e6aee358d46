import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { arrow, box, grain } from './kit/lines.ts';
import { Resin } from './kit/marks.tsx';

const size = { width: 340, height: 176 };
const board = { top: 72, height: 62, width: 156 };
const pocket = { depth: 28, width: 76, proud: 6 };
const tape = { width: 36, height: 4 };
const dam = { width: 7, above: 14, below: 20 };
const [masked, dammed] = [4, 180];
const floor = board.top + pocket.depth;
const bottom = board.top + board.height;
const left = masked + (board.width - pocket.width) / 2;
const end = dammed + board.width - dam.width;

/** What keeps resin off the face beside a pocket, and what holds it in where a channel runs out of the board. */
export function RimMask() {
  return (
    <Drawing
      title="A mask at the rim of a pocket, and a dam across an open end"
      description="Left: tape lies on the face on both sides of a pocket, its edge at the rim; the resin stands a little proud between the tapes. Right: a channel that runs out of the end of a board is closed by a strip pressed against the end grain; it stands higher than the resin and reaches below the floor of the channel, and a line of sealant closes its inside corner."
      {...size}
      caption="Tape up to the rim, pressed down hard; a dam higher than the resin and lower than the floor, sealed from inside."
    >
      <path
        className={styles.wood}
        d={`M${masked} ${board.top}H${left}V${floor}H${left + pocket.width}V${board.top}H${masked + board.width}V${bottom}H${masked}Z`}
      />
      <path className={styles.grain} d={grain(masked, floor, board.width, bottom - floor, 2)} />
      <Resin d={box(left, board.top - pocket.proud, pocket.width, pocket.depth + pocket.proud)} />
      {[left - tape.width, left + pocket.width].map((x) => (
        <path key={x} className={styles.solid} d={box(x, board.top - tape.height, tape.width, tape.height)} />
      ))}
      <path
        className={styles.arrow}
        d={arrow({ x: left - tape.width / 2, y: 44 }, { x: left - tape.width / 2, y: board.top - 6 })}
      />
      <text x={left - tape.width / 2 - 8} y="36">
        tape at the rim
      </text>
      <path className={styles.wood} d={`M${dammed} ${board.top}h50V${floor}H${end}V${bottom}H${dammed}Z`} />
      <path className={styles.grain} d={grain(dammed, floor, end - dammed, bottom - floor, 2)} />
      <Resin d={box(dammed + 50, board.top, end - dammed - 50, pocket.depth)} />
      <path
        className={styles.solid}
        d={box(end, board.top - dam.above, dam.width, pocket.depth + dam.above + dam.below)}
      />
      <path className={styles.arrow} d={arrow({ x: end - 26, y: 44 }, { x: end - 2, y: board.top - 8 })} />
      <text x={end - 30} y="36" textAnchor="middle">
        dam
      </text>
      {[
        { x: masked, words: 'mask' },
        { x: dammed, words: 'open end' },
      ].map(({ x, words }) => (
        <text key={words} x={x + board.width / 2} y={bottom + 24} textAnchor="middle">
          {words}
        </text>
      ))}
    </Drawing>
  );
}
