import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Never, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 206 };
const ground = 142;
const places = [
  { x: 56, words: ['under water,', 'lid on'] },
  { x: 170, words: ['or each flat,', 'outdoors'] },
  { x: 284, words: ['heap or bin:', 'it can burn'] },
] as const;

/** Where an oily cloth goes, and where never. */
export function OilyCloths() {
  const [can, flat, heap] = places;
  return (
    <Drawing
      title="Where an oily cloth goes, and where never"
      description="First, right way: a metal can with a tight lid, the cloths pushed under water, standing outdoors on concrete. Second, if you must dry them: each cloth by itself, flat on the ground outdoors away from buildings, weighed down and never folded. Third, crossed out: cloths in a heap or in a bin, where their heat cannot leave and they can catch fire hours later."
      {...size}
      caption="Into water, lid on, before you leave the room; or each one flat and single outdoors, watched. Never crumpled, in a heap, a pocket or a bin."
    >
      <path className={styles.axis} d={`M4 ${ground}h332`} />
      <path
        className={styles.dimension}
        d={`M${can.x - 34} ${ground - 50}q8 -6 17 0t17 0t17 0t17 0M${can.x - 28} ${ground - 20}h10m30 0h10`}
      />
      <path
        className={styles.wood}
        d={`M${can.x - 34} ${ground - 76}v76h68v-76M${can.x - 40} ${ground - 76}h80v-9h-80Z`}
      />
      <path className={styles.wedge} d={`M${can.x - 22} ${ground - 8}q8 -16 20 -10t24 -2t2 14Z`} />
      <Words x={can.x} y={ground - 30} anchor="middle">
        water
      </Words>
      <path
        className={styles.paper}
        d={`M${flat.x - 44} ${ground - 1}v-6h36v6ZM${flat.x + 6} ${ground - 1}v-6h36v6Z`}
      />
      <path
        className={styles.solid}
        d={box(flat.x - 32, ground - 17, 12, 10) + box(flat.x + 18, ground - 17, 12, 10)}
      />
      <path className={styles.paper} d={`M${heap.x - 44} ${ground - 1}q-2 -24 16 -20t14 -24t22 6t18 14t10 24Z`} />
      <path
        className={styles.wedge}
        d={`M${heap.x - 26} ${ground - 14}q14 -8 24 4t24 -6M${heap.x - 12} ${ground - 30}q12 -4 20 6`}
      />
      <path
        className={styles.line}
        d={`M${heap.x - 8} ${ground - 52}q-8 -12 0 -22t0 -20M${heap.x + 12} ${ground - 48}q-8 -12 0 -22t0 -18`}
      />
      <Right x={can.x} y={34} />
      <Right x={flat.x} y={34} />
      <Never x={heap.x} y={32} />
      {places.map(({ x, words }) => (
        <Words key={x} x={x} y={ground + 24} anchor="middle">
          {words}
        </Words>
      ))}
    </Drawing>
  );
}
