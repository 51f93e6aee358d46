import { useState } from 'react';
import frame from '../../calculators/view/frame.module.css';
import type { ClassPlace } from '../../method/class/record.ts';
import { mostPlaces } from '../../method/class/record.ts';
import { freeId } from '../../method/class/sheet.ts';
import type { PlacePage } from '../../method/class/types.ts';
import type { MethodRecord } from '../../method/record/index.ts';
import styles from './class.module.css';
import { ParameterInput } from './ParameterInput.tsx';

interface Props {
  record: MethodRecord;
  places: readonly ClassPlace[];
  pages: readonly PlacePage[];
  say: (text: string) => string;
  onChange: (places: ClassPlace[]) => void;
}

const fixed: readonly string[] = ['place', 'name', 'take out'];

/** How a parameter heads its column: a label that another column bears already, as Place, is told apart from it. */
function headingOf({ parameters }: MethodRecord, key: string): string {
  const label = parameters[key]?.label ?? key;
  return fixed.includes(label.trim().toLowerCase()) ? `${label} (of the method)` : label;
}

/** The places of a class: a row each, a column for each parameter in which any of them differs. */
export function PlacesTable({ record, places, pages, say, onChange }: Props) {
  const [shown, setShown] = useState<readonly string[]>([]);
  const keys = [...new Set([...places.flatMap(({ set }) => Object.keys(set)), ...shown])];
  const others = Object.keys(record.parameters).filter(
    (name) => !keys.includes(name) && record.parameters[name]?.kind !== 'outline',
  );
  const change = (at: number, place: ClassPlace) =>
    onChange(places.map((each, index) => (index === at ? place : each)));
  const setKey = (at: number, place: ClassPlace, key: string, text: string) => {
    const { [key]: _old, ...rest } = place.set;
    change(at, { ...place, set: text === '' ? rest : { ...rest, [key]: text } });
  };
  return (
    <>
      <table className={styles.places} data-part="class-places">
        <thead>
          <tr>
            <th scope="col">Place</th>
            <th scope="col">Name</th>
            {keys.map((key) => (
              <th key={key} scope="col">
                {headingOf(record, key)}
              </th>
            ))}
            <th scope="col">Take out</th>
          </tr>
        </thead>
        <tbody>
          {places.map((place, at) => (
            <tr key={place.id}>
              <th scope="row">{place.id}</th>
              <td data-label="Name">
                <input
                  aria-label={`Name at place ${place.id}`}
                  value={place.name ?? ''}
                  maxLength={80}
                  onChange={(event) => change(at, { ...place, name: event.target.value })}
                />
              </td>
              {keys.map((key) => {
                const parameter = record.parameters[key];
                const label = `${parameter?.label ?? key} at place ${place.id}`;
                const problem = pages.find(({ id }) => id === place.id)?.problems.find(({ field }) => field === key);
                const value = place.set[key] ?? '';
                return (
                  <td key={key} data-label={headingOf(record, key)}>
                    <ParameterInput
                      parameter={parameter}
                      label={label}
                      value={value}
                      usual="As for all"
                      problem={problem?.message}
                      onChange={(text) => setKey(at, place, key, text)}
                    />
                    {problem && <span className={styles.wrong}>{say(problem.message)}</span>}
                  </td>
                );
              })}
              <td>
                <button
                  type="button"
                  className={frame.button}
                  aria-label={`Take out place ${place.id}`}
                  onClick={() => onChange(places.filter((_, index) => index !== at))}
                >
                  Take out
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className={styles.row}>
        <button
          type="button"
          className={frame.button}
          disabled={places.length >= mostPlaces}
          onClick={() => onChange([...places, { id: freeId(places.map(({ id }) => id)), set: {} }])}
        >
          Add a place
        </button>
        {others.length > 0 && (
          <label>
            What else differs
            <select value="" onChange={(event) => setShown([...shown, event.target.value])}>
              <option value="">Choose a column</option>
              {others.map((name) => (
                <option key={name} value={name}>
                  {record.parameters[name]?.label}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
    </>
  );
}
