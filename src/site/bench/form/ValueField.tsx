import { useEffect, useState } from 'react';
import { fieldWords, type PointerOption, referencesFor } from '../../../method/edit/index.ts';
import { type Choice, Row, Select, useTyped } from './fields.tsx';
import styles from './form.module.css';
import { isGroup, notFetched, type Path, useField } from './use-record.tsx';

/** What a value may be taken from, fetched when somebody wants to take one. */
function useReferences(path: Path, wanted: boolean): readonly PointerOption[] {
  const { text, context } = useField(path);
  const [found, setFound] = useState<readonly PointerOption[]>([]);
  const steps = path.join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: a path is the same while its steps are.
  useEffect(() => {
    if (!wanted) return undefined;
    let closed = false;
    referencesFor(text, path, context).then((all) => closed || setFound(all), notFetched);
    return () => {
      closed = true;
    };
  }, [text, context, steps, wanted]);
  return found;
}

/** Where a reference leads, under the heading of its part of the method. */
function choiceOf({ pointer, label, detail }: PointerOption): Choice {
  const [, branch = '', name = ''] = pointer.split('/');
  const groups: Record<string, string> = {
    makes: 'What is made',
    parameters: 'What may be different',
    calculations: `Calculation: ${name}`,
    tools: 'Limits of tools',
    materials: 'Materials',
  };
  return { value: pointer, label: detail ? `${label} (${detail})` : label, group: groups[branch] ?? 'Other' };
}

interface ValueFieldProps {
  path: Path;
  label: string;
  help?: string;
  /** It may be left out: an empty field takes it out of the text. */
  optional?: boolean;
  /** Words that it takes, where it takes no others. */
  choices?: readonly Choice[];
  /** Of a value that stands in a group of its own beside other words, as the amount of a need: the group, and how it is written either way. */
  whole?: { path: Path; written: Readonly<Record<string, unknown>>; beside: Readonly<Record<string, unknown>> };
  /** Digits alone are a number, not a text. */
  counted?: boolean;
}

/** What is typed, as a number where it is nothing else. */
const counting = (typed: string): string | number =>
  /^-?\d{1,9}(\.\d{1,6})?$/.test(typed) && String(Number(typed)) === typed ? Number(typed) : typed;

/** A value that is written, or taken from a parameter, a figure or a limit. */
export function ValueField({ path, label, help, optional, choices, whole, counted = true }: ValueFieldProps) {
  const field = useField(path);
  const { value } = field;
  const reference = isGroup(value) && 'from' in value ? value : undefined;
  const from = typeof reference?.from === 'string' ? reference.from : '';
  const [asked, setAsked] = useState(false);
  const taken = reference !== undefined || asked;
  const references = useReferences(path, taken);
  const plain = typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  const typed = useTyped(plain, (fresh) =>
    field.set(path, fresh === '' && optional ? undefined : counted ? counting(fresh) : fresh),
  );
  const list = typeof value === 'object' && value !== null && !reference;

  const take = (on: boolean) => {
    setAsked(on);
    if (on || !reference) return;
    if (whole) field.set(whole.path, { ...whole.written, ...whole.beside });
    else field.set(path, optional ? undefined : '');
  };
  const point = (pointer: string) => {
    if (pointer === '') return;
    if (reference) field.set([...path, 'from'], pointer);
    else if (whole) field.set(whole.path, { from: pointer, ...whole.beside });
    else field.set(path, { from: pointer });
    setAsked(false);
  };

  return (
    <Row
      id={field.id}
      label={optional ? `${label} (may be left out)` : label}
      help={help ?? fieldWords(field.text, path, field.context)}
      problems={field.problems}
    >
      {list ? (
        <p className={styles.help}>Written as a list, which is changed in the text.</p>
      ) : (
        <div className={styles.value}>
          {taken ? (
            <Select
              field={field}
              choices={references.map(choiceOf)}
              now={from}
              none={from === '' ? 'Choose what it is taken from' : undefined}
              onChoose={point}
            />
          ) : choices ? (
            <Select
              field={field}
              choices={choices}
              now={plain}
              none={optional || plain === '' ? 'Not said' : undefined}
              onChoose={(chosen) => field.set(path, chosen === '' ? undefined : chosen)}
            />
          ) : (
            <input
              id={field.id}
              className={styles.input}
              {...field.described}
              {...field.marked}
              readOnly={field.readOnly}
              autoComplete="off"
              {...typed}
              onKeyDown={({ key }) => key === 'Enter' && typed.onBlur()}
            />
          )}
          {!field.readOnly && (
            <button type="button" className={styles.small} aria-pressed={taken} onClick={() => take(!taken)}>
              taken from …<span className="visually-hidden"> for {label}</span>
            </button>
          )}
        </div>
      )}
    </Row>
  );
}
