import type { CalculatorEntry } from '../calculators/entry.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { KeptCases } from './KeptCases.tsx';

/** Everything that the site keeps in this browser, and ways to be rid of it. */
export default function KeptPage({ calculators }: { calculators: readonly CalculatorEntry[] }) {
  return (
    <Page
      title="What this browser keeps"
      description="What the site keeps in your browser for the next time, and how to be rid of it. Nothing of it is sent anywhere."
      width="text"
    >
      <h1>What this browser keeps</h1>
      <p className="lead">
        What you enter once stands ready the next time. It lies in this browser alone and is sent nowhere; a link that
        you open always wins over it.
      </p>
      <NeedsScripts instead="Scripts are off: nothing is kept while they are, and what was kept before is shown and dropped with scripts alone.">
        <KeptCases calculators={calculators} />
      </NeedsScripts>
    </Page>
  );
}
