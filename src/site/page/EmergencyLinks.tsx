import Link from '@docusaurus/Link';
import { emergencies } from '../jobs.ts';
import styles from './emergency.module.css';

/** Three large ways to what to do now. */
export function EmergencyLinks() {
  return (
    <nav className={styles.now} aria-label="What to do now">
      <ul>
        {emergencies.map(({ label, to }) => (
          <li key={to}>
            <Link to={to}>{label}</Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
