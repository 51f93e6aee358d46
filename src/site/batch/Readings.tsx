import { type FormEvent, useState } from 'react';
import form from '../../calculators/view/form.module.css';
import type { ReadableInput } from '../../method/batch/measured.ts';
import type { BatchState } from '../../method/batch/state.ts';
import { inReaderUnits, type ReaderUnits, readerUnit, unitLabel, withUnit } from '../../model/quantity/index.ts';
import styles from './batch.module.css';
import { useWhen, When } from './When.tsx';
import type { Writing } from './writing.ts';

/** What must be read now: temperatures on which the time after a step rests. */
export function Readings({ state, writing, units }: { state: BatchState; writing: Writing; units: ReaderUnits }) {
  const wanted = state.steps.filter((step) => step.wanted.length > 0);
  if (wanted.length === 0) return null;
  return (
    <section aria-labelledby="wanted" data-part="wanted" className={styles.wanted}>
      <h2 id="wanted">Read and write down</h2>
      <p>The time after these steps rests on it. Until it is written down nobody knows when the next may be done.</p>
      {wanted.map(({ id, number, title, wanted: inputs }) => (
        <div key={id}>
          <h3>
            {number} {title}
          </h3>
          {inputs.map((input) => (
            <ReadingField
              key={`${input.calculation} ${input.input}`}
              step={id}
              input={input}
              writing={writing}
              units={units}
            />
          ))}
        </div>
      ))}
    </section>
  );
}

interface FieldProps {
  step: string;
  input: ReadableInput;
  writing: Writing;
  units: ReaderUnits;
}

/** A field for one reading, in the reader's units. What is half typed stays. */
export function ReadingField({ step, input, writing, units }: FieldProps) {
  const { typed, write } = writing;
  const field = `${step} ${input.calculation} ${input.input}`;
  const id = `reading ${field}`.replaceAll(' ', '-');
  const value = typed.of(field) ?? '';
  const unit = input.dimension ? readerUnit(input.dimension, units) : undefined;
  const [refused, setRefused] = useState<{ value: string; why: string } | undefined>();
  const why = refused?.value === value ? refused.why : undefined;
  const time = useWhen(writing, `${field} when`);
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    const when = time.moment();
    if (value.trim() === '' || when === undefined || time.fault !== undefined) return;
    const read = (unit ? withUnit(value.trim(), unit) : value.trim()).slice(0, 200);
    const fault = await faultOf(input, read);
    if (fault !== undefined) {
      setRefused({ value, why: fault });
      return;
    }
    write(
      { kind: 'reading', step, calculation: input.calculation, input: input.input, value: read, when },
      `${input.label} ${read}`,
    );
    typed.drop(field, `${field} when`);
  };
  return (
    <form
      className={styles.reading}
      onSubmit={(event) => void keep(event)}
      data-reading={`${input.calculation} ${input.input}`}
    >
      <label className={form.label} htmlFor={id}>
        {input.label}
        {unit && unitLabel(unit) !== '' ? `, ${unitLabel(unit)}` : ''}{' '}
        {input.planned !== undefined && <span className={form.optional}>(planned {input.planned})</span>}
      </label>
      <input
        id={id}
        className={form.input}
        inputMode={unit ? 'decimal' : undefined}
        value={value}
        aria-invalid={why === undefined ? undefined : true}
        aria-describedby={why === undefined ? undefined : `${id}-fault`}
        onChange={(event) => typed.type(field, event.target.value)}
      />
      <button type="submit" className={styles.second} disabled={value.trim() === ''}>
        Write down
      </button>
      {why !== undefined && (
        <p role="alert" id={`${id}-fault`} className={form.error}>
          {inReaderUnits(why, units)}
        </p>
      )}
      <When time={time} of={input.label} />
    </form>
  );
}

/** Why a reading is not taken. A browser that cannot fetch the field that reads it writes it down all the same: the list then says what is wrong. */
async function faultOf(input: ReadableInput, read: string): Promise<string | undefined> {
  let ask: typeof import('../../method/batch/reading-fault.ts');
  try {
    ask = await import('../../method/batch/reading-fault.ts');
  } catch {
    return undefined;
  }
  return ask.readingFault(input, read);
}
