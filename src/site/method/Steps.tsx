import Link from '@docusaurus/Link';
import { memo, type ReactNode, useDeferredValue, useId, useState } from 'react';
import { CautionList } from '../../calculators/view/CautionList.tsx';
import { DrawingView } from '../../calculators/view/DrawingView.tsx';
import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { FoldWords } from '../../calculators/view/FoldWords.tsx';
import { TableView } from '../../calculators/view/TableView.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { VerdictLine } from '../../calculators/view/VerdictLine.tsx';
import type { MethodPage, ShownCalculation, ShownFinding, ShownStep } from '../../method/page/types.ts';
import type { Drawing } from '../../model/evidence/index.ts';
import { formatBand, formatQuantity, inReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { FindingLine } from './Findings.tsx';
import styles from './method.module.css';
import { calculatorAddress, ShownText } from './ShownText.tsx';
import { sameIn } from './same-in.ts';
import { minutesText } from './time-words.ts';

/** The steps of a method, in the order of its file. A step of which nothing changed is not drawn again. */
export const Steps = memo(
  function Steps({ page }: { page: MethodPage }) {
    const { steps, findings } = page;
    const byName = new Map(steps.flatMap((step) => step.calculations).map((each) => [each.name, each]));
    return (
      <ol className={styles.steps}>
        {steps.map((step) => (
          <Step
            key={step.id}
            step={step}
            before={saidBefore(step).map((number) => ({ number, id: steps[number - 1]?.id ?? '' }))}
            findings={step.findings.flatMap((at) => findings[at] ?? [])}
            calculations={namedIn(step).flatMap((name) => byName.get(name) ?? [])}
          />
        ))}
      </ol>
    );
  },
  sameIn('steps', 'findings'),
);

/** Numbers of the steps that have said in full a danger or warning of this one. */
const saidBefore = ({ cautions }: ShownStep): number[] =>
  [
    ...new Set(cautions.flatMap(({ saidIn, level }) => (saidIn !== undefined && level !== 'note' ? [saidIn] : []))),
  ].sort((one, two) => one - two);

const named = new WeakMap<ShownStep, string[]>();

/** Names of the calculations that the texts of a step show values of. */
function namedIn(step: ShownStep): string[] {
  const known = named.get(step);
  if (known) return known;
  const names = new Set<string>();
  const lookThrough = (part: unknown) => {
    if (Array.isArray(part)) part.forEach(lookThrough);
    else if (typeof part === 'object' && part !== null) {
      const { kind, calculation } = part as { kind?: unknown; calculation?: unknown };
      if (kind === 'value' && typeof calculation === 'string') names.add(calculation);
      else Object.values(part).forEach(lookThrough);
    }
  };
  lookThrough([step.does, step.tell, step.wrong, step.why]);
  const found = [...names];
  named.set(step, found);
  return found;
}

interface StepProps {
  step: ShownStep;
  /** Steps that have said dangers or warnings of this one in full. */
  before: readonly { number: number; id: string }[];
  findings: readonly ShownFinding[];
  /** Those that its texts name. */
  calculations: readonly ShownCalculation[];
}

const sameList = (one: readonly unknown[], other: readonly unknown[]) =>
  one.length === other.length && one.every((each, at) => each === other[at]);

const sameStep = (one: StepProps, other: StepProps) =>
  one.step === other.step &&
  sameList(one.findings, other.findings) &&
  sameList(one.calculations, other.calculations) &&
  sameList(
    one.before.map(({ id }) => id),
    other.before.map(({ id }) => id),
  );

/** Most figures of a step change without a word of its cautions, and without a line of its drawing. */
const Cautions = memo(CautionList, (one, other) => sameList(one.cautions, other.cautions));
const DrawnNow = memo(DrawingView);
/** A drawing has many lines, and follows the figures of the texts. */
const Drawn = ({ drawing }: { drawing: Drawing }) => <DrawnNow drawing={useDeferredValue(drawing)} />;

const Step = memo(function Step({ step, before, findings, calculations }: StepProps) {
  const units = useUnits();
  const { number, id, title, cautions, waits, missed, does, tell, wrong, why, tools, uses } = step;
  const fresh = cautions.filter(({ saidIn, level }) => saidIn === undefined && level !== 'note');
  const drawings = step.calculations.flatMap((calculation) => calculation.drawings);
  const hasAtHand = uses.length + tools.length > 0;
  const holds = [
    ...(tell ? ['how to tell'] : []),
    ...(hasAtHand ? ['at hand'] : []),
    ...(wrong ? ['what goes wrong'] : []),
    ...(why ? ['why'] : []),
    ...(step.calculations.length > 0 ? ['the numbers'] : []),
  ];
  return (
    <li className={styles.step} id={`step-${id}`}>
      <h3>
        <span className={styles.number}>{number}</span> {inReaderUnits(title, units)}
      </h3>
      <HandsLine step={step} />
      {waits.length > 0 && (
        <p className={styles.wait}>
          <strong>Wait.</strong> {inReaderUnits(waits.join(' '), units)}
        </p>
      )}
      <Cautions cautions={fresh} />
      <SaidBefore step={step} before={before} />
      <div className={styles.does}>
        <ShownText blocks={does} calculations={calculations} />
      </div>
      {drawings.map((drawing) => (
        <Drawn key={drawing.id} drawing={drawing} />
      ))}
      {missed.map((sentence) => (
        <p key={sentence} className={styles.missed}>
          {inReaderUnits(sentence, units)}
        </p>
      ))}
      {findings.map((finding) => (
        <FindingLine key={`${finding.rule} ${finding.message}`} finding={finding} />
      ))}
      {holds.length > 0 && (
        <Folded number={number} holds={holds}>
          <BesideLater step={step} calculations={calculations} />
        </Folded>
      )}
    </li>
  );
}, sameStep);

type BesideProps = Pick<StepProps, 'step' | 'calculations'>;

/** How to tell, what to have at hand, what goes wrong, why, and what the numbers rest on. */
const Beside = memo(
  function Beside({ step, calculations }: BesideProps) {
    const units = useUnits();
    const { tell, wrong, why, tools, uses } = step;
    const atHand = [
      ...uses.map(({ what, need }) => (need ? `${what}, ${inReaderUnits(`${need} in all`, units)}` : what)),
      ...tools.map(({ what }) => what),
    ];
    const told = (heading: string, blocks: ShownStep['why']) =>
      blocks && (
        <div className={styles.beside}>
          <h4>{heading}</h4>
          <ShownText blocks={blocks} calculations={calculations} />
        </div>
      );
    return (
      <>
        {told('It is right when', tell)}
        {atHand.length > 0 && (
          <p className={styles.atHand}>
            <strong>At hand:</strong> {atHand.join('; ')}.
          </p>
        )}
        {told('What goes wrong', wrong)}
        {told('Why', why)}
        {step.calculations.map((calculation) => (
          <Rests key={calculation.name} calculation={calculation} />
        ))}
      </>
    );
  },
  (one, other) => one.step === other.step && sameList(one.calculations, other.calculations),
);

/** The same, drawn behind the figures that the step itself shows. */
const BesideLater = ({ step, calculations }: BesideProps) => (
  <Beside step={useDeferredValue(step)} calculations={useDeferredValue(calculations)} />
);

/** What is beside the work of a step, with how to tell and what to have at hand: in the open on a wide screen, on paper and without scripts, folded on a phone. No caution stands in it. */
function Folded({ number, holds, children }: { number: number; holds: readonly string[]; children: ReactNode }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  // As much as one line of a phone takes.
  const words = `More: ${holds.slice(0, 3).join(', ')}`;
  return (
    <>
      <button
        type="button"
        className={styles.unfold}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        <FoldWords open={open} more={words} />
        <span className="visually-hidden"> (step {number})</span>
      </button>
      <div id={id} className={styles.folded} data-open={open || undefined}>
        {children}
      </div>
    </>
  );
}

function HandsLine({ step: { act, hands, people, interrupt } }: { step: ShownStep }) {
  const units = useUnits();
  const parts = [
    act.label,
    ...(hands.setUp > 0 ? [`${minutesText(hands.setUp, units)} to set up`] : []),
    ...(hands.each > 0 ? [`${minutesText(hands.each, units)} a piece`] : []),
    ...(people > 1 ? [`${people} people`] : []),
    ...(interrupt === 'never' ? ['done in one go'] : []),
  ];
  return <p className={styles.hands}>{parts.join(' · ')}</p>;
}

/** Dangers and warnings that an earlier step has said in full. */
function SaidBefore({ step, before }: Pick<StepProps, 'step' | 'before'>) {
  if (before.length === 0) return null;
  const danger = step.cautions.some(({ saidIn, level }) => saidIn !== undefined && level === 'danger');
  return (
    <p className={styles.saidBefore}>
      <strong>{danger ? 'Dangers' : 'Cautions'} as in step</strong>{' '}
      {before.map(({ number, id }, at) => (
        <span key={number}>
          {at > 0 && ', '}
          <a href={`#step-${id}`}>{number}</a>
        </span>
      ))}
      {' hold here too.'}
    </p>
  );
}

/** What the numbers of a step rest on: the answer as its calculator gave it, and the way there with the same case. */
const Rests = memo(function Rests({ calculation }: { calculation: ShownCalculation }) {
  const units = useUnits();
  const { title, verdict, errors } = calculation;
  const figures = Object.entries(calculation.figures).filter(([, { minor }]) => !minor);
  return (
    <details className={styles.rests}>
      <summary>What the numbers rest on: {title}</summary>
      {verdict && <VerdictLine verdict={wordsInReaderUnits(verdict, units)} />}
      {errors.map((error) => (
        <p key={error}>{inReaderUnits(error, units)}</p>
      ))}
      <dl className={styles.figures}>
        {figures.map(([name, { label, value, unit, low, high, digits = 3, kept, limit, basis, citation }]) => (
          <div key={name} className={styles.fact}>
            <dt>{label}</dt>
            <dd>
              {formatQuantity(value, unit, units, { digits, kept: kept === true, limit })}
              {low !== undefined &&
                high !== undefined &&
                ` (${formatBand(value, { low, high }, unit, units, { digits, kept: kept === true })})`}{' '}
              <EvidenceMark basis={basis} citation={citation} />
            </dd>
          </div>
        ))}
      </dl>
      {calculation.tables.map((table) => (
        <TableView key={table.id} table={wordsInReaderUnits(table, units)} units={units} />
      ))}
      <p>
        <Link to={calculatorAddress(calculation)}>Open the calculator with this case</Link>
      </p>
    </details>
  );
});
