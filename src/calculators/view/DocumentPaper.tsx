import type { CSSProperties } from 'react';
import type { PaperBlock, PaperDocument } from '../../model/evidence/index.ts';
import { eitherPaper as sheet } from '../../model/outline/tiles.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { Blocks } from './DocumentBlocks.tsx';
import { TrueSize } from './DocumentTiles.tsx';
import styles from './document.module.css';
import paper from './paper.module.css';

/** A quarter of what A4 and Letter both leave within their margins, mm. */
export const cardWidth = 87;
export const cardHeight = 119;

const four = ['first', 'second', 'third', 'fourth'] as const;

interface PaperProps {
  document: PaperDocument;
  units: ReaderUnits;
  /** Type, pt; undefined before it is measured, and where none fits. */
  size: number | undefined;
}

const typeOf = (size: number | undefined) =>
  size === undefined ? undefined : ({ '--type-size': `${size}pt` } as CSSProperties);

/** A document as the printer gets it. It stands beside the page and is seen by the printer alone. */
export function Paper({ document, units, size }: PaperProps) {
  return (
    <div
      className={paper.paper}
      data-part="paper"
      data-form={document.form}
      data-title={document.title}
      aria-hidden="true"
    >
      {document.form === 'quarter' && <Quarters document={document} units={units} size={size} />}
      {document.form === 'sheet' && <Face title={document.title} blocks={document.blocks} units={units} size={size} />}
      {document.form === 'true-size' && <TrueSizePaper document={document} units={units} />}
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
  blocks: readonly PaperBlock[];
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

/** Four cards with cutting marks: the same one four times, or up to four of their own. */
export function Quarters({ cards, ...props }: PaperProps & { cards?: readonly PaperDocument['blocks'][] | undefined }) {
  return (
    <div className={paper.quarters}>
      <div className={paper.grid}>
        {four.slice(0, cards?.length ?? four.length).map((place, at) => (
          <Card key={place} {...props} document={{ ...props.document, blocks: cards?.[at] ?? props.document.blocks }} />
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
    <svg className={paper.marks} viewBox={`0 0 ${sheet.width} ${sheet.height}`} aria-hidden="true">
      <title>Cutting marks</title>
      {[left, middle, right].flatMap((x) => [line(x, 0, x, top - 0.5), line(x, bottom + 0.5, x, sheet.height)])}
      {[top, centre, bottom].flatMap((y) => [line(0, y, left - 0.5, y), line(right + 0.5, y, sheet.width, y)])}
      {[line(middle - 2, centre, middle + 2, centre), line(middle, centre - 2, middle, centre + 2)]}
      {[line(middle, top, middle, top + 2), line(middle, bottom - 2, middle, bottom)]}
      {[line(left, centre, left + 2, centre), line(right - 2, centre, right, centre)]}
    </svg>
  );
}

/** What a document at true size says beside its drawings stands on a sheet before theirs. */
export function TrueSizePaper({ document: { title, blocks }, units }: Omit<PaperProps, 'size'>) {
  const words = blocks.filter(({ kind }) => kind !== 'drawing');
  return (
    <>
      {words.length > 0 && <Face title={title} blocks={words} units={units} size={undefined} />}
      {blocks.map((block) =>
        block.kind === 'drawing' ? (
          <TrueSize key={block.drawing.id} drawing={block.drawing} title={title} units={units} />
        ) : null,
      )}
    </>
  );
}
