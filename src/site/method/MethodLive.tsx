import useBaseUrl from '@docusaurus/useBaseUrl';
import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { RawInputs } from '../../calculators/kit/calculator.ts';
import { writeDelay } from '../../calculators/view/address-bar.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import { methodAddress } from '../../method/documents/address.ts';
import type { PlanCalendar } from '../../method/page/calendars.ts';
import type { MethodPage, MethodQuestion } from '../../method/page/types.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { useShopText } from '../kept/use-shop-text.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { methodText } from './ahead.ts';
import { CaseForm } from './CaseForm.tsx';
import { CaseLinks } from './CaseLinks.tsx';
import { caseForm, type Picks } from './case-form.ts';
import { MethodView } from './MethodView.tsx';
import styles from './method.module.css';
import { neverYours, notYours } from './NotYours.tsx';
import { calendarFault, caseOfAddress, countFaults, fieldOfProblem, questionOf } from './question.ts';
import { useCase } from './use-case.ts';
import { useMethod } from './use-method.ts';

export interface MethodLiveProps {
  id: string;
  page: MethodPage;
  /** Hours that may be chosen for the plan. */
  calendars: readonly PlanCalendar[];
}

/** A method below its title, whose address is a case of it: worked out anew for what a reader changes. */
export function MethodLive({ id, page: sent, calendars }: MethodLiveProps) {
  const units = useUnits();
  const raw = useBaseUrl(`/data/methods/${id}.yaml`);
  const [near, setNear] = useState(false);
  const [picks, setPicks] = useState<Picks>({});
  const { text: shop, whose, pending: fetching, aside, setAside } = useShopText();
  const [usual, setUsual] = useState(sent);
  const form = useMemo(() => caseForm(usual, picks, calendars), [usual, picks, calendars]);
  const state = useCase(form, units);
  const { own } = state;
  const counts = useMemo(() => [...countFaults(own), ...calendarFault(own, calendars)], [own, calendars]);
  // A page that was sent with the record of its site is that case already; the reader's own record, or none, is another.
  const asSent = sent.shop === undefined ? shop === undefined : whose === 'site' && !aside;
  const changed = Object.keys(own).length > 0 || !asSent;
  // The worker is begun before the first change, which then need not wait for it.
  const asking = changed || near;
  const text = useText(raw, asking);
  // Without the site's record, which is on its way, all would be worked out twice.
  const ready = asking && !fetching && counts.length === 0 ? text.text : undefined;
  const question = useMemo(
    () =>
      ready === undefined
        ? undefined
        : questionOf({ text: ready, file: sent.file, ...(shop === undefined ? {} : { shop }) }, own, {
            calendars,
            ...(sent.taught ? { taught: sent.taught } : {}),
          }),
    [ready, sent, shop, own, calendars],
  );
  // Where a count cannot be read the page keeps to the last case that could be asked.
  const asked = useRef<MethodQuestion | undefined>(undefined);
  if (counts.length === 0) asked.current = question;
  const { page = sent, problems, beyond, pending, failed } = useMethod(asked.current, sent, 'following');
  // What the shop record says of a parameter is what its field begins with.
  useEffect(() => {
    setUsual((before) => withUsual(before, page, own, beyond?.held));
  }, [page, own, beyond]);

  const placed = useMemo(
    () => problems.map((problem) => ({ problem, field: fieldOfProblem(problem, usual) })),
    [problems, usual],
  );
  const errors = useMemo(
    () =>
      [
        ...counts,
        // While a count cannot be read, what was wrong with the one before is of a case that nobody asks for any more.
        ...placed.flatMap(({ problem, field }) =>
          field === undefined || counts.some((count) => count.field === field)
            ? []
            : [{ field, message: problem.message }],
        ),
      ].map((error) => ({ ...error, message: inReaderUnits(error.message, units) })),
    [counts, placed, units],
  );
  const refusal = beyond && {
    shop: beyond.shop,
    why: placed.flatMap(({ problem, field }) =>
      field !== undefined && Object.hasOwn(beyond.held, field) ? [problem.message] : [],
    ),
  };
  const elsewhere = placed.filter(({ field }) => field === undefined).map(({ problem }) => problem);
  // The case as sent looks like any other: until the reader's own has come, it is said to be none of theirs.
  // What they change here is waited for at the form.
  const [cameOtherwise] = useState(changed);
  const isAsSent = cameOtherwise && changed && page === sent && !beyond && problems.length === 0 && counts.length === 0;
  const settled = useSettled(own, pending === 'numbers');
  const linked = useMemo(() => caseOfAddress(settled), [settled]);
  const onNear = useCallback(() => setNear(true), []);

  return (
    <MethodView
      page={page}
      stale={errors.length > 0 || elsewhere.length > 0}
      {...(isAsSent ? { notYet: failed || text.failed ? neverYours : notYours } : {})}
      {...(sent.taught && own.calendar !== sent.taught.calendar
        ? { untaught: methodAddress(id, { ...linked, calendar: sent.taught.calendar }) }
        : {})}
      {...(refusal ? { refused: refusal } : {})}
    >
      <section aria-labelledby="case" className={styles.case} data-part="case">
        <h2 id="case">Your own case</h2>
        <NeedsScripts instead="The numbers on this page are those of the method’s own case; to change it, the page needs JavaScript.">
          <CaseForm form={form} state={state} errors={errors} units={units} onPicks={setPicks} onNear={onNear} />
          {(beyond ?? page).shop !== undefined && (
            <p>
              With the values of {(beyond ?? page).shop}.{' '}
              <button type="button" className="button button--secondary" onClick={() => setAside(true)}>
                Set them aside
              </button>
            </p>
          )}
          {aside && whose !== undefined && (
            <p>
              {whose === 'reader' ? 'Your shop record' : 'The shop record of this site'} is set aside.{' '}
              <button type="button" className="button button--secondary" onClick={() => setAside(false)}>
                Take it again
              </button>
            </p>
          )}
          {elsewhere.map(({ file, line, message }) => (
            <p key={`${file} ${line} ${message}`} className={styles.problem}>
              <strong>It cannot be worked out so.</strong> {file}, line {line}: {inReaderUnits(message, units)}
            </p>
          ))}
          {errors.length > 0 && !beyond && (
            <p className={styles.problem}>What stands below is still the case before; mend the field that is marked.</p>
          )}
          {(failed || text.failed) && (
            <p className={styles.problem}>
              It could not be worked out here: part of the site could not be fetched. What stands below is the method’s
              own case. Reload the page to try again.
            </p>
          )}
          <p role="status" className="small quiet">
            {changed && pending === 'numbers' && 'The numbers are being worked out …'}
            {changed && pending === 'judgement' && 'The numbers are new; they are being judged by the rules …'}
            {changed && pending === 'timetable' && 'The numbers are new; the timetable is being worked out …'}
            {changed && pending === 'advice' && 'What would shorten it, or make it possible, is being worked out …'}
          </p>
        </NeedsScripts>
        <CaseLinks id={id} asked={linked} taught={sent.taught?.calendar} />
      </section>
    </MethodView>
  );
}

