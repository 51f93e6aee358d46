import { type ComponentProps, type ComponentType, useCallback, useEffect, useId, useRef, useState } from 'react';
import { keptShop } from '../../calculators/view/kept-shop.ts';
import type { ShopPart } from '../../method/shop/index.ts';
import { goToPart, partOfField } from './form/parts.ts';
import type { ShopForm } from './form/ShopForm.tsx';
import { ResinsOfShop } from './ResinsOfShop.tsx';
import type { ShopProblem } from './reading.ts';
import { Summary } from './Summary.tsx';
import styles from './shop.module.css';
import type { Reading } from './use-reading.ts';

type FormType = ComponentType<ComponentProps<typeof ShopForm>>;

/** The form, fetched when a record is first shown; null where it could not be fetched. */
function useForm(): FormType | null | undefined {
  const [Form, setForm] = useState<FormType | null>();
  useEffect(() => {
    let gone = false;
    import('./form/ShopForm.tsx').then(
      ({ ShopForm: Fetched }) => gone || setForm(() => Fetched),
      () => gone || setForm(null),
    );
    return () => {
      gone = true;
    };
  }, []);
  return Form;
}

/** How far a record is: in use, or what is to be mended before it is. */
function State({
  problems,
  stale,
  inUse,
  listed,
}: {
  problems: readonly ShopProblem[] | undefined;
  stale: boolean;
  /** A record that could be read before. */
  inUse: boolean;
  /** With every problem, its line and field. */
  listed: boolean;
}) {
  if (!problems || (stale && listed)) return <p>Being read.</p>;
  if (problems.length === 0) return <p>It can be read, and is in use.</p>;
  return (
    <>
      <p>
        {problems.length === 1 ? 'One thing' : `${problems.length} things`} to mend.{' '}
        {inUse ? 'Until then the last record that could be read is in use.' : 'Nothing of it is in use yet.'}
      </p>
      {listed && (
        <ol className={styles.problems}>
          {problems.map(({ line, column, field, message }) => (
            <li key={`${line}:${column} ${message}`}>
              <strong>
                Line {line}
                {field && `, ${field}`}
              </strong>
              : {message}
            </li>
          ))}
        </ol>
      )}
    </>
  );
}

interface RecordViewsProps {
  text: string;
  /** What the text came to, or the one before it. */
  read: Reading | undefined;
  /** A record that could be read is in use. */
  inUse: boolean;
  /** The text as changed, from the text as it is kept at this moment. */
  change: (changed: (now: string) => string) => void;
}

const views = [
  { view: 'form', label: 'Form' },
  { view: 'text', label: 'Text' },
] as const;

/** The record as a form or as its text, what it says and misses, and what is to be mended. */
export function RecordViews({ text, read, inUse, change }: RecordViewsProps) {
  const [view, setView] = useState<'form' | 'text'>('form');
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  const Form = useForm();
  const reading = read?.reading;
  const stale = read !== undefined && read.text !== text;
  const current = useCallback(() => keptShop().text ?? '', []);
  // Shown first: what is out of sight takes no focus.
  const afterwards = (act: () => void) => requestAnimationFrame(() => requestAnimationFrame(act));
  const goToText = (line: number, column: number) => {
    setView('text');
    afterwards(() => {
      const field = area.current;
      if (!field) return;
      const lines = field.value.split('\n');
      const from = lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0) + column - 1;
      field.focus();
      field.setSelectionRange(from, from);
      field.scrollIntoView?.({ block: 'nearest' });
    });
  };
  const goToForm = (part: ShopPart) => {
    setView('form');
    afterwards(() => goToPart(part));
  };
  const problems = reading?.problems ?? [];
  const mend = problems.flatMap(({ path }) => partOfField(String(path[0])) ?? [])[0];
  const shop = reading?.ok ? reading.shop : undefined;
  return (
    <>
      {shop && <Summary shop={shop} goTo={goToForm} />}
      <fieldset className={styles.views}>
        <legend className="visually-hidden">The record is shown as</legend>
        {views.map((each) => (
          <button
            key={each.view}
            type="button"
            className={styles.view}
            aria-pressed={view === each.view}
            onClick={() => setView(each.view)}
          >
            {each.label}
          </button>
        ))}
      </fieldset>
      <div id={`${id}-state`} role="status" data-part="shop-state">
        <State problems={reading?.problems} stale={stale} inUse={inUse} listed={view === 'text'} />
      </div>
      {view === 'form' && (
        <>
          {mend && (
            <button type="button" className={styles.view} onClick={() => goToForm(mend)}>
              Go to what is to be mended
            </button>
          )}
          {Form === undefined && <p>Fetching the form …</p>}
          {Form === null && (
            <p className={styles.notice}>
              The form could not be fetched, perhaps since the site was renewed meanwhile. What you have is kept: change
              it in the text, or load the page again.
            </p>
          )}
          {Form && (
            <Form
              text={text}
              current={current}
              problems={problems}
              goTo={goToText}
              onEdit={(splices) =>
                change((now) =>
                  [...splices]
                    .sort((one, other) => other.from - one.from || other.to - one.to)
                    .reduce((done, { from, to, insert }) => done.slice(0, from) + insert + done.slice(to), now),
                )
              }
            />
          )}
        </>
      )}
      {view === 'text' && (
        <>
          <label htmlFor={id} className={styles.label}>
            The record
          </label>
          <textarea
            id={id}
            ref={area}
            className={styles.text}
            value={text}
            spellCheck={false}
            autoCapitalize="off"
            autoCorrect="off"
            rows={Math.min(40, Math.max(12, text.split('\n').length + 1))}
            aria-describedby={`${id}-state`}
            onChange={({ target }) => change(() => target.value)}
          />
        </>
      )}
      {shop && <ResinsOfShop resins={shop.resins} />}
    </>
  );
}
