import { Blocks } from '../../calculators/view/DocumentBlocks.tsx';
import { Card, Quarters, TrueSizePaper } from '../../calculators/view/DocumentPaper.tsx';
import documentStyles from '../../calculators/view/document.module.css';
import type { SheetDocument } from '../../method/documents/index.ts';
import { inReaderUnits, type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import styles from './sheets.module.css';

/** A card's type, pt: the same on every reader's machine, since a packet is printed whole. */
const cardType = 6.5;

interface SheetProps {
  document: SheetDocument;
  units: ReaderUnits;
}

/** Cards by the sheet that they are cut from; undefined for a sheet of four alike. */
const foursOf = (cards: SheetDocument['cards']): (SheetDocument['cards'] | undefined)[] =>
  cards === undefined
    ? [undefined]
    : Array.from({ length: Math.ceil(cards.length / 4) }, (_, at) => cards.slice(4 * at, 4 * at + 4));

/** A document of a packet as paper: on the screen as it will lie there, and on paper on sheets of its own. */
export function Sheet({ document: marked, units }: SheetProps) {
  const document = wordsInReaderUnits(marked, units);
  return (
    <article className={styles.document} data-sheet={document.sheet}>
      <h2 className="no-print">{inReaderUnits(marked.title, units)}</h2>
      {document.form === 'sheet' && (
        <div className={`${documentStyles.face} ${styles.sheet}`}>
          <p className={documentStyles.title}>{document.title}</p>
          <Blocks blocks={document.blocks} units={units} level={3} />
        </div>
      )}
      {document.form === 'quarter' && (
        <>
          <div className={styles.onScreen}>
            {(document.cards ?? [document.blocks]).map((blocks, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: cards of one document have no other name than their place
              <Card key={at} document={{ ...document, blocks }} units={units} size={cardType} />
            ))}
          </div>
          <div className={styles.onPaper} aria-hidden="true">
            {foursOf(document.cards).map((cards, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a sheet of cards has no other name than its place
              <Quarters key={at} document={document} cards={cards} units={units} size={cardType} />
            ))}
          </div>
        </>
      )}
      {document.form === 'true-size' && (
        <>
          <div className={`${documentStyles.face} ${styles.sheet} ${styles.onScreen}`}>
            <Blocks blocks={document.blocks} units={units} level={3} />
          </div>
          <div className={styles.onPaper} aria-hidden="true">
            <TrueSizePaper document={document} units={units} />
          </div>
        </>
      )}
    </article>
  );
}
