import Link from '@docusaurus/Link';
import { jobs } from '../jobs.ts';
import { Page } from '../page/Page.tsx';
import { useTitles } from '../page/titles.ts';
import styles from './calculators-index.module.css';
import type { CalculatorEntry } from './entry.ts';
import { HowToLinks } from './HowToLinks.tsx';

const withCalculators = jobs.filter((job) => Object.keys(job.calculators).length > 0);

/** Every calculator by the question that it answers, in the order of the work, each with the page that says how. */
export default function CalculatorsIndex({ calculators }: { calculators: readonly CalculatorEntry[] }) {
  const { pages } = useTitles();
  return (
    <Page
      title="Calculators"
      description="Calculators for every stage of a board: wood movement, orders, templates, grits, resin doses, pours, cure, finishes, food contact and the buyer’s card. Each shows its formula and its sources."
      width="text"
    >
      <h1>Calculators</h1>
      <p className="lead">
        Each opens on a worked case. Change a number and the address changes with it: copy the address to keep a case or
        to hand it on. Everything is worked out in your browser; nothing that you type leaves it.
      </p>
      <p>
        Working with resin, enter the maker’s figures once as a <Link to="/resin-sheets">data sheet of your own</Link>.
      </p>
      {withCalculators.map((job) => (
        <section key={job.id} aria-labelledby={`job-${job.id}`} className={styles.job}>
          <h2 id={`job-${job.id}`}>{job.label}</h2>
          <ul className="index-list">
            {calculators
              .filter(({ id }) => id in job.calculators)
              .map((calculator) => (
                <li key={calculator.id}>
                  <Link to={`/calculators/${calculator.id}`}>
                    <strong>{calculator.title}</strong>
                    <span>{calculator.question}</span>
                  </Link>
                  <HowToLinks names={(job.calculators[calculator.id] ?? []).slice(0, 1)} pages={pages} />
                </li>
              ))}
          </ul>
        </section>
      ))}
    </Page>
  );
}
