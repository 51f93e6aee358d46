import { memo, type ReactNode } from 'react';
import { CautionList } from '../../calculators/view/CautionList.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import type { MethodPage } from '../../method/page/types.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './method.module.css';
import { sameIn } from './same-in.ts';
import { daysOf, minutesText } from './time-words.ts';

interface BriefProps {
  page: MethodPage;
  /** True where something in the form cannot be read, so that the page is still of the case before. */
  stale?: boolean;
  /** True of a method that is taught, where it is planned in other hours than those of the class. */
  untaught?: boolean;
}

type Parts = MethodPage['brief'];
interface DangersProps {
  dangers: Parts['dangers'];
  hazards: Parts['hazards'];
}

const shows = sameIn('for', 'makes', 'brief', 'timetable', 'impossible', 'food', 'findings');
const sameBrief = (one: BriefProps, other: BriefProps) =>
  one.stale === other.stale && one.untaught === other.untaught && shows(one, other);

/** What somebody asks before they begin: what it makes, for whom, how long, what it costs, what can hurt, whether something is wrong with it. */
export const Brief = memo(function Brief({ page, stale = false, untaught = false }: BriefProps) {
  const units = useUnits();
  const { makes, brief, timetable, food } = page;
  const { hands, lasts, pieceCost, price, dangers } = brief;
  const days = timetable ? daysOf(timetable) : lasts === undefined ? undefined : Math.ceil(lasts / 1440);
  return (
    <section aria-label="In brief" className={styles.brief} data-part="brief" data-stale={stale || undefined}>
      {stale && (
        <p className={styles.problem}>
          <strong>Not updated:</strong> all that stands here, and how it is judged, is for the last numbers that could
          be read. <a href="#case">Mend what is marked in the form</a>.
        </p>
      )}
      <dl>
        <Fact name="Makes">
          {makes.pieces} × {makes.what}
        </Fact>
        <Fact name="For">{page.for}</Fact>
        <Fact name="Hands-on">
          {minutesText(hands, units)}
          {makes.pieces > 1 && `, ${minutesText(hands / makes.pieces, units)} a piece`}
        </Fact>
        {days !== undefined && (
          <Fact name="Until done">
            {days} {days === 1 ? 'day' : 'days'}
            {timetable && `, in ${sessionsText(timetable.sessions.length)}`}
            {untaught && (
              <>
                {' '}
                (<a href="#times">not those of a class</a>)
              </>
            )}
          </Fact>
        )}
        {page.impossible && (
          <Fact name="Until done">There is no timetable. {inReaderUnits(page.impossible.why, units)}</Fact>
        )}
        {pieceCost && (
          <Fact name="Costs">
            {pieceCost} a piece{price && `; sells for ${price}`}
          </Fact>
        )}
        {food && <Fact name="Food">{food.claim}</Fact>}
        <Fact name="Judged">
          <State page={page} />
        </Fact>
      </dl>
      {dangers.length > 0 && <Dangers dangers={dangers} hazards={page.brief.hazards} />}
    </section>
  );
}, sameBrief);

interface RefusedProps {
  page: MethodPage;
  shop: string;
  why: readonly string[];
}

/** What stands at the head in place of the brief where the method does not hold in the shop of the record: no time, no price, no judgement. */
export function Refused({ page: { makes, for: reader, food, brief }, shop, why }: RefusedProps) {
  const units = useUnits();
  return (
    <section aria-label="In brief" className={styles.brief} data-part="brief">
      <div className={styles.problem} role="alert">
        <p>
          <strong>Stop: not in {shop} as its record stands.</strong>{' '}
          {why.map((sentence) => inReaderUnits(sentence, units)).join(' ')}
        </p>
        <p>
          No step, no time and no price stands on this page until then. <a href="#case">To the field</a>.
        </p>
      </div>
      <dl>
        <Fact name="Makes">{makes.what}</Fact>
        <Fact name="For">{reader}</Fact>
        {food && <Fact name="Food">{food.claim}</Fact>}
      </dl>
      {brief.dangers.length > 0 && <Dangers dangers={brief.dangers} hazards={brief.hazards} />}
    </section>
  );
}

/**
 * What can hurt somebody: in a line, and this case's own dangers in full. Each of the others stands in full at the step where it first arises; here
 * they are listed for whoever prepares a class.
 */
const Dangers = memo(function Dangers({ dangers, hazards = [] }: DangersProps) {
  const own = dangers.filter(({ caution }) => caution.own);
  return (
    <div className={styles.dangers}>
      <p className={styles.hurt}>
        <strong>Can hurt:</strong> {hazards.join('; ')}. {dangers.length}{' '}
        {dangers.length === 1 ? 'danger stands' : 'dangers stand'} in full at the steps.
      </p>
      <CautionList cautions={own.map(({ caution }) => caution)} />
      <details className={styles.rests}>
        <summary>All dangers of the method in one list</summary>
        <CautionList cautions={dangers.map(({ caution }) => caution)} />
      </details>
    </div>
  );
});

const sessionsText = (count: number) => `${count} ${count === 1 ? 'session' : 'sessions'}`;

function Fact({ name, children }: { name: string; children: ReactNode }) {
  return (
    <div className={styles.fact}>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

/** Whether the rules of the house are kept, in a line. */
function State({ page: { brief, findings, impossible } }: { page: MethodPage }) {
  const { stops, warnings } = brief;
  const excepted = findings.filter((finding) => finding.excepted !== undefined).length;
  const parts = [
    ...(stops > 0 ? [`${stops} to stop for`] : []),
    ...(warnings > 0 ? [`${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`] : []),
    ...(excepted > 0 ? [`${excepted} excepted with a reason`] : []),
  ];
  if (impossible)
    return (
      <>
        <a href="#times">
          <strong>Not to be done so:</strong> there is no timetable
        </a>
        , and no window or wait could be judged.{' '}
        <a href="#found">Of the rest: {parts.length === 0 ? 'nothing found' : parts.join(', ')}</a>
      </>
    );
  if (parts.length === 0) return <a href="#found">Every rule is kept</a>;
  return (
    <a href="#found">
      {stops > 0 && <strong>Stop: </strong>}
      {parts.join(', ')}
    </a>
  );
}
