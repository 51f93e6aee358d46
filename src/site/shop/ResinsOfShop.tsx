import { sameName, sheetText, withSheet } from '../../calculators/kit/resin-sheet-file.ts';
import frame from '../../calculators/view/frame.module.css';
import { changeKept, useKeptSheets } from '../../calculators/view/kept-sheets.ts';
import { useLinks } from '../../calculators/view/links.tsx';
import type { ShopResin } from '../../method/shop/index.ts';

/** The resins of a record beside the data sheets that this browser keeps for every resin field. Nothing kept is replaced unasked. */
export function ResinsOfShop({ resins }: { resins: readonly ShopResin[] }) {
  const { Link } = useLinks();
  const { sheets } = useKeptSheets();
  if (resins.length === 0) return null;
  return (
    <section aria-labelledby="shop-resins" data-part="shop-resins">
      <h2 id="shop-resins">Resins of the record</h2>
      <p>
        A resin field offers the <Link to="/resin-sheets">data sheets that this browser keeps</Link>.
      </p>
      <ul>
        {resins.map(({ id, entries }) => {
          const named = sheets.find((sheet) => sameName(sheet, entries));
          const same = named !== undefined && sheetText(named) === sheetText(entries);
          return (
            <li key={id}>
              <strong>{entries['name'] ?? id}</strong>:{' '}
              {same ? 'kept.' : named ? 'a sheet of that name is kept with other entries. ' : 'not kept yet. '}
              {!same && (
                <button
                  type="button"
                  className={frame.button}
                  onClick={() => changeKept((now) => withSheet(now, entries))}
                >
                  {named ? 'Replace the kept one' : 'Keep it'}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
