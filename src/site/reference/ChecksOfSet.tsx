import Link from '@docusaurus/Link';
import { formatNumber } from '../../model/quantity/index.ts';
import { Page } from '../page/Page.tsx';
import { CheckTable } from './ChecksOfRoom.tsx';
import type { CheckEntry } from './data.ts';

/** A long set of checks: every value, ours beside it, the difference and the tolerance. */
export default function ChecksOfSet({ set: { room, entry } }: { set: CheckSetPage }) {
  const { set, values, published, worst } = entry;
  return (
    <Page
      title={`Checks: ${set.title}`}
      description={`${values} check values beside ours, with the difference and the tolerance, failures included: ${set.title}.`}
    >
      <p className="small">
        <Link to={`/reference/checks/${room.id}#${set.id}`}>Checks: {room.title.toLowerCase()}</Link>
      </p>
      <h1>{set.title}</h1>
      <p className="lead">{set.about}</p>
      <p className="small quiet">
        {values} values, {published} of them from a source
        {worst !== null && <> · largest difference {formatNumber(worst, 2)}</>}
      </p>
      <CheckTable entry={entry} />
    </Page>
  );
}

/** What the page of a long set is given. */
export interface CheckSetPage {
  room: { id: string; title: string };
  entry: CheckEntry;
}
