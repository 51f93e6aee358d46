import { type RefObject, useEffect, useMemo, useRef, useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import type { Caution, ResultDocument } from '../../model/evidence/index.ts';
import { formatQuantity, type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { cardType, layCard, panel } from '../kit/card-panels.ts';
import { documentText } from '../kit/document-text.ts';
import { withTyped } from '../kit/label-type.ts';
import { Blocks } from './DocumentBlocks.tsx';
import { LabelOptions, type LabelWishes, labelFault, usualWishes } from './DocumentLabels.tsx';
import { Card, Paper } from './DocumentPaper.tsx';
import styles from './document.module.css';
import { cardSizes, fittingSize, sheetSizes } from './fit.ts';
import form from './form.module.css';
import frame from './frame.module.css';
import { Heading, type HeadingLevel } from './Heading.tsx';
import { onScreen } from './on-screen.ts';

/** What stands on a card is measured once it has rested for so long, ms. */
const rests = 300;

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
export function DocumentView({ document: marked, units, headingLevel, beside, said }: DocumentViewProps) {
  // Cards and labels are laid by their words, which must be those of the reader before anything is measured.
  const shown = useMemo(() => wordsInReaderUnits(marked, units), [marked, units]);
  const preview = useRef<HTMLDivElement>(null);
  const laid = useMemo(() => layCard(shown.form === 'card' ? shown.blocks : []), [shown]);
  const cardSize = useCardSize(shown, laid.size, preview);
  const { printing, sheetSize, print } = usePrinting();
  const [copied, setCopied] = useState('');
  const [open, setOpen] = useState(false);
  const [wished, setWished] = useState<Partial<LabelWishes>>({});
  const wishes = useMemo(() => ({ ...usualWishes(shown.blocks, units), ...wished }), [shown.blocks, units, wished]);
  const isCard = shown.form === 'card';
  const isLabels = shown.form === 'labels';
  const size = isCard ? cardSize : sheetSize;
  const fault = isLabels ? labelFault(shown.blocks, wishes) : undefined;
  const copy = async () => {
    const blocks = withTyped(shown.blocks, wishes.typed) as typeof shown.blocks;
    try {
      await navigator.clipboard.writeText(documentText(isLabels ? { ...shown, blocks } : shown, units));
      setCopied('Copied.');
    } catch {
      setCopied('This browser does not copy: mark the text and copy it by hand.');
    }
  };
  const stands = (
    <div ref={preview} className={styles.preview}>
      {isCard ? (
        <div className={styles.panels}>
          {laid.panels.map((blocks, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a panel has no other name than its place
            <Card key={at} blocks={blocks} units={units} size={cardSize} />
          ))}
        </div>
      ) : (
        <div className={styles.shown}>
          <Blocks
            blocks={onScreen(
              isLabels ? (withTyped(shown.blocks, wishes.typed) as typeof shown.blocks) : shown.blocks,
              textsOf(beside),
            )}
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
      {isLabels && (
        <LabelOptions
          blocks={shown.blocks}
          units={units}
          wishes={wishes}
          change={(patch) => setWished((before) => ({ ...before, ...patch }))}
        />
      )}
      <div className={`${frame.actions} ${styles.actions}`}>
        <button type="button" className={frame.button} onClick={print} disabled={fault !== undefined}>
          Print this sheet
        </button>
        <button type="button" className={frame.button} onClick={() => void copy()}>
          Copy
        </button>
        <span className={frame.copied} role="status">
          {copied}
        </span>
      </div>
      <p className={`${styles.help} no-print`}>{paperWords[shown.form](units, laid.panels.length)}</p>
      {fault && (
        <p role="status" className={`${styles.help} no-print`}>
          {fault}
        </p>
      )}
      {isCard && (laid.over || cardSize === undefined || cardSize < cardType) && (
        <p role="status" className={`${styles.help} no-print`}>
          {laid.over || cardSize === undefined
            ? 'More stands on it than a folded card can hold. Shorten what you typed.'
            : `So much stands on it that it is set in ${cardSize} pt. Less text gives larger type.`}
        </p>
      )}
      {printing && createPortal(<Paper document={shown} units={units} size={size} labels={wishes} />, document.body)}
    </section>
  );
}

const paperWords: Readonly<Record<ResultDocument['form'], (units: ReaderUnits, panels: number) => string>> = {
  sheet: () => 'A4 or Letter, by itself, without the page around it.',
  card: (units, panels) =>
    `A4 or Letter, at 100 %, on thick paper. ${
      panels <= 1
        ? 'Four to a sheet'
        : panels === 2
          ? 'Two to a sheet'
          : 'Two to a sheet, on both sides: turn the paper over its long edge'
    }. Cut at the marks${panels > 1 ? ' and fold in the middle' : ''}: each is then ${formatQuantity(panel.width, 'mm', units)} × ${formatQuantity(panel.height, 'mm', units)}.`,
  labels: () =>
    'At 100 %, not fitted to the page, without margins. Try it on plain paper first and hold it against a sheet of labels.',
  'true-size': (units) =>
    `At true size, on as many sheets of A4 or Letter as it takes. Print at 100 %, not fitted to the page; measure the bar of ${formatQuantity(100, 'mm', units)} before you cut, and lay the crosses of neighbours over one another.`,
};

/**
 * Type in which every panel of a card fits, pt; undefined where none does. It is reckoned first, and measured once it is drawn, since the
 * faces of some machines are wider; again where a face arrives late, and once more before the paper comes.
 */
function useCardSize(
  shown: ResultDocument,
  reckoned: number,
  preview: RefObject<HTMLDivElement | null>,
): number | undefined {
  const [measured, setMeasured] = useState<{ size: number | undefined }>();
  const text = shown.form === 'card' ? JSON.stringify(shown.blocks) : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is what is measured, once React has drawn it
  useEffect(() => {
    if (text === undefined) return;
    const measure = () => {
      const panels = [...(preview.current?.querySelectorAll<HTMLElement>('[data-part="card"]') ?? [])];
      const tried = cardSizes.filter((size) => size <= reckoned);
      const sizes = panels.map((face) => fittingSize(face, styles.trial ?? '', tried));
      const least = sizes.reduce<number | undefined>(
        (sum, size) => (sum === undefined || size === undefined ? undefined : Math.min(sum, size)),
        reckoned,
      );
      setMeasured({ size: least });
    };
    const measureNow = () => flushSync(measure);
    // Laying it out takes longer than a key may: while somebody types it waits.
    const later = setTimeout(measure, rests);
    document.fonts?.addEventListener('loadingdone', measure);
    window.addEventListener('beforeprint', measureNow);
    return () => {
      clearTimeout(later);
      document.fonts?.removeEventListener('loadingdone', measure);
      window.removeEventListener('beforeprint', measureNow);
    };
  }, [text, reckoned]);
  return measured ? measured.size : reckoned;
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