/**
 * What was typed, as links have it: nobody presses one while they type, so that it is drawn behind the figures and does not stand in their way. Where
 * these are long in coming it does not wait for them.
 */
function useSettled(own: RawInputs, waits: boolean): RawInputs {
  const [settled, setSettled] = useState(own);
  useEffect(() => {
    const settle = () => startTransition(() => setSettled(own));
    if (!waits) return settle();
    const timer = setTimeout(settle, writeDelay);
    return () => clearTimeout(timer);
  }, [own, waits]);
  return settled;
}

/**
 * The parameters that the reader did not change, as they stand now; the same object where nothing is new.
 *
 * @param refused what the shop record holds and the method does not take: its field shows that, and not what would be taken without a record
 */
function withUsual(
  before: MethodPage,
  now: MethodPage,
  own: Readonly<Record<string, string>>,
  refused: Readonly<Record<string, string>> = {},
): MethodPage {
  const parameters = before.parameters.map((parameter) => {
    const other = now.parameters.find(({ name }) => name === parameter.name);
    const isOwn = Object.keys(parameter.texts).some((name) => Object.hasOwn(own, name));
    const held = refused[parameter.name];
    if (held !== undefined && !isOwn)
      return { ...parameter, texts: { ...parameter.texts, [parameter.name]: held }, from: 'shop' as const };
    return other && other.from !== 'reader' && !isOwn ? other : parameter;
  });
  const same = parameters.every(
    ({ texts }, at) => JSON.stringify(texts) === JSON.stringify(before.parameters[at]?.texts),
  );
  return same ? before : { ...before, parameters };
}

/** The method as written, fetched once it is needed. */
function useText(address: string, needed: boolean): { text?: string; failed: boolean } {
  const [state, setState] = useState<{ text?: string; failed: boolean }>({ failed: false });
  useEffect(() => {
    if (!needed || state.text !== undefined) return;
    let gone = false;
    methodText(address).then(
      (text) => !gone && setState({ text, failed: false }),
      () => !gone && setState({ failed: true }),
    );
    return () => {
      gone = true;
    };
  }, [address, needed, state.text]);
  return state;
}
