import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box } from './kit/lines.ts';
import { Arrow, EndGrain, Words } from './kit/marks.tsx';

const size = { width: 340, height: 196 };
const stack = { x: 60, width: 220, board: 20, sticker: 9, boards: 4, foot: 158 };
const at = [8, 104, 200];

/** A stack on stickers that stand in line, seen from the side. */
export function StickeredStack() {
  const level = (row: number) => stack.foot - 12 - (row + 1) * (stack.board + stack.sticker);
  const rows = Array.from({ length: stack.boards }, (_, row) => level(row));
  return (
    <Drawing
      title="A stickered stack, seen from the side"
      description="Four boards above each other on dry stickers of one thickness. The stickers stand exactly above one another and above the bearers on the floor, one close to either end and others between; weight lies on top, over the stickers. Air passes between all boards."
      {...size}
      caption="Dry stickers of one thickness, one above the other, close to both ends; weight over them; air past every face."
    >
      <path className={styles.axis} d={`M4 ${stack.foot + 8}h332`} />
      {rows.map((y) => (
        <g key={y}>
          <path
            className={styles.grain}
            d={`M${stack.x} ${y + stack.board / 3}h${stack.width}M${stack.x} ${y + (2 * stack.board) / 3}h${stack.width}`}
          />
          <path className={styles.wood} d={box(stack.x, y, stack.width, stack.board)} />
          {at.map((along) => (
            <path key={along} className={styles.solid} d={box(stack.x + along, y + stack.board, 12, stack.sticker)} />
          ))}
        </g>
      ))}
      {at.map((along) => (
        <g key={along}>
          <EndGrain
            x={stack.x + along - 4}
            y={stack.foot - 12}
            width={20}
            height={20}
            pith={{ x: 10, y: 30 }}
            apart={5}
          />
          <path className={styles.line} d={`M${stack.x + along + 6} ${rows.at(-1)}v-12`} />
          <path className={styles.wood} d={box(stack.x + along - 4, (rows.at(-1) ?? 0) - 22, 20, 20)} />
        </g>
      ))}
      <Words x={stack.x + 62} y={(rows.at(-1) ?? 0) - 6} anchor="middle">
        weight
      </Words>
      <Arrow from={{ x: 6, y: 92 }} to={{ x: stack.x - 4, y: 92 }} heavy />
      <Arrow from={{ x: stack.x + stack.width + 4, y: 92 }} to={{ x: size.width - 6, y: 92 }} heavy />
      <Words x={28} y={82} anchor="middle">
        air
      </Words>
      <Words x={size.width / 2} y={stack.foot + 28} anchor="middle">
        stickers in one line
      </Words>
    </Drawing>
  );
}
