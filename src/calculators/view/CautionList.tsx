import { useId, useState } from 'react';
import { type Caution, cautionsInOrder, cautionWords } from '../../model/evidence/index.ts';
import { wordsInReaderUnits } from '../../model/quantity/index.ts';
import styles from './caution.module.css';
import { citationWords, EvidenceMark } from './EvidenceMark.tsx';
import { FoldWords } from './FoldWords.tsx';
import { useUnits } from './units.tsx';

interface CautionListProps {
  cautions: readonly Caution[];
  /** What the page around says already: it is not shown again, but for paper that bears the calculator without its page. */
  said?: readonly Caution[] | undefined;
  /** The anchor of a caution, on a page that links to it. */
  anchorOf?: (id: string) => string;
}

/** Cautions, this case's own before the general ones and the gravest first, each with its level in words and where it comes from. */
export function CautionList({ cautions, said = [], anchorOf }: CautionListProps) {
  const units = useUnits();
  if (cautions.length === 0) return null;
  const saidAbove = ({ id }: Caution) => said.some((one) => one.id === id);
  const sorted = cautionsInOrder(cautions);
  return (
    <>
      <ul className={styles.cautions}>
        {sorted.map((caution) => (
          <CautionLine
            key={`${caution.id} ${caution.text}`}
            caution={wordsInReaderUnits(caution, units)}
            said={saidAbove(caution)}
            anchor={anchorOf?.(caution.id)}
          />
        ))}
      </ul>
      {sorted.some(saidAbove) && <p className={styles.above}>The cautions of this page, above, hold here too.</p>}
    </>
  );
}

/**
 * What to do stands in the open, always. The reason behind it is folded on a screen, since whoever must scroll through reasons
 * reads no warning; paper, and a page without scripts, hold it open. Where it comes from is folded with the reason, but for what is
 * weaker than published: that is said in the open, unless the caution is of this very case and must take a line.
 */
function CautionLine({ caution, said, anchor }: { caution: Caution; said: boolean; anchor?: string | undefined }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const source = (
    <small className={styles.source}>
      {caution.citation ? citationWords(caution.citation) : <EvidenceMark basis={caution.basis} />}
    </small>
  );
  const own = caution.own ?? false;
  const folded = own || caution.basis === 'published';
  return (
    <li
      id={anchor}
      className={styles.caution}
      data-level={caution.level}
      data-own={own || undefined}
      data-said={said || undefined}
    >
      <strong>{cautionWords[caution.level]}.</strong> {caution.text}{' '}
      {(caution.why || folded) && (
        <>
          <button
            type="button"
            className={styles.more}
            aria-expanded={open}
            aria-controls={id}
            onClick={() => setOpen(!open)}
          >
            <FoldWords open={open} more={caution.why ? 'Why' : 'Source'} />
          </button>
          <span id={id} className={styles.why} data-open={open || undefined}>
            {caution.why} {folded && source}
          </span>
        </>
      )}
      {!folded && <> {source}</>}
    </li>
  );
}
