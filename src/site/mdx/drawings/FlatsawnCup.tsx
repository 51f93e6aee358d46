import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { circle, cupped } from './kit/lines.ts';
import { Arrow, EndGrain, Words } from './kit/marks.tsx';

const size = { width: 340, height: 158 };
const board = { width: 132, thickness: 30 };
const [before, after] = [14, 194];
const top = 44;
const heart = 44;

/** Which way a flatsawn board cups as it dries: its rings try to straighten. */
export function FlatsawnCup() {
  const foot = top + board.thickness;
  const middle = before + board.width / 2;
  // The hollow comes on the bark side, away from the heart, so the edges rise.
  const rise = -12;
  return (
    <Drawing
      title="Which way a flatsawn board cups as it dries"
      description="Left: a flat board seen on its end, its rings curved around the heart of the tree, which lies below it; the upper face is the bark side. Right: the same board after drying. The edges have risen on the bark side, which is hollow; the heart side is the hump. The rings have tried to straighten. In damp air it goes the other way."
      {...size}
      caption="Drying, the rings try to straighten: the bark side goes hollow. Getting damp, it goes the other way."
    >
      <EndGrain
        x={before}
        y={top}
        {...board}
        height={board.thickness}
        pith={{ x: board.width / 2, y: heart + board.thickness }}
      />
      <path className={styles.solid} d={circle(middle, foot + heart, 3)} />
      <Words x={middle + 10} y={foot + heart + 5} muted>
        heart
      </Words>
      <path className={styles.wood} d={cupped(after, foot, { ...board, rise })} />
      {[10, 20].map((deep) => (
        <path
          key={deep}
          className={styles.grain}
          d={`M${after + deep} ${foot - 2}Q${after + board.width / 2} ${foot - 2 * deep} ${after + board.width - deep} ${foot - 2}`}
        />
      ))}
      <Arrow from={{ x: before + board.width + 8, y: foot - 14 }} to={{ x: after - 8, y: foot - 14 }} heavy />
      <Words x={middle} y={top - 10} anchor="middle">
        bark side
      </Words>
      <Words x={after + board.width / 2} y={top - 10} anchor="middle">
        hollow: bark side
      </Words>
      <Words x={middle} y={foot + 20} anchor="middle" muted>
        heart side
      </Words>
      <Words x={after + board.width / 2} y={foot + 40} anchor="middle" muted>
        hump: heart side
      </Words>
      <Words x={middle} y={size.height - 4} anchor="middle">
        before
      </Words>
      <Words x={after + board.width / 2} y={size.height - 4} anchor="middle">
        dried
      </Words>
    </Drawing>
  );
}
