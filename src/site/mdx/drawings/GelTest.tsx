import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 206 };
const board = { top: 128, height: 34, width: 104, resin: 12 };
const steps = [
  { x: 4, words: ['string:', 'wait'] },
  { x: 118, words: ['print:', 'pour again'] },
  { x: 232, words: ['no print:', 'sand first'] },
] as const;

/** The tip of a gloved finger, its lowest point given. */
const finger = (x: number, y: number) => `M${x - 11} ${y - 66}v52a11 14 0 0 0 22 0v-52M${x - 15} ${y - 40}h30`;

/** The finger test of a layer: gloved, at a rim that will be sanded away. */
export function GelTest() {
  const [wet, gel, hard] = steps;
  const middle = (x: number) => x + board.width / 2;
  return (
    <Drawing
      title="The finger test: wet, gelled, hard"
      description="Three pictures of a gloved finger over a layer of resin, touched at the rim. First: a string hangs from the finger; the resin is still liquid, wait. Second: the finger leaves a print and lifts no string; the layer has gelled. If it lies cold again too, the next layer bonds by itself. Third: the finger leaves no print; the window may be closed, so it is left to cure and is sanded first."
      {...size}
      caption="Always a glove, or the stick of the mixing cup; at the rim, where it will be sanded. Pour again on print without string, once it lies cold."
    >
      {steps.map(({ x, words }) => (
        <g key={words[0]}>
          <path
            className={styles.grain}
            d={grain(x, board.top + board.resin, board.width, board.height - board.resin, 2)}
          />
          <path className={styles.wood} d={box(x, board.top, board.width, board.height)} />
          <Words x={middle(x)} y={board.top + board.height + 22} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
      <Resin d={`M${wet.x + 12} ${board.top}h34q5 -2 5 -26q3 24 6 26h35v${board.resin}h-80Z`} />
      <Resin d={`M${gel.x + 12} ${board.top}h26a14 9 0 0 0 28 0h26v${board.resin}h-80Z`} />
      <Resin d={box(hard.x + 12, board.top, 80, board.resin)} />
      <path className={styles.wood} d={finger(middle(wet.x), 100)} />
      <path className={styles.wood} d={finger(middle(gel.x), 110)} />
      <path className={styles.wood} d={finger(middle(hard.x), board.top - 2)} />
      <Words x={size.width / 2} y={22} anchor="middle">
        gloved finger
      </Words>
    </Drawing>
  );
}
