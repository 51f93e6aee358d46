import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { fieldWords } from '../../../method/edit/index.ts';
import styles from './form.module.css';
import { Problems } from './Problems.tsx';
import { type Path, useField, useRecord, valueAt } from './use-record.tsx';

/** A pause in typing after which what is typed goes into the text, ms. */
const pause = 700;

/**
 * What is typed in a field until it goes into the text: when typing pauses, or the field or page is left. What comes from the text meanwhile,
 * as by undoing, stands in the field at once; but what is typed and not yet written stays, and is written over it.
 *
 * @param wait the pause, ms
 */
export function useTyped(now: string, write: (typed: string) => void, wait = pause) {
  const [typed, setTyped] = useState<string>();
  const latest = useRef({ now, write, typed });
  latest.current = { now, write, typed };
  const flush = useRef(() => {
    const { now: before, write: put, typed: fresh } = latest.current;
    if (fresh !== undefined && fresh.trim() !== before.trim()) put(fresh.trimEnd());
  });
  // The text was changed: by this field itself, or by somebody else, whose change then counts.
  const known = useRef(now);
  if (known.current !== now) {
    const written = typed?.trimEnd() === known.current.trimEnd();
    known.current = now;
    if (written && typed?.trimEnd() !== now) setTyped(undefined);
  }
  useEffect(() => {
    if (typed === undefined) return undefined;
    const timer = setTimeout(flush.current, wait);
    return () => clearTimeout(timer);
  }, [typed, wait]);
  useEffect(() => {
    const leave = () => flush.current();
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('pagehide', leave);
      leave();
    };
  }, []);
  return {
    value: typed ?? now,
    onChange: ({ target }: { target: { value: string } }) => setTyped(target.value),
    onBlur: () => {
      flush.current();
      setTyped(undefined);
    },
  };
}

interface RowProps {
  id: string;
  label: string;
  help?: string | undefined;
  problems: Parameters<typeof Problems>[0]['problems'];
  children: ReactNode;
}

/** A label, a control, what helps, what is wrong. */
export function Row({ id, label, help, problems, children }: RowProps) {
  return (
    <div className={styles.row}>
      <label className={styles.label} htmlFor={id}>
        {label}
      </label>
      {children}
      <p id={`${id}-help`} className={styles.help}>
        {saysMore(help, label) ? help : undefined}
      </p>
      <Problems id={`${id}-problems`} problems={problems} />
    </div>
  );
}

/** Whether help says more than the label. */
const saysMore = (help: string | undefined, label: string) =>
  help !== undefined && help !== `${label.replace(/ \(may be left out\)$/, '')}.`;

interface FieldProps {
  path: Path;
  label: string;
  /** What helps; what the schema says of it unless told. */
  help?: string;
  /** It may be left out: an empty field takes it out of the text. */
  optional?: boolean;
  /** Its label does not say so: the form says it once for all. */
  quiet?: boolean;
}

const asText = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';

const labelOf = ({ label, optional, quiet }: FieldProps) => (optional && !quiet ? `${label} (may be left out)` : label);

/** One line of text, or a number where the text of the record has one. */
export function LineField(props: FieldProps & { kind?: 'text' | 'whole' }) {
  const { path, help, optional, kind = 'text' } = props;
  const field = useField(path);
  const typed = useTyped(asText(field.value), (fresh) => {
    if (fresh === '' && optional) field.set(path, undefined);
    else field.set(path, kind === 'whole' && /^\d{1,9}$/.test(fresh) ? Number(fresh) : fresh);
  });
  return (
    <Row
      id={field.id}
      label={labelOf(props)}
      help={help ?? fieldWords(field.text, path, field.context)}
      problems={field.problems}
    >
      <input
        id={field.id}
        className={styles.input}
        {...(kind === 'whole' ? { inputMode: 'numeric' as const } : {})}
        {...field.described}
        {...field.marked}
        readOnly={field.readOnly}
        autoComplete="off"
        {...typed}
        onKeyDown={({ key }) => key === 'Enter' && typed.onBlur()}
      />
    </Row>
  );
}

/** A text of several lines. */
export function TextField(props: FieldProps) {
  const { path, help, optional } = props;
  const field = useField(path);
  const written = asText(field.value);
  const ends = written.endsWith('\n') || written === '';
  const typed = useTyped(written.trimEnd(), (fresh) => {
    if (fresh === '' && optional) field.set(path, undefined);
    else field.set(path, fresh.includes('\n') && ends ? `${fresh}\n` : fresh);
  });
  return (
    <Row
      id={field.id}
      label={labelOf(props)}
      help={help ?? fieldWords(field.text, path, field.context)}
      problems={field.problems}
    >
      <textarea
        id={field.id}
        className={styles.area}
        rows={Math.min(14, Math.max(2, Math.ceil(typed.value.length / 45) + typed.value.split('\n').length - 1))}
        {...field.described}
        {...field.marked}
        readOnly={field.readOnly}
        {...typed}
      />
    </Row>
  );
}

