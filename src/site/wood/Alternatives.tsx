import Link from '@docusaurus/Link';
import { defaultUnits, formatQuantity } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { InEither } from '../page/InEither.tsx';
import type { WoodFacts } from './facts.ts';
import { Unknown } from './KeyFacts.tsx';

/** Woods that come nearest in hardness and movement. */
export function Alternatives({ facts }: { facts: WoodFacts }) {
  const { wood, alternatives } = facts;
  if (alternatives.length === 0) return null;
  const ids = [wood.id, ...alternatives.slice(0, 3).map((one) => one.id)];
  return (
    <section>
      <Anchored as="h2" id="alternatives">
        Nearest in hardness and movement
      </Anchored>
      <table>
        <thead>
          <tr>
            <th scope="col">Wood</th>
            <th scope="col" className="num">
              Hardness
            </th>
            <th scope="col" className="num">
              6 to 12 %
            </th>
          </tr>
        </thead>
        <tbody>
          {alternatives.map(({ id, name, hardness, swing }) => (
            <tr key={id}>
              <th scope="row">
                <Link to={`/woods/${id}`}>{name}</Link>
              </th>
              <td className="num">
                {hardness === null ? (
                  <Unknown />
                ) : (
                  <InEither write={(units) => formatQuantity(hardness, 'N', units, { digits: 3 })} />
                )}
              </td>
              <td className="num">
                {swing === null ? <Unknown /> : formatQuantity(swing, '%', defaultUnits, { digits: 2 })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="no-print">
        <Link to={`/woods?compare=${ids.join(',')}`}>Put the first of them side by side</Link>
      </p>
    </section>
  );
}
