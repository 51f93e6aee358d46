import Link from '@docusaurus/Link';
import { Page } from '../page/Page.tsx';
import type { PartSummary } from './data.ts';
import { addressOfEquations } from './equation-parts.ts';
import { PartedList } from './PartedList.tsx';

/** Every formula that the site computes with, by name, each with the page on which it stands. */
export default function Equations({ parts }: { parts: readonly PartSummary[] }) {
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
      <PartedList parts={parts} addressOf={addressOfEquations} />
    </Page>
  );
}
