import { useMemo } from 'react';
import {
  canBeEdited,
  type EditContext,
  type EditProblem,
  looseData,
  type Splice,
  usualNames,
} from '../../../method/edit/index.ts';
import forms from '../../bench/form/form.module.css';
import { Problems } from '../../bench/form/Problems.tsx';
import { isGroup, RecordProvider, useRecord } from '../../bench/form/use-record.tsx';
import { AboutForm } from './AboutForm.tsx';
import { AirForm } from './AirForm.tsx';
import { HoursForm } from './HoursForm.tsx';
import { MachinesForm } from './MachinesForm.tsx';
import { MaterialsForm, PeopleForm, PricesForm } from './MoneyForm.tsx';
import { partOfField } from './parts.ts';
import { ResinsForm } from './ResinsForm.tsx';
import { ToolsForm } from './ToolsForm.tsx';

interface ShopFormProps {
  /** The record as it stands. */
  text: string;
  /** The record as it is kept at this moment, which another window may have changed. */
  current: () => string;
  /** What was found in it; each stands at its field. */
  problems: readonly EditProblem[];
  /** What the form changes, as splices of the text as it is kept. */
  onEdit: (splices: readonly Splice[]) => void;
  /** Go to a place of the text. */
  goTo: (line: number, column: number) => void;
}

const context: EditContext = { kind: 'shop', names: usualNames };

/** How many there are of a list, those that are alike included. */
function counted(data: Readonly<Record<string, unknown>>, list: string): string {
  const entries: readonly unknown[] = Array.isArray(data[list]) ? data[list] : [];
  const countOf = (entry: unknown) => (isGroup(entry) && typeof entry['count'] === 'number' ? entry['count'] : 1);
  const count = entries.reduce<number>((sum, entry) => sum + countOf(entry), 0);
  return count === 0 ? '' : String(count);
}

function Body() {
  const { data, problems, refused } = useRecord();
  const elsewhere = problems.filter(({ path }) => partOfField(String(path[0])) === undefined);
  return (
    <>
      <p role="status" className={forms.refused}>
        {refused}
      </p>
      <p className={forms.help}>Whatever is not marked as needed may be left out. What you change is kept at once.</p>
      {elsewhere.length > 0 && (
        <>
          <p>In parts of the record that are changed in its text:</p>
          <Problems problems={elsewhere} />
        </>
      )}
      <AboutForm />
      <AirForm />
      <MachinesForm count={counted(data, 'machines')} />
      <ToolsForm />
      <ResinsForm count={counted(data, 'resins')} />
      <HoursForm />
      <PeopleForm count={counted(data, 'people')} />
      <MaterialsForm count={counted(data, 'materials')} />
      <PricesForm />
    </>
  );
}

/** The record as fields. It keeps nothing: it shows the text, and hands out splices of it, which keep every comment and the order of the file. */
export function ShopForm({ text, current, problems, onEdit, goTo }: ShopFormProps) {
  const readable = useMemo(
    () => canBeEdited(text) && (text.trim() === '' || Object.keys(looseData(text)).length > 0),
    [text],
  );
  if (!readable) {
    const [first] = problems;
    return (
      <div data-part="shop-form">
        <p>The text cannot be read as it stands, so that the form has nothing to show. Mend this in the text first:</p>
        <Problems problems={problems} />
        {first && (
          <button type="button" className={forms.small} onClick={() => goTo(first.line, first.column)}>
            Go to line {first.line} of the text
          </button>
        )}
      </div>
    );
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: a form cannot hold the form of a data sheet; nothing is sent.
    <div className={forms.form} role="form" aria-label="The record as a form" data-part="shop-form">
      <RecordProvider text={text} problems={problems} context={context} current={current} onEdit={onEdit}>
        <Body />
      </RecordProvider>
    </div>
  );
}

export default ShopForm;
