import Link from '@docusaurus/Link';
import { useState } from 'react';
import { replaceSearch } from '../../calculators/view/address-bar.ts';
import { localDay } from '../../calculators/view/clock.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import type { MethodPage } from '../../method/page/types.ts';
import {
  dayNotes,
  priceNotes,
  promiseNotes,
  type QuoteTexts,
  quoteDocument,
  quotePrice,
  readQuote,
  startFault,
} from '../../method/sale/index.ts';
import type { FieldError } from '../../model/evidence/index.ts';
import type { PaperName } from '../../model/outline/tiles.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import { changeQuotes, type QuoteDraft, useKeptQuotes, withoutDraft } from '../kept/kept-quotes.ts';
import { NothingAddressed } from '../method/NothingAddressed.tsx';
import { type Addressed, useAddressed } from '../method/use-addressed.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { Page } from '../page/Page.tsx';
import { PaperChoice } from '../sheets/PaperChoice.tsx';
import { Sheet } from '../sheets/Sheet.tsx';
import { usePageStyle } from '../sheets/use-page-style.ts';
import { ForSale } from './ForSale.tsx';
import { QuoteForm } from './QuoteForm.tsx';
import styles from './quote.module.css';

/** A quote for the pieces of a method, the text of a listing and the batch label, for the case that stands in the address. */
export default function QuotePage() {
  return (
    <Page
      title="Quote, listing and label"
      description="A quote on one sheet from a method's plan and your prices, the text of an online listing, and the label of a batch: only words that may be said."
    >
      <NeedsScripts instead="A quote is worked out in the page, which needs JavaScript. What may be promised of a board can be read without.">
        <Quote />
      </NeedsScripts>
    </Page>
  );
}

/** Names in the address that are no parameter of the method. */
const ours = ['paper'] as const;

function Quote() {
  const addressed = useAddressed(ours, true);
  if (addressed.lacking !== undefined)
    return <NothingAddressed title="Quote, listing and label" addressed={addressed} back="quote" />;
  return <QuoteOf addressed={addressed} />;
}

