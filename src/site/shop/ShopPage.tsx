import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { ShopRecord } from './ShopRecord.tsx';

/** The reader's own shop record: written here or opened from a file, kept in the browser, taken by calculators and methods. */
export default function ShopPage({ titles }: { titles: Readonly<Record<string, string>> }) {
  return (
    <Page
      title="Your shop record"
      description="Write once what your shop has: machines, scale, grits, resin, air, hours and prices. Calculators and methods begin with it."
    >
      <h1>Your shop record</h1>
      <p className="lead">
        Write once what your shop has: machines, scale, grits, resin, air, hours, prices, stock. Calculators and methods
        then begin with it, and say so. It lies in this browser alone and leaves it only as a file that you save.
      </p>
      <p>
        What a machine or a resin takes is said by its own plate, manual and data sheet; the record only repeats them.
      </p>
      <NeedsScripts instead="To keep a record needs scripts: it is kept by the browser alone. The page of its format says how to write one as a file.">
        <ShopRecord titles={titles} />
      </NeedsScripts>
    </Page>
  );
}
