import { useDeferredValue, useEffect, useId, useMemo, useRef, useState } from 'react';
import { nameKey } from '../../model/quantity/index.ts';
import type { PickOption } from '../kit/fields.ts';
import styles from './form.module.css';
import { matchOptions, sureOption } from './match-options.ts';
import { selectWhole } from './select-whole.ts';

interface ComboboxProps {
  id: string;
  value: string;
  options: readonly PickOption[];
  invalid: boolean;
  describedBy: string | undefined;
  onChange: (value: string) => void;
}

/**
 * A text field with a list to pick from, after the combobox pattern of the ARIA authoring practices:
 * arrows move, Enter takes, Escape closes; what is typed stays even where nothing in the list matches.
 */
export function Combobox({ id, value, options, invalid, describedBy, onChange }: ComboboxProps) {
  const listId = useId();
  const [typing, setTyping] = useState<string | null>(null);
  const [active, setActive] = useState(-1);
  const input = useRef<HTMLInputElement>(null);
  const known = useMemo(() => options.find((option) => option.value === value), [options, value]);
  const text = typing ?? known?.label ?? value;
  const open = typing !== null;
  // The text stands at once; what it finds follows.
  const sought = useDeferredValue(typing);
  const matches = useMemo(
    () => (sought === null ? [] : matchOptions(options, sought === known?.label ? '' : sought)),
    [options, sought, known],
  );
  const byName = useRef<{ of: readonly PickOption[]; names: ReadonlyMap<string, PickOption> }>(undefined);
  const named = (words: string): PickOption | undefined => {
    if (byName.current?.of !== options) byName.current = { of: options, names: namesOf(options) };
    return byName.current.names.get(nameKey(words)) ?? options.find((option) => option.value === words.trim());
  };

  // The list is longer than its box: what the arrows stand on is in sight.
  useEffect(() => {
    if (active >= 0) document.getElementById(`${listId}-${active}`)?.scrollIntoView({ block: 'nearest' });
  }, [active, listId]);

  const take = (option: PickOption) => {
    setTyping(null);
    setActive(-1);
    onChange(option.value);
  };

  /** What the text finds: whoever is quick has typed more than was looked up yet. */
  const foundNow = () =>
    sought === typing ? matches : matchOptions(options, typing === null || typing === known?.label ? '' : typing);

  const onKeyDown = (event: React.KeyboardEvent) => {
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault();
      if (!open) setTyping(text);
      const step = event.key === 'ArrowDown' ? 1 : -1;
      const last = foundNow().length - 1;
      setActive((at) => Math.max(-1, Math.min(last, at + step)));
    } else if (event.key === 'Enter' && open) {
      event.preventDefault();
      const found = foundNow();
      const option = active >= 0 ? found[active] : sureOption(found, typing ?? '');
      if (option) take(option);
      // Where nothing is sure the list stays to be picked from; where nothing matches there is none.
      else if (found.length === 0 || nameKey(typing ?? '') === '') setTyping(null);
    } else if (event.key === 'Escape' && open) {
      event.preventDefault();
      setTyping(null);
    }
  };

  return (
    <div className={styles.combobox}>
      <input
        ref={input}
        id={id}
        type="text"
        className={styles.input}
        role="combobox"
        aria-expanded={open && matches.length > 0}
        aria-controls={listId}
        aria-autocomplete="list"
        aria-activedescendant={active >= 0 ? `${listId}-${active}` : undefined}
        aria-invalid={invalid || undefined}
        aria-describedby={describedBy}
        autoComplete="off"
        spellCheck={false}
        value={text}
        onFocus={(event) => selectWhole(event.target, event.nativeEvent)}
        onChange={(event) => {
          setTyping(event.target.value);
          setActive(-1);
          onChange(named(event.target.value)?.value ?? event.target.value);
        }}
        onClick={() => setTyping((now) => now ?? text)}
        onBlur={() => setTyping(null)}
        onKeyDown={onKeyDown}
      />
      <div
        id={listId}
        role="listbox"
        aria-label="Matches"
        className={styles.list}
        hidden={!open || matches.length === 0}
      >
        {matches.map((option, index) => (
          <div
            key={option.value}
            id={`${listId}-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === active}
            className={styles.option}
            // Before the field loses focus, or the list would close under the finger.
            onPointerDown={(event) => {
              event.preventDefault();
              take(option);
            }}
          >
            {option.label}
            {option.detail && <small className={styles.detail}>{option.detail}</small>}
          </div>
        ))}
      </div>
    </div>
  );
}

/** Options by their labels, the first of each. */
function namesOf(options: readonly PickOption[]): ReadonlyMap<string, PickOption> {
  return new Map([...options].reverse().map((option) => [nameKey(option.label), option]));
}
