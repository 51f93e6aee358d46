import type { CSSProperties } from 'react';
import type { Block, Drawing, ResultDocument } from '../../model/evidence/index.ts';
import { partsOf } from '../../model/outline/tiles.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { Blocks } from './DocumentBlocks.tsx';
import { Shapes } from './DrawingView.tsx';
import styles from './document.module.css';

/** A quarter of what A4 and Letter both leave within their margins, mm. */
export const cardWidth = 87;
export const cardHeight = 119;

/** What A4 and Letter both leave within their margins, mm. */
const sheet = { width: 180, height: 244 };
/** The strip at the foot of a sheet at true size, for its name and the bar, mm. */
const foot = 16;
/** Length of the bar to measure, mm. */
const bar = 100;

const four = ['first', 'second', 'third', 'fourth'] as const;

interface PaperProps {
  document: ResultDocument;
  units: ReaderUnits;
  /** Type, pt; undefined before it is measured, and where none fits. */
  size: number | undefined;
}

const typeOf = (size: number | undefined) =>
  size === undefined ? undefined : ({ '--type-size': `${size}pt` } as CSSProperties);

/** A document as the printer gets it. It stands beside the page and is seen by the printer alone. */
export function Paper({ document, units, size }: PaperProps) {
  return (
    <div className={styles.paper} data-part="paper" data-form={document.form} aria-hidden="true">
      {document.form === 'quarter' && <Quarters document={document} units={units} size={size} />}
      {document.form === 'sheet' && <Face title={document.title} blocks={document.blocks} units={units} size={size} />}
      {document.form === 'true-size' && <TrueSize document={document} units={units} />}
    </div>
  );
}

function Face({
  title,
  blocks,
  units,
  size,
}: {
  title: string;
  blocks: readonly Block[];
  units: ReaderUnits;
  size: number | undefined;
}) {
  return (
    <div className={styles.face} style={typeOf(size)}>
      <p className={styles.title}>{title}</p>
      <Blocks blocks={blocks} units={units} />
    </div>
  );
}

/** One card. What the reader typed stands in it as text. */
export function Card({ document, units, size }: PaperProps) {
  return (
    <div className={styles.card} data-part="card" style={typeOf(size)}>
      <Blocks blocks={document.blocks} units={units} />
    </div>
  );
}

/** Four cards with cutting marks. */
function Quarters(props: PaperProps) {
  return (
    <div className={styles.quarters}>
      <div className={styles.grid}>
        {four.map((place) => (
          <Card key={place} {...props} />
        ))}
      </div>
      <Marks />
    </div>
  );
}

/** Cutting marks, mm: three lines each way, drawn outside the cards and as a small cross where four meet. */
function Marks() {
  const [left, middle, right] = [3, 3 + cardWidth, 3 + 2 * cardWidth];
  const [top, centre, bottom] = [3, 3 + cardHeight, 3 + 2 * cardHeight];
  const line = (x1: number, y1: number, x2: number, y2: number) => (
    <line key={`${x1},${y1},${x2},${y2}`} x1={x1} y1={y1} x2={x2} y2={y2} />
  );
  return (
    <svg className={styles.marks} viewBox={`0 0 ${sheet.width} ${sheet.height}`} aria-hidden="true">
      <title>Cutting marks</title>
      {[left, middle, right].flatMap((x) => [line(x, 0, x, top - 0.5), line(x, bottom + 0.5, x, sheet.height)])}
      {[top, centre, bottom].flatMap((y) => [line(0, y, left - 0.5, y), line(right + 0.5, y, sheet.width, y)])}
      {[line(middle - 2, centre, middle + 2, centre), line(middle, centre - 2, middle, centre + 2)]}
      {[line(middle, top, middle, top + 2), line(middle, bottom - 2, middle, bottom)]}
      {[line(left, centre, left + 2, centre), line(right - 2, centre, right, centre)]}
    </svg>
  );
}

/** Drawings at true size, cut into sheets that overlap; what else the document says stands on a sheet before them. */
function TrueSize({ document: { title, blocks }, units }: Omit<PaperProps, 'size'>) {
  const words = blocks.filter(({ kind }) => kind !== 'drawing');
  const drawings = blocks.flatMap((block) => (block.kind === 'drawing' ? [block.drawing] : []));
  return (
    <>
      {words.length > 0 && <Face title={title} blocks={words} units={units} size={undefined} />}
      {drawings.map((drawing) => (
        <Tiles key={drawing.id} drawing={drawing} title={title} units={units} />
      ))}
    </>
  );
}

function Tiles({ drawing, title, units }: { drawing: Drawing; title: string; units: ReaderUnits }) {
  const points = drawing.shapes.flatMap((shape) => shape.points);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, bottom] = [Math.min(...xs), Math.min(...ys)];
  const part = { width: sheet.width, height: sheet.height - foot };
  const { tiles, marks, columns, rows } = partsOf(Math.max(...xs) - left, Math.max(...ys) - bottom, part);
  return tiles.map((tile) => {
    // Its upper left corner in the picture, whose y runs downwards.
    const [x, y] = [left + tile.x, -(bottom + tile.y + part.height)];
    return (
      <div key={`${tile.row},${tile.column}`} className={styles.tile}>
        <svg
          viewBox={`${x} ${y} ${part.width} ${part.height}`}
          style={{ width: `${part.width}mm`, height: `${part.height}mm` }}
          aria-hidden="true"
        >
          <title>{drawing.title}</title>
          <Shapes drawing={drawing} size={4} edge={x + part.width} />
          {marks.map((mark) => (
            <path
              key={`${mark.x},${mark.y}`}
              className={styles.cross}
              d={`M${left + mark.x - 4} ${-(bottom + mark.y)}h8m-4 -4v8`}
            />
          ))}
        </svg>
        <svg
          viewBox={`0 0 ${part.width} ${foot}`}
          style={{ width: `${part.width}mm`, height: `${foot}mm` }}
          aria-hidden="true"
        >
          <title>Bar to measure</title>
          <path className={styles.bar} d={`M1 4v4h${bar}v-4m${-bar / 2} 2v2`} />
          <text x={bar + 4} y={8} fontSize={3.6}>
            {formatQuantity(bar, 'mm', units)}: measure it
          </text>
          <text x={1} y={14} fontSize={3.6}>
            {title}, {drawing.title}
            {tiles.length > 1 && `: row ${tile.row} of ${rows}, column ${tile.column} of ${columns}`}
          </text>
        </svg>
      </div>
    );
  });
}
