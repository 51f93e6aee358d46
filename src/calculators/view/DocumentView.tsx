import { type RefObject, useEffect, useRef, useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import type { Caution, ResultDocument } from '../../model/evidence/index.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { documentText } from '../kit/document-text.ts';
import { Blocks } from './DocumentBlocks.tsx';
import { Card, cardHeight, cardWidth, Paper } from './DocumentPaper.tsx';
import styles from './document.module.css';
import { cardSizes, fittingSize, sheetSizes, smallestEasy } from './fit.ts';
import form from './form.module.css';
import frame from './frame.module.css';
import { Heading, type HeadingLevel } from './Heading.tsx';
import { onScreen } from './on-screen.ts';

/** Type of a card before it is measured, pt. */
const startingSize = 7;

/** What the style looks for on the root while a document is printed by itself. */
const alone = 'document';

interface DocumentViewProps {
  document: ResultDocument;
  units: ReaderUnits;
  headingLevel: HeadingLevel;
  /** Cautions of the answer that it belongs to, and those that the page around says: on the screen they are not said again. */
  beside?: readonly Caution[] | undefined;
  said?: readonly Caution[] | undefined;
}

const textsOf = (cautions: readonly Caution[] = []) => cautions.map(({ text }) => text);

/** A document as it will look, and the buttons that print it without the page around it and copy its text. */
export function DocumentView({ document: shown, units, headingLevel, beside, said }: DocumentViewProps) {
  const preview = useRef<HTMLDivElement>(null);
  const cardSize = useCardSize(shown, preview);
  const { printing, sheetSize, print } = usePrinting();
  const [copied, setCopied] = useState('');
  const [open, setOpen] = useState(false);
  const quarter = shown.form === 'quarter';
  const size = quarter ? cardSize : sheetSize;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(documentText(shown, units));
      setCopied('Copied.');
    } catch {
      setCopied('This browser does not copy: mark the text and copy it by hand.');
    }
  };
  const stands = (
    <div ref={preview} className={styles.preview}>
      {quarter ? (
        <Card document={shown} units={units} size={cardSize} />
      ) : (
        <div className={styles.shown}>
          <Blocks
            blocks={onScreen(shown.blocks, textsOf(beside))}
            said={textsOf(said)}
            units={units}
            level={Math.min(6, headingLevel + 1) as HeadingLevel}
          />
        </div>
      )}
    </div>
  );
  return (
    <section data-part="document" data-document={shown.id} className={styles.document} aria-label={shown.title}>
      <Heading level={headingLevel}>{shown.title}</Heading>
      {shown.help && <p className={styles.help}>{shown.help}</p>}
      {shown.folded ? (
        // Drawn once it is looked at: the answer holds the same.
        <details className={styles.folded} onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary className={form.summary}>What stands on it</summary>
          {open && stands}
        </details>
      ) : (
        stands
      )}
      <div className={`${frame.actions} ${styles.actions}`}>
        <button type="button" className={frame.button} onClick={print}>
          Print this sheet
        </button>
        <button type="button" className={frame.button} onClick={() => void copy()}>
          Copy
        </button>
        <span className={frame.copied} role="status">
          {copied}
        </span>
      </div>
      <p className={`${styles.help} no-print`}>{paperWords[shown.form](units)}</p>
      {quarter && (cardSize ?? 0) < smallestEasy && (
        <p role="status" className={`${styles.help} no-print`}>
          {cardSize
            ? `So much stands on it that it is set in ${cardSize} pt, hard to read in a kitchen. Less text gives larger type.`
            : 'More stands on it than a quarter sheet can hold in any type. Shorten what you typed.'}
        </p>
      )}
      {printing && createPortal(<Paper document={shown} units={units} size={size} />, document.body)}
    </section>
  );
}

const paperWords: Readonly<Record<ResultDocument['form'], (units: ReaderUnits) => string>> = {
  sheet: () => 'A4 or Letter, by itself, without the page around it.',
  quarter: (units) =>
    `Four to a sheet, A4 or Letter, at 100 %. Thick paper; cut at the marks: each is ${formatQuantity(cardWidth, 'mm', units)} × ${formatQuantity(cardHeight, 'mm', units)}.`,
  'true-size': (units) =>
    `At true size, on as many sheets of A4 or Letter as it takes. Print at 100 %, not fitted to the page; measure the bar of ${formatQuantity(100, 'mm', units)} before you cut, and lay the crosses of neighbours over one another.`,
};

/**
 * Type in which a card fits its quarter sheet, pt; undefined where none does. It is measured once it is drawn, again where a face
 * arrives late, and once more before the paper comes.
 */
function useCardSize(shown: ResultDocument, preview: RefObject<HTMLDivElement | null>): number | undefined {
  // As the server draws it: before it is measured.
  const [size, setSize] = useState<number | undefined>(startingSize);
  const text = shown.form === 'quarter' ? JSON.stringify(shown.blocks) : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is what is measured, once React has drawn it
  useEffect(() => {
    if (text === undefined) return;
    const measure = () => {
      const face = preview.current?.firstElementChild;
      if (face instanceof HTMLElement) setSize(fittingSize(face, styles.trial ?? '', cardSizes));
    };
    const measureNow = () => flushSync(measure);
    measure();
    document.fonts?.addEventListener('loadingdone', measure);
    window.addEventListener('beforeprint', measureNow);
    return () => {
      document.fonts?.removeEventListener('loadingdone', measure);
      window.removeEventListener('beforeprint', measureNow);
    };
  }, [text]);
  return size;
}

/**
 * Print a document alone: its paper is drawn beside the page, which steps aside until the printing is over. A sheet that would run a
 * little over is set in smaller type, so that it stands on one; one that runs on anyway is not.
 */
function usePrinting() {
  const [printing, setPrinting] = useState(false);
  const [sheetSize, setSheetSize] = useState<number>();
  useEffect(() => {
    if (!printing) return;
    const done = () => {
      document.documentElement.removeAttribute('data-printing');
      setPrinting(false);
    };
    window.addEventListener('afterprint', done);
    return () => {
      window.removeEventListener('afterprint', done);
      document.documentElement.removeAttribute('data-printing');
    };
  }, [printing]);
  const print = () => {
    flushSync(() => {
      setSheetSize(undefined);
      setPrinting(true);
    });
    const face = document.querySelector(`[data-part="paper"] > .${styles.face}`);
    if (face instanceof HTMLElement) {
      const fits = fittingSize(face, styles.trial ?? '', sheetSizes);
      flushSync(() => setSheetSize(fits));
    }
    document.documentElement.setAttribute('data-printing', alone);
    window.print();
  };
  return { printing, sheetSize, print };
}
