import type { ReactNode } from 'react';
import { forget, habitIds, habits, type Remembered } from '../../calculators/kit/remembered.ts';
import frame from '../../calculators/view/frame.module.css';
import { changeRemembered, forgetAll, useRemembered } from '../../calculators/view/kept-cases.ts';
import { useKeptSheets } from '../../calculators/view/kept-sheets.ts';
import { useKeptShop } from '../../calculators/view/kept-shop.ts';
import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import type { CalculatorEntry } from '../calculators/entry.ts';
import { forgetQuotes, type KeptQuotes, useKeptQuotes } from './kept-quotes.ts';

/** What this browser keeps, piece by piece, each with a button to be rid of it. */
export function KeptCases({ calculators }: { calculators: readonly Pick<CalculatorEntry, 'id' | 'title'>[] }) {
  const { Link } = useLinks();
  const remembered = useRemembered();
  const { sheets } = useKeptSheets();
  const shop = useKeptShop();
  const units = useUnits();
  const quotes = useKeptQuotes();
  const cases = calculators.filter(({ id }) => remembered.last[id] !== undefined);
  const kept = habitIds.filter((id) => remembered.habits[id] !== undefined);
  return (
    <>
      <ul className="index-list">
        {kept.map((id) => (
          <Kept key={id} what={habits[id].label} drop={() => changeRemembered((now) => forget(now, { habit: id }))}>
            {words(id, remembered)}
          </Kept>
        ))}
        {cases.map(({ id, title }) => (
          <Kept key={id} what={title} drop={() => changeRemembered((now) => forget(now, { last: id }))}>
            your last case
          </Kept>
        ))}
      </ul>
      {kept.length + cases.length === 0 ? (
        <p>Nothing of your cases yet: it begins with the first number that you change in a calculator.</p>
      ) : (
        <button type="button" className={frame.button} onClick={forgetAll}>
          Forget all of this
        </button>
      )}
      <h2>Also kept here</h2>
      <ul>
        <li>
          <Link to="/resin-sheets">Data sheets of your resins</Link>: {sheets.length === 0 ? 'none' : sheets.length}.
          They are changed and removed there.
        </li>
        <li>
          <Link to="/shop">Your shop record</Link>:{' '}
          {shop.text === undefined ? 'none' : (shop.defaults?.shop ?? 'not yet read')}. It is changed and forgotten
          there.
        </li>
        <li>
          <Link to="/bench">Drafts of methods</Link>: they are changed, taken as files and removed there.
        </li>
        <li>
          Your units: {units.system === 'metric' ? 'millimetres' : 'inches'}. The switch is at the head of the page.
        </li>
        <li>
          <Link to="/batches">Records of what was made</Link>. They are saved as files and taken out there.
        </li>
        <li data-part="kept-quotes">
          For <Link to="/quote">quotes</Link>: {quotesWords(quotes)}.{' '}
          {(quotes.maker !== '' || Object.keys(quotes.drafts).length > 0) && (
            <button type="button" className={frame.button} onClick={forgetQuotes} aria-label="Forget: for quotes">
              Forget
            </button>
          )}
        </li>
        <li>Light or dark, where you chose one.</li>
      </ul>
      <p>
        All of it, with its sizes, stands on <Link to="/privacy">the page on privacy</Link>, which takes it away at
        once.
      </p>
    </>
  );
}

/** What is kept for quotes, counted. */
function quotesWords({ maker, drafts }: KeptQuotes): string {
  const count = Object.keys(drafts).length;
  const name = maker === '' ? 'no name or address' : 'your name and address';
  return count === 0 ? name : `${name}, ${count} ${count === 1 ? 'draft' : 'drafts'}`;
}

function Kept({ what, drop, children }: { what: string; drop: () => void; children: ReactNode }) {
  return (
    <li data-part="kept">
      <strong>{what}</strong>: {children}{' '}
      <button type="button" className={frame.button} onClick={drop} aria-label={`Forget: ${what}`}>
        Forget
      </button>
    </li>
  );
}

/** A habit as it stands in the fields; of a data sheet its name. */
function words(id: (typeof habitIds)[number], { habits: kept }: Remembered): string {
  const texts = Object.values(kept[id] ?? {});
  const [first = ''] = texts;
  if (!first.startsWith('{')) return texts.join(' ');
  try {
    return String((JSON.parse(first) as { name?: unknown }).name ?? 'a data sheet');
  } catch {
    return 'a data sheet that cannot be read';
  }
}
