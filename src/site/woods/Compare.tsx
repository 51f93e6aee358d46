import Link from '@docusaurus/Link';
import type { CSSProperties, ReactNode } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { Amount } from './Amount.tsx';
import { compareLimit, poreWords } from './query.ts';
import type { WoodRow } from './row.ts';
import styles from './woods.module.css';

/** Up to four woods side by side. */
export function Compare({ woods, remove }: { woods: readonly WoodRow[]; remove: (id: string) => void }) {
  const units = useUnits();
  const unknown = <span className="unknown">not published</span>;
  const lines: readonly (readonly [string, (wood: WoodRow) => ReactNode])[] = [
    ['Side hardness, 12 %', (wood) => <Amount cell={wood.hardness} unit="N" units={units} />],
    ['Movement, 6 to 12 %, flatsawn', (wood) => <Amount cell={wood.swing} unit="%" units={units} digits={2} />],
    ['Tangential shrinkage', (wood) => <Amount cell={wood.tangential} unit="%" units={units} />],
    ['Radial shrinkage', (wood) => <Amount cell={wood.radial} unit="%" units={units} />],
    ['Specific gravity, 12 %', (wood) => <Amount cell={wood.gravity} unit="1" units={units} />],
    ['Pores', (wood) => (wood.arrangement ? poreWords[wood.arrangement] : unknown)],
    ['On a planed face', (wood) => (wood.openness && wood.openness !== 'none' ? wood.openness : unknown)],
    ['Touching food', (wood) => wood.foodSummary],
    [
      'Dust, splinters, sap',
      (wood) =>
        wood.effects > 0 ? `${wood.effects} published effect${wood.effects > 1 ? 's' : ''}` : 'nothing was read',
    ],
  ];
  return (
    <section aria-labelledby="compared" className={styles.compare}>
      <h2 id="compared">Side by side</h2>
      <p className="small quiet no-print">
        {woods.length < compareLimit
          ? `Tick up to ${compareLimit} woods in the list. The address of this page keeps them.`
          : 'The address of this page keeps them. Take one away to add another.'}
      </p>
      <ScrollBox label="Side by side">
        {/* The roles are written out because a table whose rows are laid out as grids, as on a phone, loses them otherwise. */}
        {/* biome-ignore-start lint/a11y/noRedundantRoles: see above */}
        <table role="table" style={{ '--woods': woods.length } as CSSProperties}>
          <thead role="rowgroup">
            <tr role="row">
              <td role="cell" />
              {woods.map((wood) => (
                <th key={wood.id} scope="col" role="columnheader">
                  <Link to={`/woods/${wood.id}`}>{wood.name}</Link>
                  <button type="button" className={`${styles.remove} no-print`} onClick={() => remove(wood.id)}>
                    Remove<span className="visually-hidden"> {wood.name}</span>
                  </button>
                </th>
              ))}
            </tr>
          </thead>
          <tbody role="rowgroup">
            {lines.map(([label, show]) => (
              <tr key={label} role="row">
                <th scope="row" role="rowheader">
                  {label}
                </th>
                {woods.map((wood) => (
                  <td key={wood.id} role="cell">
                    {show(wood)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        {/* biome-ignore-end lint/a11y/noRedundantRoles: see above */}
      </ScrollBox>
    </section>
  );
}
