import { type ComponentType, useId } from 'react';
import {
  canonicalUnit,
  excerpt,
  formatClosely,
  inReaderUnits,
  parseQuantity,
  type ReaderUnits,
  readerUnit,
  unitLabel,
} from '../../model/quantity/index.ts';
import { explicitText } from '../kit/address.ts';
import { exampleFor } from '../kit/example.ts';
import { bareUnitFor, type FieldKind, type FieldMeta, isBare, type PickOption } from '../kit/fields.ts';
import { Combobox } from './Combobox.tsx';
import styles from './form.module.css';
import { candidatesFor } from './match-options.ts';
import { RowsControl } from './RowsControl.tsx';
import { selectWhole } from './select-whole.ts';

/** What a control of a kind's own needs to stand in the form. */
export interface ControlProps {
  id: string;
  value: string;
  meta: FieldMeta;
  units: ReaderUnits;
  invalid: boolean;
  describedBy: string | undefined;
  onChange: (value: string) => void;
}
export type Control = ComponentType<ControlProps>;
/** Controls by kind of field: those that are code of their own, which a page brings where it asks for such a thing. */
export type Controls = Readonly<Partial<Record<FieldKind, Control>>>;

interface FieldProps {
  name: string;
  value: string;
  meta: FieldMeta;
  optional: boolean;
  units: ReaderUnits;
  error: string | undefined;
  /** The control of its kind, where that is code of its own. */
  control: Control | undefined;
  onChange: (value: string) => void;
}

/** Choices up to so many stand open, each a touch away; more would fill a phone's screen and fold into a list. */
const openChoices = 8;
const isOpenChoice = ({ kind, options = [] }: FieldMeta) => kind === 'choice' && options.length <= openChoices;

/** One field: label, control, what was understood, help, and the error where it belongs. */
export function Field({ name, value, meta, optional, units, error, control: OwnControl, onChange }: FieldProps) {
  const id = useId();
  const helpId = `${id}-help`;
  const errorId = `${id}-error`;
  const echo = meta.kind === 'quantity' ? understood(value, meta, units) : readAs(value, meta, units);
  const describedBy = [error ? errorId : '', meta.help || echo ? helpId : ''].filter(Boolean).join(' ') || undefined;
  const props: ControlProps = { id, value, meta, units, invalid: error !== undefined, describedBy, onChange };
  const label = (
    <>
      {meta.label}
      {optional && <span className={styles.optional}> (optional)</span>}
    </>
  );
  const grouped = isOpenChoice(meta) || meta.rows !== undefined;
  return (
    <div className={styles.field} data-field={name} data-kind={meta.kind}>
      {grouped ? (
        <span className={styles.label} id={`${id}-label`}>
          {label}
        </span>
      ) : (
        <label className={styles.label} htmlFor={id}>
          {label}
        </label>
      )}
      {OwnControl ? (
        <OwnControl {...props} />
      ) : (
        <StandardControl {...props} optional={optional} labelledBy={`${id}-label`} />
      )}
      {(meta.kind === 'list' || meta.kind === 'readings') && value.trim() !== '' && (
        // On paper a text area shows only what fits its box.
        <div className={`print-only ${styles.whole}`} data-part="whole-text" aria-hidden="true">
          {value}
        </div>
      )}
      {(meta.help || echo) && (
        <p className={styles.help} id={helpId}>
          {echo && <span className={styles.echo}>{echo} </span>}
          {meta.help && inReaderUnits(meta.help, units)}
        </p>
      )}
      {error && (
        <p className={styles.error} id={errorId}>
          <span aria-hidden="true">✗ </span>
          {error}
        </p>
      )}
      {error && meta.pick && (
        <Candidates
          options={candidatesFor(meta.pick, value, error)}
          label={meta.label}
          take={(picked) => {
            onChange(picked);
            // What was pressed is gone then.
            document.getElementById(id)?.focus();
          }}
        />
      )}
    </div>
  );
}

/** What a refused text may have meant, a touch away each. */
function Candidates({ options, label, take }: CandidatesProps) {
  if (options.length === 0) return null;
  return (
    <fieldset className={styles.candidates} aria-label={`${label}: which?`}>
      {options.map((option) => (
        <button key={option.value} type="button" className={styles.candidate} onClick={() => take(option.value)}>
          {option.label}
        </button>
      ))}
    </fieldset>
  );
}

interface CandidatesProps {
  options: readonly PickOption[];
  label: string;
  take: (value: string) => void;
}

interface StandardProps extends ControlProps {
  optional: boolean;
  labelledBy: string;
}

