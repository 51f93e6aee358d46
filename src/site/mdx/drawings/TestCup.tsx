import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 190 };
const foot = 118;
const steps = [
  { x: 56, words: ['weigh some', 'in ratio'] },
  { x: 170, words: ['thin in a', 'lid, wait'] },
  { x: 284, words: ['nail marks:', 'do not pour'] },
] as const;

/** A doubtful bottle is tried in a small cup before it goes onto a board. */
export function TestCup() {
  const [cup, lid, nail] = steps;
  return (
    <Drawing
      title="Try a doubtful bottle in a small cup first"
      description="Three pictures. First: a little of both parts is weighed in the ratio of the sheet into a small cup and mixed. Second: it is poured thin into a flat lid, marked with date and bottle, and left at shop temperature for the days on the sheet. Third: a fingernail is pressed into it. If the nail marks it, if it is sticky or bends like rubber, the bottle does not go onto a board."
      {...size}
      caption="Weigh a little, pour it thin, wait the days of the sheet. A mark, a sticky face or a rubbery bend: not onto a board."
    >
      <Resin d={`M${cup.x - 24} ${foot - 26}l2 26h44l2 -26Z`} />
      <path className={styles.wood} d={`M${cup.x - 28} ${foot - 60}l6 60h44l6 -60`} />
      <path className={styles.axis} d={`M${cup.x + 6} ${foot - 8}L${cup.x + 22} 40`} />
      {[lid, nail].map(({ x }) => (
        <g key={x}>
          <Resin d={box(x - 40, foot - 9, 80, 8)} />
          <path className={styles.wood} d={`M${x - 44} ${foot - 15}v15h88v-15`} />
        </g>
      ))}
      <path className={styles.paper} d={box(lid.x - 30, foot - 62, 60, 28)} />
      <Words x={lid.x} y={foot - 43} anchor="middle">
        date
      </Words>
      <path
        className={styles.wood}
        d={`M${nail.x - 12} 30v48q0 18 8 28h8q8 -10 8 -28V30M${nail.x - 6} 80q6 -6 12 0v26h-12Z`}
      />
      {steps.map(({ x, words }, at) => (
        <g key={x}>
          <Words x={x - 34} y={34} anchor="middle">
            {String(at + 1)}
          </Words>
          <Words x={x} y={foot + 26} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
    </Drawing>
  );
}
