import { useUnits } from '../../calculators/view/units.tsx';
import { type Shop, type ShopPart, shopGaps, shopKnown } from '../../method/shop/index.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './shop.module.css';
import { usePlaceName } from './use-place-name.ts';

const titles: Readonly<Record<ShopPart, string>> = {
  about: 'The shop',
  air: 'Air',
  machines: 'Machines',
  tools: 'Tools',
  resins: 'Resins',
  hours: 'Hours',
  people: 'People',
  materials: 'Materials',
  prices: 'Prices',
};

/** So many gaps are told at first; the others open on a touch. */
const first = 3;

/** What the record says, and what calculators and methods miss most. */
export function Summary({ shop, goTo }: { shop: Shop; goTo: (part: ShopPart) => void }) {
  const units = useUnits();
  const known = shopKnown(shop, usePlaceName(shop.air?.place));
  const gaps = shopGaps(shop);
  const gapList = (some: typeof gaps) => (
    <ul className={styles.gaps}>
      {some.map(({ part, what, follows }) => (
        <li key={`${part} ${what}`}>
          <span>
            <strong>{what.replace(/^./, (letter) => letter.toUpperCase())}:</strong> {inReaderUnits(follows, units)}.
          </span>
          <button type="button" className={styles.fill} onClick={() => goTo(part)}>
            Fill in<span className="visually-hidden">: {what}</span>
          </button>
        </li>
      ))}
    </ul>
  );
  return (
    <section aria-labelledby="shop-summary" data-part="shop-summary">
      <h2 id="shop-summary">What the record says</h2>
      <dl className={styles.known}>
        {known.map(({ part, words }) => (
          <div key={part}>
            <dt>{titles[part]}</dt>
            <dd>{inReaderUnits(words, units)}</dd>
          </div>
        ))}
      </dl>
      {gaps.length === 0 ? (
        <p>Nothing that calculators and methods ask of a shop is missing.</p>
      ) : (
        <>
          <h3>What is missed most</h3>
          {gapList(gaps.slice(0, first))}
          {gaps.length > first && (
            <details>
              <summary className={styles.more}>{gaps.length - first} more</summary>
              {gapList(gaps.slice(first))}
            </details>
          )}
        </>
      )}
    </section>
  );
}