function StandardControl(props: StandardProps) {
  const { id, value, meta, units, invalid, describedBy, onChange, labelledBy } = props;
  if (isOpenChoice(meta)) return <Choice {...props} labelledBy={labelledBy} />;
  if (meta.kind === 'choice') return <LongChoice {...props} />;
  if (meta.rows) return <RowsControl {...{ id, value, meta, units, invalid, describedBy, onChange }} />;
  if (meta.kind === 'list') {
    return (
      <textarea
        id={id}
        className={styles.textarea}
        spellCheck={false}
        rows={Math.min(12, Math.max(4, value.split('\n').length + 1))}
        value={value}
        placeholder={exampleFor(meta, units)}
        aria-invalid={invalid || undefined}
        aria-describedby={describedBy}
        onChange={(event) => onChange(event.target.value)}
      />
    );
  }
  if (meta.pick) {
    return (
      <Combobox
        id={id}
        value={value}
        options={meta.pick}
        invalid={invalid}
        describedBy={describedBy}
        onChange={onChange}
      />
    );
  }
  const unit = bareUnitFor(meta, value, units);
  const example = exampleBeside(meta, unit, units);
  return (
    <span className={styles.quantity}>
      <input
        id={id}
        type="text"
        // Fractions, feet, inches and a unit that must be written need the whole keyboard; millimetres and degrees need digits only.
        inputMode={unit !== undefined && meta.kind === 'quantity' && units.system === 'metric' ? 'decimal' : 'text'}
        autoComplete="off"
        spellCheck={false}
        className={styles.input}
        value={value}
        placeholder={example}
        aria-invalid={invalid || undefined}
        aria-describedby={describedBy}
        onFocus={(event) => meta.kind === 'quantity' && selectWhole(event.target, event.nativeEvent)}
        onChange={(event) => onChange(event.target.value)}
      />
      {unit && isBare(value) && !(value.trim() === '' && /[^\d.,\s]/.test(example ?? '')) && (
        <span className={styles.suffix} aria-hidden="true">
          {unitLabel(unit)}
        </span>
      )}
    </span>
  );
}

function Choice({ id, value, meta, describedBy, onChange, labelledBy }: ControlProps & { labelledBy: string }) {
  const options = meta.options ?? [];
  return (
    <div className={styles.choices} role="radiogroup" aria-labelledby={labelledBy} aria-describedby={describedBy}>
      {options.map((option) => (
        <label key={option.value} className={styles.choice}>
          <input
            type="radio"
            name={id}
            value={option.value}
            checked={value.trim().toLowerCase() === option.value}
            onChange={() => onChange(option.value)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </div>
  );
}

/** A choice of many as a list that folds; what was typed and is none of them stays to be seen. */
function LongChoice({
  id,
  value,
  meta,
  invalid,
  describedBy,
  onChange,
  optional,
}: ControlProps & { optional: boolean }) {
  const options = meta.options ?? [];
  const typed = value.trim().toLowerCase();
  const known = options.some((option) => option.value === typed);
  return (
    <select
      id={id}
      className={styles.select}
      value={known ? typed : value}
      aria-invalid={invalid || undefined}
      aria-describedby={describedBy}
      onChange={(event) => onChange(event.target.value)}
    >
      {(optional || value === '') && <option value="">as usual</option>}
      {!known && value !== '' && <option value={value}>{value}</option>}
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </select>
  );
}

/** The example in an empty field, without its unit where that stands at the end of the field already. */
function exampleBeside(meta: FieldMeta, unit: string | undefined, units: ReaderUnits): string | undefined {
  const label = unit ? unitLabel(unit) : '';
  const example = meta.examples.find((each) => label !== '' && each.endsWith(label)) ?? exampleFor(meta, units);
  return label && example?.endsWith(label) ? example.slice(0, -label.length).trim() : example;
}

/** What a list with bare numbers was read as, so that nobody is in doubt of its units; a line end is written `/`. */
function readAs(text: string, meta: FieldMeta, units: ReaderUnits): string | undefined {
  if (!meta.explicit || text.trim() === '') return undefined;
  const explicit = explicitText(meta, text, units);
  return explicit === text ? undefined : `Read as: ${excerpt(explicit.trim().replace(/\s*[\r\n]+\s*/g, ' / '), 160)}`;
}

/** What a quantity was understood as, where the reader's units differ from those typed. */
function understood(text: string, meta: FieldMeta, units: ReaderUnits): string | undefined {
  if (!meta.dimension || text.trim() === '') return undefined;
  const usual = readerUnit(meta.dimension, units);
  const bareUnit = bareUnitFor(meta, text, units);
  if (bareUnit === undefined && isBare(text)) return undefined;
  const parsed = parseQuantity(text, { dimension: meta.dimension, bareUnit: bareUnit ?? usual });
  // A time is written in any unit by every reader.
  if (!parsed.ok || parsed.unit === usual || meta.dimension === 'time') return undefined;
  // Only a length is measured so finely.
  const digits = meta.dimension === 'length' ? 5 : 3;
  return `= ${formatClosely(parsed.value, canonicalUnit[meta.dimension], units, { digits })}`;
}
