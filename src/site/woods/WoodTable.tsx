import Link from '@docusaurus/Link';
import { memo } from 'react';
import { useUnits } from '../../calculators/kit/units.tsx';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { Amount } from './Amount.tsx';
import { compareLimit, foodWords, poreWords } from './query.ts';
import type { WoodRow } from './row.ts';
import styles from './woods.module.css';

interface WoodTableProps {
  woods: readonly WoodRow[];
  compare: readonly string[];
  toggle: (id: string) => void;
}

/**
 * The list: a table on a wide screen and on paper, one card a wood on a phone.
 * The roles are written out because a table laid out as cards is otherwise no table to a screen reader.
 */
export function WoodTable({ woods, compare, toggle }: WoodTableProps) {
  const units = useUnits();
  const full = compare.length >= compareLimit;
  return (
    <table className={styles.list} role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th scope="col" role="columnheader">Wood</th>
          <th scope="col" role="columnheader">Hardness</th>
          <th scope="col" role="columnheader">Movement</th>
          <th scope="col" role="columnheader">Pores</th>
          <th scope="col" role="columnheader">Touching food</th>
          <th scope="col" role="columnheader" className="no-print">
            Compare
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {woods.map((wood) => (
          <Row
            key={wood.id}
            wood={wood}
            units={units}
            picked={compare.includes(wood.id)}
            blocked={full && !compare.includes(wood.id)}
            toggle={toggle}
          />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps {
  wood: WoodRow;
  units: ReaderUnits;
  picked: boolean;
  blocked: boolean;
  toggle: (id: string) => void;
}

// The function given as `toggle` reads the address when called, so an older one does as well as a newer one.
const Row = memo(
  function Row({ wood, units, picked, blocked, toggle }: RowProps) {
    return (
      <tr role="row">
        <th scope="row" role="rowheader" className={styles.wood}>
          <Link to={`/woods/${wood.id}`}>{wood.name}</Link>
          {wood.botanical && <span className={`botanical ${styles.latin}`}>{wood.botanical}</span>}
        </th>
        <td role="cell" data-label="Hardness">
          <Amount cell={wood.hardness} unit="N" units={units} />
        </td>
        <td role="cell" data-label="Movement">
          <Amount cell={wood.swing} unit="%" units={units} digits={2} />
        </td>
        <td role="cell" data-label="Pores">
          {wood.arrangement ? poreWords[wood.arrangement] : <span className="unknown">not published</span>}
        </td>
        <td role="cell" data-label="Touching food">{foodWords[wood.food]}</td>
        <td role="cell" className={`${styles.pick} no-print`}>
          <label>
            <input
              type="checkbox"
              checked={picked}
              disabled={blocked}
              onChange={() => toggle(wood.id)}
              aria-label={`Compare ${wood.name}`}
            />
            <span aria-hidden="true">Compare</span>
          </label>
        </td>
      </tr>
    );
  },
  (before, after) =>
    before.wood === after.wood &&
    before.units === after.units &&
    before.picked === after.picked &&
    before.blocked === after.blocked,
);
