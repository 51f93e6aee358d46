import { memo, useEffect, useRef, useState } from 'react';
import { fieldsOf } from '../../calculators/kit/answer.ts';
import type { Asking, RawInputs } from '../../calculators/kit/calculator.ts';
import { fieldMeta } from '../../calculators/kit/fields.ts';
import type { ControlProps } from '../../calculators/view/Field.tsx';
import { Form } from '../../calculators/view/Form.tsx';
import fieldStyles from '../../calculators/view/form.module.css';
import { StrangeNames } from '../../calculators/view/StrangeNames.tsx';
import { addressNames, reservedNames } from '../../method/record/address-names.ts';
import type { FieldError } from '../../model/evidence/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import type { Picks } from './case-form.ts';
import styles from './method.module.css';
import type { CaseState } from './use-case.ts';

/** A day: the browser's own picker for a day, plain text for a day with a time. */
function DayControl({ id, value, invalid, describedBy, onChange }: ControlProps) {
  const plain = value === '' || /^\d{4}-\d\d-\d\d$/.test(value);
  return (
    <input
      id={id}
      type={plain ? 'date' : 'text'}
      className={fieldStyles.input}
      value={value}
      aria-invalid={invalid || undefined}
      aria-describedby={describedBy}
      onChange={(event) => onChange(event.target.value)}
    />
  );
}

/** Fetch what the fields pick from, once somebody is about to. */
async function fetchPicks(): Promise<Picks> {
  const [woods, places] = await Promise.all([
    import('../../calculators/kit/species-field.ts'),
    import('../../calculators/kit/climate-field.ts'),
  ]);
  return { woods: woods.speciesOptions, places: places.climateOptions };
}

/** Fields that somebody emptied, each with what is taken in its place. */
export function emptied(form: Asking, own: RawInputs, units: ReaderUnits): string[] {
  const usual = form.example[units.system];
  return Object.entries(fieldsOf(form)).flatMap(([name, schema]) => {
    const taken = usual[name] ?? '';
    const label = fieldMeta(schema)?.label ?? name;
    return own[name]?.trim() === '' && taken !== '' ? [`${label}, ${taken}`] : [];
  });
}

/** Names that an address has for the case and for what is done with it. */
const besides = [...reservedNames, ...addressNames];

interface CaseFormProps {
  form: Asking;
  state: CaseState;
  errors: readonly FieldError[];
  units: ReaderUnits;
  onPicks: (picks: Picks) => void;
  /** Told once, when somebody is about to change something. */
  onNear: () => void;
}

/** The case of a method: its parameters, how many, when and with whom. */
export const CaseForm = memo(function CaseForm({ form, state, errors, units, onPicks, onNear }: CaseFormProps) {
  const [asked, setAsked] = useState(false);
  const empty = emptied(form, state.own, units);
  const near = () => {
    if (asked) return;
    setAsked(true);
    onNear();
    // Without the lists the fields still take what is typed.
    fetchPicks().then(onPicks, () => setAsked(false));
  };
  // A wood or place of the address is shown by its name, which only the lists know.
  const unknown = Object.entries(fieldsOf(form)).some(([name, schema]) => {
    const { kind, pick } = fieldMeta(schema) ?? {};
    const text = state.own[name] ?? '';
    return (kind === 'climate' || kind === 'species') && text !== '' && !pick?.some(({ value }) => value === text);
  });
  const fetchNames = useRef(near);
  fetchNames.current = near;
  useEffect(() => {
    if (unknown) fetchNames.current();
  }, [unknown]);
  return (
    // It only listens for what goes on in its fields.
    // biome-ignore lint/a11y/noStaticElementInteractions: see above
    <div className={styles.form} onFocus={near} onPointerEnter={near}>
      <Form
        calculator={form}
        raw={state.raw}
        errors={errors}
        units={units}
        controls={{ text: DayControl }}
        set={state.set}
      />
      <StrangeNames form={form} others={besides} />
      {empty.length > 0 && (
        <p>Left empty, so what the field began with, the method’s own or your shop’s, is taken: {empty.join('; ')}.</p>
      )}
      {Object.keys(state.own).length > 0 && (
        <button type="button" className="button button--secondary" onClick={state.reset}>
          Back to the method’s own case
        </button>
      )}
    </div>
  );
});
