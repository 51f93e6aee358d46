import { useContext } from 'react';
import { Hatching } from './Drawing.tsx';
import styles from './drawings.module.css';
import { arrow, box, measure, type Point, rings } from './lines.ts';

/** From the foot of one line of letters to that of the next. */
export const lineHeight = 18;

interface WordsProps {
  x: number;
  /** Foot of the first line. */
  y: number;
  anchor?: 'middle' | 'end';
  /** What only names a thing, beside what says what to do. */
  muted?: boolean;
  children: string | readonly string[];
}

/** Letters of a drawing, a line each. */
export function Words({ x, y, anchor, muted = false, children }: WordsProps) {
  const lines = typeof children === 'string' ? [children] : children;
  return lines.map((line, at) => (
    <text key={line} x={x} y={y + at * lineHeight} textAnchor={anchor} className={muted ? styles.marks : undefined}>
      {line}
    </text>
  ));
}

/** Resin: a tint for the screen and a hatching for every eye and for paper, within an outline of its own. */
export function Resin({ d }: { d: string }) {
  const hatching = useContext(Hatching);
  return (
    <>
      <path className={styles.resin} d={d} />
      <path fill={`url(#${hatching})`} d={d} />
    </>
  );
}

/** A thin line that leads from words to what they name, or says which way; its head is at its end. */
export function Arrow({ from, to, heavy = false }: { from: Point; to: Point; heavy?: boolean }) {
  return <path className={heavy ? styles.arrow : styles.dimension} d={arrow(from, to)} />;
}

/** A measure with a head at either end. */
export function Measure({ from, to }: { from: Point; to: Point }) {
  return <path className={styles.dimension} d={measure(from, to)} />;
}

interface EndGrainProps {
  x: number;
  y: number;
  width: number;
  height: number;
  /** Middle of the tree, from the upper left corner of the piece. */
  pith: Point;
  /** From ring to ring. */
  apart?: number;
}

/** A piece of wood seen on its end: heavy outline, rings around the middle of the tree as thin lines. */
export function EndGrain({ x, y, width, height, pith, apart = 8 }: EndGrainProps) {
  return (
    <>
      <svg aria-hidden="true" x={x} y={y} width={width} height={height}>
        <path className={styles.grain} d={rings(width, height, pith, apart)} />
      </svg>
      <path className={styles.wood} d={box(x, y, width, height)} />
    </>
  );
}

/** A sign that says that something is not to be done: two crossing strokes. */
export function Never({ x, y, size = 9 }: Point & { size?: number }) {
  return (
    <path
      className={styles.never}
      d={`M${x - size} ${y - size}l${2 * size} ${2 * size}m0 ${-2 * size}l${-2 * size} ${2 * size}`}
    />
  );
}

/** A sign that says that it is right so: a tick. */
export function Right({ x, y }: Point) {
  return <path className={styles.never} d={`M${x - 8} ${y}l6 7l11 -15`} />;
}
