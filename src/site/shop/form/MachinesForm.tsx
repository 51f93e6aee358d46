import { useId, useState } from 'react';
import { useUnits } from '../../../calculators/view/units.tsx';
import { type LimitName, limitsOf, type MachineKind, machineKinds } from '../../../method/shop/index.ts';
import type { Dimension } from '../../../model/quantity/index.ts';
import { readerUnit, withUnit } from '../../../model/quantity/index.ts';
import { type Choice, ChoiceField, LineField, Options } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { isGroup, type Path, useRecord } from '../../bench/form/use-record.tsx';
import { ItemList, inWords } from './ItemList.tsx';
import { Section } from './Section.tsx';
import { MoneyField, PlainField, QuantityField } from './shop-field.tsx';
import styles from './shop-form.module.css';
import { TextList } from './TextList.tsx';

const kinds: readonly Choice[] = machineKinds.map((value) => ({ value, label: inWords(value) }));

const isKind = (kind: unknown): kind is MachineKind => machineKinds.includes(kind as MachineKind);

function dimensionOf(limit: LimitName): Dimension {
  if (limit === 'rimSpeed') return 'speed';
  return limit === 'leastTurns' || limit === 'mostTurns' ? 'turns' : 'length';
}

/** What limits a machine of its kind; what stands there and is no limit of the kind can be taken out. */
function Limits({ path, kind, limits }: { path: Path; kind: unknown; limits: unknown }) {
  const { set } = useRecord();
  const units = useUnits();
  if (!isKind(kind)) return null;
  const names = limitsOf(kind);
  const others = isGroup(limits) ? Object.keys(limits).filter((name) => !names.includes(name as LimitName)) : [];
  if (names.length === 0 && others.length === 0) return null;
  return (
    <fieldset className={forms.group}>
      <legend className={forms.label}>What it takes, by its plate and manual</legend>
      <div className={forms.two}>
        {names
          .filter((name) => name !== 'collets')
          .map((name) => (
            <QuantityField key={name} path={[...path, name]} dimension={dimensionOf(name)} />
          ))}
      </div>
      {names.includes('collets') && (
        <TextList
          path={[...path, 'collets']}
          label="Collets"
          kind="Collet"
          help="Diameters of the shanks that it takes; several with commas between them."
          written={(typed) => withUnit(typed, readerUnit('length', units))}
        />
      )}
      {others.map((name) => (
        <div key={name} className={styles.line}>
          <LineField
            path={[...path, name]}
            label={inWords(name)}
            help={`No limit of a ${inWords(kind).toLowerCase()}.`}
          />
          <button type="button" className={forms.small} onClick={() => set([...path, name], undefined)}>
            Remove<span className="visually-hidden"> {name}</span>
          </button>
        </div>
      ))}
    </fieldset>
  );
}

/** A new machine begins with its kind. */
function NewMachine({ add }: { add: (words: string, value: Record<string, unknown>) => void }) {
  const id = useId();
  const [kind, setKind] = useState('');
  return (
    <div className={forms.adding}>
      <label className={forms.label} htmlFor={id}>
        Another machine
      </label>
      <div className={forms.value}>
        <select id={id} className={forms.input} value={kind} onChange={({ target }) => setKind(target.value)}>
          <Options choices={kinds} now={kind} none="What machine it is" />
        </select>
        <button
          type="button"
          className={forms.small}
          onClick={() => {
            if (kind === '') document.getElementById(id)?.focus();
            else add(inWords(kind), { kind });
            setKind('');
          }}
        >
          Add<span className="visually-hidden"> this machine</span>
        </button>
      </div>
    </div>
  );
}

/** The machines of the shop. */
export function MachinesForm({ count }: { count: string }) {
  return (
    <Section part="machines" title="Machines" count={count}>
      {() => (
        <ItemList
          list="machines"
          kind="machine"
          shows={['kind', 'name', 'count', 'limits', 'power', 'price']}
          words={({ kind, id, name, count: many }) =>
            [
              name === undefined && id === kind ? '' : inWords(String(kind)),
              typeof many === 'number' && many !== 1 ? `${many} like it` : '',
            ]
              .filter(Boolean)
              .join(', ')
          }
          fresh={(name) => ({ kind: '', name })}
          asking={(add) => <NewMachine add={add} />}
        >
          {(path, { kind, limits }) => (
            <>
              <ChoiceField path={[...path, 'kind']} label="What machine it is" choices={kinds} />
              <PlainField path={[...path, 'name']} label="What people call it" help="" />
              <PlainField path={[...path, 'count']} label="How many like it" help="One where it is left out." whole />
              <Limits path={[...path, 'limits']} kind={kind} limits={limits} />
              <QuantityField path={[...path, 'power']} dimension="power" />
              <MoneyField path={[...path, 'price']} />
            </>
          )}
        </ItemList>
      )}
    </Section>
  );
}
