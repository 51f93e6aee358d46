import Link from '@docusaurus/Link';
import { checkWords, type SourceId, shortSource } from '../../model/evidence/index.ts';
import { formatNumber } from '../../model/quantity/index.ts';
import { Anchored, AnchoredRow } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import type { CheckRoomSummary, ChecksSummary } from './data.ts';

/** What all check values come to, published ones apart from our own, and every set with the page on which it stands. */
export default function Checks({ summary: { counts, rooms } }: { summary: ChecksSummary }) {
  return (
    <Page
      title="Checks"
      description="Published values beside ours, and our own by another road, with the difference and the tolerance, failures included."
    >
      <h1>Checks</h1>
      <p className="lead">{checkWords(counts).join(' ')}</p>
      <p>
        A published value was read in its source. A value of our own was worked out here on another road than the one
        that it checks: a closed form, a sum by hand, a second program. It shows that the arithmetic is right, not that
        wood or resin obeys it.
      </p>
      <p>
        A tolerance is set from how the value was printed, before ours was computed, and is never widened to pass.
        Values from memory, and rival formulas, are compared and prove nothing.
      </p>
      {rooms.map((room) => (
        <Room key={room.id} room={room} />
      ))}
      <Anchored as="h2" id="by-source">
        Published values by source
      </Anchored>
      <ScrollBox label="Published values by source">
        <table>
          <thead>
            <tr>
              <th scope="col">Source</th>
              <Counted>Values</Counted>
              <Counted>Within</Counted>
              <Counted>Known differences</Counted>
              <Counted>Failures</Counted>
            </tr>
          </thead>
          <tbody>
            {counts.sources.map(({ source, values, within, exceptions, failures }) => (
              <tr key={source}>
                <th scope="row">
                  <Link to={`/reference/sources#${source}`}>{shortSource(source as SourceId)}</Link>
                </th>
                <td className="num">{values}</td>
                <td className="num">{within}</td>
                <td className="num">{exceptions}</td>
                <td className="num">{failures}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Page>
  );
}

const Counted = ({ children }: { children: string }) => (
  <th scope="col" className="num">
    {children}
  </th>
);

function Room({ room }: { room: CheckRoomSummary }) {
  const address = `/reference/checks/${room.id}`;
  return (
    <section>
      <Anchored as="h2" id={room.id}>
        {room.title}
      </Anchored>
      <p>
        {checkWords(room.counts).join(' ')} <Link to={address}>{room.title}: every value</Link>
      </p>
      <ScrollBox label={room.title}>
        <table>
          <thead>
            <tr>
              <th scope="col">Set</th>
              <th scope="col">Kind</th>
              <Counted>From a source</Counted>
              <Counted>Our own</Counted>
              <Counted>Known differences</Counted>
              <Counted>Failures</Counted>
              <Counted>Largest difference</Counted>
            </tr>
          </thead>
          <tbody>
            {room.sets.map(({ set, values, published, exceptions, failures, worst }) => (
              <AnchoredRow key={set.id} id={set.id}>
                <th scope="row">
                  <Link to={`${address}#${set.id}`}>{set.title}</Link>
                </th>
                <td>{set.kind === 'check' ? 'check' : 'comparison only'}</td>
                <td className="num">{published}</td>
                <td className="num">{values - published}</td>
                <td className="num">{exceptions}</td>
                <td className="num">{failures}</td>
                <td className="num">{worst === null ? '' : formatNumber(worst, 2)}</td>
              </AnchoredRow>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </section>
  );
}
