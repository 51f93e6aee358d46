import Link from '@docusaurus/Link';
import { type BoardForFood, foodStatement, type Market } from '../../model/food/index.ts';
import styles from './food.module.css';

const marketWords: Readonly<Record<Market, string>> = { us: 'In the United States', eu: 'In the European Union' };

export interface FoodContactProps {
  /** The board, without its market. Parts that are not told are not judged. */
  board: Omit<BoardForFood, 'market'>;
  /** Markets to show, in this order; both unless told. */
  markets?: readonly Market[] | undefined;
  /** Query of the calculator's address, for example `species=sugar-maple`. */
  query?: string | undefined;
}

/**
 * What may and what may not be said of a board and food, in a few lines, with the way to the whole answer.
 * For a wood's page, a guide or a method: it judges the parts that it is given and no others.
 */
export function FoodContact({ board, markets = ['us', 'eu'], query = '' }: FoodContactProps) {
  const statements = markets.map((market) => ({ market, ...foodStatement({ ...board, market }) }));
  const barred = new Set(statements.flatMap(({ mustNotSay }) => mustNotSay.flatMap(({ words }) => words.split(', '))));
  return (
    <div className={styles.panel} data-part="food-contact">
      {statements.map(({ market, summary, maySay }) => (
        <div key={market} className={styles.market}>
          <p className={styles.level}>
            <strong>{marketWords[market]}:</strong> {summary.charAt(0).toLowerCase()}
            {summary.slice(1)}.
          </p>
          <p className={styles.label}>
            <span className={styles.caption}>The label may say</span> {maySay.join(' ')}
          </p>
        </div>
      ))}
      <p className={styles.label}>
        <span className={styles.caption}>It must not say</span> {[...barred].map((words) => `‘${words}’`).join(', ')}.
      </p>
      <p className={styles.more}>
        <Link to={`/calculators/food-contact${query ? `?${query}` : ''}`}>Add resin, finish and days</Link>
        <Link to="/how-to/food-contact">The rules, and why</Link>
        <Link to="/how-to/care">Care of the board</Link>
      </p>
    </div>
  );
}
