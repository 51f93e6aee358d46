import Link from '@docusaurus/Link';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { jobs } from '../jobs.ts';
import { EmergencyLinks } from '../page/EmergencyLinks.tsx';
import { Page } from '../page/Page.tsx';
import { useTitles } from '../page/titles.ts';
import type { WoodName } from '../woods/row.ts';
import { CheckBoard } from './CheckBoard.tsx';
import { EndGrain } from './EndGrain.tsx';
import { Find } from './Find.tsx';
import styles from './home.module.css';

/** The first page: what the site is, what to do in an emergency, the search for a wood, and the work as a path. */
export default function Home({ usual, count }: { usual: readonly WoodName[]; count: number }) {
  const { siteConfig } = useDocusaurusContext();
  return (
    <Page
      title="Make, sell and teach serving boards with poured inlays"
      description="Figures you can check for hardwood serving boards with poured-resin inlays: choose and season the wood, dose and pour the resin, finish the board, and label it for food."
    >
      <header className={styles.head}>
        <h1>{siteConfig.title}</h1>
        <p>Make, sell and teach serving boards with poured inlays: figures you can check.</p>
      </header>
      <EmergencyLinks />
      <div className={styles.jobs}>
        <Find usual={usual} count={count} />
        <CheckBoard usual={usual} />
      </div>
      <section className={styles.list} aria-labelledby="path">
        <h2 id="path">The work, in its order</h2>
        <Path />
        <p className={styles.all}>
          <Link to="/methods">Whole methods, step by step</Link> · <Link to="/how-to">All how-to pages</Link> ·{' '}
          <Link to="/calculators">All calculators</Link> · <Link to="/resin-sheets">Your resin’s data sheet</Link>
        </p>
      </section>
      <EndGrain />
    </Page>
  );
}

function Path() {
  const { pages, calculators } = useTitles();
  return (
    <ol className={styles.path}>
      {jobs.map((job) => (
        <li key={job.id}>
          <strong>{job.label}</strong>
          <span className={styles.gives}>{job.gives}</span>
          <ul>
            {pages
              .filter(({ to }) => to === `/how-to/${job.page}`)
              .map(({ to }) => (
                <li key={to}>
                  <Link to={to} aria-label={`How to: ${job.label}`}>
                    How to
                  </Link>
                </li>
              ))}
            {calculators
              .filter(({ id }) => id in job.calculators)
              .map(({ to, title }) => (
                <li key={to}>
                  <Link to={to}>{title}</Link>
                </li>
              ))}
            {(job.rooms ?? []).map(({ to, label }) => (
              <li key={to}>
                <Link to={to}>{label}</Link>
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ol>
  );
}
