import { type CSSProperties, useEffect, useRef, useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import { readInputs } from '../kit/answer.ts';
import type { RawInputs } from '../kit/calculator.ts';
import frame from '../view/frame.module.css';
import { Heading, type HeadingLevel } from '../view/Heading.tsx';
import { cardInputs, careCardCalculator } from './calculator.ts';
import { type Card, cardOf } from './card.ts';
import styles from './cards.module.css';
import { fittingSize, smallestEasy } from './fit.ts';

/** Type of a card before it is measured, pt. */
const startingSize = 7;

/** What the style of this part looks for on the root while a sheet of cards is printed. */
const printing = 'care-cards';
const four = ['first', 'second', 'third', 'fourth'] as const;

/** The card as it will look, and a sheet of four of them for the printer. */
export function Cards({ asked, headingLevel }: { asked: RawInputs; headingLevel: HeadingLevel }) {
  const read = readInputs(careCardCalculator, asked);
  if (!read.ok) return null;
  return <Printable card={cardOf(cardInputs(read.value)).card} headingLevel={headingLevel} />;
}

/** A card in the largest type that fits, and the button that prints it. */
function Printable({ card, headingLevel }: { card: Card; headingLevel: HeadingLevel }) {
  const preview = useRef<HTMLDivElement>(null);
  const [live, setLive] = useState(false);
  // As the server draws it: before it is measured.
  const [size, setSize] = useState<number | undefined>(startingSize);
  const text = JSON.stringify(card);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is what is measured, once React has drawn it
  useEffect(() => {
    const measure = () => {
      const face = preview.current?.firstElementChild;
      if (face instanceof HTMLElement) setSize(fittingSize(face, styles.trial ?? ''));
    };
    const measureNow = () => flushSync(measure);
    const done = () => {
      document.documentElement.removeAttribute('data-printing');
    };
    setLive(true);
    measure();
    // Where a face arrives late, the card is measured again; and once more before the paper comes.
    document.fonts?.addEventListener('loadingdone', measure);
    window.addEventListener('beforeprint', measureNow);
    window.addEventListener('afterprint', done);
    return () => {
      document.fonts?.removeEventListener('loadingdone', measure);
      window.removeEventListener('beforeprint', measureNow);
      window.removeEventListener('afterprint', done);
      done();
    };
  }, [text]);
  const print = () => {
    document.documentElement.setAttribute('data-printing', printing);
    window.print();
  };
  return (
    <section data-part="cards" className={styles.part}>
      <Heading level={headingLevel}>The card, to print</Heading>
      <div ref={preview} className={styles.preview}>
        <CardFace card={card} size={size} />
      </div>
      <div className={frame.actions}>
        <button type="button" className={frame.button} onClick={print}>
          Print four to a sheet
        </button>
      </div>
      <p className={styles.help}>
        A4 or Letter, at 100 %. Thick paper; cut at the marks: each card is 87 × 119 mm (3 7/16 × 4 11/16 in).
      </p>
      {(size ?? 0) < smallestEasy && (
        <p role="status" className={styles.help}>
          {size
            ? `So much stands on the card that it is set in ${size} pt, hard to read in a kitchen. A shorter note gives larger type.`
            : 'More stands on the card than it can hold in any type. Shorten the note, or the names.'}
        </p>
      )}
      {live && createPortal(<Sheet card={card} size={size} />, document.body)}
    </section>
  );
}

/** Four cards with cut marks. It stands beside the page and is seen by the printer alone. */
function Sheet({ card, size }: { card: Card; size: number | undefined }) {
  return (
    <div className={styles.sheet} data-part="care-cards" aria-hidden="true">
      <div className={styles.grid}>
        {four.map((place) => (
          <CardFace key={place} card={card} size={size} />
        ))}
      </div>
      <Marks />
    </div>
  );
}

/** Cut marks, mm: three lines each way, drawn outside the cards and as a small cross where four meet. */
function Marks() {
  const [left, middle, right] = [3, 90, 177];
  const [top, centre, bottom] = [3, 122, 241];
  const line = (x1: number, y1: number, x2: number, y2: number) => (
    <line key={`${x1},${y1},${x2},${y2}`} x1={x1} y1={y1} x2={x2} y2={y2} />
  );
  return (
    <svg className={styles.marks} viewBox="0 0 180 244" aria-hidden="true">
      <title>Cut marks</title>
      {[left, middle, right].flatMap((x) => [line(x, 0, x, top - 0.5), line(x, bottom + 0.5, x, 244)])}
      {[top, centre, bottom].flatMap((y) => [line(0, y, left - 0.5, y), line(right + 0.5, y, 180, y)])}
      {[line(middle - 2, centre, middle + 2, centre), line(middle, centre - 2, middle, centre + 2)]}
      {[line(middle, top, middle, top + 2), line(middle, bottom - 2, middle, bottom)]}
      {[line(left, centre, left + 2, centre), line(right - 2, centre, right, centre)]}
    </svg>
  );
}

/** One card. What the reader typed stands in it as text. */
function CardFace({ card, size }: { card: Card; size: number | undefined }) {
  const style = size === undefined ? undefined : ({ '--card-size': `${size}pt` } as CSSProperties);
  const { shop, made, purpose, sections, allergies, note, foot } = card;
  return (
    <div className={styles.card} data-part="card" style={style}>
      {shop && <p className={styles.shop}>{shop}</p>}
      <p className={styles.title}>Care of your board</p>
      <p>
        {made.join(' ')} <strong>{purpose}</strong>
      </p>
      {sections.map(({ id, heading, lines }) => (
        <div key={id} className={styles.section}>
          <p className={styles.heading}>{heading}</p>
          {lines.map(({ text }) => (
            <p key={text}>{text}</p>
          ))}
        </div>
      ))}
      {allergies.map((line) => (
        <p key={line}>
          <strong>{line}</strong>
        </p>
      ))}
      {note && <p className={styles.note}>{note}</p>}
      <p className={styles.foot}>
        {foot.map((line) => (
          <span key={line} data-blank={line.endsWith(':') || undefined}>
            {line}
          </span>
        ))}
      </p>
    </div>
  );
}
