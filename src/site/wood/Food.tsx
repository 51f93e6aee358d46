import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { foodScope } from '../../model/species/food.ts';
import type { Species } from '../../model/species/types.ts';
import { woodPartOf } from '../../model/species/wood-part.ts';
import { FoodContact } from '../food/FoodContact.tsx';
import { Anchored } from '../page/Anchored.tsx';
import { SourceLink } from './FigureTable.tsx';
import styles from './wood.module.css';

const speaksWords = { for: 'Speaks for it', against: 'Speaks against it', unknown: 'Not known' } as const;

/** What can be said of the wood as a food surface, and why. It never says that a wood is safe. */
export function Food({ wood }: { wood: Species }) {
  const { food } = wood;
  return (
    <section>
      <Anchored as="h2" id="food">
        Touching food
      </Anchored>
      <p>
        <strong>{food.summary}.</strong> {foodScope}
      </p>
      <ul className={styles.reasons}>
        {food.reasons.map((reason) => (
          <li key={reason.rule}>
            <strong>{speaksWords[reason.speaks]}.</strong> {reason.text} <EvidenceMark basis={reason.basis} />{' '}
            {reason.citation && <SourceLink citation={reason.citation} />}
          </li>
        ))}
      </ul>
      <FoodContact board={{ food: 'dry', wood: woodPartOf(wood) }} query={`species=${wood.id}`} />
    </section>
  );
}
