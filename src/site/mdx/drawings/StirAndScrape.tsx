import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 214 };
const cup = { top: 60, foot: 164, half: [52, 42] } as const;
const views = [
  { x: 66, words: 'wall' },
  { x: 252, words: 'bottom edge' },
] as const;

/** Where the stick must go while resin is stirred: along the wall, and into the edge of the bottom. */
export function StirAndScrape() {
  const level = cup.top + 46;
  const [wide, narrow] = cup.half;
  const at = wide - ((wide - narrow) * (level - cup.top)) / (cup.foot - cup.top);
  return (
    <Drawing
      title="Stir slowly, and scrape what the stick does not reach by itself"
      description="Two cups of resin with a flat stick. Left: the flat edge of the stick lies against the wall and goes round it, so that the film on the wall comes into the mixture. Right: the square end of the stick stands in the edge where wall and bottom meet, and goes round it. Both, and the stick itself, are scraped several times in the three minutes."
      {...size}
      caption="Three slow minutes, flat stick with a square end: wall, bottom edge, and the stick itself, several times (common practice)."
    >
      {views.map(({ x, words }) => (
        <g key={words}>
          <Resin d={`M${x - at} ${level}L${x - narrow} ${cup.foot}h${2 * narrow}L${x + at} ${level}Z`} />
          <path
            className={styles.wood}
            d={`M${x - wide} ${cup.top}L${x - narrow} ${cup.foot}h${2 * narrow}L${x + wide} ${cup.top}`}
          />
          <Words x={x} y={cup.foot + 24} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
      <path className={styles.paper} d={`M${66 - 50} ${cup.top + 4}l9 84l8 -1l-6 -108l-13 1Z`} />
      <path className={styles.paper} d={`M${252 - 40} ${cup.foot - 2}l62 -136l11 5l-62 136Z`} />
      <path className={styles.arrow} d={`M${66 - 16} ${level - 12}a30 9 0 1 0 48 -2m-2 9l2 -9l-10 1`} />
      <path className={styles.arrow} d={`M${252 - 20} ${cup.foot - 12}a24 8 0 1 0 44 -3m-1 9l1 -9l-10 2`} />
      <Words x={66} y={20} anchor="middle">
        stick flat to it
      </Words>
      <Words x={228} y={20} anchor="middle">
        square end in it
      </Words>
      <Arrow from={{ x: 172, y: 122 }} to={{ x: 212, y: cup.foot - 4 }} />
      <Words x={160} y={96} anchor="middle">
        {['here it', 'hides']}
      </Words>
      <Words x={size.width / 2} y={size.height - 6} anchor="middle" muted>
        and the stick itself
      </Words>
    </Drawing>
  );
}
