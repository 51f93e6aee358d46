import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 178 };

/** The care card: folded once, so that it stands beside the tray. */
export function CareCardFolded() {
  return (
    <Drawing
      title="The care card, folded once"
      description="Left: a flat card with a dashed fold across its middle; the front below it, the back above, upside down, so that both stand upright when it is folded. Right: the folded card stands like a roof. On the front are the name of the board and three lines of care; inside are what it is made of, what it is for, and when it wants oil."
      {...size}
      caption="Print at 100 %, cut at the marks, fold at the dashed line. It stands beside the tray on a stall and goes with it into the box."
    >
      <path className={styles.wood} d={box(20, 24, 112, 116)} />
      <path className={styles.line} d="M20 82h112" />
      <path
        className={styles.dimension}
        d="M14 24h-8M14 140h-8M20 18v-8M132 18v-8M138 24h8M138 140h8M20 146v8M132 146v8"
      />
      <path className={styles.dimension} d="M46 42h60M40 54h72M52 66h48" />
      <Words x={76} y={118} anchor="middle">
        front
      </Words>
      <path className={styles.arrow} d="M150 100a34 34 0 0 0 6 -48m9 3l-9 -3l-2 9" />
      <Words x={152} y={134}>
        fold
      </Words>
      <Arrow from={{ x: 150, y: 128 }} to={{ x: 134, y: 86 }} />
      <path className={styles.paper} d="M214 140L232 48h92L306 140Z" />
      <path className={styles.wood} d="M324 48l10 92h-28" />
      <path className={styles.dimension} d="M240 72h64M236 88h64M233 104h64M230 120h40" />
      <Words x={270} y={34} anchor="middle">
        it stands
      </Words>
      <Words x={270} y={166} anchor="middle">
        care inside
      </Words>
      <Words x={76} y={170} anchor="middle" muted>
        cut at the marks
      </Words>
    </Drawing>
  );
}