/** Something to choose, by its value. */
export interface Choice {
  value: string;
  label: string;
  group?: string;
}

/** Options of a select, under headings where they have groups. */
export function Options({ choices, none, now }: { choices: readonly Choice[]; none?: string; now: string }) {
  const groups = [...new Set(choices.map(({ group }) => group))];
  const known = now === '' || choices.some(({ value }) => value === now);
  const option = ({ value, label }: Choice) => (
    <option key={value} value={value}>
      {label}
    </option>
  );
  return (
    <>
      {none !== undefined && <option value="">{none}</option>}
      {!known && <option value={now}>{now} (is not known)</option>}
      {groups.map((group) =>
        group === undefined ? (
          choices.filter((choice) => choice.group === undefined).map(option)
        ) : (
          <optgroup key={group} label={group}>
            {choices.filter((choice) => choice.group === group).map(option)}
          </optgroup>
        ),
      )}
    </>
  );
}

interface SelectProps {
  field: ReturnType<typeof useField>;
  choices: readonly Choice[];
  now: string;
  /** What stands where nothing is chosen; undefined where something must be. */
  none: string | undefined;
  onChoose: (chosen: string) => void;
}

/** The list of a field from which one is chosen. */
export function Select({ field, choices, now, none, onChoose }: SelectProps) {
  return (
    <select
      id={field.id}
      className={styles.input}
      {...field.described}
      {...field.marked}
      disabled={field.readOnly}
      value={now}
      onChange={({ target }) => onChoose(target.value)}
    >
      <Options choices={choices} now={now} {...(none === undefined ? {} : { none })} />
    </select>
  );
}

/** One of several words. */
export function ChoiceField(props: FieldProps & { choices: readonly Choice[]; none?: string }) {
  const { path, help, optional, choices, none } = props;
  const field = useField(path);
  const now = asText(field.value);
  return (
    <Row
      id={field.id}
      label={props.label}
      help={help ?? fieldWords(field.text, path, field.context)}
      problems={field.problems}
    >
      <Select
        field={field}
        choices={choices}
        now={now}
        none={optional || now === '' ? (none ?? 'Not said') : undefined}
        onChoose={(chosen) => field.set(path, chosen === '' ? undefined : chosen)}
      />
    </Row>
  );
}

/** Yes or not said. */
export function TickField({ path, label }: FieldProps) {
  const field = useField(path);
  return (
    <div className={styles.row}>
      <label className={styles.tick}>
        <input
          type="checkbox"
          {...field.described}
          {...field.marked}
          disabled={field.readOnly}
          checked={field.value === true}
          onChange={({ target }) => field.set(path, target.checked ? true : undefined)}
        />
        <span>{label}</span>
      </label>
      <p id={`${field.id}-help`} className={styles.help}>
        {fieldWords(field.text, path, field.context)}
      </p>
      <Problems id={`${field.id}-problems`} problems={field.problems} />
    </div>
  );
}

/** Which of several names a list holds. */
export function TicksField({ path, label, choices }: FieldProps & { choices: readonly Choice[] }) {
  const { text, data, set, add, remove, readOnly, context } = useRecord();
  const id = useId();
  const list = valueAt(data, path);
  const held = Array.isArray(list) ? list.map(String) : [];
  const { problems } = useField(path);
  const all = [
    ...choices,
    ...held
      .filter((name) => !choices.some(({ value }) => value === name))
      .map((name) => ({ value: name, label: `${name} (is not known)` })),
  ];
  const tick = (name: string, on: boolean) => {
    if (on) add(path, undefined, name);
    else if (held.length === 1) set(path, undefined);
    else remove([...path, held.indexOf(name)]);
  };
  return (
    <fieldset className={styles.ticks} aria-describedby={`${id}-problems`} data-path={path.join('/')}>
      <legend className={styles.label}>{label}</legend>
      {all.length === 0 && <p className={styles.help}>{fieldWords(text, path, context)} There is none yet.</p>}
      {all.map(({ value, label: words }) => (
        <label key={value} className={styles.tick}>
          <input
            type="checkbox"
            disabled={readOnly}
            checked={held.includes(value)}
            onChange={({ target }) => tick(value, target.checked)}
          />
          <span>{words}</span>
        </label>
      ))}
      <Problems id={`${id}-problems`} problems={problems} />
    </fieldset>
  );
}
