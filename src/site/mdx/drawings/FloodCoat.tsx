import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 200 };
const board = { y: 74, width: 148, height: 44 };
const [free, dammed] = [8, 184];
const film = 9;
const drop = { width: 5, below: 10 };

/** A coat poured over a face: without a dam it runs over the edge and stays thin, with one it stays as deep as it was poured. */
export function FloodCoat() {
  return (
    <Drawing
      title="A coat over a whole face, with and without a dam"
      description="Left, without a dam: the resin runs over the edges and hangs in drops below them; what stays on the face is one to two millimetres. The board stands on points over film, and the drops are wiped off while they are soft. Right, with a dam: strips round the edge, higher than the coat, hold it at the depth that was poured, which may never be more than the sheet allows."
      {...size}
      caption="Without a dam 1 to 2 mm stay and the rest runs off: stand it on points over film, wipe the drops. A dam keeps what you pour, so mind the sheet’s depth."
    >
      {[free, dammed].map((x) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, board.y, board.width, board.height, 3)} />
          <path className={styles.wood} d={box(x, board.y, board.width, board.height)} />
          <path
            className={styles.solid}
            d={`M${x + 34} ${board.y + board.height + 22}l8 -21l8 21ZM${x + board.width - 50} ${board.y + board.height + 22}l8 -21l8 21Z`}
          />
        </g>
      ))}
      <Resin
        d={`M${free + 8} ${board.y}v-5h${board.width - 16}v5q8 0 8 -5q${drop.width} 2 ${drop.width} 10v${board.height + 2}q-2 10 -5 0v${-board.height - 4}h${-board.width}v${board.height + 4}q-3 10 -5 0v${-board.height - 2}q0 -8 ${drop.width} -10q0 5 8 5Z`}
      />
      <Resin d={box(dammed, board.y - 2 * film, board.width, 2 * film)} />
      {[dammed - 6, dammed + board.width].map((x) => (
        <path key={x} className={styles.solid} d={box(x, board.y - 2 * film - 8, 6, 2 * film + 34)} />
      ))}
      <path className={styles.line} d={`M4 ${board.y + board.height + 24}h332`} />
      <Words x={free + board.width / 2} y={24} anchor="middle">
        {['no dam:', '1 to 2 mm stay']}
      </Words>
      <Words x={dammed + board.width / 2} y={24} anchor="middle">
        dam: as poured
      </Words>
      <Arrow from={{ x: free + 118, y: 168 }} to={{ x: free + board.width + 2, y: board.y + board.height + 8 }} />
      <Words x={free + 110} y={174} anchor="end">
        wipe drops
      </Words>
      <Words x={dammed + board.width / 2} y={174} anchor="middle">
        points, film
      </Words>
    </Drawing>
  );
}
