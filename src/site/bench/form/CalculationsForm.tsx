import { useEffect, useId, useState } from 'react';
import { calculatorTitle, type InputOption, inputsFor } from '../../../method/edit/index.ts';
import { nameFrom } from './EntryList.tsx';
import { type Choice, Options } from './fields.tsx';
import styles from './form.module.css';
import { useChoices } from './ParametersForm.tsx';
import { Problems } from './Problems.tsx';
import { isGroup, notFetched, type Path, useProblemsAt, useRecord, valueAt } from './use-record.tsx';
import { ValueField } from './ValueField.tsx';

/** The inputs of a calculation, fetched once its calculator is known. */
function useInputs(path: Path, use: string): readonly InputOption[] {
  const { text } = useRecord();
  const [found, setFound] = useState<readonly InputOption[]>([]);
  const steps = path.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: which inputs there are depends on the calculator alone.
  useEffect(() => {
    let closed = false;
    inputsFor(text, path).then((all) => closed || setFound(all), notFetched);
    return () => {
      closed = true;
    };
  }, [use, steps]);
  return found;
}

/** What a calculator is called, once it is fetched. */
function useTitle(use: string): string {
  const [title, setTitle] = useState<string>();
  useEffect(() => {
    let closed = false;
    calculatorTitle(use).then((found) => closed || setTitle(found), notFetched);
    return () => {
      closed = true;
    };
  }, [use]);
  return title ?? use;
}

function Calculation({ path }: { path: Path }) {
  const { data, set, remove, readOnly } = useRecord();
  const id = useId();
  const name = String(path.at(-1));
  const use = String(valueAt(data, [...path, 'use']) ?? '');
  const title = useTitle(use);
  const given = valueAt(data, [...path, 'with']);
  const there = isGroup(given) ? Object.keys(given) : [];
  const inputs = useInputs(path, use);
  const own = useProblemsAt(path, ['with']);
  const unknown = useProblemsAt([...path, 'with'], there);
  const shown = there.map(
    (input) => inputs.find((each) => each.name === input) ?? { name: input, meta: undefined, info: '' },
  );
  const left = inputs.filter((input) => !there.includes(input.name));
  const choice = ({ name: value, meta, needed }: InputOption): Choice => ({
    value,
    label: needed ? `${meta.label} (needed)` : meta.label,
  });
  return (
    <li className={styles.entry}>
      <h5 className={styles.calculation}>
        {title} <span className={styles.help}>({name})</span>
      </h5>
      <Problems problems={[...own, ...unknown]} />
      {shown.map(({ name: input, meta, info }) => (
        <ValueField
          key={input}
          path={[...path, 'with', input]}
          label={meta?.label ?? input}
          help={info}
          optional
          counted={meta?.kind === 'quantity'}
          {...(meta?.options ? { choices: meta.options } : {})}
        />
      ))}
      {!readOnly && (
        <>
          <label className={styles.label} htmlFor={id}>
            Tell it more
          </label>
          <select
            id={id}
            className={styles.input}
            value=""
            onChange={({ target }) =>
              target.value !== '' &&
              set(
                [...path, 'with', target.value],
                left.find((each) => each.name === target.value)?.meta.examples[0] ?? '',
              )
            }
          >
            <Options choices={left.map(choice)} now="" none="Choose what to tell" />
          </select>
          <button type="button" className={styles.small} onClick={() => remove(path)}>
            Remove this calculation<span className="visually-hidden">: {title}</span>
          </button>
        </>
      )}
    </li>
  );
}

/** What is worked out for a step, and what each calculator is told. */
export function CalculationsForm({ path }: { path: Path }) {
  const { data, set, readOnly } = useRecord();
  const id = useId();
  const group = valueAt(data, path);
  const entries = isGroup(group) ? Object.keys(group) : [];
  const [adding, setAdding] = useState(false);
  const calculators = useChoices([...path, 'any', 'use'], adding);
  const taken = (isGroup(data.steps) ? Object.values(data.steps) : []).flatMap((step) =>
    isGroup(step) && isGroup(step.calculations) ? Object.keys(step.calculations) : [],
  );
  return (
    <fieldset className={styles.group}>
      <legend className={styles.label}>What is worked out for it</legend>
      <ul className={styles.entries}>
        {entries.map((name) => (
          <Calculation key={name} path={[...path, name]} />
        ))}
      </ul>
      {!readOnly && !adding && (
        <button type="button" className={styles.small} onClick={() => setAdding(true)}>
          Add a calculation
        </button>
      )}
      {adding && (
        <>
          <label className={styles.label} htmlFor={id}>
            A new calculation
          </label>
          <select
            id={id}
            className={styles.input}
            value=""
            onChange={({ target }) => {
              if (target.value === '') return;
              set([...path, nameFrom(target.value, taken)], { use: target.value, with: {} });
              setAdding(false);
            }}
          >
            <Options choices={calculators} now="" none="Choose a calculator" />
          </select>
        </>
      )}
    </fieldset>
  );
}
