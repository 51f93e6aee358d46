import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 206 };
const bench = 150;

/** Dust of cured resin: taken at the sander, kept from the lungs, and wiped up wet. */
export function DustAtSource() {
  return (
    <Drawing
      title="Dust is taken where it is made"
      description="A sander on a board, its hose leading to an extractor with a fine filter, switched on before the sander. The person wears a fitted mask and glasses besides. Afterwards the bench is vacuumed and wiped with a damp cloth; nothing is blown or swept dry."
      {...size}
      caption="Extraction at the tool first, a fitted mask besides, then vacuum and a damp cloth. Never blow or sweep it dry."
    >
      <path className={styles.axis} d={`M4 ${bench}h206`} />
      <path className={styles.grain} d={grain(14, bench - 24, 150, 24, 2)} />
      <path className={styles.wood} d={box(14, bench - 24, 150, 24)} />
      <path className={styles.paper} d={`M50 ${bench - 26}h66v-8h-6q-2 -34 -30 -34t-26 34h-4Z`} />
      <path className={styles.wood} d={`M110 ${bench - 48}q40 -6 56 14t38 64t46 6`} />
      <path className={styles.paper} d={`M246 ${bench - 44}h76v74h-76ZM254 ${bench - 44}v-16h60v16`} />
      <path className={styles.hatch} d={`M258 ${bench - 30}h52m0 8h-52m0 8h52`} />
      <path className={styles.wood} d={`M${270} ${bench + 30}v8m28 -8v8`} />
      <Words x={284} y={bench + 16} anchor="middle">
        extractor
      </Words>
      <Words x={284} y={bench - 70} anchor="middle">
        fine filter
      </Words>
      <Words x={80} y={bench - 38} anchor="middle">
        sander
      </Words>
      <path className={styles.wood} d="M48 16a26 26 0 0 1 48 12v16q-2 22 -24 22t-26 -22Z" />
      <path className={styles.solid} d="M50 46q22 -10 44 -2q-2 20 -22 20t-22 -18Z" />
      <path className={styles.paper} d="M52 28h18v11h-18ZM76 28h18v11h-18Z" />
      <Arrow from={{ x: 134, y: 52 }} to={{ x: 97, y: 54 }} />
      <Words x={138} y={44}>
        {['fitted mask', 'and glasses']}
      </Words>
      <Words x={100} y={bench + 24} anchor="middle">
        {['then vacuum,', 'damp cloth']}
      </Words>
    </Drawing>
  );
}
