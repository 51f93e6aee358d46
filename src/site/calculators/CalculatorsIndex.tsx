import Link from '@docusaurus/Link';
import { Page } from '../page/Page.tsx';
import type { CalculatorEntry } from './entry.ts';

/** Every calculator by the question that it answers. */
export default function CalculatorsIndex({ calculators }: { calculators: readonly CalculatorEntry[] }) {
  return (
    <Page
      title="Calculators"
      description="Calculators for wood movement and moisture, each with its formula, its sources and a worked case."
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
    </Page>
  );
}
