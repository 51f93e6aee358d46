import Link from '@docusaurus/Link';
import { Page } from '../page/Page.tsx';
import { addressOfActs } from './act-parts.ts';
import type { PartSummary } from './data.ts';
import { PartedList } from './PartedList.tsx';

/** Every act that a step of a method may name, in the order of the work and by name, each with the page on which it stands. */
export default function Acts({ parts }: { parts: readonly PartSummary[] }) {
  return (
    <Page
      title="Acts of a method"
      description="What is done in a step, in the words of the trade: what each act gives off, what can hurt in it, and what is worn or stands ready."
      width="text"
    >
      <h1>Acts of a method</h1>
      <p className="lead">
        Each step of a <Link to="/reference/method-format">method</Link> names its act, and carries with it what can
        hurt and what protects. These are the usual cautions: local codes, the maker’s data sheet and the manual of the
        machine have the last word.
      </p>
      <PartedList parts={parts} addressOf={addressOfActs} />
    </Page>
  );
}