/** The quote of a method: what only the seller knows, and the paper that it makes. */
function QuoteOf({ addressed }: { addressed: Addressed }) {
  const { asked, id, draft, draftId, page, faults, problems, pending, failed, query, methodPath } = addressed;
  const units = useUnits();
  const kept = useKeptQuotes();
  const of = draftId ?? id;
  const [typed, setTyped] = useState<QuoteDraft>({});
  const keeps = Object.hasOwn(kept.drafts, of);
  const own: QuoteDraft = keeps ? (kept.drafts[of] ?? {}) : typed;
  const texts: QuoteTexts = { ...own, maker: kept.maker, day: localDay() };
  const paper: PaperName =
    asked.get('paper') === 'letter' || (asked.get('paper') === null && units.system === 'inch') ? 'letter' : 'a4';

  const change = (name: keyof QuoteTexts, text: string) => {
    if (name === 'maker') changeQuotes(({ drafts }) => ({ maker: text, drafts }));
    else if (keeps)
      changeQuotes(({ maker, drafts }) => ({ maker, drafts: { ...drafts, [of]: { ...own, [name]: text } } }));
    else setTyped({ ...own, [name]: text });
  };
  const keep = (wanted: boolean) => {
    setTyped(own);
    changeQuotes((before) =>
      wanted ? { maker: before.maker, drafts: { ...before.drafts, [of]: own } } : withoutDraft(before, of),
    );
  };
  const address = (name: string, text: string) => {
    if (text.trim() === '') asked.delete(name);
    else asked.set(name, text);
    replaceSearch(`?${asked}`);
  };

  const atFields = caseErrors(asked.get('start') ?? '', texts.day, faults, problems);
  const atField = (field: string) => atFields.some((error) => error.field === field);
  const apart = problems.filter(({ field }) => !atField(caseField(field)));
  // Nothing is offered for a case that is not the one that was typed.
  const offered = faults.length === 0 && problems.length === 0 ? page : undefined;
  const made = offered && quoteOf(offered, texts, atFields);
  const errors = [...(made?.errors ?? []), ...atFields];
  usePageStyle(paper, made?.document ? inReaderUnits(made.running, units) : '');
  const ready = pending === 'nothing' && made?.document !== undefined;
  return (
    <div data-part="quote">
      <section className="no-print" aria-label="What the quote says">
        <h1>Quote: {page?.makes.what ?? draft?.name ?? id}</h1>
        <p>
          Price, day and words follow from{' '}
          {draft ? (
            <Link to={`/bench?draft=${draft.id}`}>the draft on the bench</Link>
          ) : (
            <a href={`${methodPath}${query === '' ? '' : `?${query}`}`}>the method for this case</a>
          )}{' '}
          and <Link to="/shop">your shop record</Link>. The rest you type here; it is sent nowhere.
        </p>
        <QuoteForm
          texts={texts}
          pieces={asked.get('pieces') ?? ''}
          start={asked.get('start') ?? ''}
          usual={page}
          errors={errors}
          lasting={kept.lasting}
          onText={change}
          onCase={address}
        />
        <p className={styles.line}>
          <label className={styles.check}>
            <input type="checkbox" checked={keeps} onChange={({ target }) => keep(target.checked)} /> Keep this draft,
            with the customer’s name, in this browser
          </label>
        </p>
        {faults
          .filter(({ field }) => !atField(field))
          .map(({ field, message }) => (
            <p key={field} className={styles.wrong}>
              <strong>It cannot be worked out so.</strong> {field}: {message}
            </p>
          ))}
        {apart.map(({ file, line, field, message }) => (
          <p key={`${line} ${field}`} className={styles.wrong}>
            <strong>It cannot be worked out so.</strong> {file}, line {line}, {field}: {inReaderUnits(message, units)}
          </p>
        ))}
        {made && made.notes.length > 0 && (
          <div className={styles.notes} data-part="quote-notes">
            <h2>For you, not on the quote</h2>
            <ul>
              {made.notes.map((note) => (
                <li key={note}>{inReaderUnits(note, units)}</li>
              ))}
            </ul>
          </div>
        )}
        <p className={styles.line}>
          <PaperChoice paper={paper} onChange={(name) => address('paper', name)} />
          <button type="button" className="button button--primary" disabled={!ready} onClick={() => window.print()}>
            Print the quote
          </button>
        </p>
        <p role="status" className="small quiet">
          {pending !== 'nothing' && 'The case is being worked out …'}
          {failed && 'It could not be worked out: part of the site could not be fetched. Reload the page to try again.'}
        </p>
      </section>
      {made?.document && <Sheet document={made.document} units={units} paper={paper} />}
      {offered && <ForSale page={offered} units={units} {...(errors.length === 0 ? { day: texts.day } : {})} />}
    </div>
  );
}

/** The field of the form that a problem of the method is about: its pieces stand in its file under `makes`. */
const caseField = (field: string): string => (field.startsWith('makes') ? 'pieces' : field);

/** What is wrong with pieces and first day, for their fields: in words that name no file. */
export function caseErrors(
  start: string,
  day: string,
  faults: readonly FieldError[],
  problems: readonly { field: string; message: string }[],
): FieldError[] {
  const early = startFault(start, day);
  const told = [...faults, ...problems.map(({ field, message }) => ({ field: caseField(field), message }))];
  return [
    ...(early === undefined ? [] : [{ field: 'start', message: early }]),
    ...told.filter(({ field }) => field === 'pieces' || (field === 'start' && early === undefined)),
  ];
}

/** The quote as typed, or what is wrong with what was typed; and what the seller alone should know. */
function quoteOf(page: MethodPage, texts: QuoteTexts, wrong: readonly FieldError[]) {
  const read = readQuote(texts);
  if (!read.ok || wrong.length > 0) return { errors: read.ok ? [] : read.errors, notes: [] as string[], running: '' };
  const document = quoteDocument(page, read.value);
  const { timetable } = page;
  return {
    errors: [] as FieldError[],
    document,
    notes: [
      ...promiseNotes(read.value),
      ...priceNotes(page, quotePrice(page, read.value)),
      ...dayNotes(page),
      ...(timetable?.relative
        ? ['Give the first day of the work, and the quote names the day on which it can leave.']
        : []),
    ],
    running: `${document.title} · ${page.makes.pieces} × ${page.makes.what}`,
  };
}
