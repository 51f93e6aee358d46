import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';
import { Never, Right, Words } from './kit/marks.tsx';

const size = { width: 340, height: 206 };
const board = { y: 74, height: 46, width: 148 };
const [backed, bare] = [8, 184];
const bit = 30;

/** A hole bored over a backing block, and one bored into the air. */
export function BackingBlock() {
  return (
    <Drawing
      title="Boring over a backing block, in section"
      description="Left, right way: the board lies tight on a block of waste wood; the bit goes through the board into the block, and the lower rim stays clean because the fibres have nowhere to go. Right, wrong way: nothing is under the board; the bit pushes the last fibres out and the lower rim is torn."
      {...size}
      caption="Block tight under the board, both clamped. Without a block: until the point shows, then finish from the other side."
    >
      {[backed, bare].map((x) => {
        const middle = x + board.width / 2;
        const bottom = board.y + board.height;
        return (
          <g key={x}>
            <path
              className={styles.grain}
              d={
                grain(x, board.y, board.width / 2 - bit / 2, board.height, 3) +
                grain(middle + bit / 2, board.y, board.width / 2 - bit / 2, board.height, 3)
              }
            />
            <path
              className={styles.wood}
              d={
                box(x, board.y, board.width / 2 - bit / 2, board.height) +
                box(middle + bit / 2, board.y, board.width / 2 - bit / 2, board.height)
              }
            />
            <path
              className={styles.cutter}
              d={`M${middle - bit / 2 + 2} 46h${bit - 4}V${bottom + 4}l${-bit / 2 + 2} 8l${-bit / 2 + 2} -8Z`}
            />
            <path className={styles.solid} d={box(middle - 5, 16, 10, 30)} />
          </g>
        );
      })}
      <path
        className={styles.wood}
        d={`M${backed} ${board.y + board.height + 2}H${backed + board.width / 2 - bit / 2}v5l${bit / 2} 8l${bit / 2} -8v-5H${backed + board.width}v30H${backed}Z`}
      />
      <path
        className={styles.never}
        d={`M${bare + 58} ${board.y + board.height}l-12 12M${bare + 54} ${board.y + board.height}l-14 6M${bare + 90} ${board.y + board.height}l12 12M${bare + 94} ${board.y + board.height}l14 5`}
      />
      <Right x={backed + 20} y={40} />
      <Never x={bare + 20} y={40} />
      <Words x={backed + 4} y={board.y + board.height + 24}>
        block
      </Words>
      <Words x={backed + board.width / 2} y={size.height - 24} anchor="middle">
        clean rim
      </Words>
      <Words x={bare + board.width / 2} y={size.height - 24} anchor="middle">
        torn rim
      </Words>
      <Words x={size.width / 2} y={size.height - 4} anchor="middle" muted>
        the far side, where the bit leaves
      </Words>
    </Drawing>
  );
}
