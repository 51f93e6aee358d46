import Link from '@docusaurus/Link';
import { checkWords } from '../../model/evidence/index.ts';
import { formatNumber, unitLabel } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Page } from '../page/Page.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import type { CheckEntry, CheckRoomEntry, CheckRow } from './data.ts';
import styles from './reference.module.css';

/** How many rows of a long comparison are shown: those with the largest differences. */
const shownOfComparison = 12;

/** The checks of one room: every value, ours beside it, the difference, and whether it is within the tolerance stated for it. */
export default function ChecksOfRoom({ room }: { room: CheckRoomEntry }) {
  return (
    <Page
      title={`Checks: ${room.title.toLowerCase()}`}
      description={`Check values beside ours, with the difference and the tolerance, failures included: ${room.title.toLowerCase()}.`}
    >
      <p className="small">
        <Link to="/reference/checks">All checks</Link>
      </p>
      <h1>Checks: {room.title.toLowerCase()}</h1>
      <p className="lead">{checkWords(room.counts).join(' ')}</p>
      {room.sets.map((entry) => (
        <CheckSection key={entry.set.id} entry={entry} />
      ))}
    </Page>
  );
}

/** What the values of a set are, for the head of their column. */
function roadOf({ set, published, rows }: CheckEntry): string {
  if (set.kind === 'comparison') return 'Compared with';
  if (published === rows.length) return 'Published';
  return published === 0 ? 'By another road' : 'Published, or by another road';
}

function CheckSection({ entry }: { entry: CheckEntry }) {
  const { set, rows } = entry;
  const long = set.kind === 'comparison' && rows.length > shownOfComparison;
  const shown = long
    ? [...rows].sort((a, b) => Math.abs(b.difference) - Math.abs(a.difference)).slice(0, shownOfComparison)
    : rows;
  return (
    <section>
      <Anchored as="h2" id={set.id}>
        {set.title}
      </Anchored>
      <p>{set.about}</p>
      <p className="small quiet">
        {set.kind === 'check' ? 'Check' : 'Comparison only'} · {rows.length} {rows.length === 1 ? 'value' : 'values'},{' '}
        {entry.published} of them from a source
        {entry.worst !== null && <> · largest difference {formatNumber(entry.worst, 2)}</>}
        {long && <> · the {shownOfComparison} largest differences are shown</>}
      </p>
      <ScrollBox label={set.title}>
        <table>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" className="num">
                {roadOf(entry)}
              </th>
              <th scope="col" className="num">
                Ours
              </th>
              <th scope="col" className="num">
                Difference
              </th>
              <th scope="col" className="num">
                Tolerance
              </th>
              <th scope="col">Verdict</th>
              <th scope="col">Source and reason</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => (
              <Row key={row.id} row={row} compared={set.kind === 'comparison'} />
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </section>
  );
}

/** A number with one digit more than was printed, so that a difference can be seen. */
const finely = (value: number) => formatNumber(value, 6);

function Row({ row, compared }: { row: CheckRow; compared: boolean }) {
  return (
    <tr>
      <th scope="row" className={styles.what}>
        {row.what}
      </th>
      <td className="num">
        {finely(row.published)} {unitLabel(row.unit)}
      </td>
      <td className="num">{finely(row.ours)}</td>
      <td className="num">{formatNumber(row.difference, 2)}</td>
      <td className="num">{compared ? 'none' : formatNumber(row.tolerance, 2)}</td>
      <td>
        <span className={styles.verdict} data-verdict={row.verdict}>
          {row.verdict}
        </span>
      </td>
      <td className={styles.reason}>
        <SourceLink citation={row.citation} />. {row.exception ?? row.reason}
      </td>
    </tr>
  );
}
