import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Arrow, Never, Resin, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 222 };
const board = { width: 150, height: 112, y: 44 };
const [along, across] = [6, 184];

/** A rigid inlay along the grain, and one across it: only one of them lets the board move. */
export function RigidInlay() {
  return (
    <Drawing
      title="A rigid inlay along the grain, and across it, seen from above"
      description="Two wide boards whose grain runs from left to right. Left, good: the inlay runs along the grain; the board grows and shrinks across the grain, at right angles to the inlay, and only the inlay’s own narrow width has to follow. Right, bad: the inlay runs across the grain over the whole width; wood does move across there and the inlay does not, so the joint opens at the ends or the board cracks beside it."
      {...size}
      caption="Wood moves across its grain and hardly along it. An inlay along the grain is carried; one across a wide board holds it fast, until it cracks."
    >
      {[along, across].map((x) => (
        <g key={x}>
          <path className={styles.grain} d={grain(x, board.y, board.width, board.height, 7)} />
          <path className={styles.wood} d={box(x, board.y, board.width, board.height)} />
          <Arrow from={{ x: x + 22, y: board.y + board.height / 2 - 20 }} to={{ x: x + 22, y: board.y + 6 }} heavy />
          <Arrow
            from={{ x: x + 22, y: board.y + board.height / 2 + 20 }}
            to={{ x: x + 22, y: board.y + board.height - 6 }}
            heavy
          />
        </g>
      ))}
      <Resin d={box(along + 38, board.y + board.height / 2 - 7, board.width - 52, 14)} />
      <Resin d={box(across + 76, board.y + 6, 14, board.height - 12)} />
      <path
        className={styles.never}
        d={`M${across + 94} ${board.y + 26}l18 3l12 -3l22 4M${across + 94} ${board.y + 84}l14 -3l18 4l20 -2`}
      />
      <Right x={along + board.width / 2} y={28} />
      <Never x={across + board.width / 2} y={26} />
      <Words x={along + board.width / 2} y={board.y + board.height + 22} anchor="middle">
        along: it lasts
      </Words>
      <Words x={across + board.width / 2} y={board.y + board.height + 22} anchor="middle">
        across: cracks
      </Words>
      <Words x={size.width / 2} y={size.height - 8} anchor="middle" muted>
        arrows: how the wood moves
      </Words>
    </Drawing>
  );
}
