import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { circle } from './kit/lines.ts';
import { Arrow, Never, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 190 };
const view = { y: 34, width: 148, height: 104 };
/** Radius of the inside corner, and of a bit that follows it and of one that does not. */
const corner = 26;
const bits = [
  { x: 10, radius: 18, words: 'bit follows', follows: true },
  { x: 182, radius: 42, words: 'bit leaves wood', follows: false },
] as const;

/** An inside corner seen from above, with a bit that follows its radius and one that cannot. */
export function CornerReach() {
  return (
    <Drawing
      title="An inside corner and the bit that must reach it, seen from above"
      description="Left: the radius of the inside corner is larger than that of the bit; the bit rolls through the corner and touches the line everywhere. Right: the bit is larger than the corner; it touches both sides and leaves a piece of wood standing in the corner, which no second pass reaches."
      {...size}
      caption="The bit may be no thicker than twice the radius of the tightest inside corner. A bearing or a collar counts as the bit does."
    >
      {bits.map(({ x, radius, words, follows }) => {
        const [wall, floor] = [x + 24, view.y + view.height - 24];
        const middle = { x: wall + radius, y: floor - radius };
        return (
          <g key={words}>
            <path
              className={styles.wood}
              d={`M${x} ${view.y}H${wall}V${floor - corner}A${corner} ${corner} 0 0 0 ${wall + corner} ${floor}H${x + view.width}V${view.y + view.height}H${x}Z`}
            />
            <path
              className={styles.grain}
              d={`M${x} ${floor + 8}h${view.width}m0 8h${-view.width}M${x} ${view.y + 30}h24M${x} ${view.y + 52}h24`}
            />
            <path className={styles.dimension} d={circle(middle.x, middle.y, radius)} />
            {!follows && (
              <path
                className={styles.solid}
                d={`M${wall} ${floor - radius}A${radius} ${radius} 0 0 0 ${wall + radius} ${floor}H${wall + corner}A${corner} ${corner} 0 0 1 ${wall} ${floor - corner}Z`}
              />
            )}
            {follows ? <Right x={x + 128} y={view.y + 6} /> : <Never x={x + 128} y={view.y + 8} />}
            <Words x={middle.x} y={middle.y + 5} anchor="middle">
              bit
            </Words>
            <Words x={x + view.width / 2} y={view.y + view.height + 22} anchor="middle">
              {words}
            </Words>
          </g>
        );
      })}
      <Arrow from={{ x: 176, y: 22 }} to={{ x: 206, y: 100 }} />
      <Words x={10} y={18}>
        black: wood that stays in the corner
      </Words>
    </Drawing>
  );
}
