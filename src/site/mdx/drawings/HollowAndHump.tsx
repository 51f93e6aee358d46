import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { cupped } from './kit/lines.ts';
import { Arrow, Never, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 156 };
const board = { width: 140, thickness: 26, rise: 13 };
const bench = 104;
const [down, up] = [12, 188];

/** A cupped board on a bench, on its two edges and on its hump. */
export function HollowAndHump() {
  const tip = 10;
  return (
    <Drawing
      title="A cupped board on a flat bench, seen on its end"
      description="Left, right way: hollow side down. The board stands on its two edges, its hump upwards, and does not rock. Right, wrong way: hollow side up. It stands on its hump, rocks from side to side, and every height that is measured depends on which way it tips."
      {...size}
      caption="Lay the hollow side down: it stands on both edges. On its hump it rocks."
    >
      <path className={styles.axis} d={`M4 ${bench}H${size.width - 4}`} />
      <path className={styles.wood} d={cupped(down, bench, board)} />
      <path
        className={styles.wood}
        d={cupped(up, bench - board.rise - tip / 2, { ...board, rise: -board.rise, lift: -tip })}
      />
      <Arrow from={{ x: down + board.width / 2, y: bench + 22 }} to={{ x: down + board.width / 2, y: bench - 10 }} />
      <Words x={down + board.width / 2} y={bench + 38} anchor="middle">
        hollow down
      </Words>
      <Words x={up + board.width / 2} y={bench + 38} anchor="middle">
        on its hump: rocks
      </Words>
      <Right x={down + board.width / 2} y={30} />
      <Never x={up + board.width / 2} y={30} />
    </Drawing>
  );
}
