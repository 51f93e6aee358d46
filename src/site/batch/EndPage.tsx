import { DocumentView } from '../../calculators/view/DocumentView.tsx';
import { VerdictLine } from '../../calculators/view/VerdictLine.tsx';
import type { ShownBatch } from '../../method/batch/shown.ts';
import { type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';

/** Label and card once nothing stands in the way, and the page of the batch for the file. */
export function EndPage({ shown, units, laying }: { shown: ShownBatch; units: ReaderUnits; laying: boolean }) {
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
      <DocumentView document={page} units={units} headingLevel={3} />
    </section>
  );
}
