import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, Measure, Never, Resin, Right, Words } from './kit/marks.tsx';

/** How thin leftovers are spread, mm (common practice). */
export const leftoverDepth = 3;

const size = { width: 340, height: 180 };
const ground = 116;
const [wide, heap] = [8, 212];

/** What is left in the cups: thin on a wide tray outdoors, never together in one cup or bin. */
export function LeftoverTray() {
  return (
    <Drawing
      title="Leftover resin: wide and shallow, outdoors"
      description={`Left, right way: a wide metal tray lined with film on bare concrete outdoors, the leftovers spread no deeper than ${leftoverDepth} mm, so that the heat of the cure leaves. Right, crossed out: cups stacked into each other in a bin; together they are one large cup, which can get hot, smoke and burn.`}
      {...size}
      caption={`Spread leftovers ${leftoverDepth} mm thin or less on a lined tray outdoors. Never a cup in a cup, never into a bin: ten small ones are one large one.`}
    >
      <path className={styles.axis} d={`M4 ${ground}h190M208 ${ground}h128`} />
      <Resin d={box(wide + 4, ground - 8, 172, 6)} />
      <path className={styles.wood} d={`M${wide} ${ground - 18}v16h180v-16`} />
      <Measure from={{ x: wide, y: ground - 30 }} to={{ x: wide + 180, y: ground - 30 }} />
      <Words x={wide + 90} y={ground - 38} anchor="middle">
        wide
      </Words>
      <Arrow from={{ x: wide + 150, y: ground + 22 }} to={{ x: wide + 150, y: ground - 1 }} />
      <Words x={wide + 144} y={ground + 24} anchor="end">
        {`${leftoverDepth} mm or less`}
      </Words>
      <path className={styles.wood} d={`M${heap} ${ground - 70}l8 70h92l8 -70`} />
      {[0, 1, 2].map((at) => (
        <g key={at}>
          <Resin d={`M${heap + 27} ${ground - 6 - 18 * at}h52l1 -10h-54Z`} />
          <path className={styles.wood} d={`M${heap + 22} ${ground - 26 - 18 * at}l5 22h52l5 -22`} />
        </g>
      ))}
      <path
        className={styles.line}
        d={`M${heap + 40} ${ground - 68}q-7 -9 0 -17t0 -15M${heap + 66} ${ground - 68}q-7 -9 0 -17t0 -15`}
      />
      <Right x={wide + 90} y={28} />
      <Never x={heap + 96} y={28} />
      <Words x={heap + 54} y={ground + 24} anchor="middle">
        gets hot
      </Words>
      <Words x={wide + 90} y={size.height - 14} anchor="middle">
        outdoors, on concrete
      </Words>
      <Words x={heap + 54} y={size.height - 14} anchor="middle">
        never in a bin
      </Words>
    </Drawing>
  );
}
