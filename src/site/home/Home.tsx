import Link from '@docusaurus/Link';
import { Fragment } from 'react';
import { Page } from '../page/Page.tsx';
import type { WoodName } from '../woods/row.ts';
import { CheckBoard } from './CheckBoard.tsx';
import { EndGrain } from './EndGrain.tsx';
import { FindWood } from './FindWood.tsx';
import styles from './home.module.css';

interface HomeProps {
  woods: readonly WoodName[];
  pages: readonly {
    label: string | null;
    pages: readonly { to: string; title: string; description: string }[];
  }[];
  calculators: readonly { id: string; title: string; question: string }[];
}

/** The first page: it starts the job at once. */
export default function Home({ woods, pages, calculators }: HomeProps) {
  return (
    <Page
      title="Find a wood, check a board"
      description="Look up a wood by any of its names, and see how far a wide board of it will move through the year."
    >
      <h1 className="visually-hidden">Kerf &amp; Cure</h1>
      <div className={styles.jobs}>
        <FindWood woods={woods} />
        <CheckBoard woods={woods} />
        <EndGrain />
      </div>
      <div className={styles.lists}>
        <section aria-labelledby="how-to">
          <h2 id="how-to">How to</h2>
          {pages.map((group) => (
            <Fragment key={group.label ?? 'rest'}>
              {group.label && <h3 className={styles.group}>{group.label}</h3>}
              <ul className="index-list">
                {group.pages.map((page) => (
                  <li key={page.to}>
                    <Link to={page.to}>
                      <strong>{page.title}</strong>
                      <span>{page.description}</span>
                    </Link>
                  </li>
                ))}
              </ul>
            </Fragment>
          ))}
        </section>
        <section aria-labelledby="calculators">
          <h2 id="calculators">Calculators</h2>
          <ul className="index-list">
            {calculators.map((calculator) => (
              <li key={calculator.id}>
                <Link to={`/calculators/${calculator.id}`}>
                  <strong>{calculator.title}</strong>
                  <span>{calculator.question}</span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      </div>
    </Page>
  );
}
