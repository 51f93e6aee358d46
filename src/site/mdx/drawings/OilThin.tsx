import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Words } from './kit/marks.tsx';

const size = { width: 340, height: 178 };
const board = { width: 100, y: 80, height: 44 };
const steps = [
  { x: 4, words: ['flood: soak', '30 to 45 min'], film: 7 },
  { x: 120, words: ['wipe off,', 'twice'], film: 3 },
  { x: 236, words: ['dry to', 'the finger'], film: 0 },
] as const;

/** Places of the oil that is in the wood. */
const drops = Array.from({ length: 11 }, (_, at) => at);

/** Oil belongs in the wood, not on it: soak, wipe, dry to the finger. */
export function OilThin() {
  const [, wipe, done] = steps;
  return (
    <Drawing
      title="Oil goes into the wood, and none stays on it"
      description="Three sections of one board. First: oil lies thick on the face and soaks in for 30 to 45 minutes; end grain gets it twice. Second: a clean cloth wipes off all that is still on top, and again after ten minutes. Third: the oil is in the wood, drawn as dots below the face, and a finger over the face stays dry. What is left on top gets sticky."
      {...size}
      caption="Let it soak, then wipe off all that lies on top, off the resin too. Every cloth into the water can before you leave."
    >
      {steps.map(({ x, words, film }, at) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, board.y + 14, board.width, board.height - 14, 2)} />
          <path className={styles.wood} d={box(x, board.y, board.width, board.height)} />
          {film > 0 && <path className={styles.resin} d={box(x + 2, board.y - film, board.width - 4, film)} />}
          <path
            className={styles.solid}
            d={drops
              .map((dot) => box(x + 8 + 8 * dot, board.y + 4 + ((dot * 5) % 7), 2.4, at === 0 ? 2.4 : 5))
              .join('')}
          />
          <Words x={x + board.width / 2} y={board.y + board.height + 24} anchor="middle">
            {words}
          </Words>
        </g>
      ))}
      <path className={styles.paper} d={`M${wipe.x + 30} ${board.y - 2}q-8 -24 16 -26t32 4t6 22Z`} />
      <Arrow from={{ x: wipe.x + 78, y: board.y - 14 }} to={{ x: wipe.x + 104, y: board.y - 14 }} heavy />
      <path className={styles.wood} d={`M${done.x + 40} 18v42a10 13 0 0 0 20 0V18`} />
      <Words x={54} y={52} anchor="middle">
        oil on top
      </Words>
    </Drawing>
  );
}
