import { useState } from 'react';
import frame from '../../calculators/view/frame.module.css';
import { useUnits } from '../../calculators/view/units.tsx';
import type { ClassPacket } from '../../method/class/packet.ts';
import type { PaperName } from '../../model/outline/tiles.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { PaperChoice } from '../sheets/PaperChoice.tsx';
import { Sheet } from '../sheets/Sheet.tsx';
import sheets from '../sheets/sheets.module.css';
import { usePageStyle } from '../sheets/use-page-style.ts';

/** Everything that is printed of a class, in one go: what of it, on which paper. */
export function ClassSheets({ packet, onClose }: { packet: ClassPacket; onClose: () => void }) {
  const units = useUnits();
  const [left, setLeft] = useState<readonly string[]>(
    packet.sheets.filter(({ usual }) => !usual).map(({ sheet }) => sheet),
  );
  const [paper, setPaper] = useState<PaperName>(units.system === 'inch' ? 'letter' : 'a4');
  usePageStyle(paper, inReaderUnits(packet.running, units), packet.made);
  const shown = packet.documents.filter(({ sheet }) => !left.includes(sheet));
  return (
    <div data-part="sheets">
      <section className="no-print" aria-label="What to print">
        <h2 tabIndex={-1} ref={(heading) => heading?.focus()}>
          The sheets of this class
        </h2>
        {packet.without.length > 0 && (
          <p>
            <strong>
              No sheets for {packet.without.length === 1 ? 'place' : 'places'} {packet.without.join(', ')}
            </strong>
            , which cannot be worked out yet.
          </p>
        )}
        <fieldset className={sheets.which}>
          <legend>What to print</legend>
          {packet.sheets.map(({ sheet, title }) => (
            <label key={sheet}>
              <input
                type="checkbox"
                checked={!left.includes(sheet)}
                onChange={({ target }) =>
                  setLeft(target.checked ? left.filter((each) => each !== sheet) : [...left, sheet])
                }
              />{' '}
              {inReaderUnits(title, units)}
            </label>
          ))}
        </fieldset>
        <p className={sheets.choices}>
          <PaperChoice paper={paper} onChange={setPaper} />
          <button type="button" className={frame.button} disabled={shown.length === 0} onClick={() => window.print()}>
            Print the sheets
          </button>
          <button type="button" className={frame.button} onClick={onClose}>
            Close the sheets
          </button>
        </p>
        <p className="small quiet">Print at 100 %, not fitted to the page: templates are then at true size.</p>
      </section>
      {shown.map((document) => (
        <Sheet key={document.id} document={document} units={units} paper={paper} />
      ))}
    </div>
  );
}
