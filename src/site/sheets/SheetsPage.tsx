import Link from '@docusaurus/Link';
import useBaseUrl from '@docusaurus/useBaseUrl';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { useEffect, useState } from 'react';
import { replaceSearch, useSearch } from '../../calculators/view/address-bar.ts';
import { localDay } from '../../calculators/view/clock.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import { longestAddress, packetOf } from '../../method/documents/index.ts';
import { type PaperName, papers } from '../../model/outline/tiles.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { fileName } from '../bench/names.ts';
import { useShelf } from '../bench/use-shelf.ts';
import { useShopText } from '../kept/use-shop-text.ts';
import { questionOf } from '../method/question.ts';
import { useMethod } from '../method/use-method.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { Sheet } from './Sheet.tsx';
import styles from './sheets.module.css';
import { usePageStyle } from './use-page-style.ts';

/** Everything of a method that is printed, for the case that stands in the address. */
export default function SheetsPage() {
  return (
    <Page title="Sheets of a method" description="The sheets of a method for one case, to print on A4 or Letter.">
      <NeedsScripts instead="The sheets are worked out in the page, which needs JavaScript. The page of the method itself can be printed without.">
        <Sheets />
      </NeedsScripts>
    </Page>
  );
}

/** Names in the address that are no parameter of the method. */
const ours = ['method', 'draft', 'which', 'paper'] as const;

function Sheets() {
  const asked = new URLSearchParams(useSearch());
  const units = useUnits();
  const [reader, setReader] = useState('');
  const { siteConfig } = useDocusaurusContext();
  const [id, which] = [asked.get('method') ?? '', asked.get('which')?.split(',') ?? ['student']];
  const draftId = asked.get('draft');
  const { shelf } = useShelf();
  const draft = shelf.drafts.find((each) => each.id === draftId);
  const known = /^[a-z0-9-]{1,80}$/.test(id);
  const raw = useBaseUrl(`/data/methods/${known ? id : 'none'}.yaml`);
  const methodPath = useBaseUrl(`/methods/${known ? id : ''}`);
  const fetched = useText(known && draftId === null ? raw : undefined);
  const file = draft ? fileName(draft.name) : `methods/${id}.yaml`;
  const text = draftId === null ? fetched.text : draft?.text;
  const { text: shop, pending: fetching } = useShopText();
  const own = Object.fromEntries([...asked].filter(([name]) => !(ours as readonly string[]).includes(name)));
  const question =
    text === undefined || fetching
      ? undefined
      : questionOf({ text, file, ...(shop === undefined ? {} : { shop }) }, own);
  const { page, problems, pending, failed } = useMethod(question, undefined, true);
  const paper: PaperName =
    asked.get('paper') === 'letter' || (asked.get('paper') === null && units.system === 'inch') ? 'letter' : 'a4';
  const query = `${new URLSearchParams(own)}`;
  const address = `${siteConfig.url}${methodPath}${query === '' ? '' : `?${query}`}`;
  const packet =
    page && question
      ? packetOf(page, {
          paper,
          made: localDay(),
          // A draft stands in this browser alone: no address leads others to it.
          ...(draftId === null && address.length <= longestAddress ? { address } : {}),
          ...(reader.trim() === '' ? {} : { for: reader.trim() }),
        })
      : undefined;
  const running = packet ? `${inReaderUnits(packet.running, units)} · printed ${packet.made}` : '';
  usePageStyle(paper, running);

  const change = (name: 'which' | 'paper', value: string) => {
    asked.set(name, value);
    replaceSearch(`?${asked}`);
  };

  if (draftId !== null && !draft)
    return (
      <>
        <h1>Sheets of a method</h1>
        <p>
          {shelf.loaded
            ? 'The draft of this address is not kept in this browser: it may have been removed, or stand in another one. '
            : 'Looking for the draft … '}
          <Link to="/bench">All drafts</Link>
        </p>
      </>
    );
  if (draftId === null && (id === '' || !known || fetched.failed))
    return (
      <>
        <h1>Sheets of a method</h1>
        <p>
          {id === ''
            ? 'No method is named in the address.'
            : `There is no method “${id.slice(0, 80)}” here, or it could not be fetched.`}{' '}
          Choose one of <Link to="/methods">the methods</Link>; its page leads back to its sheets.
        </p>
      </>
    );
  return (
    <div data-part="sheets">
      <section className="no-print" aria-label="What to print">
        <h1>Sheets: {packet?.title ?? draft?.name ?? id}</h1>
        {packet && (
          <>
            <fieldset className={styles.which}>
              <legend>What to print</legend>
              {packet.sheets.map(({ sheet, title }) => (
                <label key={sheet}>
                  <input
                    type="checkbox"
                    checked={which.includes(sheet)}
                    onChange={({ target }) =>
                      change(
                        'which',
                        packet.sheets
                          .map((each) => each.sheet)
                          .filter((name) => (name === sheet ? target.checked : which.includes(name)))
                          .join(','),
                      )
                    }
                  />{' '}
                  {inReaderUnits(title, units)}
                </label>
              ))}
            </fieldset>
            <p className={styles.choices}>
              <label>
                Paper{' '}
                <select value={paper} onChange={({ target }) => change('paper', target.value)}>
                  {Object.entries(papers).map(([name, { label }]) => (
                    <option key={name} value={name}>
                      {label}
                    </option>
                  ))}
                </select>
              </label>
              <label>
                Made for{' '}
                <input
                  type="text"
                  value={reader}
                  maxLength={80}
                  autoComplete="off"
                  onChange={({ target }) => setReader(target.value)}
                />
              </label>
              <button
                type="button"
                className="button button--primary"
                disabled={pending !== 'nothing' || which.length === 0}
                onClick={() => window.print()}
              >
                Print
              </button>
            </p>
            <p className="small quiet">
              Print at 100 %, not fitted to the page: templates are then at true size.{' '}
              {draft ? (
                <Link to={`/bench?draft=${draft.id}`}>The draft on the bench</Link>
              ) : (
                <a href={`${methodPath}${query === '' ? '' : `?${query}`}`}>The method for this case</a>
              )}
              .
            </p>
          </>
        )}
        <p role="status" className="small quiet">
          {pending !== 'nothing' && 'The case is being worked out …'}
          {failed && 'It could not be worked out: part of the site could not be fetched. Reload the page to try again.'}
        </p>
        {problems.map(({ file, line, field, message }) => (
          <p key={`${line} ${field}`}>
            <strong>It cannot be worked out so.</strong> {file}, line {line}, {field}: {inReaderUnits(message, units)}
          </p>
        ))}
      </section>
      {problems.length === 0 &&
        packet?.documents
          .filter(({ sheet }) => which.includes(sheet))
          .map((document) => <Sheet key={document.id} document={document} units={units} paper={paper} />)}
    </div>
  );
}

/** The method as written. */
function useText(address: string | undefined): { text?: string; failed: boolean } {
  const [state, setState] = useState<{ of?: string; text?: string; failed: boolean }>({ failed: false });
  useEffect(() => {
    if (address === undefined) return;
    let gone = false;
    fetch(address)
      .then((response) => (response.ok ? response.text() : Promise.reject(new Error(String(response.status)))))
      .then(
        (text) => !gone && setState({ of: address, text, failed: false }),
        () => !gone && setState({ of: address, failed: true }),
      );
    return () => {
      gone = true;
    };
  }, [address]);
  return state.of === address ? state : { failed: false };
}
