import { type Basis, basisWords, type Citation, shortSource } from '../../model/evidence/index.ts';
import styles from './evidence.module.css';
import { useLinks } from './links.tsx';

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

/**
 * The mark beside a figure: its basis in words, with a shape of its own so that colour is never needed.
 * The source stands in the title and, for readers of a screen reader, in the text.
 */
export function EvidenceMark({ basis, citation }: { basis: Basis; citation?: Citation | undefined }) {
  const words = basisWords[basis];
  const source = citation ? citationWords(citation) : '';
  return (
    <span className={styles.mark} data-basis={basis} title={source || words}>
      <span className={styles.word}>{words}</span>
      {source && <span className={styles.hidden}>: {source}</span>}
    </span>
  );
}

/** A line that says where a figure or statement comes from, linked to the list of sources. */
export function SourceLine({ citation, note }: { citation?: Citation | undefined; note?: string | undefined }) {
  const { Link } = useLinks();
  if (!citation && !note) return null;
  return (
    <p className={styles.source}>
      {citation && <Link to={`/reference/sources#${citation.source}`}>{citationWords(citation)}</Link>}
      {citation && note ? '. ' : ''}
      {note}
    </p>
  );
}
