import {
  type ComponentProps,
  memo,
  type ReactNode,
  startTransition,
  type TransitionStartFunction,
  useId,
  useMemo,
  useOptimistic,
  useRef,
  useState,
} from 'react';
import type { FieldError } from '../../model/evidence/index.ts';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { activeSet } from '../kit/address.ts';
import { fieldsOf, isOptional } from '../kit/answer.ts';
import type { Alternatives, Asking, RawInputs } from '../kit/calculator.ts';
import { exampleFor } from '../kit/example.ts';
import { fieldMeta } from '../kit/fields.ts';
import { type Controls, Field } from './Field.tsx';
import styles from './form.module.css';
import unseen from './unseen.module.css';

interface FormProps {
  calculator: Asking;
  raw: RawInputs;
  errors: readonly FieldError[];
  units: ReaderUnits;
  /** Controls of the kinds of field whose control is code of its own; the standard one stands in for a kind that is not among them. */
  controls?: Controls | undefined;
  set: (patch: Readonly<Record<string, string | undefined>>) => void;
  /** Begins what follows from a text that is already seen; whoever gives it knows how long that takes. */
  begin?: TransitionStartFunction | undefined;
}

type Part = { kind: 'field'; name: string } | { kind: 'alternatives'; alternatives: Alternatives };

/** The form of a calculator, made from the metadata of its schema: fields in order, gathered in groups, alternatives one set at a time. */
export function Form({ calculator, raw, errors, units, controls, set, begin }: FormProps) {
  const field = (name: string) => {
    const schema = fieldsOf(calculator)[name];
    const meta = schema ? fieldMeta(schema) : undefined;
    if (!meta) return null;
    if (meta.when && !meta.when.is.includes((raw[meta.when.field] ?? '').trim())) return null;
    const own = errors.filter((error) => error.field === name || error.field.startsWith(`${name}.`));
    return (
      <OneField
        key={name}
        name={name}
        value={raw[name] ?? ''}
        meta={meta}
        optional={isOptional(calculator, name) && !inAlternatives(calculator, name)}
        units={units}
        error={own.length > 0 ? own.map((error) => error.message).join(' ') : undefined}
        control={controls?.[meta.kind]}
        set={set}
        begin={begin}
      />
    );
  };
  const groups = useMemo(() => groupsOf(calculator), [calculator]);
  const inUse = (name: string) => (raw[name] ?? '').trim() !== '' || errors.some((error) => error.field === name);
  return (
    <form className={styles.form} onSubmit={(event) => event.preventDefault()} noValidate>
      <Faults calculator={calculator} errors={errors} />
      {groups.map(({ group, parts }) => (
        <Group
          key={group}
          title={group || calculator.title}
          shown={group !== ''}
          folded={calculator.folded?.includes(group) ?? false}
          used={parts.some((part) => part.kind === 'field' && inUse(part.name))}
        >
          {parts.map((part) =>
            part.kind === 'field' ? (
              field(part.name)
            ) : (
              <AlternativesPart
                key={part.alternatives.label}
                calculator={calculator}
                alternatives={part.alternatives}
                raw={raw}
                errors={errors}
                system={units.system}
                set={set}
                field={field}
              />
            ),
          )}
        </Group>
      ))}
    </form>
  );
}

/**
 * More than one thing to mend, at the head of the form, each a link to its field. It is not spoken: the answer's status counts them, and
 * each field says its own.
 */
