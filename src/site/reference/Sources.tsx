import { Page } from '../page/Page.tsx';
import type { PartSummary } from './data.ts';
import { PartedList } from './PartedList.tsx';
import { addressOfSources } from './source-parts.ts';

/** Every source that a figure, equation, check or caution cites, by name, each with the page on which it stands. */
export default function Sources({ parts }: { parts: readonly PartSummary[] }) {
  const count = parts.reduce((sum, { entries }) => sum + entries.length, 0);
  return (
    <Page title="Sources" description="What was read, and how, behind every figure of this site." width="text">
      <h1>Sources</h1>
      <p className="lead">
        {count} sources, with a note on the copy that was read. The list is also a{' '}
        <a href="pathname:///data/sources.json">CSL-JSON file</a>.
      </p>
      <PartedList parts={parts} addressOf={addressOfSources} />
    </Page>
  );
}
