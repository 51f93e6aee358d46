import Link from '@docusaurus/Link';
import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { shortSource } from '../../model/evidence/index.ts';
import { foodRuleRecords, type Market } from '../../model/food/index.ts';
import { formatQuantity } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import styles from './food.module.css';

/** Every rule of a market: what it asks, its numbers, what it says of wood, whom it binds and which copy was read. */
export function FoodRules({ market }: { market: Market }) {
  const units = useUnits();
  const rules = foodRuleRecords.filter((rule) => rule.market === market);
  return rules.map((rule, index) => (
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
        {/* Rules that stand together mostly bind the same people: said once. */}
        {rule.binds !== rules[index - 1]?.binds && (
          <>
            Binds: {rule.binds.charAt(0).toLowerCase()}
            {rule.binds.slice(1)}{' '}
          </>
        )}
        Read: {rule.edition.replace(/^Read in/, 'in')} <EvidenceMark basis={rule.basis} citation={rule.citation} />{' '}
        <Link to={`/reference/sources#${rule.citation.source}`}>{shortSource(rule.citation.source)}</Link>
      </p>
    </section>
  ));
}
