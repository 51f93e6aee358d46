import Link from '@docusaurus/Link';
import { memo } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import type { ReaderUnits } from '../../model/quantity/index.ts';
import { Botanical } from '../page/Botanical.tsx';
import { Amount } from './Amount.tsx';
import { compareLimit, foodWords, poreWords } from './query.ts';
import type { WoodRow } from './row.ts';
import styles from './woods.module.css';

interface WoodTableProps {
  woods: readonly WoodRow[];
  compare: readonly string[];
  toggle: (id: string) => void;
}

/** The list: a table on a wide screen and on paper, one card a wood on a phone. */
export function WoodTable({ woods, compare, toggle }: WoodTableProps) {
  const units = useUnits();
  const full = compare.length >= compareLimit;
  return (
    <table className={styles.list}>
      <thead>
        <tr>
          <th scope="col">Wood</th>
          <th scope="col">Hardness</th>
          <th scope="col">Movement</th>
          <th scope="col">Pores</th>
          <th scope="col">Touching food</th>
          <th scope="col" className="no-print needs-scripts">
            Compare
          </th>
        </tr>
      </thead>
      <tbody>
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
      <tr>
        <th scope="row" className={styles.wood}>
          <Link to={`/woods/${wood.id}`}>{wood.name}</Link>
          {wood.botanical && <Botanical className={styles.latin}>{wood.botanical}</Botanical>}
        </th>
        <td data-label="Hardness">
          <Amount cell={wood.hardness} unit="N" units={units} />
        </td>
        <td data-label="Movement">
          <Amount cell={wood.swing} unit="%" units={units} digits={2} />
        </td>
        <td data-label="Pores">
          {wood.arrangement ? poreWords[wood.arrangement] : <span className="unknown">not published</span>}
        </td>
        <td data-label="Touching food">{foodWords[wood.food]}</td>
        <td className={`${styles.pick} no-print needs-scripts`}>
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
