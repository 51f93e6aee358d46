import { useEffect, useState } from 'react';
import { valuesFor } from '../../../method/edit/index.ts';
import { EntryList } from './EntryList.tsx';
import { type Choice, ChoiceField, LineField, TextField } from './fields.tsx';
import styles from './form.module.css';
import { isGroup, notFetched, type Path, useRecord, valueAt } from './use-record.tsx';

const kinds: readonly Choice[] = [
  { value: 'quantity', label: 'A measure, with its unit' },
  { value: 'count', label: 'A number of things' },
  { value: 'wood', label: 'A wood' },
  { value: 'resin', label: 'A resin' },
  { value: 'finish', label: 'A finish' },
  { value: 'place', label: 'A place, for its climate' },
  { value: 'choice', label: 'One of several words' },
  { value: 'outline', label: 'An outline' },
  { value: 'readings', label: 'Readings of the air' },
];

/** What a parameter of each kind needs besides its label; what is empty is to be filled in. */
const needed: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  quantity: { default: '', least: '', most: '' },
  count: { default: 1, least: 1, most: 12 },
  choice: {
    default: '',
    options: [
      { value: '', label: '' },
      { value: '', label: '' },
    ],
  },
  outline: { default: { shape: 'rounded-rectangle' } },
};

/** Ids that may be chosen at a path, fetched once the field is there. */
export function useChoices(path: Path, wanted = true): readonly Choice[] {
  const { text, context } = useRecord();
  const [found, setFound] = useState<readonly Choice[]>([]);
  const steps = path.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: a path is the same while its steps are.
  useEffect(() => {
    if (!wanted) return undefined;
    let closed = false;
    valuesFor(text, path, context).then(
      (all) => closed || setFound(all.map(({ label, detail }) => ({ value: label, label: detail ?? label }))),
      notFetched,
    );
    return () => {
      closed = true;
    };
  }, [text, context, steps, wanted]);
  return found;
}

function PickField({ path, label }: { path: Path; label: string }) {
  return <ChoiceField path={path} label={label} choices={useChoices(path)} />;
}

function Range({ path, kind }: { path: Path; kind: string }) {
  const whole = kind === 'count' ? { kind: 'whole' as const } : {};
  return (
    <div className={styles.three}>
      <LineField path={[...path, 'default']} label="Usually" {...whole} />
      <LineField path={[...path, 'least']} label="Least" {...whole} />
      <LineField path={[...path, 'most']} label="Most" {...whole} />
    </div>
  );
}

/** The words that a choice is made of, and the measures of an outline. */
function Parts({ path, kind }: { path: Path; kind: string }) {
  const { data } = useRecord();
  if (kind === 'choice') {
    const options = valueAt(data, [...path, 'options']);
    return (
      <>
        <PickField path={[...path, 'default']} label="Usually" />
        {(Array.isArray(options) ? options : []).map((_option, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an option is known by its place.
          <div key={at} className={styles.two}>
            <LineField path={[...path, 'options', at, 'value']} label={`Option ${at + 1}, short name`} />
            <LineField path={[...path, 'options', at, 'label']} label={`Option ${at + 1}, in words`} />
          </div>
        ))}
      </>
    );
  }
  const measures = valueAt(data, [...path, 'default']);
  return (
    <div className={styles.two}>
      {(isGroup(measures) ? Object.keys(measures) : []).map((measure) =>
        measure === 'shape' ? (
          <PickField key={measure} path={[...path, 'default', measure]} label="Shape" />
        ) : (
          <LineField key={measure} path={[...path, 'default', measure]} label={measure} />
        ),
      )}
    </div>
  );
}

function ParameterFields({ path }: { path: Path }) {
  const { data, set, readOnly } = useRecord();
  const entry = valueAt(data, path);
  const kind = isGroup(entry) && typeof entry.kind === 'string' ? entry.kind : '';
  const change = (fresh: string) => {
    const { label = '', help } = isGroup(entry) ? entry : {};
    set(path, { kind: fresh, label, ...(help === undefined ? {} : { help }), ...(needed[fresh] ?? { default: '' }) });
  };
  return (
    <>
      <LineField path={[...path, 'label']} label="What is asked" />
      <TextField path={[...path, 'help']} label="What helps to answer" optional />
      <fieldset className={styles.group} disabled={readOnly}>
        <legend className={styles.label}>What it holds</legend>
        <p className={styles.help}>Another kind empties what stands below.</p>
        <select
          className={styles.input}
          aria-label="What it holds"
          value={kind}
          onChange={({ target }) => change(target.value)}
        >
          {kinds.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      </fieldset>
      {(kind === 'quantity' || kind === 'count') && <Range path={path} kind={kind} />}
      {(kind === 'choice' || kind === 'outline') && <Parts path={path} kind={kind} />}
      {(kind === 'wood' || kind === 'resin' || kind === 'finish' || kind === 'place') && (
        <PickField path={[...path, 'default']} label="Usually" />
      )}
      {kind === 'readings' && <TextField path={[...path, 'default']} label="Usually" />}
      <LineField path={[...path, 'shop']} label="Where the shop record has it" optional />
    </>
  );
}

/** What may be different from one making to the next. */
export function ParametersForm() {
  return (
    <EntryList
      path={['parameters']}
      title="What may be different the next time"
      kind="parameter"
      about="Lengths, woods, finishes: whoever follows the method may change them within the limits that you set."
      called="label"
      shows={['label', 'help', 'default', 'least', 'most', 'options', 'shop']}
      fresh={(label) => ({ kind: 'quantity', label, ...needed.quantity })}
    >
      {(path) => <ParameterFields path={path} />}
    </EntryList>
  );
}
