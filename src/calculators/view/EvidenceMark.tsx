import { type ReactNode, useId, useState } from 'react';
import { type Basis, basisWords, type Citation, shortSource } from '../../model/evidence/index.ts';
import styles from './evidence.module.css';
import unseen from './unseen.module.css';

const seenWords = {
  'source-text': 'read in the work itself',
  quoted: 'read in a text that quotes it',
  memory: 'not yet checked against the book',
} as const;

/** Where a figure comes from, in words: source, place, and how it was read. */
export function citationWords(citation: Citation): string {
  const place = citation.locator ? `, ${citation.locator}` : '';
  const seen = citation.seen ? ` (${seenWords[citation.seen]})` : '';
  return `${shortSource(citation.source)}${place}${seen}`;
}

interface EvidenceMarkProps {
  basis: Basis;
  citation?: Citation | undefined;
  /** True where the source stands in words beside it: the mark has nothing to unfold then. */
  cited?: boolean;
}

/**
 * The mark beside a figure: how it is known.
 *
 * What is weaker than published is written out, in a frame of its own shape, so that nobody takes it for more and colour is never
 * needed. A published figure, which is the rule, has one small sign; its source unfolds when it is pressed, and stands open on paper
 * and on a page without scripts.
 */
export function EvidenceMark({ basis, citation, cited = false }: EvidenceMarkProps) {
  if (basis === 'published') return <PublishedMark citation={citation} cited={cited} />;
  const words = basisWords[basis];
  const source = citation ? citationWords(citation) : '';
  return (
    <span className={styles.mark} data-basis={basis} title={source || words}>
      <span>{words}</span>
      {source && <span className={unseen.unseen}>: {source}</span>}
    </span>
  );
}

/**
 * The mark behind a figure in a sentence: a small sign that does not stop a reader, whatever the basis; how the figure is known unfolds when it is
 * pressed. On paper and without scripts it stands in brackets, but for what is worked out from figures beside it.
 */
export function SentenceMark({ basis, citation }: Omit<EvidenceMarkProps, 'cited'>) {
  if (basis === 'published') return <PublishedMark citation={citation} cited={false} />;
  const source = citation ? `: ${citationWords(citation)}` : '';
  return (
    <Unfolds basis={basis} name={basisWords[basis]} sign={<sup aria-hidden="true">†</sup>}>
      {` (${basisWords[basis]}${source})`}
    </Unfolds>
  );
}

function PublishedMark({ citation, cited }: Omit<EvidenceMarkProps, 'basis'>) {
  if (cited || !citation) {
    return (
      <span className={styles.published} data-basis="published">
        <BookSign />
        <span className={`${unseen.unseen} ${styles.spoken}`}>{basisWords.published}</span>
      </span>
    );
  }
  return (
    <Unfolds basis="published" name={`${basisWords.published}: where`} sign={<BookSign />}>
      {`${basisWords.published}: ${citationWords(citation)}`}
    </Unfolds>
  );
}

/** A sign that is pressed, and the words that it unfolds; they stay until it is pressed again, or Escape. Nothing opens by coming past. */
function Unfolds({ basis, name, sign, children }: { basis: Basis; name: string; sign: ReactNode; children: string }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <span className={styles.published} data-basis={basis}>
      <button
        type="button"
        className={styles.sign}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
        onKeyDown={({ key }) => key === 'Escape' && setOpen(false)}
      >
        {sign}
        <span className={`${unseen.unseen} ${styles.spoken}`}>{name}</span>
      </button>
      <span id={id} className={styles.words} data-open={open || undefined}>
        {children}
      </span>
    </span>
  );
}

/** An open book: the figure can be looked up. */
function BookSign() {
  return (
    <svg className={styles.book} viewBox="0 0 16 12" aria-hidden="true" focusable="false">
      <path d="M8 2.2C6.4 1 4 .8 1 1v9c3-.2 5.4 0 7 1.2C9.6 10 12 9.8 15 10V1c-3-.2-5.4 0-7 1.2zM8 2.2v9" />
    </svg>
  );
}
