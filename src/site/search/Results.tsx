import Link from '@docusaurus/Link';
import { useId } from 'react';
import { Botanical } from '../page/Botanical.tsx';
import type { Found, FoundPage } from './find.ts';
import type { Kind } from './index-format.ts';
import styles from './search.module.css';

const headings: Readonly<Record<Kind, string>> = {
  'how-to': 'How-to',
  calculator: 'Calculators',
  method: 'Methods',
  word: 'Words',
  room: 'Tools of this site',
  rule: 'Acts and rules of methods',
  reference: 'Reference',
};

interface ResultsProps {
  found: Found;
  text: string;
  /** Results of each kind that are listed. */
  most: number;
}

/** What a search found, each kind under its own heading. */
export function Results({ found, text, most }: ResultsProps) {
  const left =
    Math.max(0, found.woods.length - most) +
    found.groups.reduce((sum, { pages }) => sum + Math.max(0, pages.length - most), 0);
  return (
    <>
      {found.woods.length > 0 && (
        <Group heading="Woods">
          {found.woods.slice(0, most).map(({ id, name, botanical }) => (
            <li key={id}>
              <Link to={`/woods/${id}`}>
                <strong>{name}</strong>
                {botanical && <Botanical> {botanical}</Botanical>}
              </Link>
            </li>
          ))}
        </Group>
      )}
      {found.groups.map(({ kind, pages }) => (
        <Group key={kind} heading={headings[kind]}>
          {pages.slice(0, most).map((page) => (
            <li key={page.to}>
              <Link to={page.to}>
                <Named {...page} />
              </Link>
            </li>
          ))}
        </Group>
      ))}
      {left > 0 && most < 50 && (
        <p className={styles.more}>
          <Link to={`/search?${new URLSearchParams({ q: text })}`}>All that was found ({left} more)</Link>
        </p>
      )}
    </>
  );
}

/** A page and the place in it; of a word or a rule its own name first. */
function Named({ page, heading, kind }: FoundPage) {
  if (heading === '') return <strong>{page}</strong>;
  if (kind === 'word' || kind === 'rule') return <strong>{heading}</strong>;
  return (
    <>
      <strong>{page}</strong>
      <span> {heading}</span>
    </>
  );
}

function Group({ heading, children }: { heading: string; children: React.ReactNode }) {
  const id = useId();
  return (
    <section aria-labelledby={id} className={styles.group}>
      <h3 id={id}>{heading}</h3>
      <ul className={styles.list}>{children}</ul>
    </section>
  );
}
