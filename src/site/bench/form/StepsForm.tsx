import { actGroups } from '../../../method/acts/index.ts';
import { CalculationsForm } from './CalculationsForm.tsx';
import { EntryList } from './EntryList.tsx';
import { type Choice, ChoiceField, LineField, Options, TextField, TicksField } from './fields.tsx';
import styles from './form.module.css';
import { textHelp } from './HeadForm.tsx';
import { Problems } from './Problems.tsx';
import { isGroup, type Path, useField, useRecord, valueAt } from './use-record.tsx';
import { ValueField } from './ValueField.tsx';

const acts: readonly Choice[] = actGroups.flatMap(({ title, acts: all }) =>
  all.map(({ id, label }) => ({ value: id, label, group: title })),
);

const interrupts: readonly Choice[] = [
  { value: 'anywhere', label: 'Anywhere' },
  { value: 'between-pieces', label: 'Between two pieces' },
  { value: 'never', label: 'Never' },
];

/** Parts of a record by name, in their own words. */
export function useNamed(branch: string, called: string): readonly Choice[] {
  const { data } = useRecord();
  const group = data[branch];
  return (isGroup(group) ? Object.entries(group) : []).map(([value, entry]) => {
    const words = isGroup(entry) ? entry[called] : undefined;
    return { value, label: typeof words === 'string' && words !== '' ? words : value };
  });
}

function Wait({ path, others, single }: { path: Path; others: readonly Choice[]; single: boolean }) {
  const { value, set, remove, readOnly, problems, id } = useField(path);
  const { data } = useRecord();
  const link = isGroup(value);
  const step = link ? String(value.step ?? '') : String(value ?? '');
  const words = others.find((each) => each.value === step)?.label ?? step;
  const point = (name: string) => set(link ? [...path, 'step'] : path, name);
  const list = path.slice(0, -1);
  const size = valueAt(data, list);
  return (
    <div className={styles.inside}>
      <label className={styles.label} htmlFor={id}>
        It waits for
      </label>
      <select
        id={id}
        className={styles.input}
        disabled={readOnly}
        value={step}
        onChange={({ target }) => point(target.value)}
      >
        <Options choices={others} now={step} />
      </select>
      {link ? (
        <div className={styles.two}>
          <ValueField path={[...path, 'least']} label="At least so long" optional />
          <ValueField path={[...path, 'most']} label="At most so long" optional />
        </div>
      ) : (
        !readOnly && (
          <button type="button" className={styles.small} onClick={() => set(path, { step, least: '1 h' })}>
            With a time in between
          </button>
        )
      )}
      {!link && <Problems problems={problems} />}
      {!readOnly && (
        <button
          type="button"
          className={styles.small}
          onClick={() => (single || !Array.isArray(size) ? remove(list) : remove(path))}
        >
          Do not wait for it<span className="visually-hidden">: {words}</span>
        </button>
      )}
    </div>
  );
}

/** What a step waits for: the step above it where nothing is said. */
function Waits({ path, step }: { path: Path; step: string }) {
  const { data, add, readOnly } = useRecord();
  const all = useNamed('steps', 'title');
  const after = valueAt(data, path);
  const list = Array.isArray(after) ? after : [];
  const others = all.filter(({ value }) => value !== step);
  const at = all.findIndex(({ value }) => value === step);
  const nearest = all[at - 1] ?? others[0];
  return (
    <fieldset className={styles.group} data-path={path.join('/')}>
      <legend className={styles.label}>When it begins</legend>
      {list.length === 0 && (
        <p className={styles.help}>
          {at > 0 ? `When the step above it is done: ${all[at - 1]?.label}.` : 'At once: it is the first step.'}
        </p>
      )}
      {list.map((_entry, number) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a wait is known by its place.
        <Wait key={number} path={[...path, number]} others={others} single={list.length === 1} />
      ))}
      {!readOnly && nearest && (
        <button
          type="button"
          className={styles.small}
          onClick={() => add(path, undefined, { step: nearest.value, least: '1 h' })}
        >
          {list.length === 0 ? 'Let it wait for another step, or for some time' : 'Let it wait for one more step'}
        </button>
      )}
    </fieldset>
  );
}

function StepFields({ path, name }: { path: Path; name: string }) {
  return (
    <>
      <LineField path={[...path, 'title']} label="Title" />
      <ChoiceField path={[...path, 'act']} label="What kind of work it is" choices={acts} />
      <TextField path={[...path, 'does']} label="What to do" help={textHelp} />
      <TextField path={[...path, 'why']} label="Why it is done so" optional />
      <TextField path={[...path, 'tell']} label="How to tell that it is right" optional />
      <TextField path={[...path, 'wrong']} label="What goes wrong, and how it shows" optional />
      <div className={styles.two}>
        <ValueField path={[...path, 'hands', 'setUp']} label="Time at it, once" optional />
        <ValueField path={[...path, 'hands', 'each']} label="Time at it, for each piece" optional />
      </div>
      <div className={styles.two}>
        <LineField path={[...path, 'people']} label="People at once" kind="whole" optional />
        <ChoiceField
          path={[...path, 'interrupt']}
          label="Where it may be left overnight"
          choices={interrupts}
          none="Between two pieces, as usual"
          optional
        />
      </div>
      <Waits path={[...path, 'after']} step={name} />
      <TicksField path={[...path, 'uses']} label="Materials that it uses" choices={useNamed('materials', 'what')} />
      <TicksField path={[...path, 'tools']} label="Tools that it takes" choices={useNamed('tools', 'what')} />
      <CalculationsForm path={[...path, 'calculations']} />
    </>
  );
}

/** What is done, in its order. */
export function StepsForm() {
  return (
    <EntryList
      path={['steps']}
      title="Steps"
      kind="step"
      about="What is done, from the first stroke to the last."
      called="title"
      shows={[
        ...['title', 'act', 'does', 'why', 'tell', 'wrong', 'hands', 'people', 'interrupt', 'uses', 'tools'],
        'calculations',
      ]}
      fresh={(title) => ({ title, act: 'gather', does: '' })}
    >
      {(path, name) => <StepFields path={path} name={name} />}
    </EntryList>
  );
}
