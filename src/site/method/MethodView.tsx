import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import type { MethodPage } from '../../method/page/types.ts';
import { Bill } from './Bill.tsx';
import { Brief, Refused } from './Brief.tsx';
import { Findings } from './Findings.tsx';
import styles from './method.module.css';
import { ShownText } from './ShownText.tsx';
import { StepList } from './StepList.tsx';
import { Steps } from './Steps.tsx';
import { Timetable } from './Timetable.tsx';

interface MethodViewProps {
  page: MethodPage;
  /** True where something in the form cannot be read, so that the page is still of the case before. */
  stale?: boolean;
  /** That what stands is not yet, or never will be, the reader's own case, as a sentence. */
  notYet?: string;
  /** Of a method that is taught, where its days are not those of the class: the address at which they are. */
  untaught?: string;
  /** The shop of a record in which the method does not hold, and why: then nothing stands that could be taken for a case of it. */
  refused?: { shop: string; why: readonly string[] };
  /** What stands between the first screen and the steps, as the form of a case. */
  children?: ReactNode;
}

/** A worked method as a page shows it, below its title: in brief, steps, times, what to buy, what was found, where it comes from. */
export function MethodView({ page, stale = false, notYet, untaught, refused, children }: MethodViewProps) {
  if (refused)
    return (
      <div className={styles.method} lang={page.language}>
        <Refused page={page} {...refused} />
        {children}
        <Sources page={page} />
      </div>
    );
  const calculations = page.steps.flatMap((step) => step.calculations);
  return (
    <div className={styles.method} lang={page.language}>
      {notYet && (
        <p className={styles.problem} role="status" data-part="not-yours">
          {notYet}
        </p>
      )}
      <Brief page={page} stale={stale} untaught={untaught !== undefined} />
      {page.about && (
        <div className={styles.about}>
          <ShownText blocks={page.about} calculations={calculations} />
        </div>
      )}
      {children}
      <nav aria-label="On this page" className={styles.contents}>
        <a href="#steps">Steps</a> <a href="#times">Times</a> <a href="#buy">What to buy</a> <a href="#found">Judged</a>{' '}
        <a href="#sources">Sources</a>
      </nav>
      <section aria-labelledby="steps">
        <h2 id="steps">Steps</h2>
        <StepList page={page} />
        <Steps page={page} />
      </section>
      <section aria-labelledby="times">
        <h2 id="times">Times</h2>
        {untaught !== undefined && (
          <p className={styles.assumed} data-part="untaught">
            <strong>Not the days of a class.</strong> They are those of somebody who makes it in the hours that are said
            here. <Link to={untaught}>As the class of the example is taught</Link>; a class of your own has its days on
            its own sheets.
          </p>
        )}
        <Timetable page={page} />
      </section>
      <section aria-labelledby="buy">
        <h2 id="buy">What to buy</h2>
        <Bill page={page} />
      </section>
      <section aria-labelledby="found">
        <h2 id="found">Judged by the rules</h2>
        {stale && <p>For the last numbers that could be read:</p>}
        <Findings page={page} />
      </section>
      <Sources page={page} />
    </div>
  );
}

const Sources = ({ page: { sources } }: { page: MethodPage }) => (
  <section aria-labelledby="sources">
    <h2 id="sources">Where the method comes from</h2>
    <ul>
      {sources.map(({ text, url }) => (
        <li key={text}>
          {text} {url && <a href={url}>{url}</a>}
        </li>
      ))}
    </ul>
  </section>
);
