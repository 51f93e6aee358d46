import { tray } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { circle, rounded } from './kit/lines.ts';
import { Arrow, Never, Words } from './kit/marks.tsx';

const size = { width: 340, height: 218 };
/** Units of the drawing to a millimetre. */
const scale = 0.5;
/** What the window leaves free beside the channel, a finger's breadth. mm. */
const finger = 15;
const board = { x: 6, y: 40, width: 328, height: 132 };

/** A template laid on a board: along the grain, clear of faults, with wood left outside the line. */
export function LayOnBoard() {
  const place = { x: 84, y: board.y + (board.height - tray.width * scale) / 2 };
  const clear = tray.outlineClearance;
  const window = {
    width: (tray.channel.length + 2 * finger) * scale,
    height: (tray.channel.width + 2 * finger) * scale,
  };
  const middle = { x: place.x + (tray.length * scale) / 2, y: place.y + (tray.width * scale) / 2 };
  return (
    <Drawing
      title="Laying the template on the board"
      description={`A rough board from above. At its left end a split, in the lower right corner a knot, both crossed out. The template lies between them with its grain line along the grain of the board, and a window over the channel, ${finger} mm wider all round. A dashed line runs ${clear} mm outside the template all round, along which it is sawn; the bit takes the rest.`}
      {...size}
      caption={`Grain line along the grain, faults outside, and ${clear} mm of wood left outside the line for the bit (common practice).`}
    >
      <path
        className={styles.grain}
        d={[0.12, 0.26, 0.4, 0.6, 0.74, 0.88]
          .map((part) => `M${board.x} ${board.y + part * board.height}h${board.width}`)
          .join('')}
      />
      <path
        className={styles.wood}
        d={`M${board.x} ${board.y}h${board.width}l-5 30l5 34l-4 40l4 28h${-board.width}v-66l34 -3l-34 -5Z`}
      />
      <path
        className={styles.line}
        d={rounded(
          place.x - 6,
          place.y - 6,
          tray.length * scale + 12,
          tray.width * scale + 12,
          tray.cornerRadius * scale + 6,
        )}
      />
      <path
        className={styles.paper}
        d={rounded(place.x, place.y, tray.length * scale, tray.width * scale, tray.cornerRadius * scale)}
      />
      <path
        className={styles.paper}
        d={rounded(
          middle.x - window.width / 2,
          middle.y - window.height / 2,
          window.width,
          window.height,
          window.height / 2,
        )}
      />
      <Words x={middle.x} y={middle.y + 5} anchor="middle">
        window
      </Words>
      <Arrow from={{ x: place.x + 40, y: place.y + 30 }} to={{ x: place.x + 170, y: place.y + 30 }} heavy />
      <Words x={middle.x} y={place.y + 22} anchor="middle">
        grain line
      </Words>
      <Words x={middle.x} y={place.y + 92} anchor="middle">
        template
      </Words>
      <path className={styles.grain} d={circle(316, board.y + 106, 8) + circle(316, board.y + 106, 4)} />
      <Never x={316} y={board.y + 106} size={6} />
      <Never x={26} y={board.y + 62} size={6} />
      <Words x={6} y={24}>
        split
      </Words>
      <Arrow from={{ x: 22, y: 28 }} to={{ x: 26, y: board.y + 52 }} />
      <Words x={334} y={24} anchor="end">
        knot
      </Words>
      <Arrow from={{ x: 318, y: 28 }} to={{ x: 318, y: board.y + 94 }} />
      <Words x={size.width / 2} y={size.height - 24} anchor="middle">
        {`saw on the dashed line, ${clear} mm out`}
      </Words>
    </Drawing>
  );
}
