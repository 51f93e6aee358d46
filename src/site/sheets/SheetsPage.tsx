import Link from '@docusaurus/Link';
import { useState } from 'react';
import { replaceSearch } from '../../calculators/view/address-bar.ts';
import { localDay } from '../../calculators/view/clock.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import { longestAddress, packetOf } from '../../method/documents/index.ts';
import type { PaperName } from '../../model/outline/tiles.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { NothingAddressed } from '../method/NothingAddressed.tsx';
import { useAddressed } from '../method/use-addressed.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { PaperChoice } from './PaperChoice.tsx';
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
const ours = ['which', 'paper'] as const;

function Sheets() {
  const addressed = useAddressed(ours, true);
  const { id, asked, draft, faults, problems, pending, failed, page, methodPath, query, address } = addressed;
  const units = useUnits();
  const [reader, setReader] = useState('');
  const which = asked.get('which')?.split(',') ?? ['student'];
  const paper: PaperName =
    asked.get('paper') === 'letter' || (asked.get('paper') === null && units.system === 'inch') ? 'letter' : 'a4';
  const packet = page
    ? packetOf(page, {
        paper,
        made: localDay(),
        // A draft stands in this browser alone: no address leads others to it.
        ...(address !== undefined && address.length <= longestAddress ? { address } : {}),
        ...(reader.trim() === '' ? {} : { for: reader.trim() }),
      })
    : undefined;
  usePageStyle(paper, packet ? inReaderUnits(packet.running, units) : '', packet?.made);

  const change = (name: 'which' | 'paper', value: string) => {
    asked.set(name, value);
    replaceSearch(`?${asked}`);
  };

  if (addressed.lacking !== undefined)
    return <NothingAddressed title="Sheets of a method" addressed={addressed} back="sheets" />;
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
              <PaperChoice paper={paper} onChange={(name) => change('paper', name)} />
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
        {faults.map(({ field, message }) => (
          <p key={field}>
            <strong>It cannot be worked out so.</strong> {field}: {message}
          </p>
        ))}
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
