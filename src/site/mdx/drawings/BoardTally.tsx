import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { grain } from './kit/lines.ts';
import { Measure, Words } from './kit/marks.tsx';

/** A board of the yard as it is tallied: quarters of an inch, inches, feet. */
export const tallied = { quarters: 5, widthInches: 8, lengthFeet: 8 };
/** One board foot is an inch thick, a foot wide and a foot long. */
export const tally = (tallied.quarters / 4) * (tallied.widthInches / 12) * tallied.lengthFeet;

const size = { width: 340, height: 232 };
const face = { x: 20, y: 60, length: 216, rise: 34, lean: 60, thickness: 18 };

/** How a yard measures a board: thickness in quarters, width, length, and the board feet of the three. */
export function BoardTally() {
  const { x, y, length, rise, lean, thickness } = face;
  const [left, near] = [x, y + rise];
  return (
    <Drawing
      title="How a board is tallied"
      description={`A board drawn at an angle, with its three measures: length ${tallied.lengthFeet} feet along the grain, width ${tallied.widthInches} inches across it, thickness ${tallied.quarters}/4, that is ${tallied.quarters} quarters of an inch, before planing. Its tally is thickness in inches times width in inches times length in feet, divided by 12: ${tally.toFixed(1)} board feet.`}
      {...size}
      caption={`Thickness in quarters of an inch, rough; width at the narrowest; length in feet. Inches × inches × feet ÷ 12 = board feet.`}
    >
      <path
        className={styles.grain}
        d={[0.25, 0.5, 0.75].map((part) => `M${left + lean * part} ${near - rise * part}h${length}`).join('')}
      />
      <path
        className={styles.wood}
        d={`M${left} ${near}h${length}l${lean} ${-rise}h${-length}Zv${thickness}h${length}v${-thickness}m0 ${thickness}l${lean} ${-rise}v${-thickness}`}
      />
      <path className={styles.grain} d={grain(left, near, length, thickness, 1)} />
      <Measure from={{ x: left, y: near + thickness + 12 }} to={{ x: left + length, y: near + thickness + 12 }} />
      <Words x={left + length / 2} y={near + thickness + 30} anchor="middle">
        {`length: ${tallied.lengthFeet} ft`}
      </Words>
      <Measure from={{ x: left - 6, y: near - 8 }} to={{ x: left + lean - 8, y: near - rise - 8 }} />
      <Words x={left} y={y - 22}>
        {`width: ${tallied.widthInches} in`}
      </Words>
      <Measure
        from={{ x: left + length + lean + 12, y: near - rise }}
        to={{ x: left + length + lean + 12, y: near - rise + thickness }}
      />
      <Words x={size.width - 2} y={near - rise - 10} anchor="end">
        {`thick: ${tallied.quarters}/4`}
      </Words>
      <Words x={size.width / 2} y={186} anchor="middle">
        {`${tallied.quarters}/4 in × ${tallied.widthInches} in × ${tallied.lengthFeet} ft ÷ 12`}
      </Words>
      <Words x={size.width / 2} y={208} anchor="middle">
        {`= ${tally.toFixed(1)} board feet`}
      </Words>
    </Drawing>
  );
}
