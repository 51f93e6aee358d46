import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, rounded } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 236 };
const sheet = { width: 110, height: 138, y: 36 };
const overlap = 16;
const [apart, together] = [8, 190];
/** A cross on either sheet, at the same place of the outline. */
const crosses = [sheet.y + 18, sheet.y + sheet.height - 18] as const;
const half = 7;

const cross = (x: number, y: number) => `M${x - half} ${y}h${2 * half}M${x} ${y - half}v${2 * half}`;

/** Two tiles of a template: cut one, lay its crosses over those of the other, tape. */
export function TemplateTiles() {
  const narrow = 66;
  const seam = together + narrow - overlap;
  return (
    <Drawing
      title="Putting the tiles of a template together"
      description="Left: two printed sheets side by side, each with a part of one outline, and each with two crosses along the edge where they meet. Right: the second sheet, cut along its line, lies over the edge of the first so that cross lies exactly over cross; the outline runs on without a step, and tape holds it. The bars of 100 mm are measured first, and the whole length once more."
      {...size}
      caption="Cut along the line, lay cross over cross, tape on a flat table, and measure the whole length."
    >
      {[0, 1].map((at) => {
        const x = apart + at * (narrow + 12);
        const edge = at === 0 ? x + narrow - overlap / 2 : x + overlap / 2;
        return (
          <g key={at}>
            <path className={styles.dimension} d={box(x, sheet.y, narrow, sheet.height)} />
            <path className={styles.line} d={`M${edge} ${sheet.y}v${sheet.height}`} />
            <path
              className={styles.wood}
              d={
                at === 0
                  ? `M${edge} ${sheet.y + 36}H${x + 30}a18 18 0 0 0 -18 18v30a18 18 0 0 0 18 18H${edge}`
                  : `M${edge} ${sheet.y + 36}H${x + narrow - 30}a18 18 0 0 1 18 18v30a18 18 0 0 1 -18 18H${edge}`
              }
            />
            {crosses.map((y) => (
              <path key={y} className={styles.arrow} d={cross(edge, y)} />
            ))}
            <Words x={x + narrow / 2} y={sheet.y - 10} anchor="middle">
              {at === 0 ? '1' : '2'}
            </Words>
          </g>
        );
      })}
      <path className={styles.dimension} d={box(together, sheet.y, narrow, sheet.height)} />
      <path className={styles.paper} d={box(seam, sheet.y, narrow, sheet.height)} />
      <path className={styles.wood} d={rounded(together + 12, sheet.y + 36, seam + narrow - together - 24, 66, 18)} />
      {crosses.map((y) => (
        <path key={y} className={styles.arrow} d={cross(seam + overlap / 2, y)} />
      ))}
      <path className={styles.line} d={`M${seam} ${sheet.y}v${sheet.height}`} />
      <Arrow
        from={{ x: seam + overlap / 2, y: sheet.y + sheet.height + 22 }}
        to={{ x: seam + overlap / 2, y: crosses[1] + 10 }}
      />
      <Words x={seam + overlap / 2} y={sheet.y + sheet.height + 38} anchor="middle">
        cross over cross
      </Words>
      <Words x={apart + narrow + 6} y={sheet.y + sheet.height + 38} anchor="middle">
        cut along the line
      </Words>
      <Words x={size.width / 2} y={size.height - 4} anchor="middle" muted>
        100 mm bars first
      </Words>
    </Drawing>
  );
}
