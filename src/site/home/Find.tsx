import Link from '@docusaurus/Link';
import { useState } from 'react';
import { Botanical } from '../page/Botanical.tsx';
import { SearchBox } from '../search/SearchBox.tsx';
import found from '../search/search.module.css';
import type { WoodName } from '../woods/row.ts';
import styles from './home.module.css';

/** Results of each kind that are listed here. */
const most = 4;

/** The search of the site, with the woods that are often asked for below it until something is typed. */
export function Find({ usual, count }: { usual: readonly WoodName[]; count: number }) {
  const [text, setText] = useState('');
  return (
    <section className={styles.find} aria-label="Search">
      <SearchBox label={<span className={styles.label}>Find anything</span>} text={text} onText={setText} most={most}>
        <p className={styles.count}>Woods often asked for:</p>
        <ul className={`${found.list} ${styles.usual}`}>
          {usual.map((wood) => (
            <li key={wood.id}>
              <Link to={`/woods/${wood.id}`}>
                <strong>{wood.name}</strong>
                {wood.botanical && (
                  <Botanical>
                    <span className="visually-hidden">, </span>
                    {wood.botanical}
                  </Botanical>
                )}
              </Link>
            </li>
          ))}
        </ul>
      </SearchBox>
      <p className={styles.all}>
        <Link to="/woods">All {count} woods</Link>, to sort and put side by side
      </p>
    </section>
  );
}
