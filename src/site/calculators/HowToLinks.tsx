import Link from '@docusaurus/Link';
import type { Titled } from '../page/titles.ts';
import styles from './how-to-links.module.css';

/** The how-to pages of a calculator: names of files in docs/, found among the pages of the site. */
export function HowToLinks({ names, pages }: { names: readonly string[]; pages: readonly Titled[] }) {
  const found = names.flatMap((name) => pages.find(({ to }) => to === `/how-to/${name}`) ?? []);
  if (found.length === 0) return null;
  return (
    <p className={styles.links}>
      How to:{' '}
      {found.map(({ to, title }, at) => (
        <span key={to}>
          {at > 0 && ' · '}
          <Link to={to}>{title}</Link>
        </span>
      ))}
    </p>
  );
}
