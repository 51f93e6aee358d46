import Link from '@docusaurus/Link';
import { EvidenceMark } from '../../calculators/kit/EvidenceMark.tsx';
import { useUnits } from '../../calculators/kit/units.tsx';
import { shortSource } from '../../model/evidence/index.ts';
import { foodRuleRecords, hygieneFindings, type Market } from '../../model/food/index.ts';
import { formatQuantity } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import styles from './food.module.css';

/** Every rule of a market: what it asks, its numbers, what it says of wood, whom it binds and which copy was read. */
export function FoodRules({ market }: { market: Market }) {
  const units = useUnits();
  return foodRuleRecords
    .filter((rule) => rule.market === market)
    .map((rule) => (
      <section key={rule.id} className={styles.rule}>
        <Anchored as="h3" id={rule.id}>
          {rule.short}: {rule.title.charAt(0).toLowerCase()}
          {rule.title.slice(1)}
        </Anchored>
        <ul>
          {rule.asks.map((asked) => (
            <li key={asked}>{asked}</li>
          ))}
        </ul>
        {rule.figures.length > 0 && (
          <ul className={styles.figures}>
            {rule.figures.map((figure) => (
              <li key={figure.label}>
                {figure.label}:{' '}
                <span className="num">{formatQuantity(figure.value, figure.unit, units, { digits: 3 })}</span>
                {figure.note && `. ${figure.note}`}
              </li>
            ))}
          </ul>
        )}
        <p>
          <strong>On wood.</strong> {rule.onWood}
        </p>
        <p className={styles.small}>
          {rule.binds} {rule.edition} <EvidenceMark basis={rule.basis} citation={rule.citation} />{' '}
          <Link to={`/reference/sources#${rule.citation.source}`}>{shortSource(rule.citation.source)}</Link>
        </p>
      </section>
    ));
}

/** Papers on boards and bacteria: what each tested and found. */
export function HygienePapers() {
  return (
    <ScrollBox label="Papers on boards and hygiene">
      <table>
        <thead>
          <tr>
            <th scope="col">Paper</th>
            <th scope="col">Tested</th>
            <th scope="col">Found</th>
            <th scope="col">Speaks</th>
          </tr>
        </thead>
        <tbody>
          {hygieneFindings.map((paper) => (
            <tr key={paper.id}>
              <th scope="row">
                <Link to={`/reference/sources#${paper.citation.source}`}>{paper.who}</Link>
              </th>
              <td>{paper.tested}</td>
              <td>{paper.found}</td>
              <td>{paper.speaks}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}
