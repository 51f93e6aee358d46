import { DocumentView } from '../../calculators/view/DocumentView.tsx';
import { useLinks } from '../../calculators/view/links.tsx';
import { VerdictLine } from '../../calculators/view/VerdictLine.tsx';
import type { ShownBatch } from '../../method/batch/shown.ts';
import { type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';

interface EndPageProps {
  shown: ShownBatch;
  /** Where the pieces are offered, where the site knows the method. */
  sale: string | undefined;
  units: ReaderUnits;
  laying: boolean;
}

/** Label and card once nothing stands in the way, and the page of the batch for the file. */
export function EndPage({ shown, sale, units, laying }: EndPageProps) {
  const { Link } = useLinks();
  const label = shown.label && wordsInReaderUnits(shown.label, units);
  const page = { ...wordsInReaderUnits(shown.page, units), folded: true };
  return (
    <section aria-labelledby="end" data-part="end">
      <h2 id="end">Label, card and page</h2>
      {laying && !label && <p>Working out what may be said of it …</p>}
      {label && (
        <div data-part="label">
          <VerdictLine verdict={label.verdict} />
          {label.verdict.level === 'stop' && label.inTheWay.length > 1 && (
            <ul>
              {label.inTheWay.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
          {label.documents.map((document) => (
            <DocumentView key={document.id} document={document} units={units} headingLevel={3} />
          ))}
        </div>
      )}
      {sale && (
        <p className="no-print">
          To sell them: <Link to={sale}>a quote, and the text of a listing</Link>, from the plan of this case.
        </p>
      )}
      <DocumentView document={page} units={units} headingLevel={3} />
    </section>
  );
}
