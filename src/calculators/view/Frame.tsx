import {
  type FocusEvent,
  memo,
  useCallback,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  useTransition,
} from 'react';
import { type Caution, type FieldError, type Result, verdictWords } from '../../model/evidence/index.ts';
import type { MarketGuess } from '../../model/food/market-of-region.ts';
import { type ReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { writeAddress } from '../kit/address.ts';
import { fieldsOf } from '../kit/answer.ts';
import type { Calculator, RawInputs } from '../kit/calculator.ts';
import type { Onward } from '../kit/carry.ts';
import { Actions } from './Actions.tsx';
import { AskedLine } from './AskedLine.tsx';
import type { MakeWorker } from './answering.ts';
import { keepClearOfStrip } from './clear-of-strip.ts';
import type { Controls } from './Field.tsx';
import { Form } from './Form.tsx';
import styles from './frame.module.css';
import { Heading, type HeadingLevel } from './Heading.tsx';
import { changeShop } from './kept-shop.ts';
import { useLinks } from './links.tsx';
import { OnwardLinks } from './OnwardLinks.tsx';
import { printAlone } from './print-alone.ts';
import { ResultView } from './ResultView.tsx';
import { SaidVerdict } from './SaidVerdict.tsx';
import { StrangeNames } from './StrangeNames.tsx';
import type { Extra } from './shown.ts';
import { answerDrawn } from './unhurried.ts';
import unseen from './unseen.module.css';
import { useAnswer, useLate } from './use-answer.ts';
import { type QuestionProps, useQuestion } from './use-question.ts';
import { useRemembering } from './use-remembering.ts';

export interface FrameProps extends QuestionProps {
  /** Level of the frame's own heading; its parts take the next. */
  headingLevel?: HeadingLevel | undefined;
  /** False on the calculator's own page, whose heading already names it. */
  titled?: boolean | undefined;
  /** '2' for the second of its kind on a page, and so on: names of sections must differ. */
  ordinal?: string | undefined;
  /** Told where it stands under a fold, which names it and says its answer in a line. */
  under?: 'fold' | undefined;
  /** Told of every answer, with the inputs that it answers; it must be the same function each time. */
  tells?: ((state: FrameState) => void) | undefined;
  /** The cautions that the page around says already: they are not said again. It must be the same list each time. */
  said?: readonly Caution[] | undefined;
  /** Controls of the kinds of its fields. */
  controls?: Controls | undefined;
  /** A part of the calculator's own below a good answer. */
  extra?: Extra | undefined;
  /** The calculators that can go on with its case. */
  onward?: readonly Onward[] | undefined;
  /** Makes the worker of a heavy calculator, so that typing never waits for an answer; it must be the same function each time. */
  worker?: MakeWorker | undefined;
}

/** The answer that a frame shows. */
export interface FrameState {
  /** The inputs that it answers, with their units. */
  asked: RawInputs;
  /** As it was worked out: quantities in its sentences are in no reader's units yet. */
  result: Result;
  /** False where what stands in the fields is wrong: the answer is the last good one. */
  upToDate: boolean;
  units: ReaderUnits;
}

const noErrors: readonly FieldError[] = [];

/** The frame that all calculators share: form, answer, what it rests on, and ways to keep it. */
export function Frame({
  calculator,
  preset,
  headingLevel = 2,
  prefix = '',
  titled = true,
  ordinal,
  under,
  tells,
  said,
  controls,
  extra: OwnPart,
  onward,
  worker,
  remembers,
}: FrameProps) {
  const { href } = useLinks();
  const titleId = useId();
  const answerId = useId();
  const section = useRef<HTMLElement>(null);
  const form = useQuestion({ calculator, preset, prefix, remembers });
  const { units, last, guess, shop, raw, onPaper, question, follows, set: setInputs, reset, own } = form;
  const { asked, outcome: answered, pending: working, ready } = useAnswer(calculator, question, worker);
  // A text is seen before it is asked.
  const [seen, begin] = useTransition();
  const pending = working || follows || seen;
  const outcome = useMemo(() => wordsInReaderUnits(answered, units), [answered, units]);
  const late = useLate(pending);
  const touch = useRemembering(calculator, remembers, asked, answered.ok);
  const [touched, setTouched] = useState(false);
  const set = useCallback(
    (patch: Readonly<Record<string, string | undefined>>) => {
      setTouched(true);
      touch(Object.keys(patch));
      setInputs(patch);
    },
    [touch, setInputs],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: told of each answer
  useLayoutEffect(answerDrawn, [outcome]);
  const [lastGood, setLastGood] = useState<Result | null>(outcome.ok ? outcome.value : null);
  if (outcome.ok && outcome.value !== lastGood) setLastGood(outcome.value);
  const result = outcome.ok ? outcome.value : lastGood;
  const errors = outcome.ok ? noErrors : outcome.errors;
  const lastAsked = useRef<Pick<FrameState, 'asked' | 'result'>>(undefined);
  useEffect(() => {
    if (answered.ok) lastAsked.current = { asked, result: answered.value };
    if (tells && lastAsked.current) tells({ ...lastAsked.current, upToDate: answered.ok, units });
  }, [tells, answered, asked, units]);
  const inner = Math.min(6, headingLevel + 1) as HeadingLevel;

  const entered = useCallback(
    ({ target }: FocusEvent) => {
      ready();
      keepClearOfStrip(target);
    },
    [ready],
  );

  // On a page of its own the calculator is all there is, and its heading and address go with it.
  const print = useCallback(
    () => (titled && section.current ? printAlone(foldOf(section.current)) : window.print()),
    [titled],
  );
  const stands = useRef({ raw, units });
  stands.current = { raw, units };
  const link = useCallback(
    () =>
      `${window.location.origin}${href(`/calculators/${calculator.id}`)}${writeAddress(calculator, stands.current.raw, stands.current.units)}`,
    [calculator, href],
  );

  // Drawn for what is answered, and not again at every key.
  const ownPart = useMemo(() => OwnPart && <OwnPart asked={asked} headingLevel={inner} />, [OwnPart, asked, inner]);

  // Under a fold the section around it has the name.
  const nameOf = under
    ? {}
    : ordinal
      ? { 'aria-label': `${calculator.title} (${ordinal})` }
      : { 'aria-labelledby': titleId };

  return (
    <section
      ref={section}
      className={styles.frame}
      {...nameOf}
      {...(under ? { 'data-under': under } : { 'data-calculator': calculator.id })}
    >
      <header className={styles.header}>
        {!under && (
          <Heading level={headingLevel} id={titleId} className={titled ? styles.title : unseen.unseen}>
            {calculator.title}
          </Heading>
        )}
        <p className={styles.question}>{calculator.question}</p>
        {remembers === 'cases' && (
          <p className={styles.whose}>
            {own ? 'Your case: it stands in the address.' : 'A worked case: change what differs from yours.'}
            {!own && last && (
              <button type="button" className={styles.button} onClick={() => setInputs(whole(calculator, last))}>
                Go on with your last case
              </button>
            )}
          </p>
        )}
        <Strange form={calculator} prefix={prefix} />
        {shop && !own && <WhoseShop {...shop} />}
        {guess && !own && <p className={styles.region}>{regionWords(guess)}</p>}
      </header>
      <PaperLine calculator={calculator} raw={onPaper} units={units} />
      <div className={styles.columns}>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: it only notices that a field is entered */}
        <div className={styles.entry} data-part="entry" data-own={own || undefined} onFocus={entered}>
          <Entry
            calculator={calculator}
            raw={raw}
            errors={errors}
            units={units}
            controls={controls}
            set={set}
            begin={begin}
          />
          {result && (
            <Glance
              result={result}
              stale={outcome.ok ? (late ? 'being worked out' : undefined) : 'not updated'}
              target={answerId}
            />
          )}
        </div>
        <div
          id={answerId}
          className={styles.answer}
          data-stale={!outcome.ok || late || undefined}
          aria-busy={pending || undefined}
        >
          <p className={styles.status} role="status">
            {outcome.ok && late && 'Being worked out: the answer below is for the inputs before.'}
            {!outcome.ok &&
              (result
                ? `Not updated: ${countWords(errors.length)} to mend. The answer below is for the last inputs that could be read.`
                : `No answer yet: ${countWords(errors.length)} to mend.`)}
          </p>
          <SaidVerdict words={touched && outcome.ok && !pending ? verdictLine(outcome.value) : undefined} />
          {result && <Shown result={result} units={units} headingLevel={inner} said={said} />}
          {outcome.ok && ownPart}
          {outcome.ok && (
            <Acts
              calculator={calculator}
              asked={asked}
              result={outcome.value}
              units={units}
              print={print}
              link={link}
              reset={reset}
            />
          )}
          {remembers && <Keeps />}
          {outcome.ok && onward && <Onwards asked={asked} onward={onward} />}
        </div>
      </div>
    </section>
  );
}

/** The fold that a frame stands under, with its title, or the frame itself. */
const foldOf = (frame: HTMLElement): Element => frame.parentElement?.closest('[data-calculator]') ?? frame;

/** Whose shop record the case begins with, and the way to do without it. */
function ShopLine({ name, aside }: { name: string; aside: boolean }) {
  const { Link } = useLinks();
  return (
    <p className={styles.whose}>
      {aside ? 'Without the values of ' : 'With the values of '}
      <Link to="/shop">{name}</Link>, your shop record.
      <button
        type="button"
        className={styles.button}
        onClick={() => changeShop((before) => ({ ...before, aside: !aside }))}
      >
        {aside ? 'Take them' : 'Set them aside'}
      </button>
    </p>
  );
}

/** Whose rules a worked case begins with, why, and where others are. */
function regionWords({ market, ofRegion }: MarketGuess): string {
  const whose = market === 'us' ? 'Rules of the United States' : 'Rules of the European Union';
  return ofRegion
    ? `${whose}, by your region. “Sold in” has others.`
    : `${whose}, until you choose at “Sold in”. Your region may have its own.`;
}

const verdictLine = ({ verdict: { level, text } }: Result) => `${verdictWords[level]}. ${text}`;

/** What is kept of what is entered, and where that is told. */
const Keeps = memo(function Keeps() {
  const { Link } = useLinks();
  return (
    <p className={styles.keeps}>
      What you enter is kept in this browser and sent nowhere: <Link to="/kept">what this browser keeps</Link>.
    </p>
  );
});

// A key is answered before the next one comes: each part is drawn again only when it is another one.
const Shown = memo(ResultView);
const Entry = memo(Form);
const PaperLine = memo(AskedLine);
const Strange = memo(StrangeNames);
const WhoseShop = memo(ShopLine);
const Acts = memo(Actions);
const Onwards = memo(OnwardLinks);

/** Characters from which a verdict is set smaller in the strip, and smaller still, so that all of it stands in a few lines of a phone. */
const long = 90;
const longest = 190;

/**
 * The whole verdict in a strip at the foot of a narrow screen, while the form is in view and the answer is not. It comes once somebody is in the
 * form, and stays for a case of their own: over a form that is only read it would lie on a field by chance.
 */
function Glance({
  result,
  stale,
  target,
}: {
  result: Result;
  /** Why it is not the answer to what stands in the fields. */
  stale: string | undefined;
  target: string;
}) {
  const { level, text } = result.verdict;
  const words = `${verdictWords[level]}${stale ? `, ${stale}` : ''}. ${text}`;
  return (
    <a
      href={`#${target}`}
      className={styles.glance}
      data-part="glance"
      data-stale={stale ? true : undefined}
      data-level={level}
      data-length={words.length > longest ? 'longest' : words.length > long ? 'long' : undefined}
    >
      <span>{words}</span>
    </a>
  );
}

/** A change of every field to those of a case, empty where it has none. */
function whole(calculator: Calculator, inputs: RawInputs): Readonly<Record<string, string | undefined>> {
  return Object.fromEntries(Object.keys(fieldsOf(calculator)).map((name) => [name, inputs[name]]));
}

function countWords(count: number): string {
  return count === 1 ? 'one input' : `${count} inputs`;
}
