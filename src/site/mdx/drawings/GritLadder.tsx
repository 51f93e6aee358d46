import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { Arrow, Words } from './kit/marks.tsx';

/** Grits of a tray for oil, in order; tests/docs hold them to the page. */
export const ladder = [80, 120, 180, 220] as const;

const size = { width: 340, height: 196 };
const left = 6;
const step = 82;
const face = 84;
/** Depth of a scratch in the drawing, in proportion to one over the grit. */
const depth = (grit: number) => (34 * ladder[0]) / grit;

/** What a ladder of grits does: each takes out the scratches of the one before, and leaves finer ones. */
export function GritLadder() {
  return (
    <Drawing
      title="The ladder of grits, scratches in section"
      description={`One face drawn in section from left to right, sanded with ${ladder.map((grit) => `P${grit}`).join(', ')}. With each grit the scratches are shallower and closer together; each grit must go to the bottom of the scratches of the one before, or they show under the finish. How deep they are drawn is not to scale.`}
      {...size}
      caption="Each grit goes to the bottom of the last one’s scratches before the next. Skip one, and its scratches stay under the oil. Vacuum between."
    >
      {ladder.map((grit, at) => {
        const deep = depth(grit);
        const x = left + at * step;
        const count = Math.round(step / (deep * 0.8));
        const wide = step / count;
        return (
          <g key={grit}>
            <path
              className={styles.wood}
              d={`M${x} ${face}${Array.from({ length: count }, () => `l${(wide / 2).toFixed(2)} ${deep.toFixed(2)}l${(wide / 2).toFixed(2)} ${(-deep).toFixed(2)}`).join('')}`}
            />
            <Words x={x + step / 2} y={38} anchor="middle">
              {`P${grit}`}
            </Words>
            {at > 0 && <Arrow from={{ x: x - 16, y: 32 }} to={{ x: x + 14, y: 32 }} />}
          </g>
        );
      })}
      <path className={styles.wood} d={`M${left} ${face}v70h${ladder.length * step}v-70`} />
      <path className={styles.grain} d={`M${left} ${face + 52}h${ladder.length * step}`} />
      <path className={styles.line} d={`M${left} ${face + depth(ladder[0])}h${step * 1.5}`} />
      <Words x={left + step * 1.5 + 6} y={face + depth(ladder[0]) + 5}>
        bottom of P80
      </Words>
      <Words x={size.width / 2} y={size.height - 12} anchor="middle" muted>
        depths not to scale
      </Words>
    </Drawing>
  );
}
