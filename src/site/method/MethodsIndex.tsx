import Link from '@docusaurus/Link';
import { useUnits } from '../../calculators/view/units.tsx';
import { Page } from '../page/Page.tsx';
import type { MethodSummary } from '../plugin/method-pages.ts';
import styles from './method.module.css';
import { minutesText } from './time-words.ts';

/** Every method of the house: what it makes, for whom, how long it takes. */
export default function MethodsIndex({ methods }: { methods: readonly MethodSummary[] }) {
  return (
    <Page
      title="Methods"
      description="Whole methods for serving boards with and without poured inlays: every step with its numbers, cautions, timetable and bill, worked out for your own pieces."
      width="text"
    >
      <h1>Methods</h1>
      <p className="lead">
        Each is a piece made from start to end. Change the wood, the size, how many or the day, and every number in it
        is worked out anew, in your browser.
      </p>
      <p>
        <Link to="/bench">Write or change a method</Link> · <Link to="/class">Plan a class</Link> ·{' '}
        <Link to="/batches">What was made</Link> · <Link to="/shop">Your shop’s hours, hands and prices</Link>
      </p>
      <ul className={`index-list ${styles.list}`}>
        {methods.map((method) => (
          <li key={method.id}>
            <Entry method={method} />
          </li>
        ))}
      </ul>
    </Page>
  );
}

function Entry({ method }: { method: MethodSummary }) {
  const units = useUnits();
  const { id, title, for: forWhom, makes, pieces, hands, lasts, dangers, steps, calendar } = method;
  const days = lasts === undefined ? undefined : Math.max(1, Math.ceil(lasts / 1440));
  return (
    <>
      <Link to={`/methods/${id}`}>
        <strong>{title}</strong>
        <span>
          {pieces} × {makes}
        </span>
      </Link>
      <p className="small">
        {forWhom} {minutesText(hands, units)} of hands-on work in {steps} steps
        {days !== undefined && ` over ${days} ${days === 1 ? 'day' : 'days'}`}; {dangers}{' '}
        {dangers === 1 ? 'danger' : 'dangers'} to mind.
        {calendar !== undefined && (
          <>
            {' '}
            <Link to={`/methods/${id}?calendar=${calendar}`}>As it is taught: {calendar.replaceAll('-', ' ')}</Link>
          </>
        )}
      </p>
    </>
  );
}
