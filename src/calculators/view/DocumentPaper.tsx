import type { CSSProperties } from 'react';
import type { PaperBlock, PaperDocument } from '../../model/evidence/index.ts';
import { wholeSheets } from '../../model/outline/label-grids.ts';
import { eitherPaper as sheet } from '../../model/outline/tiles.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { panel as cardPanel, cardSides, cardsOn, layCard } from '../kit/card-panels.ts';
import { Blocks } from './DocumentBlocks.tsx';
import { LabelPaper, type LabelWishes } from './DocumentLabels.tsx';
import { TrueSize } from './DocumentTiles.tsx';
import styles from './document.module.css';
import paper from './paper.module.css';

interface PaperProps {
  document: PaperDocument;
  units: ReaderUnits;
  /** Type, pt; undefined before it is measured, and where none fits. */
  size: number | undefined;
}

export const typeOf = (size: number | undefined) =>
  size === undefined ? undefined : ({ '--type-size': `${size}pt` } as CSSProperties);

/** A document as the printer gets it. It stands beside the page and is seen by the printer alone. */
export function Paper({ document, units, size, labels }: PaperProps & { labels?: LabelWishes | undefined }) {
  return (
    <div
      className={paper.paper}
      data-part="paper"
      data-form={document.form}
      data-title={document.title}
      aria-hidden="true"
    >
      {document.form === 'card' && <Cards document={document} units={units} size={size} />}
      {document.form === 'labels' && labels && <LabelPaper labels={[document.blocks]} units={units} {...labels} />}
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

/** One panel of a card. What the reader typed stands in it as text. */
export function Card({
  blocks,
  units,
  size,
}: {
  blocks: readonly PaperBlock[];
  units: ReaderUnits;
  size: number | undefined;
}) {
  return (
    <div className={styles.card} data-part="card" style={typeOf(size)}>
      <Blocks blocks={blocks} units={units} />
    </div>
  );
}

/**
 * Cards with marks to cut and fold at: the same one on as many whole sheets as hold those that are needed, or cards of their own. A card of more than two panels has
 * an inside, which is a sheet of its own for the back of the paper.
 */
export function Cards({
  document,
  cards,
  needed = 1,
  units,
  size,
}: PaperProps & { cards?: readonly PaperDocument['blocks'][] | undefined; needed?: number | undefined }) {
  const laid = (cards ?? [document.blocks]).map(layCard);
  const most = Math.max(...laid.map(({ panels }) => panels.length));
  const type = size ?? Math.min(...laid.map((one) => one.size));
  const count = cards?.length ?? wholeSheets(needed, cardsOn(most));
  return cardSides(count, most).map(({ quarters }, side) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a side of a sheet has no other name than its place
    <div key={side} className={paper.quarters} data-part="card-side">
      <div className={paper.grid}>
        {quarters.map((place, at) => (
          <Card
            // biome-ignore lint/suspicious/noArrayIndexKey: so has a quarter of it
            key={at}
            blocks={(place && laid[cards ? place.card : 0]?.panels[place.panel]) ?? []}
            units={units}
            size={type}
          />
        ))}
      </div>
      <Marks folded={most > 1} />
    </div>
  ));
}

/** Cutting marks, mm: lines each way, drawn outside the cards, and where four meet a small cross; a card that is folded is not cut in its middle. */
function Marks({ folded }: { folded: boolean }) {
  const { width, height } = cardPanel;
  const [left, middle, right] = [3, 3 + width, 3 + 2 * width];
  const [top, centre, bottom] = [3, 3 + height, 3 + 2 * height];
  const line = (x1: number, y1: number, x2: number, y2: number) => (
    <line key={`${x1},${y1},${x2},${y2}`} x1={x1} y1={y1} x2={x2} y2={y2} />
  );
  const upright = folded ? [left, right] : [left, middle, right];
  return (
    <svg className={paper.marks} viewBox={`0 0 ${sheet.width} ${sheet.height}`} aria-hidden="true">
      <title>Cutting marks</title>
      {upright.flatMap((x) => [line(x, 0, x, top - 0.5), line(x, bottom + 0.5, x, sheet.height)])}
      {[top, centre, bottom].flatMap((y) => [line(0, y, left - 0.5, y), line(right + 0.5, y, sheet.width, y)])}
      {folded ? (
        <>
          <path d={`M${middle} 0v2M${middle} ${sheet.height}v-2`} className={paper.fold} />
          <text x={middle + 1} y={2}>
            fold
          </text>
        </>
      ) : (
        [line(middle - 2, centre, middle + 2, centre), line(middle, centre - 2, middle, centre + 2)]
      )}
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
