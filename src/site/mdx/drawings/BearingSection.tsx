import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { box, grain } from './kit/lines.ts';

const size = { width: 340, height: 226 };
const part = { width: 96, template: 30, board: 54, top: 58 };
const bit = { width: 28, bearing: 16, shank: 10 };
const bottom = part.top + part.template + part.board;

const views = [
  {
    x: 4,
    words: ['bearing by the shank', 'template on top'],
    template: part.top,
    board: part.top + part.template,
    bearing: part.top + 6,
    edge: [part.top + 6 + bit.bearing, bottom + 8],
  },
  {
    x: 178,
    words: ['bearing at the tip', 'template below'],
    template: part.top + part.board,
    board: part.top,
    bearing: part.top + part.board + 7,
    edge: [part.top - 8, part.top + part.board + 7],
  },
] as const;

/** A template bit in section, its bearing over the cutting edge and under it. */
export function BearingSection() {
  return (
    <Drawing
      title="A template bit in section: bearing by the shank, and bearing at the tip"
      description="Left: the template lies on the board. The bearing sits between shank and cutting edge and runs on the template; the edge below it cuts the board. Right: the template lies under the board. The bearing sits at the tip, below the cutting edge, and runs on the template; the edge above it must be longer than the board is thick. In both the bearing is as wide as the edge, so the board gets the template’s size."
      {...size}
      caption="Black: shank and bearing; dashed: the cutting edge. The bearing must lie on the template before the edge meets the wood: look from the side, with the router unplugged."
    >
      {views.map(({ x, words, template, board, bearing, edge: [from, to] }) => {
        const middle = x + part.width + bit.width / 2;
        return (
          <g key={words[0]}>
            <path className={styles.wood} d={box(x, template, part.width, part.template)} />
            <path className={styles.wood} d={box(x, board, part.width, part.board)} />
            <path className={styles.grain} d={grain(x, board, part.width, part.board, 4)} />
            <path className={styles.paper} d={box(x + 20, board + 16, 56, 22)} />
            <text x={x + part.width / 2} y={template + part.template / 2 + 5} textAnchor="middle">
              template
            </text>
            <text x={x + part.width / 2} y={board + part.board / 2 + 5} textAnchor="middle">
              board
            </text>
            <path
              className={styles.solid}
              d={box(middle - bit.shank / 2, 16, bit.shank, Math.min(bearing, from) - 16)}
            />
            <path className={styles.cutter} d={box(middle - bit.width / 2, from, bit.width, to - from)} />
            <path className={styles.solid} d={box(middle - bit.width / 2, bearing, bit.width, bit.bearing)} />
            <text x={x} y={bottom + 42}>
              {words[0]},
            </text>
            <text x={x} y={bottom + 60}>
              {words[1]}
            </text>
          </g>
        );
      })}
    </Drawing>
  );
}
