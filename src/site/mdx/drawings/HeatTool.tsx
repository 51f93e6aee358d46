import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { arrow, box, grain } from './kit/lines.ts';
import { Measure, Never, Resin, Right, Words } from './kit/marks.tsx';

/** How far the tool stays from the resin, mm (common practice). */
export const heatAway = 200;

const size = { width: 340, height: 226 };
const board = { top: 150, height: 34, width: 152 };
const [good, bad] = [6, 182];

/** A heat gun, its nozzle at the point given, blowing down. */
const gun = (x: number, y: number) => `M${x - 6} ${y}v-22h-6v-26h26v8l34 12v-6h10v18h-10l-36 -6v0h-6v22Z`;

/** Where a heat tool may be held over wet resin, and where never. */
export function HeatTool() {
  return (
    <Drawing
      title="Where to hold a heat tool, and where never"
      description={`Left, right way: the nozzle points down at the resin from ${heatAway} mm away and keeps moving along it, one pass of a few seconds. Right, crossed out: the nozzle close to the resin and standing still at the rim, beside tape, paper or a cup of solvent. There resin scorches, tape comes loose, and vapour can catch fire.`}
      {...size}
      caption={`${heatAway / 10} cm (8 in) away, always moving, a few seconds. Never near and still, never on a cup, tape, film, alcohol or rags; nobody’s face over it.`}
    >
      {[good, bad].map((x) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, board.top + 14, board.width, board.height - 14, 2)} />
          <path className={styles.wood} d={box(x, board.top, board.width, board.height)} />
          <Resin d={box(x + 28, board.top, board.width - 56, 13)} />
        </g>
      ))}
      <path className={styles.wood} d={gun(good + 84, 74)} />
      <path
        className={styles.dimension}
        d={[-7, 0, 7]
          .map((off) => arrow({ x: good + 86 + off, y: 78 }, { x: good + 86 + 2 * off, y: board.top - 22 }))
          .join('')}
      />
      <path
        className={styles.arrow}
        d={arrow({ x: good + 58, y: board.top - 8 }, { x: good + 128, y: board.top - 8 })}
      />
      <Measure from={{ x: good + 16, y: 74 }} to={{ x: good + 16, y: board.top }} />
      <Words x={good + 22} y={112}>
        {`${heatAway / 10} cm`}
      </Words>
      <path className={styles.wood} d={gun(bad + 36, board.top - 10)} />
      <path className={styles.solid} d={box(bad, board.top - 4, 28, 4)} />
      <path className={styles.wood} d={`M${bad + 118} ${board.top - 40}l4 40h22l4 -40Z`} />
      <Right x={good + 24} y={30} />
      <Never x={bad + 142} y={30} size={12} />
      <Words x={good + board.width / 2} y={board.top + board.height + 22} anchor="middle">
        away, and moving
      </Words>
      <Words x={bad + board.width / 2} y={board.top + board.height + 22} anchor="middle">
        near, still, by tape
      </Words>
      <Words x={bad + board.width / 2} y={board.top + board.height + 40} anchor="middle">
        or a cup
      </Words>
    </Drawing>
  );
}
