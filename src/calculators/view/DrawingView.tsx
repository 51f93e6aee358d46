import type { CSSProperties } from 'react';
import type { Drawing } from '../../model/evidence/index.ts';
import {
  type DrawingMarks,
  drawingInReaderUnits,
  drawingWords,
  keyRoles,
  keyWords,
  pictureOf,
  type WordsMark,
} from '../kit/drawing-marks.ts';
import styles from './drawing.module.css';
import { useUnits } from './units.tsx';

interface DrawingProps {
  drawing: Drawing;
  /** Drawn at 1 to this; as wide as there is room where left out. */
  scale?: number | undefined;
}

/** A drawing in line: shapes in millimetres, y upwards, each role with a line pattern of its own and a word for it. */
export function DrawingView({ drawing: marked, scale }: DrawingProps) {
  const drawing = drawingInReaderUnits(marked, useUnits());
  const { box, marks } = pictureOf(drawing);
  const atScale =
    scale === undefined
      ? undefined
      : ({ width: `${box[2] / scale}mm`, height: `${box[3] / scale}mm` } as CSSProperties);
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.title}>{drawing.title}</figcaption>
      <svg
        viewBox={box.join(' ')}
        className={atScale ? styles.scaled : styles.drawing}
        style={atScale}
        role="img"
        // The sentence below says what is drawn: here it would be heard twice.
        aria-label={drawing.title}
      >
        <Shapes marks={marks} />
      </svg>
      <ul className={styles.legend}>
        {keyRoles(drawing.shapes).map((role) => (
          <li key={role}>
            <svg viewBox="0 0 32 8" className={styles.key} aria-hidden="true">
              <line className={styles[role]} x1="0" x2="32" y1="4" y2="4" />
            </svg>
            {keyWords[role]}
          </li>
        ))}
      </ul>
      <p className={styles.description}>{drawingWords(drawing, scale)}</p>
    </figure>
  );
}

/** The shapes of a drawing and the words in them. */
export function Shapes({ marks: { lines, words } }: { marks: DrawingMarks }) {
  return (
    <g className={styles.shapes}>
      {lines.map(({ role, path }, index) => (
        // Shapes have no identity beyond their place in the drawing.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <path key={index} className={styles[role]} d={path} vectorEffect="non-scaling-stroke" />
      ))}
      {words.map((each, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        <Words key={index} words={each} inside />
      ))}
    </g>
  );
}

/** Words of a picture; those inside a drawing take its colour and face. */
export function Words({ words: { x, y, size, anchor, text }, inside }: { words: WordsMark; inside?: boolean }) {
  return (
    <text x={x} y={y} fontSize={size} textAnchor={anchor} className={inside ? styles.words : undefined}>
      {text}
    </text>
  );
}
