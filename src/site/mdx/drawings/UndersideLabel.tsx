import { tray } from '../tray.ts';
import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, rounded } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 232 };
/** Units of the drawing to a millimetre. */
const scale = 0.72;
const board = {
  x: (size.width - tray.length * scale) / 2,
  y: 30,
  width: tray.length * scale,
  height: tray.width * scale,
};

/** Where the label goes, and what stands on it. */
export function UndersideLabel() {
  const label = { x: board.x + 96, y: board.y + 22, width: 112, height: 114 };
  return (
    <Drawing
      title="The label on the underside"
      description="The underside of the tray, with its feet or without, and a label in the middle of the wood, not over the channel’s line and not where a foot goes. On it stand the number of the batch, the wood, the resin, the finish, what it is for, how it is cleaned, and the date from which it may meet food. Beside it the maker’s mark, burned or written before the last coat of oil."
      {...size}
      caption="On the underside, on wood: batch, wood, resin, finish, what it is for, care, and the day from which it may meet food."
    >
      <path
        className={styles.grain}
        d={[0.15, 0.3, 0.5, 0.7, 0.85]
          .map((part) => `M${board.x + 4} ${board.y + part * board.height}h${board.width - 8}`)
          .join('')}
      />
      <path
        className={styles.wood}
        d={rounded(board.x, board.y, board.width, board.height, tray.cornerRadius * scale)}
      />
      <path className={styles.paper} d={box(label.x, label.y, label.width, label.height)} />
      {['batch', 'wood, resin,', 'finish', 'for what', 'care', 'food from'].map((words, line) => (
        <Words key={words} x={label.x + 8} y={label.y + 18 + 18 * line}>
          {words}
        </Words>
      ))}
      <Words x={board.x + 16} y={board.y + board.height / 2 + 5}>
        your mark
      </Words>
      <Arrow from={{ x: 292, y: 18 }} to={{ x: label.x + label.width - 12, y: label.y + 2 }} />
      <Words x={288} y={20} anchor="end">
        label
      </Words>
      <Words x={size.width / 2} y={size.height - 16} anchor="middle" muted>
        underside, mark before the last oil
      </Words>
    </Drawing>
  );
}
