import Link from '@docusaurus/Link';
import useBrokenLinks from '@docusaurus/useBrokenLinks';
import { useCallback } from 'react';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import type { EquationsRoomSummary } from './data.ts';
import { addressOfEquations } from './equation-parts.ts';
import styles from './reference.module.css';
import { useLedOn } from './use-led-on.ts';

/** Every formula that the site computes with, by name, each with the page on which it stands. */
export default function Equations({ rooms }: { rooms: readonly EquationsRoomSummary[] }) {
  const pageOf = useCallback(
    (id: string) => {
      const room = rooms.find(({ equations }) => equations.some((one) => one.id === id));
      return room && addressOfEquations(room.id);
    },
    [rooms],
  );
  useLedOn(pageOf);
  const { collectAnchor } = useBrokenLinks();
  return (
    <Page
      title="Equations"
      description="Every formula of this site with its symbols, where it holds, and its source."
      width="text"
    >
      <h1>Equations</h1>
      <p className="lead">
        Each is shown from the record that the program itself carries, with the symbols of its source. What a formula
        was checked against stands on the <Link to="/reference/checks">Checks</Link> page.
      </p>
      {rooms.map(({ id, title, equations }) => (
        <section key={id}>
          <Anchored as="h2" id={id}>
            {title}
          </Anchored>
          <ul className={styles.parts}>
            {equations.map((equation) => {
              collectAnchor(equation.id);
              return (
                <li key={equation.id} id={equation.id}>
                  <Link to={`${addressOfEquations(id)}#${equation.id}`}>{equation.title}</Link>
                </li>
              );
            })}
          </ul>
        </section>
      ))}
    </Page>
  );
}
