import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { grain } from './kit/lines.ts';
import { Arrow, Resin, Words } from './kit/marks.tsx';

const size = { width: 340, height: 190 };
const board = { width: 104, top: 58, height: 72 };
const [loose, clean, filled] = [4, 118, 232];
const knot = 'c4 14 16 16 14 34s6 20 8 38h24c4 -16 2 -26 8 -38s8 -18 12 -34';

/** A knot in section: loose, cleaned out to sound wood, sealed and filled from both sides. */
export function KnotPocket() {
  const start = 20;
  return (
    <Drawing
      title="A knot cleaned out, in section"
      description="Three sections through one board. First: a knot with loose bark and black soft wood around it. Second: all that is loose, soft or dusty is gone, down to sound hard wood; the walls are brushed clean; tape closes the back. Third: seal coat on the bare walls, a thick line, and resin filled a little proud of the face."
      {...size}
      caption="Out with bark and punk until a screwdriver finds hard wood. Close the back, seal, fill within the depth of one pour."
    >
      {[loose, clean, filled].map((x) => (
        <g key={x}>
          <path
            className={styles.grain}
            d={
              grain(x, board.top, start, board.height, 4) + grain(x + board.width - 18, board.top, 18, board.height, 4)
            }
          />
          <path
            className={styles.wood}
            d={`M${x} ${board.top}h${start}${knot}h${board.width - start - 66 - 20 + 20}v${board.height}h${-board.width}Z`}
          />
        </g>
      ))}
      <path
        className={styles.solid}
        d={`M${loose + 28} ${board.top + 3}c4 14 14 18 12 34s6 14 8 32l6 0c0 -14 -8 -20 -4 -34s-8 -22 -10 -32Z`}
      />
      <path
        className={styles.grain}
        d={`M${loose + 46} ${board.top + 4}q6 30 12 66m4 -66q-2 30 2 66m8 -66q-4 30 -6 66`}
      />
      <path
        className={styles.seal}
        d={`M${clean + 22} ${board.top + board.height + 3}h60M${filled + 22} ${board.top + board.height + 3}h60`}
      />
      <Resin d={`M${filled + start} ${board.top}${knot}q-32 -12 -66 0Z`} />
      <path className={styles.seal} d={`M${filled + start} ${board.top}${knot}`} />
      <Words x={loose} y={20}>
        {['bark, soft', 'wood']}
      </Words>
      <Words x={clean + board.width / 2} y={38} anchor="middle">
        hard wood
      </Words>
      <Words x={filled + board.width / 2} y={38} anchor="middle">
        proud
      </Words>
      <Arrow from={{ x: loose + 36, y: 44 }} to={{ x: loose + 38, y: board.top + 12 }} />
      {[
        { x: loose, words: '1 loose' },
        { x: clean, words: '2 cleaned' },
        { x: filled, words: '3 filled' },
      ].map(({ x, words }) => (
        <Words key={words} x={x + board.width / 2} y={board.top + board.height + 26} anchor="middle">
          {words}
        </Words>
      ))}
      <Words x={size.width / 2 + 56} y={size.height - 8} anchor="middle" muted>
        tape closes the back
      </Words>
    </Drawing>
  );
}
