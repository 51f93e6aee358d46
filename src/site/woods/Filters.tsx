import type { ReactNode } from 'react';
import { useId } from 'react';
import { foodWords, origins, poreWords, sorts, type WoodsQuery } from './query.ts';
import type { WoodRow } from './row.ts';
import styles from './woods.module.css';

/** Woods that a maker knows by hand, to measure others against. */
const yardsticks = ['sugar-maple', 'white-ash', 'black-walnut', 'black-cherry', 'yellow-poplar', 'teak'];

interface FiltersProps {
  woods: readonly WoodRow[];
  query: WoodsQuery;
  set: (patch: Partial<WoodsQuery>) => void;
}

/** The search field, the filters and the order of the list. */
export function Filters({ woods, query, set }: FiltersProps) {
  const known = yardsticks.flatMap((id) => woods.find((wood) => wood.id === id) ?? []);
  const filters = [query.pores, query.food, query.origin, query.kind, query.hard, query.still].filter(Boolean).length;
  return (
    <search className="no-print">
      <form className={styles.filters} onSubmit={(event) => event.preventDefault()}>
        <Field label="Name" wide>
          {(id) => (
            <input
              id={id}
              className="control"
              type="search"
              name="q"
              autoComplete="off"
              spellCheck={false}
              placeholder="common, trade or botanical"
              value={query.q}
              onChange={(event) => set({ q: event.target.value })}
            />
          )}
        </Field>
        <Field label="Order">
          {(id) => <Choice id={id} value={query.sort} set={(sort) => set({ sort })} options={Object.entries(sorts)} />}
        </Field>
        <details className={styles.more} open={filters > 0 || undefined}>
          <summary>Filters{filters > 0 ? ` (${filters} set)` : ''}</summary>
          <div className={styles.grid}>
            <Field label="Food contact">
              {(id) => (
                <Choice
                  id={id}
                  value={query.food}
                  set={(food) => set({ food })}
                  any
                  options={Object.entries(foodWords)}
                />
              )}
            </Field>
            <Field label="Pores">
              {(id) => (
                <Choice
                  id={id}
                  value={query.pores}
                  set={(pores) => set({ pores })}
                  any
                  options={Object.entries(poreWords)}
                />
              )}
            </Field>
            <Field label="At least as hard as">
              {(id) => (
                <Choice
                  id={id}
                  value={query.hard}
                  set={(hard) => set({ hard })}
                  any
                  options={known.filter((wood) => wood.hardness).map((wood) => [wood.id, wood.name])}
                />
              )}
            </Field>
            <Field label="Moves no more than">
              {(id) => (
                <Choice
                  id={id}
                  value={query.still}
                  set={(still) => set({ still })}
                  any
                  options={known.filter((wood) => wood.swing).map((wood) => [wood.id, wood.name])}
                />
              )}
            </Field>
            <Field label="Grows in">
              {(id) => (
                <Choice
                  id={id}
                  value={query.origin}
                  set={(origin) => set({ origin })}
                  any
                  options={origins.filter((one) => woods.some((wood) => wood.origin === one)).map((one) => [one, one])}
                />
              )}
            </Field>
            <Field label="Kind">
              {(id) => (
                <Choice
                  id={id}
                  value={query.kind}
                  set={(kind) => set({ kind })}
                  any
                  options={[
                    ['hardwood', 'hardwoods'],
                    ['softwood', 'softwoods'],
                  ]}
                />
              )}
            </Field>
            <button
              type="button"
              className="button"
              onClick={() =>
                set({ q: '', pores: '', food: '', origin: '', kind: '', hard: '', still: '', sort: 'name' })
              }
            >
              Clear all
            </button>
          </div>
        </details>
      </form>
    </search>
  );
}

function Field({ label, wide, children }: { label: string; wide?: boolean; children: (id: string) => ReactNode }) {
  const id = useId();
  return (
    <div className={wide ? styles.wide : undefined}>
      <label htmlFor={id}>{label}</label>
      {children(id)}
    </div>
  );
}

interface ChoiceProps<T extends string> {
  id: string;
  value: T;
  set: (value: T) => void;
  options: readonly (readonly [string, string])[];
  any?: boolean;
}

/** A list to pick one from; the values are those of the query, as the options name them. */
function Choice<T extends string>({ id, value, set, options, any = false }: ChoiceProps<T>) {
  return (
    <select id={id} className="control" value={value} onChange={(event) => set(event.target.value as T)}>
      {any && <option value="">any</option>}
      {options.map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </select>
  );
}
