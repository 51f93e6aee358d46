import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 168 };
const board = { width: 100, y: 84, height: 34 };
const steps = [
  { x: 4, words: ['damp cloth,', 'let it dry'] },
  { x: 120, words: ['hairs', 'stand up'] },
  { x: 236, words: ['cut off,', 'lightly'] },
] as const;

/** Raising the grain: wet, dry, and take the hairs off lightly. */
export function RaisedGrain() {
  const [wet, raised, cut] = steps;
  return (
    <Drawing
      title="Raising the grain before the last grit"
      description="Three sections of one face. First: a damp cloth wets the sanded face, which then dries. Second: fine hairs of wood stand up out of the face. Third: a block with the last grit passes lightly over it and cuts the hairs off; pressing would cut below the wetted skin, to wood that has never been wet and will stand up in the first wash."
      {...size}
      caption="Wet it, let it dry until it is no longer cool to the back of the hand, take the hairs off with the weight of the hand and no more."
    >
      {steps.map(({ x, words }) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, board.y, board.width, board.height, 3)} />
          <path className={styles.wood} d={box(x, board.y, board.width, board.height)} />
          <Words x={x + board.width / 2} y={board.y + board.height + 22} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
      <path className={styles.paper} d={`M${wet.x + 20} ${board.y - 2}q-8 -22 16 -24t34 4t8 20Z`} />
      <path className={styles.dimension} d={`M${wet.x + 30} ${board.y + 2}v10m18 -10v14m18 -14v10`} />
      <path
        className={styles.dimension}
        d={Array.from(
          { length: 15 },
          (_, at) => `M${raised.x + 6 + 6.3 * at} ${board.y}q${at % 2 ? 3 : -3} -7 ${at % 3 ? 5 : 1} -13`,
        ).join('')}
      />
      <path className={styles.paper} d={box(cut.x + 30, board.y - 27, 40, 26)} />
      <Words x={cut.x + 50} y={board.y - 9} anchor="middle">
        last
      </Words>
      <Arrow from={{ x: cut.x + 72, y: board.y - 14 }} to={{ x: cut.x + 98, y: board.y - 14 }} heavy />
      <Words x={wet.x + board.width / 2} y={38} anchor="middle">
        1
      </Words>
      <Words x={raised.x + board.width / 2} y={38} anchor="middle">
        2
      </Words>
      <Words x={cut.x + board.width / 2} y={38} anchor="middle">
        3
      </Words>
    </Drawing>
  );
}
