import { useKeptSheets } from '../../calculators/view/kept-sheets.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { useDraft } from './draft.ts';
import { KeptList } from './KeptList.tsx';
import { SheetFiles } from './SheetFiles.tsx';
import { SheetForm } from './SheetForm.tsx';

/** The reader's own data sheets: entered here, kept in the browser, used by every calculator that asks for a resin. */
export default function ResinSheets() {
  const units = useUnits();
  const kept = useKeptSheets();
  const form = useDraft(units);
  return (
    <Page
      title="Resin data sheets"
      description="Enter the maker’s data sheet of your resin once; it is kept in your browser and used by every resin calculator."
    >
      <h1>Resin data sheets</h1>
      <p className="lead">
        Resins differ more from one another than any table of kinds can say. Enter the maker’s sheet of yours once, and
        the calculators use its figures. Nothing leaves this browser but in a file or a link that you hand on.
      </p>
      <p>
        The maker’s own sheet, its safety data sheet and your local rules come before anything worked out from it here.
      </p>
      <NeedsScripts instead="To enter and keep a sheet needs scripts: it is kept by the browser alone. Without them, mix by the sheet in your hand.">
        <KeptList
          units={units}
          kept={kept}
          edit={(sheet) => {
            form.start({ raw: sheet, began: String(sheet.name) }, true);
            document.getElementById('enter-sheet')?.scrollIntoView();
          }}
        />
        <SheetForm form={form} kept={kept} units={units} />
        <SheetFiles kept={kept} />
      </NeedsScripts>
    </Page>
  );
}
