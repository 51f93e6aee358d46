import { type ComponentType, useCallback, useEffect, useId, useRef, useState } from 'react';
import { type Caution, verdictWords } from '../../model/evidence/index.ts';
import { wordsInReaderUnits } from '../../model/quantity/index.ts';
import type { AskedField } from '../kit/asked.ts';
import type { RawInputs } from '../kit/calculator.ts';
import type { FoldedAnswer } from '../kit/folded.ts';
import { useSearch } from './address-bar.ts';
import { CautionList } from './CautionList.tsx';
import styles from './folded.module.css';
import { Heading, type HeadingLevel } from './Heading.tsx';
import { useLinks } from './links.tsx';
import { ShortAnswer } from './ShortAnswer.tsx';
import type { Shown } from './shown.ts';
import { useUnits } from './units.tsx';
import unseen from './unseen.module.css';

/** What a calculator tells its fold while somebody changes its numbers. */
export interface Told {
  folded: FoldedAnswer;
  /** False where what stands in the fields cannot be read: the answer is that to the last inputs that could be. */
  upToDate: boolean;
}

/** The calculator itself, as it stands under the fold once it is fetched. */
export interface LiveProps {
  shown: Shown;
  preset: RawInputs;
  prefix: string;
  headingLevel: HeadingLevel;
  said: readonly Caution[];
  tells: (told: Told) => void;
}

export interface FoldedProps {
  id: string;
  title: string;
  /** The worked case and its answer, written by the build. */
  folded: FoldedAnswer;
  /** Fetches the calculator with what its page needs to show it. */
  load: () => Promise<{ default: Shown }>;
  preset: RawInputs;
  prefix: string;
  /** '2' for the second of its kind on a page, and so on: names of sections must differ. */
  ordinal?: string | undefined;
  headingLevel: HeadingLevel;
  /** The cautions that the page around says already. It must be the same list each time. */
  said: readonly Caution[];
}

type Fetched = Pick<LiveProps, 'shown'> & { Live: ComponentType<LiveProps> };

/** Entries that stand in the line of what the answer was worked for; paper holds all of them. */
const fewEntries = 5;

/**
 * A calculator between the steps of a page: its answer in one line, what that was worked for, and the way to other numbers. What works
 * it out is fetched when somebody comes near, and stands under the line once it is asked for; from then on the line follows what is typed.
 * Nothing typed is lost when it is folded again, and an address that carries a case opens it.
 */
export function Folded({ id, title, folded, load, preset, prefix, ordinal, headingLevel, said }: FoldedProps) {
  const units = useUnits();
  const { Link } = useLinks();
  const titleId = useId();
  const bodyId = useId();
  const [open, setOpen] = useState(false);
  const [fetched, setFetched] = useState<Fetched>();
  const [failed, setFailed] = useState(false);
  const [told, setTold] = useState<Told>();
  const fetching = useRef<Promise<Fetched>>(undefined);

  /** Fetch what works it out, once; where that fails, the next call tries again. */
  const fetchIt = useCallback((): Promise<Fetched> => {
    fetching.current ??= Promise.all([load(), import('./FoldedLive.tsx')]).then(
      ([{ default: shown }, { FoldedLive: Live }]) => ({ shown, Live }),
    );
    fetching.current.catch(() => {
      fetching.current = undefined;
    });
    return fetching.current;
  }, [load]);
  const near = () => void fetchIt().catch(() => undefined);
  const openIt = useCallback(() => {
    setOpen(true);
    setFailed(false);
    fetchIt().then(setFetched, () => setFailed(true));
  }, [fetchIt]);

  const search = useSearch();
  const carried = [...new URLSearchParams(search).keys()].some((key) => key.startsWith(`${prefix}.`));
  useEffect(() => {
    if (carried) openIt();
  }, [carried, openIt]);

  const { verdict, cautions, asked, askedInch, search: address } = told?.folded ?? folded;
  const { given } = (units.system === 'inch' && askedInch) || asked;
  const { level, text } = wordsInReaderUnits(verdict, units);
  const stale = told !== undefined && !told.upToDate;

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it only notices that somebody comes near
    <section
      className={styles.fold}
      data-calculator={id}
      data-part="calculator"
      {...(ordinal ? { 'aria-label': `${title} (${ordinal})` } : { 'aria-labelledby': titleId })}
      onPointerEnter={near}
      onFocus={near}
    >
      <noscript>
        <p>
          Scripts are off, so this is the worked case with its answer. Numbers of your own need scripts, or the command
          line.
        </p>
      </noscript>
      <Heading level={headingLevel} id={titleId} className={styles.title}>
        {title}
      </Heading>
      <p className={styles.line} data-part="answer" data-level={stale ? 'stale' : level}>
        <b className={styles.level}>{stale ? 'Not updated' : verdictWords[level]}</b>
        {stale ? ` (an entry cannot be read): for the last numbers that could be read, ${text}` : `. ${text}`}
      </p>
      <CautionList cautions={cautions} />
      <p className={styles.case} data-part="case">
        {`Worked for: ${entries(given, Object.keys(preset), told?.folded.typed)}`}
      </p>
      <p className={styles.ways}>
        <button
          type="button"
          className={styles.opener}
          aria-expanded={open}
          aria-controls={bodyId}
          onClick={() => (open ? setOpen(false) : openIt())}
        >
          {open ? 'Close' : 'Change'}
          <span className={unseen.unseen}>{open ? ` ${title}` : ` the numbers of ${title}`}</span>
        </button>
        <Link to={`/calculators/${id}${address}`}>On a page of its own</Link>
      </p>
      <div id={bodyId} className={styles.live} hidden={!open} data-part="live">
        {fetched ? (
          <fetched.Live
            shown={fetched.shown}
            preset={preset}
            prefix={prefix}
            headingLevel={headingLevel}
            said={said}
            tells={setTold}
          />
        ) : (
          <>
            <p role="status">
              {failed
                ? 'It could not be fetched: there may be no connection. The answer above stands.'
                : open && 'One moment …'}
            </p>
            {failed && (
              <button type="button" className={styles.opener} onClick={openIt}>
                Try again
              </button>
            )}
          </>
        )}
      </div>
      <ShortAnswer answer={told?.folded ?? folded} units={units} />
    </section>
  );
}

/** A label within a sentence: abbreviations keep their capitals. */
const withinSentence = (label: string) =>
  /^.[a-z ]/.test(label) ? `${label.charAt(0).toLowerCase()}${label.slice(1)}` : label;

/** The first few entries: those that somebody typed, then those of the page's own case. */
function entries(given: readonly AskedField[], own: readonly string[], typed: readonly string[] = []): string {
  const chosen = given.filter(({ name }) => own.includes(name) && !typed.includes(name));
  const first = given.filter(({ name }) => typed.includes(name));
  const shown = [...first, ...(chosen.length > 0 ? chosen : given.filter(({ name }) => !typed.includes(name)))];
  const words = shown
    .slice(0, Math.max(fewEntries, first.length))
    .map(({ label, words: value }) => `${withinSentence(label)} ${value}`);
  const more = given.length - words.length;
  return `${words.join('; ')}${more > 0 ? ` and ${more} more` : ''}.`;
}
