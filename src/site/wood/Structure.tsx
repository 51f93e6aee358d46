import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import type { SpeciesDossier, Statement } from '../../model/species/types.ts';
import { Anchored } from '../page/Anchored.tsx';
import { SourceLink } from './FigureTable.tsx';
import { Unknown } from './KeyFacts.tsx';
import styles from './wood.module.css';

/** Pores, tyloses and decay in the words of the tables. */
export function Structure({ wood }: { wood: SpeciesDossier }) {
  return (
    <section>
      <Anchored as="h2" id="structure">
        Pores, tyloses and decay
      </Anchored>
      <dl className={styles.statements}>
        <dt>Pores</dt>
        <dd>
          <Statements statements={wood.pores.statements} />
        </dd>
        <dt>Tyloses</dt>
        <dd>
          <Statements statements={wood.tyloses ? [wood.tyloses] : []} />
        </dd>
        <dt>Decay of the heartwood</dt>
        <dd>
          <Statements statements={wood.decay ? [wood.decay] : []} />
        </dd>
      </dl>
    </section>
  );
}

/** Statements, each with its mark and source; none says that nothing is published. */
export function Statements({ statements }: { statements: readonly Statement[] }) {
  if (statements.length === 0) return <Unknown />;
  return (
    <ul className={styles.reasons}>
      {statements.map((statement) => (
        <li key={`${statement.text}${statement.citation?.source ?? ''}${statement.citation?.locator ?? ''}`}>
          {statement.text} <EvidenceMark basis={statement.basis} />{' '}
          {statement.citation && <SourceLink citation={statement.citation} />}
        </li>
      ))}
    </ul>
  );
}
