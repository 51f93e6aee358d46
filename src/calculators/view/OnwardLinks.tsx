import { useMemo } from 'react';
import type { RawInputs } from '../kit/calculator.ts';
import { carriedFrom, type Onward } from '../kit/carry.ts';
import { useLinks } from './links.tsx';
import styles from './onward.module.css';

/** Where this case can go on: links to the calculators that ask for the same things, with the values in the address. */
export function OnwardLinks({ asked, onward }: { asked: RawInputs; onward: readonly Onward[] }) {
  const { Link } = useLinks();
  const cases = useMemo(() => carriedFrom(asked, onward), [asked, onward]);
  if (cases.length === 0) return null;
  return (
    <nav className={styles.onward} aria-label="Use this case in" data-part="onward">
      <span className={styles.title}>Use this case in</span>
      <ul>
        {cases.map(({ id, title, what, inputs }) => (
          <li key={id}>
            <Link to={`/calculators/${id}?${new URLSearchParams(inputs)}`}>{title}</Link>{' '}
            <small>takes {what.join(', ')}</small>
          </li>
        ))}
      </ul>
    </nav>
  );
}
