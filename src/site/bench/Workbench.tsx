import { useCallback, useEffect, useRef, useState, useSyncExternalStore } from 'react';
import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import type { EditProblem, Splice } from '../../method/edit/index.ts';
import type { Draft, DraftShelf } from '../kept/drafts.ts';
import { useShopText } from '../kept/use-shop-text.ts';
import styles from './bench.module.css';
import { DraftTools } from './DraftTools.tsx';
import type { EditorHandle } from './editor.ts';
import { countWords } from './levels.ts';
import { fileName } from './names.ts';
import { PlainEditor } from './PlainEditor.tsx';
import { ProblemList } from './ProblemList.tsx';
import { useFetched } from './use-fetched.ts';
import { useHold } from './use-hold.ts';
import { useProblems } from './use-problems.ts';

type View = 'text' | 'form' | 'page' | 'problems';

const views: readonly { view: View; label: string }[] = [
  { view: 'text', label: 'Text' },
  { view: 'form', label: 'Form' },
  { view: 'page', label: 'Page' },
  { view: 'problems', label: 'Problems' },
];

/** Each is fetched when it is first shown. */
const fetchEditor = async () => (await import('./Editor.tsx')).default;
const fetchForm = async () => (await import('./form/MethodForm.tsx')).MethodForm;
const fetchPage = async () => (await import('./LivePage.tsx')).default;

const none: readonly EditProblem[] = [];

const wideEnough = '(min-width: 62rem)';

/** Whether there is room for the text and its page side by side. */
function useWide(): boolean {
  return useSyncExternalStore(
    (listener) => {
      const query = window.matchMedia(wideEnough);
      query.addEventListener('change', listener);
      return () => query.removeEventListener('change', listener);
    },
    () => window.matchMedia(wideEnough).matches,
    () => false,
  );
}

/**
 * Counts up whenever the text was changed by somebody else than the editor here, as by another tab: it then begins anew.
 *
 * @returns the count, and what is told the editor's own text
 */
function useForeignText(text: string): [count: number, own: (text: string) => void] {
  const last = useRef(text);
  const count = useRef(0);
  if (last.current !== text) {
    last.current = text;
    count.current += 1;
  }
  const own = useCallback((changed: string) => {
    last.current = changed;
  }, []);
  return [count.current, own];
}

/** An open draft: its text, what is wrong with it, and its page. */
export function Workbench({ draft, drafts }: { draft: Draft; drafts: DraftShelf }) {
  const units = useUnits();
  const { Link } = useLinks();
  const { id, text } = draft;
  const { holding, takeOver } = useHold(drafts, id);
  const mine = holding === 'mine';
  const [view, setView] = useState<View>('text');
  const [undoable, setUndoable] = useState({ undo: false, redo: false });
  const editor = useRef<EditorHandle>(null);
  const Editor = useFetched(fetchEditor);
  const formShown = view === 'form';
  const Form = useFetched(fetchForm, formShown);
  const wide = useWide();
  const pageShown = wide || view === 'page';
  // Once it was shown it stays, so that the last sound page is there when the text is broken.
  const pageWanted = useRef(false);
  pageWanted.current ||= pageShown;
  const Page = useFetched(fetchPage, pageWanted.current);
  const file = fileName(draft.name);
  const { text: shop } = useShopText();
  const [foreign, own] = useForeignText(text);
  const { looked, service } = useProblems(text, file, units, shop);

  useEffect(() => {
    if (Editor !== undefined && looked) editor.current?.show(looked.problems, looked.text);
  }, [looked, Editor]);

  const changed = useCallback(
    (next: string, history?: () => unknown) => {
      own(next);
      drafts.change(id, history ? { text: next, history } : { text: next });
    },
    [drafts, id, own],
  );
  const apply = useCallback((splices: readonly Splice[]) => editor.current?.apply(splices), []);
  const goTo = (problem: EditProblem) => {
    setView('text');
    // Shown first: what is out of sight takes no focus.
    requestAnimationFrame(() => editor.current?.goTo(problem));
  };
  const label = `Text of ${draft.name}`;

  return (
    <article className={styles.bench} data-part="workbench" data-view={view} aria-labelledby="bench-name">
      <p>
        <Link to="/bench">All drafts</Link>
      </p>
      <h2 id="bench-name" className="visually-hidden">
        {draft.name}
      </h2>
      <DraftTools draft={draft} drafts={drafts} mine={mine} undoable={undoable} editor={editor} />
      {holding === 'other' && (
        <div className={styles.notice} data-part="held">
          <p>This draft is open in another tab, where it can be changed. Here it can only be read.</p>
          <button type="button" className={styles.view} onClick={takeOver}>
            Change it here
          </button>
        </div>
      )}
      <fieldset className={styles.views}>
        <legend>What is shown</legend>
        {views.map((each) => (
          <button
            key={each.view}
            type="button"
            className={styles.view}
            data-of={each.view}
            aria-pressed={view === each.view}
            onClick={() => setView(each.view)}
          >
            {each.label}
            {each.view === 'problems' && looked && looked.problems.length > 0 && ` (${looked.problems.length})`}
          </button>
        ))}
      </fieldset>
      <p role="status" className={styles.status} data-part="count">
        {looked ? countWords(looked.problems) : 'Looking the text over …'}
      </p>
      <div className={styles.columns}>
        <div className={styles.left}>
          <section className={styles.text} aria-label="Text" data-part="text">
            {Editor === undefined && <p>Fetching the editor …</p>}
            {Editor && holding !== 'asking' && (
              <Editor
                key={foreign}
                handle={editor}
                text={text}
                history={draft.history}
                readOnly={!mine}
                label={label}
                onChange={changed}
                onUndoable={setUndoable}
                complete={(now, offset) => service.ask({ kind: 'complete', text: now, offset, units })}
                hover={(now, offset) => service.ask({ kind: 'hover', text: now, offset, units })}
              />
            )}
            {Editor === null && (
              <>
                <p className={styles.notice}>
                  The editor could not be fetched, perhaps since the site was renewed meanwhile: this plain field does
                  its work. Load the page again when you like; what you type is kept.
                </p>
                <PlainEditor handle={editor} text={text} readOnly={!mine} label={label} onChange={changed} />
              </>
            )}
            <p className={styles.hint}>
              Ctrl+Space offers what may be written, F8 goes to the next problem, Ctrl+Z takes a change back. Tab leaves
              the text; two spaces indent a line.
            </p>
          </section>
          <section className={styles.form} aria-label="Form" data-part="form">
            {formShown && Form === undefined && <p>Fetching the form …</p>}
            {Form === null && <p>The form could not be fetched. Load the page again; what you typed is kept.</p>}
            {Form && formShown && Editor !== undefined && (
              <Form text={text} onEdit={apply} problems={looked?.problems ?? none} readOnly={!mine} />
            )}
          </section>
          <div className={styles.problemsPart}>
            <ProblemList
              looked={looked}
              text={text}
              goTo={goTo}
              mend={mine ? (_, fix) => apply([fix.splice]) : undefined}
            />
          </div>
        </div>
        <section className={styles.page} aria-label="Page" data-part="page">
          {Page === undefined && <p>Fetching the page …</p>}
          {Page === null && <p>The page could not be fetched. Load this page again; what you typed is kept.</p>}
          {Page && <Page text={text} file={file} shop={shop} paused={!pageShown} />}
        </section>
      </div>
    </article>
  );
}
