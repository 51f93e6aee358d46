import { layCard } from '../../calculators/kit/card-panels.ts';
import { usualGrid } from '../../calculators/kit/label-type.ts';
import { Blocks } from '../../calculators/view/DocumentBlocks.tsx';
import { LabelPaper } from '../../calculators/view/DocumentLabels.tsx';
import { Card, Cards, TrueSizePaper } from '../../calculators/view/DocumentPaper.tsx';
import documentStyles from '../../calculators/view/document.module.css';
import type { SheetDocument } from '../../method/documents/index.ts';
import { labelsOn, wholeSheets } from '../../model/outline/label-grids.ts';
import type { PaperName } from '../../model/outline/tiles.ts';
import { inReaderUnits, type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import styles from './sheets.module.css';

interface SheetProps {
  document: SheetDocument;
  units: ReaderUnits;
  paper: PaperName;
}

/** A document of a packet as paper: on the screen as it will lie there, and on paper on sheets of its own. */
export function Sheet({ document: marked, units, paper }: SheetProps) {
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
      {(document.form === 'card' || document.form === 'labels') && (
        <div className={`${styles.onScreen} ${documentStyles.panels}`}>
          {(document.cards ?? [document.blocks]).flatMap((blocks, card) =>
            (document.form === 'card' ? layCard(blocks).panels : [blocks]).map((panel, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: cards of one document have no other name than their place
              <Card key={`${card},${at}`} blocks={panel} units={units} size={undefined} />
            )),
          )}
        </div>
      )}
      {document.form === 'card' && (
        <div className={styles.onPaper} aria-hidden="true">
          <Cards document={document} cards={document.cards} needed={document.needed} units={units} size={undefined} />
        </div>
      )}
      {document.form === 'labels' && (
        <div className={styles.onPaper} aria-hidden="true">
          <Labels document={document} units={units} paper={paper} />
        </div>
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

/** A whole sheet of one label, or a label for each place of a class, on the usual sheet of the paper. */
function Labels({ document: { blocks, cards, needed = 1 }, units, paper }: SheetProps) {
  const grid = usualGrid(paper, cards?.[0] ?? blocks);
  return (
    <LabelPaper
      labels={cards ?? [blocks]}
      grid={grid}
      start={1}
      count={cards?.length ?? wholeSheets(needed, labelsOn(grid))}
      typed={{}}
      units={units}
    />
  );
}
