import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { arrow } from './kit/lines.ts';
import { Resin } from './kit/marks.tsx';

const size = { width: 340, height: 190 };
const cup = { top: 74, bottom: 60, height: 84, y: 40 };
const level = 0.36;
const [first, second] = [54, 222];
/** Half the width of a cup at a part of its height, 0 at the rim. */
const half = (part: number) => (cup.top + (cup.bottom - cup.top) * part) / 2;
const floor = cup.y + cup.height;

/** Why mixed resin goes into a second clean cup. */
export function SecondCup() {
  const outline = (x: number) =>
    `M${x - half(0)} ${cup.y}L${x - half(1)} ${floor}H${x + half(1)}L${x + half(0)} ${cup.y}`;
  const fill = (x: number) => {
    const y = cup.y + level * cup.height;
    return `M${x - half(level)} ${y}L${x - half(1)} ${floor}H${x + half(1)}L${x + half(level)} ${y}Z`;
  };
  const [from, to] = [first + 34, second + 34];
  return (
    <Drawing
      title="Into a second clean cup"
      description="Two cups. The first holds resin that has been stirred; a thick line along its wall and bottom is a film that the stick did not reach, which is not mixed. An arrow leads to the second, clean cup: the resin is poured over, the film stays behind, and it is stirred again with a clean stick before it is poured into the pocket."
      {...size}
      caption="Scrape the wall while you stir the first cup; when you pour over, leave what clings to it. Stir the second cup for a minute more."
    >
      {[from, to].map((x) => (
        <g key={x}>
          <Resin d={fill(x)} />
          <path className={styles.wood} d={outline(x)} />
          <path className={styles.axis} d={`M${x + 8} ${floor - 14}L${x + 26} ${cup.y - 24}`} />
        </g>
      ))}
      <path
        className={styles.seal}
        d={`M${from - half(0) + 3} ${cup.y + 4}L${from - half(1) + 3} ${floor - 3}H${from + half(1) - 3}L${from + half(0) - 3} ${cup.y + 4}`}
      />
      <path
        className={styles.arrow}
        d={arrow({ x: from + half(0) + 10, y: cup.y + 30 }, { x: to - half(0) - 10, y: cup.y + 30 })}
      />
      <text x={(from + to) / 2} y={cup.y + 20} textAnchor="middle">
        pour over
      </text>
      {[
        { x: from, words: ['1st: stir, scrape', 'film not mixed'] },
        { x: to, words: ['2nd: clean cup', 'stir again, pour'] },
      ].map(({ x, words }) =>
        words.map((line, at) => (
          <text key={line} x={x} y={floor + 24 + 20 * at} textAnchor="middle">
            {line}
          </text>
        )),
      )}
    </Drawing>
  );
}
