import Link from '@docusaurus/Link';
import frame from '../../calculators/view/frame.module.css';
import type { ClassRecord } from '../../method/class/record.ts';
import { useShopText } from '../kept/use-shop-text.ts';
import styles from './class.module.css';

interface Props {
  common: ClassRecord['common'];
  onChange: (common: ClassRecord['common']) => void;
}

/** The shop record of a class: a copy, so that a change of prices changes no order that has been made. */
export function ShopChoice({ common, onChange }: Props) {
  const { text: kept, whose } = useShopText();
  const its = whose === 'site' ? 'this site' : 'this browser';
  const { shop, ...rest } = common;
  return (
    <div data-part="class-shop">
      <p>
        {shop
          ? 'Machines, people and prices of a shop record stand in this class as they were when it was taken.'
          : 'No shop record is taken: the order has no prices, and of each machine there are as many as the method says.'}
        {shop && kept !== undefined && kept !== shop.text && ` The record of ${its} says something else now.`}
        {kept === undefined && !shop && (
          <>
            {' '}
            <Link to="/shop">Keep one in this browser</Link>, and it can be taken here.
          </>
        )}
      </p>
      <div className={styles.row}>
        {kept !== undefined && kept !== shop?.text && (
          <button
            type="button"
            className={frame.button}
            onClick={() => onChange({ ...rest, shop: { file: 'shop record', text: kept.slice(0, 131_072) } })}
          >
            Take the shop record of {its}
          </button>
        )}
        {shop && (
          <button type="button" className={frame.button} onClick={() => onChange(rest)}>
            Leave the shop record out
          </button>
        )}
      </div>
    </div>
  );
}
