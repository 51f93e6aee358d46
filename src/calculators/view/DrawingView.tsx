import type { Drawing, DrawingShape } from '../../model/evidence/index.ts';
import styles from './drawing.module.css';

/** What each kind of line is, in a word or two; '' where it needs none. */
export const keyWords: Record<DrawingShape['role'], string> = {
  'outline-now': 'as it is now',
  'outline-dry': 'at its driest',
  'outline-wet': 'at its wettest',
  ring: 'growth rings',
  pith: 'pith',
  stave: 'stave',
  inlay: 'inlay',
  axis: '',
  board: 'board',
  blank: 'blank',
  defect: 'cut out',
  offcut: 'left over',
  place: '',
  edge: 'clean: along the grain or downhill',
  uphill: 'uphill',
  'uphill-steep': 'steeply uphill',
  'end-grain': 'end grain',
  finished: 'finished edge',
  rough: 'rough line: saw',
  left: 'left by the bit',
  grain: 'grain',
};

/** A drawing in line: shapes in millimetres, y upwards, each role with a line pattern of its own and a word for it. */
export function DrawingView({ drawing }: { drawing: Drawing }) {
  const points = drawing.shapes.flatMap((shape) => (shape.role === 'ring' ? [] : shape.points));
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)];
  const pad = Math.max(right - left, top - bottom) * 0.04;
  const box = `${left - pad} ${-top - pad} ${right - left + 2 * pad} ${top - bottom + 2 * pad}`;
  const size = Math.max(right - left, top - bottom) * 0.028;
  const roles = [...new Set(drawing.shapes.map((shape) => shape.role))].filter((role) => keyWords[role]);
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.title}>{drawing.title}</figcaption>
      <svg viewBox={box} className={styles.drawing} role="img" aria-label={drawing.description}>
        <Shapes drawing={drawing} size={size} edge={right + pad} />
      </svg>
      <ul className={styles.legend}>
        {roles.map((role) => (
          <li key={role}>
            <svg viewBox="0 0 32 8" className={styles.key} aria-hidden="true">
              <line className={styles[role]} x1="0" x2="32" y1="4" y2="4" />
            </svg>
            {keyWords[role]}
          </li>
        ))}
      </ul>
      <p className={styles.description}>
        {drawing.description}
        {drawing.exaggeration && drawing.exaggeration > 1
          ? ` Differences are drawn ${drawing.exaggeration} times as large.`
          : ''}
      </p>
    </figure>
  );
}

/**
 * The shapes of a drawing and the words in them.
 *
 * @param size height of the letters, mm of the drawing
 * @param edge x of the right edge of the picture, mm
 */
export function Shapes({ drawing, size, edge }: { drawing: Drawing; size: number; edge: number }) {
  return (
    <g className={styles.shapes}>
      {drawing.shapes.map((shape, index) => (
        // Shapes have no identity beyond their place in the drawing.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <path key={index} className={styles[shape.role]} d={pathOf(shape)} vectorEffect="non-scaling-stroke" />
      ))}
      {drawing.shapes.map((shape, index) =>
        shape.label && written.has(shape.role) ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          <Words key={index} shape={shape} size={size} edge={edge} />
        ) : null,
      )}
    </g>
  );
}

/** Roles whose label is written into the drawing. */
const written: ReadonlySet<DrawingShape['role']> = new Set(['board', 'blank', 'defect', 'offcut', 'place']);

/** Letters are about so wide as a share of their height. */
const letter = 0.55;

/**
 * The label of a shape in its middle; a place carries it beside itself, on the side where there is room before the edge of the picture, a
 * board at its upper edge.
 */
function Words({ shape, size, edge }: { shape: DrawingShape; size: number; edge: number }) {
  const xs = shape.points.map(([x]) => x);
  const ys = shape.points.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [bottom, top] = [Math.min(...ys), Math.max(...ys)];
  const wide = (shape.label?.length ?? 0) * size * letter;
  const fits = right + size * 0.4 + wide <= edge;
  const place =
    shape.role === 'board'
      ? { x: left, y: -top - size * 0.4, anchor: 'start' as const }
      : shape.role === 'place'
        ? {
            x: fits ? right + size * 0.4 : left - size * 0.4,
            y: -top - size * 0.4,
            anchor: fits ? ('start' as const) : ('end' as const),
          }
        : { x: (left + right) / 2, y: -(bottom + top) / 2 + size * 0.35, anchor: 'middle' as const };
  // Words that would not fit stay in the table.
  if (place.anchor === 'middle' && wide > right - left) return null;
  return (
    <text
      x={round(place.x)}
      y={round(place.y)}
      fontSize={round(size)}
      textAnchor={place.anchor}
      className={styles.words}
    >
      {shape.label}
    </text>
  );
}

const round = (value: number) => Math.round(value * 100) / 100;

function pathOf(shape: DrawingShape): string {
  const steps = shape.points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(-y)}`);
  return `${steps.join('')}${shape.closed ? 'Z' : ''}`;
}
