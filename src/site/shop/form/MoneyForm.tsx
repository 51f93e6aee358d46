import { type Choice, ChoiceField, TickField } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { Problems } from '../../bench/form/Problems.tsx';
import { type Path, useProblemsAt, useRecord, valueAt } from '../../bench/form/use-record.tsx';
import { ItemList } from './ItemList.tsx';
import { Section } from './Section.tsx';
import { MoneyField, PlainField, QuantityField } from './shop-field.tsx';
import styles from './shop-form.module.css';

/** Who does the work. */
export function PeopleForm({ count }: { count: string }) {
  return (
    <Section part="people" title="People" count={count}>
      {() => (
        <ItemList
          list="people"
          kind="sort of helper"
          about="By what they do in the shop; no person’s name is needed. A rate of 0 is for work that is not paid."
          words={({ count: many = 1 }) => (many === 1 ? '' : String(many))}
          shows={['name', 'count', 'rate']}
          fresh={(name) => ({ name })}
        >
          {(path) => (
            <>
              <PlainField path={[...path, 'name']} label="What they are called" help="" />
              <PlainField path={[...path, 'count']} label="How many" help="One where it is left out." whole />
              <MoneyField path={[...path, 'rate']} />
            </>
          )}
        </ItemList>
      )}
    </Section>
  );
}

function Packs({ path }: { path: Path }) {
  const { data, add, remove } = useRecord();
  const packs = valueAt(data, path);
  const list: readonly unknown[] = Array.isArray(packs) ? packs : [];
  return (
    <fieldset className={forms.group}>
      <legend className={forms.label}>Packs in which it is sold</legend>
      {list.map((_pack, at) => {
        const here = [...path, at];
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a pack is known by its place.
          <div key={at} className={styles.pack}>
            <div className={forms.three}>
              <PlainField path={[...here, 'size']} needed />
              <MoneyField path={[...here, 'price']} label="Price of the pack" needed />
              <PlainField
                path={[...here, 'available']}
                label="How many can be had"
                help="Any number where it is left out."
                whole
              />
            </div>
            <button type="button" className={forms.small} onClick={() => remove(here)}>
              Remove pack {at + 1}
            </button>
          </div>
        );
      })}
      <button type="button" className={forms.small} onClick={() => add(path, undefined, { size: '', price: '' })}>
        Add a pack
      </button>
    </fieldset>
  );
}

/** What is used up: how it is sold, what lies on the shelf. */
export function MaterialsForm({ count }: { count: string }) {
  return (
    <Section part="materials" title="Materials and consumables" count={count}>
      {() => (
        <ItemList
          list="materials"
          kind="material"
          words={({ onHand }) => (onHand === undefined ? '' : `${onHand} on the shelf`)}
          shows={['name', 'consumable', 'packs', 'onHand', 'density']}
          fresh={(name) => ({ name })}
        >
          {(path) => (
            <>
              <PlainField path={[...path, 'name']} label="What it is" help="As it would stand on a bill." needed />
              <TickField path={[...path, 'consumable']} label="It is worn out or thrown away" />
              <Packs path={[...path, 'packs']} />
              <PlainField path={[...path, 'onHand']} />
              <QuantityField
                path={[...path, 'density']}
                dimension="liquid-density"
                label="Density"
                help="Where it is needed by weight and sold by volume, or the other way."
              />
            </>
          )}
        </ItemList>
      )}
    </Section>
  );
}

const per: readonly Choice[] = [
  { value: 'piece', label: 'Each piece sold' },
  { value: 'batch', label: 'The whole batch' },
];

/** Overhead, energy, fees, and what is to stay. */
export function PricesForm() {
  const overhead = useProblemsAt(['overhead'], ['perHour', 'perMonth', 'hoursPerMonth']);
  return (
    <Section part="prices" title="Overhead, fees and prices">
      {() => (
        <>
          <fieldset className={forms.group}>
            <legend className={forms.label}>Overhead</legend>
            <p className={forms.help}>
              What the shop costs whether it works or not: for an hour, or for a month with its hours.
            </p>
            <Problems problems={overhead} />
            <MoneyField path={['overhead', 'perHour']} />
            <MoneyField path={['overhead', 'perMonth']} />
            <QuantityField path={['overhead', 'hoursPerMonth']} dimension="time" bare="h" />
          </fieldset>
          <MoneyField path={['energy', 'price']} />
          <ItemList
            list="fees"
            kind="fee"
            title="Fees"
            about="What a market, a card or a gallery keeps: a share of the price, a fixed sum, or both."
            words={({ percent, fixed }) =>
              [percent, fixed].filter((each) => each !== undefined && each !== '').join(' and ')
            }
            shows={['name', 'percent', 'fixed', 'per']}
            fresh={(name) => ({ name, percent: '' })}
          >
            {(path) => (
              <>
                <PlainField path={[...path, 'name']} label="What it is called" help="" />
                <QuantityField path={[...path, 'percent']} dimension="percent" />
                <MoneyField path={[...path, 'fixed']} />
                <ChoiceField
                  path={[...path, 'per']}
                  label="The fixed sum is for"
                  help="Each piece where it is left out."
                  choices={per}
                  optional
                />
              </>
            )}
          </ItemList>
          <h4>What is to stay</h4>
          <p className={forms.help}>A margin or a mark-up: each sets the price by itself.</p>
          <QuantityField path={['margin']} dimension="percent" />
          <QuantityField path={['markup']} dimension="percent" />
        </>
      )}
    </Section>
  );
}
