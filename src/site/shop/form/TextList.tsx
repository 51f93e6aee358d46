import { useId, useState } from 'react';
import { LineField } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { Problems } from '../../bench/form/Problems.tsx';
import { type Path, useProblemsAt, useRecord, valueAt } from '../../bench/form/use-record.tsx';
import styles from './shop-form.module.css';

interface TextListProps {
  path: Path;
  /** What they are: `Grits in the drawer`. */
  label: string;
  /** What one of them is: `grit`. */
  kind: string;
  help: string;
  /** What is typed, as it goes into the record. */
  written?: (typed: string) => string;
}

/** A list of short texts, each in a field of its own; several are added at once with commas between them. */
export function TextList({ path, label, kind, help, written = (typed) => typed }: TextListProps) {
  const { data, add, set, remove } = useRecord();
  const id = useId();
  const [typed, setTyped] = useState('');
  const held = valueAt(data, path);
  const list: readonly unknown[] = Array.isArray(held) ? held : [];
  const own = useProblemsAt(
    path,
    list.map((_each, at) => String(at)),
  );
  const press = () => {
    for (const each of typed.split(/[,;\n]/)) if (each.trim() !== '') add(path, undefined, written(each.trim()));
    setTyped('');
  };
  return (
    <fieldset className={forms.group} data-part={path.join('/')}>
      <legend className={forms.label}>{label}</legend>
      <Problems problems={own} />
      {list.map((each, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a text of a list is known by its place.
        <div key={at} className={styles.line}>
          <LineField path={[...path, at]} label={`${kind} ${at + 1}`} help="" />
          <button
            type="button"
            className={forms.small}
            onClick={() => (list.length === 1 ? set(path, undefined) : remove([...path, at]))}
          >
            Remove<span className="visually-hidden"> {String(each)}</span>
          </button>
        </div>
      ))}
      <label className={forms.label} htmlFor={`${id}-add`}>
        Add {kind.toLowerCase()}s
      </label>
      <div className={forms.value}>
        <input
          id={`${id}-add`}
          className={forms.input}
          autoComplete="off"
          aria-describedby={`${id}-help`}
          value={typed}
          onChange={({ target }) => setTyped(target.value)}
          onKeyDown={({ key }) => key === 'Enter' && press()}
        />
        <button type="button" className={forms.small} onClick={press}>
          Add<span className="visually-hidden"> to {label}</span>
        </button>
      </div>
      <p id={`${id}-help`} className={forms.help}>
        {help}
      </p>
    </fieldset>
  );
}
