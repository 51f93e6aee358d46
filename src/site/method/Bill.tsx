import { memo } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import { moneyWords } from '../../method/cost/money-words.ts';
import type { MethodPage } from '../../method/page/types.ts';
import { formatNumber, formatQuantity, inReaderUnits, unitLabel } from '../../model/quantity/index.ts';
import { ScrollBox } from '../page/ScrollBox.tsx';
import styles from './method.module.css';
import { sameIn } from './same-in.ts';

/** What to buy and have ready for all pieces, with what it costs where a shop record says so. */
export const Bill = memo(
  function Bill({ page }: { page: MethodPage }) {
    const units = useUnits();
    const { bill, cost, costless, tools, shop } = page;
    const priced = bill?.lines.some((line) => line.cost !== null) ?? false;
    const money = (sum: number) => moneyWords(sum, { code: bill?.currency ?? 'XXX' });
    return (
      <>
        {bill && (
          <ScrollBox label="What to buy">
            <table className={styles.bill}>
              <thead>
                <tr>
                  <th scope="col">Material</th>
                  <th scope="col">Needed, with spare</th>
                  {shop && <th scope="col">To buy</th>}
                  {priced && <th scope="col">Costs</th>}
                </tr>
              </thead>
              <tbody>
                {bill.lines.map(({ id, what, need, unit, kept = false, buy, packs, cost: paid, missing }) => (
                  <tr key={id}>
                    <th scope="row">{what}</th>
                    <td>{formatQuantity(need, unit, units, { digits: 3, kept })}</td>
                    {shop && (
                      <td>
                        {buy === 0
                          ? 'on the shelf'
                          : packs.length > 0
                            ? packs
                                .map(({ size, count }) =>
                                  `${count} × ${formatNumber(size.value, 4)} ${unitLabel(size.unit)}`.trim(),
                                )
                                .join(' + ')
                            : formatQuantity(buy, unit, units, { digits: 3, kept })}
                      </td>
                    )}
                    {priced && <td>{paid === null ? (missing ?? 'no price') : money(paid)}</td>}
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollBox>
        )}
        {bill && priced && (
          <p>
            To pay now {money(bill.bought)}; what is used is worth {money(bill.used)}, the shelf’s share included.
            {bill.without.bought.length > 0 && ` Not in it, for want of a price: ${bill.without.bought.length} lines.`}
          </p>
        )}
        {cost && (
          <>
            <p>
              {cost.pricing.words.slice(0, 1).map((sentence) => (
                <strong key={sentence}>{inReaderUnits(sentence, units)} </strong>
              ))}
              {cost.pricing.words
                .slice(1)
                .map((sentence) => inReaderUnits(sentence, units))
                .join(' ')}
            </p>
            <details className={styles.rests}>
              <summary>What a piece costs, part by part</summary>
              <table className={styles.bill}>
                <thead>
                  <tr>
                    <th scope="col">Part</th>
                    <th scope="col">All pieces</th>
                    <th scope="col">A piece</th>
                  </tr>
                </thead>
                <tbody>
                  {cost.pricing.parts
                    .filter(({ batch }) => batch > 0)
                    .map(({ id, what, batch, piece }) => (
                      <tr key={id}>
                        <th scope="row">{what}</th>
                        <td>{moneyWords(batch, cost.request.currency)}</td>
                        <td>{moneyWords(piece, cost.request.currency)}</td>
                      </tr>
                    ))}
                </tbody>
              </table>
            </details>
          </>
        )}
        {costless.map((sentence) => (
          <p key={sentence} className="small quiet">
            {inReaderUnits(sentence, units)}
          </p>
        ))}
        <h3>Tools</h3>
        <ul className={styles.tools}>
          {tools.map(({ name, what, count }) => (
            <li key={name}>
              {count > 1 && `${count} × `}
              {what}
            </li>
          ))}
        </ul>
      </>
    );
  },
  sameIn('bill', 'cost', 'costless', 'tools', 'shop'),
);
