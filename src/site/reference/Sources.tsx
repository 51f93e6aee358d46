import Link from '@docusaurus/Link';
import useBrokenLinks from '@docusaurus/useBrokenLinks';
import { useCallback } from 'react';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import type { SourcesSummary } from './data.ts';
import styles from './reference.module.css';
import { addressOfSources } from './source-parts.ts';
import { useLedOn } from './use-led-on.ts';

/** Every source that a figure, equation, check or caution cites, by name, each with the page on which it stands. */
export default function Sources({ subjects }: { subjects: readonly SourcesSummary[] }) {
  const pageOf = useCallback(
    (id: string) => {
      const subject = subjects.find(({ sources }) => sources.some((one) => one.id === id));
      return subject && addressOfSources(subject.id);
    },
    [subjects],
  );
  useLedOn(pageOf);
  const { collectAnchor } = useBrokenLinks();
  const count = subjects.reduce((sum, { sources }) => sum + sources.length, 0);
  return (
    <Page title="Sources" description="What was read, and how, behind every figure of this site." width="text">
      <h1>Sources</h1>
      <p className="lead">
        {count} sources, with a note on the copy that was read. The list is also a{' '}
        <a href="pathname:///data/sources.json">CSL-JSON file</a>.
      </p>
      {subjects.map(({ id, title, sources }) => (
        <section key={id}>
          <Anchored as="h2" id={id}>
            {title}
          </Anchored>
          <ul className={styles.parts}>
            {sources.map((source) => {
              collectAnchor(source.id);
              return (
                <li key={source.id} id={source.id}>
                  <Link to={`${addressOfSources(id)}#${source.id}`}>{source.title}</Link>
                </li>
              );
            })}
          </ul>
        </section>
      ))}
    </Page>
  );
}
