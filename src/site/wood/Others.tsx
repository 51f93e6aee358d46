import type { SpeciesDossier } from '../../model/species/types.ts';
import { Anchored } from '../page/Anchored.tsx';
import { FigureRow } from './FigureTable.tsx';
import styles from './wood.module.css';

/** Figures that another table or document gives, and what is odd about the rows. */
export function Others({ wood }: { wood: SpeciesDossier }) {
  if (wood.others.length === 0 && wood.remarks.length === 0) return null;
  return (
    <section>
      <Anchored as="h2" id="others">
        What other sources print
      </Anchored>
      {wood.others.length > 0 && (
        <>
          <p>The tables above use the firmest figure of each kind. These stand beside it.</p>
          <table className={styles.figures}>
            <thead>
              <tr>
                <th scope="col">Figure</th>
                <th scope="col">Value</th>
                <th scope="col">How it is known</th>
              </tr>
            </thead>
            <tbody>
              {wood.others.map(({ figure }) => (
                <FigureRow
                  key={`${figure.label}${figure.value}${figure.citation?.source}${figure.citation?.locator}`}
                  label={figure.label}
                  figure={figure}
                />
              ))}
            </tbody>
          </table>
        </>
      )}
      {wood.remarks.length > 0 && (
        <ul>
          {wood.remarks.map((remark) => (
            <li key={remark}>{remark}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
