import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import type { Figure } from '../../model/evidence/index.ts';
import { coatingResistance, type Finish, finishes } from '../../model/finish/index.ts';
import { amount, inReaderUnits, type ReaderUnits } from '../../model/quantity/index.ts';
import { day } from '../../model/quantity/seconds.ts';
import styles from './finish.module.css';
import { spanWords } from './span.ts';

/** Thickness of the board that delays are told for, mm: one that the reader knows. */
const thickness: Readonly<Record<ReaderUnits['system'], number>> = { metric: 20, inch: 19.05 };

const standing: Readonly<Record<Finish['food']['level'], string>> = {
  listed: 'listed in the US, under conditions',
  'ask-the-maker': 'ask the maker',
  silent: 'silent',
  'better-not': 'better not',
};

const span = ({ value, low, high }: Figure) => spanWords(low ?? value, high ?? value);
const count = ({ value, low, high }: Figure) =>
  low === high || low === undefined || high === undefined ? `${value}` : `${low} to ${high}`;

/** What the finish alone adds to the time of a board so thick, mm. */
function delayWords({ excluding, figures }: Finish, board: number): string {
  if (!excluding.class) return 'none';
  const days = (coatingResistance(excluding.class, figures.coats.value).resistance * (board / 2000)) / day;
  const words = days < 0.05 ? 'none' : `${Number(days.toPrecision(days < 1 ? 1 : 2))} days`;
  return excluding.measured ? words : `${words}, as its nearest kin`;
}

/** One line of a cell: what it is about, then what is so. */
function Line({ label, children }: { label: string; children: string }) {
  return (
    <span className={styles.line}>
      <span className={styles.label}>{label}</span> {children}
    </span>
  );
}

/**
 * Every kind of finish in four columns: what it is, how it goes on, what comes after, what to beware of. Where the page is
 * narrow a finish stands below the other. The roles are spelt out because a table that is laid out as blocks loses them.
 */
export function Finishes() {
  const { Link } = useLinks();
  const units = useUnits();
  const board = thickness[units.system];
  const boardWords = inReaderUnits(amount(board, 'mm'), units);
  return (
    <>
      {/* biome-ignore-start lint/a11y/noRedundantRoles: a table laid out as blocks loses its roles in some browsers */}
      <table className={styles.finishes} role="table">
        <thead role="rowgroup">
          <tr role="row">
            <th scope="col" role="columnheader">
              Finish
            </th>
            <th scope="col" role="columnheader">
              Going on
            </th>
            <th scope="col" role="columnheader">
              Afterwards
            </th>
            <th scope="col" role="columnheader">
              Beware
            </th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          {finishes.map((finish) => (
            <tr key={finish.id} role="row" data-finish={finish.id}>
              <th scope="row" role="rowheader">
                {finish.name}
                <span className={styles.look}>{finish.look}.</span>
              </th>
              <td role="cell">
                <Line label="Coats">{count(finish.figures.coats)}</Line>
                {finish.figures.soak && <Line label="Soak">{`${span(finish.figures.soak)}, wipe`}</Line>}
                <Line label="Next after">{span(finish.figures.recoat)}</Line>
              </td>
              <td role="cell">
                <Line label="Food, water">
                  {finish.figures.fullCure ? `after ${span(finish.figures.fullCure)}` : 'wiped dry; it never cures'}
                </Line>
                <Line label="Renew">
                  {finish.figures.upkeep ? `after ${span(finish.figures.upkeep)}` : 'when scratched'}
                </Line>
                <Line label={`Delay, ${boardWords}`}>{delayWords(finish, board)}</Line>
              </td>
              <td role="cell">
                <Line label="Rags">{`${finish.rags.words}.`}</Line>
                <Line label="Food rules">{standing[finish.food.level]}</Line>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {/* biome-ignore-end lint/a11y/noRedundantRoles: see above */}
      <p className={styles.foot}>
        Coats, soak, waits and upkeep: common practice; the sheet of your finish wins. Delay: what the coating alone
        adds to a board of {boardWords} coated all over,{' '}
        <Link to="/reference/tables/moisture-excluding">fitted to the table</Link>. Food: each finish’s rules are on{' '}
        <Link to="/how-to/food-contact">their page</Link>.
      </p>
    </>
  );
}
