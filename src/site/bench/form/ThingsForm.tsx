import { useId } from 'react';
import {
  limitNames,
  type MaterialKind,
  materialKinds,
  type ToolKind,
  toolKinds,
} from '../../../method/record/index.ts';
import { EntryList } from './EntryList.tsx';
import { type Choice, ChoiceField, LineField, Options, TickField } from './fields.tsx';
import styles from './form.module.css';
import { isGroup, type Path, useRecord, valueAt } from './use-record.tsx';
import { ValueField } from './ValueField.tsx';

const inWords = (name: string) => name.replaceAll('-', ' ').replace(/^./, (letter) => letter.toUpperCase());
const asChoices = (names: readonly (MaterialKind | ToolKind)[]): Choice[] =>
  names.map((value) => ({ value, label: inWords(value) }));
/** `mostLength` as words. */
const limitWords = (name: string) => inWords(name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`));

const per: readonly Choice[] = [
  { value: 'piece', label: 'one piece' },
  { value: 'batch', label: 'all pieces together' },
];

function Needs({ path }: { path: Path }) {
  const { data, add, remove, readOnly } = useRecord();
  const needs = valueAt(data, path);
  const list = Array.isArray(needs) ? needs : [];
  return (
    <fieldset className={styles.group}>
      <legend className={styles.label}>How much is needed</legend>
      {list.map((need, at) => {
        const here = [...path, at];
        const reference = isGroup(need) && 'from' in need;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a need is known by its place.
          <div key={at} className={styles.two}>
            <ValueField
              path={reference ? here : [...here, 'amount']}
              label={`Amount ${at + 1}`}
              whole={{ path: here, written: { amount: 1 }, beside: { per: isGroup(need) ? need.per : 'piece' } }}
            />
            <ChoiceField path={[...here, 'per']} label="For" choices={per} />
            {!readOnly && list.length > 1 && (
              <button type="button" className={styles.small} onClick={() => remove(here)}>
                Remove amount {at + 1}
              </button>
            )}
          </div>
        );
      })}
      {!readOnly && (
        <button
          type="button"
          className={styles.small}
          onClick={() => add(path, undefined, { amount: 1, per: 'piece' })}
        >
          Add an amount
        </button>
      )}
    </fieldset>
  );
}

/** What is used up. */
export function MaterialsForm() {
  return (
    <EntryList
      path={['materials']}
      title="Materials"
      kind="material"
      about="What is used up, as it would stand on a bill."
      called="what"
      shows={['what', 'kind', 'item', 'salvaged', 'needs', 'spare', 'note']}
      fresh={(what) => ({ what, kind: 'other', needs: [{ amount: 1, per: 'piece' }] })}
    >
      {(path) => (
        <>
          <LineField path={[...path, 'what']} label="What it is" />
          <ChoiceField path={[...path, 'kind']} label="Kind" choices={asChoices(materialKinds)} />
          <TickField path={[...path, 'salvaged']} label="It had another life" />
          <Needs path={[...path, 'needs']} />
          <LineField path={[...path, 'spare']} label="Spare" optional />
          <LineField path={[...path, 'item']} label="Id in the shop record" optional />
          <LineField path={[...path, 'note']} label="Note" optional />
        </>
      )}
    </EntryList>
  );
}

function Limits({ path }: { path: Path }) {
  const { data, set, readOnly } = useRecord();
  const id = useId();
  const limits = valueAt(data, path);
  const there = isGroup(limits) ? Object.keys(limits) : [];
  const left = limitNames.filter((name) => !there.includes(name));
  return (
    <fieldset className={styles.group}>
      <legend className={styles.label}>What it takes</legend>
      {there.map((name) => (
        <ValueField key={name} path={[...path, name]} label={limitWords(name)} optional />
      ))}
      {!readOnly && (
        <>
          <label className={styles.label} htmlFor={id}>
            Add a limit
          </label>
          <select
            id={id}
            className={styles.input}
            value=""
            onChange={({ target }) => target.value !== '' && set([...path, target.value], '')}
          >
            <Options choices={left.map((value) => ({ value, label: limitWords(value) }))} now="" none="Choose one" />
          </select>
        </>
      )}
    </fieldset>
  );
}

/** What is needed and stays. */
export function ToolsForm() {
  return (
    <EntryList
      path={['tools']}
      title="Tools"
      kind="tool"
      about="What is needed and stays, protection among it."
      called="what"
      shows={['what', 'kind', 'item', 'count', 'limits', 'note']}
      fresh={(what) => ({ what, kind: 'other' })}
    >
      {(path) => (
        <>
          <LineField path={[...path, 'what']} label="What it is" />
          <ChoiceField path={[...path, 'kind']} label="Kind" choices={asChoices(toolKinds)} />
          <LineField path={[...path, 'count']} label="How many there are" kind="whole" optional />
          <Limits path={[...path, 'limits']} />
          <LineField path={[...path, 'item']} label="Id in the shop record" optional />
          <LineField path={[...path, 'note']} label="Note" optional />
        </>
      )}
    </EntryList>
  );
}
