import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import { eitherPart as part, eitherPaper as sheet, tilesForEither } from '../../model/outline/tiles.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { keyWords, Shapes } from './DrawingView.tsx';
import drawn from './drawing.module.css';
import styles from './paper.module.css';

/** Length of the bars to measure, mm. */
const bar = 100;
/** Height of the letters at the foot, mm, and their width as a share of it. */
const letters = 2.3;
const letterWidth = 0.52;

interface TrueSizeProps {
  drawing: Drawing;
  title: string;
  units: ReaderUnits;
}

/**
 * A drawing at true size, cut into sheets that overlap: a bar to measure along and another up the side of each, crosses where
 * neighbours lap, and at its foot which sheet it is, of what, and what its lines are.
 */
export function TrueSize({ drawing, title, units }: TrueSizeProps) {
  const whole = extent(drawing.shapes);
  const { tiles, marks, columns, rows, overlap, turned } = tilesForEither(whole.width, whole.height);
  const shown = turned ? quarterTurn(drawing) : drawing;
  const { left, bottom } = turned ? extent(shown.shapes) : whole;
  return tiles.map((tile) => {
    // Its upper left corner in the picture, whose y runs downwards.
    const [x, y] = [left + tile.x, -(bottom + tile.y + part.height)];
    return (
      <div key={`${tile.row},${tile.column}`} className={styles.tile}>
        <svg
          viewBox={`0 0 ${sheet.width} ${sheet.height}`}
          style={{ width: `${sheet.width}mm`, height: `${sheet.height}mm` }}
          aria-hidden="true"
        >
          <title>{drawing.title}</title>
          <svg
            x={sheet.side}
            y={0}
            width={part.width}
            height={part.height}
            viewBox={`${x} ${y} ${part.width} ${part.height}`}
          >
            <title>{drawing.title}</title>
            <Shapes drawing={shown} size={4} edge={x + part.width} />
            {marks.map((mark) => (
              <path
                key={`${mark.x},${mark.y}`}
                className={styles.cross}
                d={`M${left + mark.x - 4} ${-(bottom + mark.y)}h8m-4 -4v8`}
              />
            ))}
          </svg>
          <rect className={styles.cut} x={sheet.side} y={0} width={part.width} height={part.height} />
          <path className={styles.bar} d={`M${sheet.side} ${part.height + 3}v-2m0 1h${bar}m0 -1v2m${-bar / 2} -2v2`} />
          <path className={styles.bar} d={`M${sheet.side - 3} ${part.height}h-2m1 0v${-bar}m-1 0h2m-2 ${bar / 2}h2`} />
          <Foot
            lines={[
              `${formatQuantity(bar, 'mm', units)} along and up the side: print at 100 %, measure both.`,
              tiles.length > 1
                ? `Cut at the dotted line, lay cross on cross: neighbours share ${formatQuantity(overlap, 'mm', units)}.`
                : 'All on this one sheet.',
            ]}
            at={sheet.side}
            first={1}
          />
          <Foot
            lines={[`Row ${tile.row} of ${rows}, column ${tile.column} of ${columns}`, title]}
            at={sheet.side + bar + 4}
            first={0}
          />
          <Key shapes={drawing.shapes} at={sheet.side + bar + 4} />
        </svg>
      </div>
    );
  });
}

/** Base lines of the three lines of words at the foot. */
const baseLine = (line: number) => part.height + letters + line * 2.65;

function Foot({ lines, at, first }: { lines: readonly string[]; at: number; first: number }) {
  return lines.map((line, index) => (
    <text key={line} x={at} y={baseLine(first + index)} fontSize={letters}>
      {line}
    </text>
  ));
}

/** What each kind of line is. */
function Key({ shapes, at }: { shapes: readonly DrawingShape[]; at: number }) {
  const roles = [...new Set(shapes.map(({ role }) => role))].filter((role) => keyWords[role]);
  const y = baseLine(2);
  let x = at;
  return roles.map((role) => {
    const from = x;
    x += 11 + keyWords[role].length * letters * letterWidth;
    return (
      <g key={role} className={drawn.shapes}>
        <path className={drawn[role]} d={`M${from} ${y - letters / 3}h7`} vectorEffect="non-scaling-stroke" />
        <text x={from + 8} y={y} fontSize={letters} className={drawn.words}>
          {keyWords[role]}
        </text>
      </g>
    );
  });
}

function extent(shapes: readonly DrawingShape[]): { left: number; bottom: number; width: number; height: number } {
  const points = shapes.flatMap((shape) => shape.points);
  const least = (at: 0 | 1) => points.reduce((low, point) => Math.min(low, point[at]), Number.POSITIVE_INFINITY);
  const most = (at: 0 | 1) => points.reduce((high, point) => Math.max(high, point[at]), Number.NEGATIVE_INFINITY);
  const [left, bottom] = [least(0), least(1)];
  return { left, bottom, width: most(0) - left, height: most(1) - bottom };
}

const quarterTurn = (drawing: Drawing): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.map((shape) => ({ ...shape, points: shape.points.map(([x, y]) => [-y, x] as const) })),
});
