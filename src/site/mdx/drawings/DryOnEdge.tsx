import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Never, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 190 };
const shelf = 140;
const [edge, flat] = [86, 254];

/** A washed board dries on its edge, air on both faces; flat in the wet it cups. */
export function DryOnEdge() {
  return (
    <Drawing
      title="A washed board dries on its edge"
      description="Left, right way: the board stands on its long edge, leaning on a small support; air reaches both faces, and both dry alike. Right, wrong way: the board lies flat on a wet worktop; its lower face stays wet and swells, and it cups."
      {...size}
      caption="Wash, wipe both faces, stand it on edge until dry. Never soaked, never in a dishwasher, never flat in the wet."
    >
      <path className={styles.axis} d={`M4 ${shelf}h158M178 ${shelf}h158`} />
      <path className={styles.wood} d={`M${edge - 8} ${shelf}l14 -86l12 2l-14 84Z`} />
      <path className={styles.solid} d={box(edge + 10, shelf - 26, 8, 26)} />
      <Arrow from={{ x: edge - 56, y: shelf - 50 }} to={{ x: edge - 12, y: shelf - 50 }} heavy />
      <Arrow from={{ x: edge + 72, y: shelf - 50 }} to={{ x: edge + 26, y: shelf - 50 }} heavy />
      <Words x={edge - 44} y={shelf - 60} anchor="middle">
        air
      </Words>
      <Words x={edge + 54} y={shelf - 60} anchor="middle">
        air
      </Words>
      <path className={styles.grain} d={grain(flat - 62, shelf - 22, 124, 16, 2)} />
      <path className={styles.wood} d={`M${flat - 66} ${shelf - 12}q66 -14 132 0v-18q-66 -14 -132 0Z`} />
      <path
        className={styles.dimension}
        d={`M${flat - 70} ${shelf - 3}q8 -6 17 0t17 0t17 0t17 0t17 0t17 0t17 0t17 0`}
      />
      <Right x={edge} y={34} />
      <Never x={flat} y={32} />
      <Words x={edge} y={shelf + 26} anchor="middle">
        on edge: stays flat
      </Words>
      <Words x={flat} y={shelf + 26} anchor="middle">
        wet below: cups
      </Words>
    </Drawing>
  );
}