function Faults({ calculator, errors }: Pick<FormProps, 'calculator' | 'errors'>) {
  const list = useRef<HTMLDivElement>(null);
  const labels = new Map(
    errors.flatMap(({ field }): [string, string][] => {
      const [name = ''] = field.split('.');
      const schema = fieldsOf(calculator)[name];
      const label = schema && fieldMeta(schema)?.label;
      return label === undefined ? [] : [[name, label]];
    }),
  );
  if (labels.size < 2) return null;
  return (
    <div ref={list} className={styles.faults} data-part="faults">
      <p>To mend:</p>
      <ul>
        {[...labels].map(([name, label]) => (
          <li key={name}>
            <button type="button" onClick={() => goTo(list.current?.closest('form'), name)}>
              {label}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Take the reader to a field, out of its fold. */
function goTo(form: HTMLFormElement | null | undefined, name: string): void {
  const field = form?.querySelector(`[data-field="${name}"]`);
  const fold = field?.closest('details');
  if (fold) fold.open = true;
  field?.querySelector<HTMLElement>('input, select, textarea, button')?.focus();
}

type OneFieldProps = Omit<ComponentProps<typeof Field>, 'onChange'> & Pick<FormProps, 'set' | 'begin'>;

/**
 * A field is drawn again only when something of its own changes, so that typing in a long form stays quick. It shows what is typed at once; the form
 * around it, and all that follows from it, is drawn when the browser has shown that.
 */
const OneField = memo(function OneField({ set, begin = startTransition, value, ...field }: OneFieldProps) {
  const [shown, show] = useOptimistic(value);
  const change = (text: string) =>
    begin(() => {
      show(text);
      set({ [field.name]: text });
    });
  return <Field {...field} value={shown} onChange={change} />;
});

interface GroupProps {
  title: string;
  /** False where the title is for those who do not see the form. */
  shown: boolean;
  folded: boolean;
  /** Whether something stands in one of its fields. */
  used: boolean;
  children: ReactNode;
}

/** Fields that belong together; a folded group opens by itself once it is used, and never closes by itself. */
function Group({ title, shown, folded, used, children }: GroupProps) {
  const [open, setOpen] = useState(used);
  if (used && !open) setOpen(true);
  const fields = <div className={styles.fields}>{children}</div>;
  if (!folded) {
    return (
      <fieldset className={styles.group}>
        <legend className={shown ? styles.legend : unseen.unseen}>{title}</legend>
        {fields}
      </fieldset>
    );
  }
  return (
    <details className={styles.folded} open={open} onToggle={(event) => setOpen(event.currentTarget.open || used)}>
      <summary className={styles.summary}>{title}</summary>
      <fieldset className={styles.group}>
        <legend className={unseen.unseen}>{title}</legend>
        {fields}
      </fieldset>
    </details>
  );
}

function inAlternatives(calculator: Asking, name: string): boolean {
  return (calculator.alternatives ?? []).some((one) => one.sets.some((set) => set.fields.includes(name)));
}

/** Fields gathered by their group, in the order in which the schema lists them; alternatives stand where their first field does. */
function groupsOf(calculator: Asking): { group: string; parts: Part[] }[] {
  const groups = new Map<string, Part[]>();
  const placed = new Set<Alternatives>();
  for (const [name, schema] of Object.entries(fieldsOf(calculator))) {
    const group = fieldMeta(schema)?.group ?? '';
    const parts = groups.get(group) ?? [];
    groups.set(group, parts);
    const alternatives = (calculator.alternatives ?? []).find((one) =>
      one.sets.some((set) => set.fields.includes(name)),
    );
    if (!alternatives) parts.push({ kind: 'field', name });
    else if (!placed.has(alternatives)) {
      placed.add(alternatives);
      parts.push({ kind: 'alternatives', alternatives });
    }
  }
  return [...groups].map(([group, parts]) => ({ group, parts }));
}

interface AlternativesPartProps {
  calculator: Asking;
  alternatives: Alternatives;
  raw: RawInputs;
  errors: readonly FieldError[];
  system: 'metric' | 'inch';
  set: FormProps['set'];
  field: (name: string) => ReactNode;
}

/** A choice between sets of fields. What was typed in a set is kept while another is shown, and comes back with it. */
function AlternativesPart({ calculator, alternatives, raw, errors, system, set, field }: AlternativesPartProps) {
  const name = useId();
  const kept = useRef(new Map<number, Record<string, string>>());
  const chosen = useRef<number | null>(null);
  const used = activeSet(alternatives, raw);
  const anyText = alternatives.sets[used]?.fields.some((one) => (raw[one] ?? '').trim() !== '');
  // While every set is empty the reader's own choice stands; else the address decides.
  const active = !anyText && chosen.current !== null ? chosen.current : used;

  const shown = alternatives.sets[active]?.fields ?? [];
  // What is wrong with a set that is not shown has no other place to be said.
  const elsewhere = errors.filter(
    (error) => !shown.includes(error.field) && alternatives.sets.some(({ fields }) => fields.includes(error.field)),
  );

  const turnTo = (index: number) => {
    const leaving = shown;
    kept.current.set(active, Object.fromEntries(leaving.map((one) => [one, raw[one] ?? ''])));
    chosen.current = index;
    const arriving = alternatives.sets[index]?.fields ?? [];
    const before = kept.current.get(index);
    set({
      ...Object.fromEntries(leaving.map((one) => [one, undefined])),
      ...Object.fromEntries(arriving.map((one) => [one, before?.[one] ?? startOf(calculator, one, system)])),
    });
  };

  return (
    <>
      <div className={styles.field}>
        <span className={styles.label} id={`${name}-label`}>
          {alternatives.label}
        </span>
        <div
          className={styles.choices}
          role="radiogroup"
          aria-labelledby={`${name}-label`}
          aria-describedby={elsewhere.length > 0 ? `${name}-error` : undefined}
        >
          {alternatives.sets.map((one, index) => (
            <label key={one.label} className={styles.choice}>
              <input type="radio" name={name} checked={index === active} onChange={() => turnTo(index)} />
              <span>{one.label}</span>
            </label>
          ))}
        </div>
        {elsewhere.length > 0 && (
          <p className={styles.error} id={`${name}-error`}>
            <span aria-hidden="true">✗ </span>
            {elsewhere.map(({ message }) => message).join(' ')}
          </p>
        )}
      </div>
      {shown.map(field)}
    </>
  );
}

/** What a field starts with when its set is first turned to: the worked case's text, else the field's own example. */
function startOf(calculator: Asking, name: string, system: 'metric' | 'inch'): string {
  const schema = fieldsOf(calculator)[name];
  const meta = schema && fieldMeta(schema);
  return calculator.example[system][name] ?? (meta && exampleFor(meta, { system })) ?? '';
}
