import { type Choice, ChoiceField, LineField, TextField } from './fields.tsx';
import styles from './form.module.css';
import { isGroup, useRecord } from './use-record.tsx';

const touches: readonly Choice[] = [
  { value: 'wood', label: 'Wood' },
  { value: 'resin', label: 'Resin' },
  { value: 'wood-and-resin', label: 'Wood and resin' },
  { value: 'nothing', label: 'Nothing: it is for looking at' },
];

const markets: readonly Choice[] = [
  { value: 'us', label: 'United States' },
  { value: 'eu', label: 'European Union' },
];

/** What is said of the texts that may show figures. */
export const textHelp = 'A figure of the method in braces, such as {/parameters/length}, is shown as its value.';

/** What the piece is for, where food touches it. */
function FoodFields() {
  const { data, set, remove, readOnly } = useRecord();
  const there = isGroup(data.food);
  if (!there) {
    if (readOnly) return null;
    return (
      <button
        type="button"
        className={styles.small}
        onClick={() => set(['food'], { claim: '', touches: 'wood', market: 'us' })}
      >
        Food touches it
      </button>
    );
  }
  return (
    <fieldset className={styles.group}>
      <legend className={styles.label}>Food</legend>
      <LineField path={['food', 'claim']} label="What is said of it" />
      <ChoiceField path={['food', 'touches']} label="Food lies on" choices={touches} />
      <ChoiceField path={['food', 'market']} label="Whose rules hold" choices={markets} />
      <LineField path={['food', 'papers']} label="Papers from the makers" optional />
      {!readOnly && (
        <button type="button" className={styles.small} onClick={() => remove(['food'])}>
          No food touches it
        </button>
      )}
    </fieldset>
  );
}

/** What a method is called, for whom, and what it makes. */
export function HeadForm() {
  return (
    <section aria-label="The method" data-part="head">
      <h3>The method</h3>
      <LineField path={['title']} label="Title" />
      <LineField path={['for']} label="Who it is for" />
      <TextField path={['about']} label="What it is about" help={textHelp} optional />
      <LineField path={['language']} label="Language" help="As a short tag, such as en or en-GB." />
      <LineField path={['version']} label="Day of this version" help="Year, month, day: 2027-01-12." optional />
      <h3>What is made</h3>
      <LineField path={['makes', 'what']} label="The piece" />
      <div className={styles.three}>
        <LineField path={['makes', 'pieces', 'default']} label="Pieces, usually" kind="whole" />
        <LineField path={['makes', 'pieces', 'least']} label="Fewest" kind="whole" />
        <LineField path={['makes', 'pieces', 'most']} label="Most" kind="whole" />
      </div>
      <FoodFields />
    </section>
  );
}
