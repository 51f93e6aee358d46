import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

/** One cup of 100 parts A to 43.1 parts B by weight (2 : 1 by volume at 1.16 and 1.00 g/mL), in grams. */
export const weighed = { a: 140, b: 60.3 } as const;

const size = { width: 340, height: 194 };
const cup = { top: 56, foot: 118, half: 26 };
const steps = [
  { x: 58, level: 0, reads: '0.0', words: ['cup on,', 'zero'] },
  { x: 170, level: 28, reads: weighed.a.toFixed(1), words: ['A up to', `${weighed.a.toFixed(1)} g`] },
  {
    x: 282,
    level: 42,
    reads: (weighed.a + weighed.b).toFixed(1),
    words: ['B up to A + B:', `${(weighed.a + weighed.b).toFixed(1)} g`],
  },
] as const;

/** What a scale shows that is not set to zero again: A, then A and B together. */
export function ScaleReadings() {
  return (
    <Drawing
      title="What the scale shows as it runs on"
      description={`Three pictures of one cup on a scale. First the empty cup, the scale set to zero. Then part A is poured until the scale shows ${weighed.a.toFixed(1)} grams. Then, without touching zero again, part B is poured until it shows A and B together: ${weighed.a.toFixed(1)} and ${weighed.b.toFixed(1)} are ${(weighed.a + weighed.b).toFixed(1)} grams.`}
      {...size}
      caption={`Zero once, with the cup on. Then read A, then A + B (an example of ${weighed.a.toFixed(1)} and ${weighed.b.toFixed(1)} g). Never write the second reading down as B.`}
    >
      {steps.map(({ x, level, reads, words }) => (
        <g key={reads}>
          {level > 0 && <Resin d={box(x - cup.half, cup.foot - level, 2 * cup.half, level)} />}
          {level > 28 && <path className={styles.line} d={`M${x - cup.half} ${cup.foot - 28}h${2 * cup.half}`} />}
          <path className={styles.wood} d={`M${x - cup.half} ${cup.top}V${cup.foot}h${2 * cup.half}V${cup.top}`} />
          <path className={styles.wood} d={`M${x - 44} ${cup.foot + 4}h88l6 28h-100Z`} />
          <Words x={x} y={cup.foot + 25} anchor="middle">
            {`${reads} g`}
          </Words>
          <Words x={x} y={20} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
      <Words x={170} y={cup.foot - 9} anchor="middle">
        A
      </Words>
      <Words x={282} y={cup.foot - 9} anchor="middle">
        A
      </Words>
      <Arrow from={{ x: 246, y: cup.foot - 50 }} to={{ x: 262, y: cup.foot - 35 }} />
      <Words x={236} y={cup.foot - 52} anchor="middle">
        B
      </Words>
      <Words x={size.width / 2} y={size.height - 8} anchor="middle" muted>
        no second zero between A and B
      </Words>
    </Drawing>
  );
}
