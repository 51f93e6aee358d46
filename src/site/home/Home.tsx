import Link from '@docusaurus/Link';
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
      <section className={styles.list} aria-labelledby="how-to">
        <h2 id="how-to">How to</h2>
        <div className={styles.columns}>
          {pages.map((group) => (
            <div key={group.label ?? 'rest'} className={styles.group}>
              {group.label && <h3>{group.label}</h3>}
              <Entries entries={group.pages.map(({ to, title, description }) => ({ to, title, text: description }))} />
            </div>
          ))}
        </div>
      </section>
      <section className={styles.list} aria-labelledby="calculators">
        <h2 id="calculators">Calculators</h2>
        <div className={styles.columns}>
          <Entries
            entries={calculators.map(({ id, title, question }) => ({
              to: `/calculators/${id}`,
              title,
              text: question,
            }))}
          />
        </div>
      </section>
    </Page>
  );
}

function Entries({ entries }: { entries: readonly { to: string; title: string; text: string }[] }) {
  return (
    <ul className="index-list">
      {entries.map(({ to, title, text }) => (
        <li key={to}>
          <Link to={to}>
            <strong>{title}</strong>
            <span>{text}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
