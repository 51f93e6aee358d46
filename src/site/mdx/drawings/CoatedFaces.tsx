import { Drawing } from './kit/Drawing.tsx';
import styles from './kit/drawings.module.css';
import { arrow, cupped } from './kit/lines.ts';

const size = { width: 340, height: 150 };
const board = { width: 144, thickness: 24, y: 86 };
const film = 4;
const views = [
  { x: 12, rise: -9, faces: 'upper', words: ['one face coated:', 'it cups in damp air'] },
  { x: 184, rise: 0, faces: 'both', words: ['both faces alike:', 'it stays flat'] },
] as const;

/** A board with one face coated, and one with both, in damp air. */
export function CoatedFaces() {
  return (
    <Drawing
      title="One face coated, and both faces coated, in damp air"
      description="Left: a board seen on its end with a coat, a thick line, on its upper face only. Damp air enters through the bare lower face, which swells, and the edges rise: it cups towards the coated face. Right: a board with the same coat on both faces. Damp air reaches both alike and it stays flat."
      {...size}
      caption="The same coat on both faces, or on none. In dry air the one-sided board cups the other way."
    >
      {views.map(({ x, rise, faces, words }) => (
        <g key={words[0]}>
          <path className={styles.wood} d={cupped(x, board.y, { ...board, rise })} />
          <path
            className={styles.seal}
            d={`M${x} ${board.y - board.thickness - film / 2}Q${x + board.width / 2} ${board.y - board.thickness - film / 2 - 2 * rise} ${x + board.width} ${board.y - board.thickness - film / 2}`}
          />
          {faces === 'both' && <path className={styles.seal} d={`M${x} ${board.y + film / 2}h${board.width}`} />}
          {faces === 'upper' &&
            [0.3, 0.5, 0.7].map((part) => (
              <path
                key={part}
                className={styles.arrow}
                d={arrow(
                  { x: x + part * board.width, y: board.y + 28 },
                  { x: x + part * board.width, y: board.y + 13 },
                )}
              />
            ))}
          {words.map((line, at) => (
            <text key={line} x={x + board.width / 2} y={18 + 18 * at} textAnchor="middle">
              {line}
            </text>
          ))}
        </g>
      ))}
      <text x={12 + board.width / 2} y={board.y + 46} textAnchor="middle" className={styles.marks}>
        damp enters here
      </text>
      <text x={184 + board.width / 2} y={board.y + 46} textAnchor="middle" className={styles.marks}>
        thick line: the coat
      </text>
    </Drawing>
  );
}
