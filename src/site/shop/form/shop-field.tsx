import { useMemo } from 'react';
import { useUnits } from '../../../calculators/view/units.tsx';
import { type FieldSaying, fieldSaying } from '../../../method/edit/index.ts';
import { type Dimension, type ReaderUnits, readerUnit, unitLabel, withUnit } from '../../../model/quantity/index.ts';
import { LineField, Row, useTyped } from '../../bench/form/fields.tsx';
import forms from '../../bench/form/form.module.css';
import { type Path, useField, useRecord } from '../../bench/form/use-record.tsx';
import styles from './shop-form.module.css';

interface ShopFieldProps {
  path: Path;
  /** What the schema calls it unless told. */
  label?: string;
  help?: string;
  /** An empty field takes it out of the text; so unless told. */
  needed?: boolean;
}

const inchWords = /\d\s*(in|ft|lb|oz|°F|ft\/min|gal|bd ft)\b|rpm/;

/** The example that is written as this reader writes. */
export function exampleFor(examples: readonly string[], { system }: ReaderUnits): string | undefined {
  return examples.find((text) => inchWords.test(text) === (system === 'inch')) ?? examples[0];
}

/** What the schema says of a field, with an example in the reader's own units. */
export function useSaying(path: Path, { label, help }: Pick<ShopFieldProps, 'label' | 'help'>) {
  const { text, context } = useRecord();
  const units = useUnits();
  const steps = path.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: a path is the same while its steps are.
  return useMemo(() => {
    const saying: FieldSaying = fieldSaying(text, path, context);
    const example = exampleFor(saying.examples, units);
    const words = [help ?? saying.help, example && `Such as ${example}.`].filter(Boolean).join(' ');
    return { label: label ?? saying.label ?? String(path.at(-1)), help: words, units };
  }, [text, steps, context, units, label, help]);
}

/** Most of a record may be left out, which its form says once: what may not is marked. */
const labelOf = (label: string, needed: boolean | undefined) => (needed ? `${label} (needed)` : label);

/** A quantity with its unit. A bare number gets the unit that stands beside the field. */
export function QuantityField(props: ShopFieldProps & { dimension: Dimension; bare?: string }) {
  const { path, dimension, needed, bare } = props;
  const field = useField(path);
  const { label, help, units } = useSaying(path, props);
  const unit = bare ?? readerUnit(dimension, units);
  const plain = typeof field.value === 'string' || typeof field.value === 'number' ? String(field.value) : '';
  const typed = useTyped(plain, (fresh) => {
    if (fresh.trim() === '' && !needed) field.set(path, undefined);
    else field.set(path, withUnit(fresh.trim(), unit));
  });
  // What carries a unit of its own is not shown with another beside it.
  const bareNow = typed.value.trim() === '' || withUnit(typed.value, unit) !== typed.value;
  return (
    <Row id={field.id} label={labelOf(label, needed)} help={help} problems={field.problems}>
      <div className={styles.withUnit}>
        <input
          id={field.id}
          className={forms.input}
          {...field.described}
          {...field.marked}
          autoComplete="off"
          {...typed}
          onKeyDown={({ key }) => key === 'Enter' && typed.onBlur()}
        />
        {bareNow && (
          <span className={styles.unit} aria-hidden="true">
            {unitLabel(unit)}
          </span>
        )}
      </div>
    </Row>
  );
}

/** A sum as money of its currency: 18 as 18.00. What is finer than its coin stays as it is. */
function asMoney(value: unknown, currency: string): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return '';
  try {
    const { maximumFractionDigits: digits = 2 } = new Intl.NumberFormat('en', {
      style: 'currency',
      currency,
    }).resolvedOptions();
    return Number(value.toFixed(digits)) === value ? value.toFixed(digits) : String(value);
  } catch {
    // A code that is no currency is told at its own field.
    return String(value);
  }
}

/** A sum of money in the currency of the shop. */
export function MoneyField(props: ShopFieldProps) {
  const { path, needed } = props;
  const field = useField(path);
  const { label, help } = useSaying(path, props);
  const currency = typeof field.data['currency'] === 'string' ? field.data['currency'] : '';
  const typed = useTyped(asMoney(field.value, currency), (fresh) => {
    const sum = fresh.trim();
    if (sum === '' && !needed) field.set(path, undefined);
    else field.set(path, /^\d{1,7}(\.\d{1,4})?$/.test(sum) ? Number(sum) : sum);
  });
  return (
    <Row id={field.id} label={labelOf(label, needed)} help={help} problems={field.problems}>
      <div className={styles.withUnit}>
        <input
          id={field.id}
          className={forms.input}
          inputMode="decimal"
          {...field.described}
          {...field.marked}
          autoComplete="off"
          {...typed}
          onKeyDown={({ key }) => key === 'Enter' && typed.onBlur()}
        />
        <span className={styles.unit} aria-hidden="true">
          {currency}
        </span>
      </div>
    </Row>
  );
}

/** A line of text or a whole number, with what the schema says of it. */
export function PlainField({ whole = false, ...props }: ShopFieldProps & { whole?: boolean }) {
  const { label, help } = useSaying(props.path, props);
  return (
    <LineField
      path={props.path}
      label={labelOf(label, props.needed)}
      help={help}
      kind={whole ? 'whole' : 'text'}
      optional={props.needed !== true}
      quiet
    />
  );
}
