import type { FormEvent } from 'react';
import form from '../../calculators/view/form.module.css';
import { localTime, stampOf } from '../../method/batch/moment.ts';
import type { ShownBatch } from '../../method/batch/shown.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import styles from './batch.module.css';
import { ReadingField } from './Readings.tsx';
import type { Writing } from './writing.ts';

/** Lots, what was done otherwise, and readings that no wait hangs on. */
export function OtherEntries({ shown, writing, units }: { shown: ShownBatch; writing: Writing; units: ReaderUnits }) {
  return (
    <section aria-labelledby="more" className="no-print" data-part="more">
      <h2 id="more">Write down more</h2>
      <Lot shown={shown} writing={writing} />
      <Deviation shown={shown} writing={writing} />
      <OtherReadings shown={shown} writing={writing} units={units} />
    </section>
  );
}

type Props = { shown: ShownBatch; writing: Writing };

function Lot({ shown, writing: { typed, write } }: Props) {
  const [material, lot] = [typed.of('lot material') ?? '', typed.of('lot') ?? ''];
  const known = shown.materials.find(({ name }) => name === material);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    if (lot.trim() === '') return;
    write({ kind: 'lot', lot: lot.trim(), ...(known ? { material: known.name } : {}) }, `lot ${lot.trim()}`);
    typed.drop('lot material', 'lot');
  };
  return (
    <details open={lot !== '' || undefined}>
      <summary className={form.summary}>A lot of resin, finish or wood</summary>
      <form onSubmit={keep} className={styles.fields}>
        <label className={form.label}>
          Of what
          <select
            className={form.select}
            value={material}
            onChange={(event) => typed.type('lot material', event.target.value)}
          >
            <option value="">Something else</option>
            {shown.materials.map(({ name, what }) => (
              <option key={name} value={name}>
                {what}
              </option>
            ))}
          </select>
        </label>
        <label className={form.label}>
          Lot, as it stands on it
          <input
            className={form.input}
            maxLength={200}
            value={lot}
            onChange={(event) => typed.type('lot', event.target.value)}
          />
        </label>
        <button type="submit" className={styles.second} disabled={lot.trim() === ''}>
          Write down the lot
        </button>
      </form>
    </details>
  );
}

function Deviation({ shown, writing: { typed, write, zone } }: Props) {
  const [step, text] = [typed.of('deviation step') ?? '', typed.of('deviation') ?? ''];
  const known = shown.state.steps.find(({ id }) => id === step);
  const keep = (event: FormEvent) => {
    event.preventDefault();
    const when = stampOf(zone, localTime(zone, Date.now()));
    if (text.trim() === '' || !when) return;
    write(
      { kind: 'deviation', text: text.trim(), when, ...(known ? { step: known.id } : {}) },
      'what was done otherwise',
    );
    typed.drop('deviation step', 'deviation');
  };
  return (
    <details open={text !== '' || undefined}>
      <summary className={form.summary}>Something was done otherwise</summary>
      <form onSubmit={keep} className={styles.fields}>
        <label className={form.label}>
          At which step
          <select
            className={form.select}
            value={step}
            onChange={(event) => typed.type('deviation step', event.target.value)}
          >
            <option value="">None of them</option>
            {shown.state.steps.map(({ id, number, title }) => (
              <option key={id} value={id}>
                {number} {title}
              </option>
            ))}
          </select>
        </label>
        <label className={form.label}>
          What, and why
          <textarea
            className={form.textarea}
            maxLength={4000}
            value={text}
            onChange={(event) => typed.type('deviation', event.target.value)}
          />
        </label>
        <button type="submit" className={styles.second} disabled={text.trim() === ''}>
          Write it down
        </button>
      </form>
    </details>
  );
}

function OtherReadings({ shown, writing, units }: Props & { units: ReaderUnits }) {
  const { typed } = writing;
  const readable = shown.state.steps.filter((step) => step.readable.length > 0);
  const step = typed.of('reading step') ?? '';
  const chosen = readable.find(({ id }) => id === step);
  if (readable.length === 0) return null;
  return (
    <details open={step !== '' || undefined}>
      <summary className={form.summary}>Another reading</summary>
      <label className={form.label}>
        At which step
        <select
          className={form.select}
          value={step}
          onChange={(event) => typed.type('reading step', event.target.value)}
        >
          <option value="">Choose a step</option>
          {readable.map(({ id, number, title }) => (
            <option key={id} value={id}>
              {number} {title}
            </option>
          ))}
        </select>
      </label>
      {chosen?.readable.map((input) => (
        <ReadingField
          key={`${input.calculation} ${input.input}`}
          step={chosen.id}
          input={input}
          writing={writing}
          units={units}
        />
      ))}
    </details>
  );
}
