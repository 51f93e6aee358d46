import { useMemo } from 'react';
import type { EditContext, EditProblem, NameLoaders, Splice } from '../../../method/edit/index.ts';
import { usualNames } from '../../../method/edit/index.ts';
import styles from './form.module.css';
import { HeadForm } from './HeadForm.tsx';
import { ParametersForm } from './ParametersForm.tsx';
import { Problems } from './Problems.tsx';
import { StepsForm } from './StepsForm.tsx';
import { MaterialsForm, ToolsForm } from './ThingsForm.tsx';
import { RecordProvider, useRecord } from './use-record.tsx';

interface MethodFormProps {
  /** The method as it stands in the editor. */
  text: string;
  /** What the form changes, as splices of that text: the editor does them, so that one undo takes them back. */
  onEdit: (splices: readonly Splice[]) => void;
  /** What was found in the text; each stands at its field. */
  problems: readonly EditProblem[];
  /** Lists of ids to choose from. */
  names?: NameLoaders;
  /** Nothing can be changed here. */
  readOnly?: boolean;
}

/** Fields of a method that the form does not show, whose problems stand at its head. */
const notShown = ['sources', 'exceptions', 'method'];

function Body() {
  const { problems, refused } = useRecord();
  const unreadable = problems.filter(({ level, path }) => level === 'error' && path.length === 0);
  const elsewhere = problems.filter(
    ({ path, excepted }) => excepted === undefined && path[0] !== undefined && notShown.includes(String(path[0])),
  );
  return (
    <>
      <p role="status" className={styles.refused}>
        {refused}
      </p>
      {unreadable.length > 0 ? (
        <>
          <p>
            The text cannot be read as it stands, so that the form has nothing to show. Mend this in the text first:
          </p>
          <Problems problems={unreadable} />
        </>
      ) : (
        <>
          {elsewhere.length > 0 && (
            <>
              <p>In parts of the method that are changed in its text:</p>
              <Problems problems={elsewhere} />
            </>
          )}
          <HeadForm />
          <ParametersForm />
          <MaterialsForm />
          <ToolsForm />
          <StepsForm />
        </>
      )}
    </>
  );
}

/**
 * The common parts of a method as a form, for whoever does not want to write YAML. It keeps nothing: it shows the text, and hands out splices of
 * it, which keep every comment and the order of the file.
 */
export function MethodForm({ text, onEdit, problems, names = usualNames, readOnly = false }: MethodFormProps) {
  const context = useMemo<EditContext>(() => ({ kind: 'method', names }), [names]);
  return (
    <form
      className={styles.form}
      data-part="method-form"
      aria-label="The method as a form"
      onSubmit={(event) => event.preventDefault()}
    >
      <p className={styles.help}>
        What you change here is changed in the text, where it can be undone. Sources, exceptions, pieces at the machine
        and tools that stay taken are changed in the text itself.
      </p>
      <RecordProvider text={text} problems={problems} context={context} readOnly={readOnly} onEdit={onEdit}>
        <Body />
      </RecordProvider>
    </form>
  );
}

export default MethodForm;
