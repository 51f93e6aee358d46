import Link from '@docusaurus/Link';
import { memo } from 'react';
import { Botanical } from '../page/Botanical.tsx';
import { AmountInBoth } from './Amount.tsx';
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
  picked: boolean;
  blocked: boolean;
  toggle: (id: string) => void;
}

// The function given as `toggle` reads the address when called, so an older one does as well as a newer one.
const Row = memo(
  function Row({ wood, picked, blocked, toggle }: RowProps) {
    return (
      <tr>
        <th scope="row" className={styles.wood}>
          <Link to={`/woods/${wood.id}`}>{wood.name}</Link>
          {wood.botanical && <Botanical className={styles.latin}>{wood.botanical}</Botanical>}
        </th>
        <td data-label="Hardness">
          <AmountInBoth cell={wood.hardness} unit="N" />
        </td>
        <td data-label="Movement">
          <AmountInBoth cell={wood.swing} unit="%" digits={2} />
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
  (before, after) => before.wood === after.wood && before.picked === after.picked && before.blocked === after.blocked,
);
