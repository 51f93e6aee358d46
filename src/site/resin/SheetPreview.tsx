import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import type { Figure } from '../../model/evidence/index.ts';
import { formatQuantity, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { resinOf } from '../../model/resin/kinds.ts';
import { type Resin, resinFigureNames } from '../../model/resin/types.ts';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { SheetReview } from './SheetReview.tsx';

/** What the calculators take from a sheet, and where each figure comes from. */
export function SheetPreview({ resin, units }: { resin: Resin; units: ReaderUnits }) {
  const known = resinFigureNames.flatMap((name) => {
    const figure = resin.figures[name];
    return figure ? [{ name, figure }] : [];
  });
  const missing = resinFigureNames.length - known.length;
  return (
    <section aria-label="What the calculators take from it">
      <h3>What the calculators take from it</h3>
      <SheetReview resin={resin} units={units} />
      <p className="small">
        It lies over {resinOf(resin.kind)?.name.toLowerCase()}, which stands in for what the sheet leaves out.
        {missing > 0 && ` ${missing} figures are not known: a calculator that needs one says so.`}
      </p>
      <ScrollBox label="Figures of this resin">
        <table>
          <thead>
            <tr>
              <th scope="col">Figure</th>
              <th scope="col">Value</th>
              <th scope="col">From</th>
            </tr>
          </thead>
          <tbody>
            {known.map(({ name, figure }) => (
              <tr key={name}>
                <th scope="row">{figure.label}</th>
                <td className="num">{words(figure, units)}</td>
                <td>
                  <EvidenceMark basis={figure.basis} />
                  {figure.note && <span className="small quiet"> {inReaderUnits(figure.note, units)}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </section>
  );
}

function words(figure: Figure, units: ReaderUnits): string {
  return formatQuantity(figure.value, figure.unit, units, figure);
}
