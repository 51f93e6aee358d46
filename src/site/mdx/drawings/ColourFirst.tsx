import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 186 };
const cup = { top: 66, foot: 130, wide: 34, narrow: 28 };
const steps = [
  { x: 56, level: 0.45, words: ['A: colour in,', 'stir smooth'] },
  { x: 170, level: 0.7, words: ['then B,', 'stir, scrape'] },
  { x: 284, level: 0.7, words: ['a drop on', 'white first'] },
] as const;

/** When colour goes into the cup: into part A, before the hardener. */
export function ColourFirst() {
  const [first, second, third] = steps;
  return (
    <Drawing
      title="Colour goes into part A, before the hardener"
      description="Three cups. First: the paste is stirred into part A until there are no streaks; the clock of the working time has not begun. Second: part B is added and all is stirred and scraped; now the clock runs. Third: a drop is spread on something white in the thickness of the inlay, to see whether the colour is strong enough before the pour."
      {...size}
      caption="Paste into A first: you may stir it as long as you like. The clock starts when B goes in. Colour is weighed on top of the ratio."
    >
      {steps.slice(0, 2).map(({ x, level }) => {
        const y = cup.foot - level * (cup.foot - cup.top);
        const half = cup.narrow + (cup.wide - cup.narrow) * level;
        return (
          <g key={x}>
            <Resin d={`M${x - half} ${y}L${x - cup.narrow} ${cup.foot}h${2 * cup.narrow}L${x + half} ${y}Z`} />
            <path
              className={styles.wood}
              d={`M${x - cup.wide} ${cup.top}L${x - cup.narrow} ${cup.foot}h${2 * cup.narrow}L${x + cup.wide} ${cup.top}`}
            />
          </g>
        );
      })}
      <path className={styles.paper} d={`M${third.x - 46} ${cup.foot}l12 -46h80l-12 46Z`} />
      <Resin d={`M${third.x - 20} ${cup.foot - 16}q4 -16 22 -16t20 12t-18 14t-24 -10Z`} />
      <Arrow from={{ x: first.x, y: 34 }} to={{ x: first.x, y: 92 }} heavy />
      <Words x={first.x} y={26} anchor="middle">
        paste
      </Words>
      <Arrow from={{ x: second.x, y: 34 }} to={{ x: second.x, y: 78 }} heavy />
      <Words x={second.x} y={26} anchor="middle">
        B: clock starts
      </Words>
      {steps.map(({ x, words }) => (
        <Words key={x} x={x} y={cup.foot + 26} anchor="middle">
          {words}
        </Words>
      ))}
    </Drawing>
  );
}
