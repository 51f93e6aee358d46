import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import '../css/katex.css';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import type { EquationEntry } from './data.ts';
import { Formula } from './Formula.tsx';
import styles from './reference.module.css';

/** Every formula that the site computes with, shown from the record that the code carries. */
export default function Equations({ equations }: { equations: readonly EquationEntry[] }) {
  return (
    <Page
      title="Equations"
      description="Every formula of this site with its symbols, where it holds, and its source."
      width="text"
    >
      <h1>Equations</h1>
      <p className="lead">
        Each is shown from the record that the program itself carries, with the symbols of its source. What a formula
        was checked against stands on the Checks page.
      </p>
      {equations.map(({ record, formula, symbols }) => (
        <section key={record.id} className="card-unbroken">
          <Anchored as="h2" id={record.id}>
            {record.title}
          </Anchored>
          <ScrollBox label={`Formula of ${record.title}`} className={styles.formula ?? ''}>
            <Formula parts={formula} />
          </ScrollBox>
          <dl className={styles.symbols}>
            {symbols.map((symbol) => (
              <div key={symbol.tex}>
                <dt>
                  <Formula parts={symbol.formula} />
                </dt>
                <dd>
                  {symbol.meaning}
                  {symbol.unit && symbol.unit !== '1' && <span className="quiet">, {symbol.unit}</span>}
                </dd>
              </div>
            ))}
          </dl>
          <p>
            <strong>Holds:</strong> {record.validity}
          </p>
          {record.remarks && <p>{record.remarks}</p>}
          <p className="small">
            <EvidenceMark basis={record.basis} cited /> {record.citation && <SourceLink citation={record.citation} />}
          </p>
        </section>
      ))}
    </Page>
  );
}
