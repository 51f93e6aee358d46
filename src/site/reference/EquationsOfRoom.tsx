import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import '../css/katex.css';
import { Anchored } from '../page/Anchored.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import type { EquationEntry, EquationsRoomEntry } from './data.ts';
import { Formula } from './Formula.tsx';
import { PageOfPart } from './PageOfPart.tsx';
import styles from './reference.module.css';

/** The formulas of one room, shown from the records that the code carries. */
export default function EquationsOfRoom({ room }: { room: EquationsRoomEntry }) {
  const about = room.title.toLowerCase();
  return (
    <PageOfPart
      title={`Equations: ${about}`}
      description={`The formulas of this site with their symbols, where they hold, and their sources: ${about}.`}
      list={{ to: '/reference/equations', all: 'All equations' }}
    >
      {room.equations.map((equation) => (
        <EquationSection key={equation.record.id} equation={equation} />
      ))}
    </PageOfPart>
  );
}

function EquationSection({ equation: { record, formula, symbols } }: { equation: EquationEntry }) {
  return (
    <section className="card-unbroken">
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
  );
}
