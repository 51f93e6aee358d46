import Link from '@docusaurus/Link';
import { checkWords } from '../../model/evidence/index.ts';
import { formatNumber, unitLabel } from '../../model/quantity/index.ts';
import { Anchored } from '../page/Anchored.tsx';
import { ScrollBox } from '../page/ScrollBox.tsx';
import { SourceLink } from '../wood/FigureTable.tsx';
import { addressOfSet, hasOwnPage } from './check-parts.ts';
import type { CheckEntry, CheckRoomEntry, CheckRow } from './data.ts';
import { PageOfPart } from './PageOfPart.tsx';
import styles from './reference.module.css';

/**
 * The checks of one room: every value, ours beside it, the difference, and whether it is within the tolerance stated for it. A long set has a
 * page of its own, and shows here what is out of tolerance.
 */
export default function ChecksOfRoom({ room }: { room: CheckRoomEntry }) {
  const about = room.title.toLowerCase();
  return (
    <PageOfPart
      title={`Checks: ${about}`}
      description={`Check values beside ours, with the difference and the tolerance, failures included: ${about}.`}
      width="wide"
      list={{ to: '/reference/checks', all: 'All checks' }}
    >
      <p className="lead">{checkWords(room.counts).join(' ')}</p>
      {room.sets.map((entry) => (
        <CheckSection
          key={entry.set.id}
          entry={entry}
          own={hasOwnPage(entry) ? addressOfSet(room.id, entry) : undefined}
        />
      ))}
    </PageOfPart>
  );
}

/** What the values of a set are, for the head of their column. */
function roadOf({ set, published, values }: CheckEntry): string {
  if (set.kind === 'comparison') return 'Compared with';
  if (published === values) return 'Published';
  return published === 0 ? 'By another road' : 'Published, or by another road';
}

/** A set under its heading. `own` is the address of its own page where that holds its rows. */
function CheckSection({ entry, own }: { entry: CheckEntry; own: string | undefined }) {
  const { set, rows, values } = entry;
  return (
    <section>
      <Anchored as="h2" id={set.id}>
        {set.title}
      </Anchored>
      <p>{set.about}</p>
      <p className="small quiet">
        {set.kind === 'check' ? 'Check' : 'Comparison only'} · {values} {values === 1 ? 'value' : 'values'},{' '}
        {entry.published} of them from a source
        {entry.worst !== null && <> · largest difference {formatNumber(entry.worst, 2)}</>}
        {own === undefined && rows.length < values && <> · the {rows.length} largest differences are shown</>}
      </p>
      {own !== undefined && (
        <p>
          <Link to={own}>All {values} values</Link>
          {rows.length > 0 ? '; not within their tolerance:' : ', all within their tolerance.'}
        </p>
      )}
      {rows.length > 0 && <CheckTable entry={entry} />}
    </section>
  );
}

/** Rows of a set with their differences. */
export function CheckTable({ entry }: { entry: CheckEntry }) {
  const { set, rows } = entry;
  return (
    <ScrollBox label={set.title}>
      <table>
        <thead>
          <tr>
            <th scope="col" className={styles.many}>
              What
            </th>
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
            <th scope="col" className={styles.most}>
              Source and reason
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.id} row={row} compared={set.kind === 'comparison'} />
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

/** A number with one digit more than was printed, so that a difference can be seen. */
const finely = (value: number) => formatNumber(value, 6);

function Row({ row, compared }: { row: CheckRow; compared: boolean }) {
  return (
    <tr>
      <th scope="row">{row.what}</th>
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
      <td>
        <SourceLink citation={row.citation} />. {row.exception ?? row.reason}
      </td>
    </tr>
  );
}
