import Link from '@docusaurus/Link';
import useBrokenLinks from '@docusaurus/useBrokenLinks';
import { useCallback } from 'react';
import { Anchored } from '../page/Anchored.tsx';
import type { PartSummary } from './data.ts';
import styles from './reference.module.css';
import { useLedOn } from './use-led-on.ts';

interface PartedListProps {
  parts: readonly PartSummary[];
  /** The address of the page of a part, by its id. */
  addressOf: (part: string) => string;
}

/**
 * A long list whose entries stand on pages of their parts: by name, each a link to its place. An address of an entry in this list, as it was given out
 * before the list was parted, leads on to that place too.
 */
export function PartedList({ parts, addressOf }: PartedListProps) {
  const pageOf = useCallback(
    (id: string) => {
      const part = parts.find(({ entries }) => entries.some((entry) => entry.id === id || entry.within?.includes(id)));
      return part && addressOf(part.id);
    },
    [parts, addressOf],
  );
  useLedOn(pageOf);
  const { collectAnchor } = useBrokenLinks();
  return parts.map(({ id, title, entries }) => (
    <section key={id}>
      <Anchored as="h2" id={id}>
        {title}
      </Anchored>
      <ul className={styles.parts}>
        {entries.map((entry) => {
          const { within = [] } = entry;
          for (const anchor of [entry.id, ...within]) collectAnchor(anchor);
          return (
            <li key={entry.id} id={entry.id}>
              {within.map((anchor) => (
                <span key={anchor} id={anchor} />
              ))}
              <Link to={`${addressOf(id)}#${entry.id}`}>{entry.title}</Link>
            </li>
          );
        })}
      </ul>
    </section>
  ));
}
