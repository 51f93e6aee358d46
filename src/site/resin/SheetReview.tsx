import { CautionList } from '../../calculators/view/CautionList.tsx';
import { inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { reviewSheet } from '../../model/resin/sheet-review.ts';
import type { Resin } from '../../model/resin/types.ts';

/** What clashes in a sheet, what it leaves out, and what each gap blocks. */
export function SheetReview({ resin, units }: { resin: Resin; units: ReaderUnits }) {
  const { war, clashes, missing } = reviewSheet(resin);
  if (clashes.length === 0 && missing.length === 0) {
    return <p data-part="sheet-review">Nothing in this sheet clashes, and no calculator lacks a figure of it.</p>;
  }
  return (
    <div data-part="sheet-review">
      {war && (
        <p>
          <strong>By {resin.name} nothing is dosed or timed:</strong> {inReaderUnits(war, units)}.
        </p>
      )}
      <CautionList cautions={clashes} />
      {missing.length > 0 && (
        <ul>
          {missing.map(({ id, what, blocks }) => (
            <li key={id}>
              <strong>{what.charAt(0).toUpperCase() + what.slice(1)}:</strong> {blocks}.
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
