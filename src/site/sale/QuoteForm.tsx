import { useId } from 'react';
import type { MethodPage } from '../../method/page/types.ts';
import { daysAfter, type QuoteTexts, usualDays, usualRepair } from '../../method/sale/index.ts';
import type { FieldError } from '../../model/evidence/index.ts';
import styles from './quote.module.css';

interface QuoteFormProps {
  texts: QuoteTexts;
  /** As they stand in the address. */
  pieces: string;
  start: string;
  /** The page that is worked out, for what stands where nothing is typed. */
  usual: MethodPage | undefined;
  errors: readonly FieldError[];
  lasting: boolean;
  onText: (name: keyof QuoteTexts, text: string) => void;
  onCase: (name: 'pieces' | 'start', text: string) => void;
}

/** What only the seller knows. */
export function QuoteForm({ texts, pieces, start, usual, errors, lasting, onText, onCase }: QuoteFormProps) {
  const errorOf = (name: string) => errors.find((error) => error.field === name)?.message;
  const field = (name: keyof QuoteTexts) => ({
    value: texts[name] ?? '',
    error: errorOf(name),
    onChange: (text: string) => onText(name, text),
  });
  return (
    <div className={styles.fields}>
      <Entry
        {...field('maker')}
        label="From: your name and address"
        help={
          lasting
            ? 'Kept in this browser for the next quote.'
            : 'This browser keeps nothing: it lasts as long as the page.'
        }
        lines={3}
      />
      <Entry {...field('customer')} label="For: the customer" lines={3} />
      <Entry {...field('number')} label="Number" />
      <Entry
        {...field('until')}
        label="Valid until"
        type="date"
        help={`Empty: ${usualDays} days, until ${daysAfter(texts.day, usualDays)}.`}
      />
      <Entry
        label="Pieces"
        value={pieces}
        error={errorOf('pieces')}
        placeholder={usual && `${usual.makes.usual}`}
        help={usual && `From ${usual.makes.least} to ${usual.makes.most} at a time.`}
        onChange={(text) => onCase('pieces', text)}
      />
      <Entry
        label="First day of the work"
        value={start}
        error={errorOf('start')}
        type="date"
        help="Without it no day is named."
        onChange={(text) => onCase('start', text)}
      />
      <Entry
        {...field('price')}
        label="Price of a piece, if your own"
        placeholder={usual?.brief.price ?? 'none worked out'}
        help="Empty: the price of the plan."
      />
      {usual?.currency === undefined && (
        <Entry
          {...field('currency')}
          label="Currency"
          placeholder="USD"
          help="Its code, such as EUR: no shop record names one."
        />
      )}
      <Entry {...field('discount')} label="Discount" placeholder="0 %" help="Of the sum, in percent." />
      <Entry {...field('repair')} label="If it comes back" lines={4} placeholder={usualRepair} wide />
    </div>
  );
}

interface EntryProps {
  label: string;
  value: string;
  onChange: (text: string) => void;
  error?: string | undefined;
  help?: string | undefined;
  placeholder?: string | undefined;
  type?: 'text' | 'date';
  /** A field of several lines. */
  lines?: number;
  wide?: boolean;
}

function Entry({ label, value, onChange, error, help, placeholder, type = 'text', lines, wide }: EntryProps) {
  const id = useId();
  const told = [help ? `${id}-help` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ') || undefined;
  const props = {
    id,
    value,
    placeholder,
    autoComplete: 'off',
    'aria-invalid': error !== undefined || undefined,
    'aria-describedby': told,
    onChange: ({ target }: { target: { value: string } }) => onChange(target.value),
  };
  return (
    <div className={`${styles.field}${wide ? ` ${styles.wide}` : ''}`}>
      <label htmlFor={id}>{label}</label>
      {lines ? <textarea rows={lines} {...props} /> : <input type={type} {...props} />}
      {help && (
        <span id={`${id}-help`} className={styles.help}>
          {help}
        </span>
      )}
      {error && (
        <span id={`${id}-error`} className={styles.wrong}>
          {error}
        </span>
      )}
    </div>
  );
}
