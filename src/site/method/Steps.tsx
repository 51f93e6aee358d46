import Link from '@docusaurus/Link';
import { memo } from 'react';
import { CautionList } from '../../calculators/view/CautionList.tsx';
import { DrawingView } from '../../calculators/view/DrawingView.tsx';
import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { TableView } from '../../calculators/view/TableView.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { VerdictLine } from '../../calculators/view/VerdictLine.tsx';
import type { MethodPage, ShownCalculation, ShownStep } from '../../method/page/types.ts';
import { formatBand, formatQuantity, inReaderUnits, wordsInReaderUnits } from '../../model/quantity/index.ts';
import { FindingLine } from './Findings.tsx';
import styles from './method.module.css';
import { calculatorAddress, ShownText } from './ShownText.tsx';
import { minutesText } from './time-words.ts';

/** The steps of a method, in the order of its file. */
export const Steps = memo(function Steps({ page }: { page: MethodPage }) {
  const calculations = page.steps.flatMap((step) => step.calculations);
  return (
    <ol className={styles.steps}>
      {page.steps.map((step) => (
        <Step key={step.id} step={step} page={page} calculations={calculations} />
      ))}
    </ol>
  );
});

interface StepProps {
  step: ShownStep;
  page: MethodPage;
  calculations: readonly ShownCalculation[];
}

function Step({ step, page, calculations }: StepProps) {
  const units = useUnits();
  const { number, id, title, cautions, waits, missed, does, tell, wrong, why, tools, uses } = step;
  const fresh = cautions.filter(({ saidIn, level }) => saidIn === undefined && level !== 'note');
  const drawings = step.calculations.flatMap((calculation) => calculation.drawings);
  const told = (heading: string, blocks: ShownStep['why']) =>
    blocks && (
      <div className={styles.beside}>
        <h4>{heading}</h4>
        <ShownText blocks={blocks} calculations={calculations} />
      </div>
    );
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
      <CautionList cautions={fresh} />
      <SaidBefore step={step} page={page} />
      <div className={styles.does}>
        <ShownText blocks={does} calculations={calculations} />
      </div>
      {drawings.map((drawing) => (
        <DrawingView key={drawing.id} drawing={drawing} />
      ))}
      {told('It is right when', tell)}
      {told('What goes wrong', wrong)}
      {told('Why', why)}
      {missed.map((sentence) => (
        <p key={sentence} className={styles.missed}>
          {inReaderUnits(sentence, units)}
        </p>
      ))}
      {(tools.length > 0 || uses.length > 0) && (
        <p className={styles.atHand}>
          <strong>At hand:</strong>{' '}
          {[
            ...uses.map(({ what, need }) => (need ? `${what}, ${inReaderUnits(need, units)} in all` : what)),
            ...tools.map(({ what }) => what),
          ].join('; ')}
          .
        </p>
      )}
      {step.findings.map((at) => {
        const finding = page.findings[at];
        return finding && <FindingLine key={at} finding={finding} />;
      })}
      {step.calculations.map((calculation) => (
        <Rests key={calculation.name} calculation={calculation} />
      ))}
    </li>
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
function SaidBefore({ step, page }: Pick<StepProps, 'step' | 'page'>) {
  const numbers = [
    ...new Set(
      step.cautions.flatMap(({ saidIn, level }) => (saidIn !== undefined && level !== 'note' ? [saidIn] : [])),
    ),
  ].sort((one, two) => one - two);
  if (numbers.length === 0) return null;
  const danger = step.cautions.some(({ saidIn, level }) => saidIn !== undefined && level === 'danger');
  return (
    <p className={styles.saidBefore}>
      <strong>{danger ? 'Dangers' : 'Cautions'} as in step</strong>{' '}
      {numbers.map((number, at) => (
        <span key={number}>
          {at > 0 && ', '}
          <a href={`#step-${page.steps[number - 1]?.id}`}>{number}</a>
        </span>
      ))}
      {' hold here too.'}
    </p>
  );
}

/** What the numbers of a step rest on: the answer as its calculator gave it, and the way there with the same case. */
function Rests({ calculation }: { calculation: ShownCalculation }) {
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
        {figures.map(([name, { label, value, unit, low, high, digits = 3, kept, basis, citation }]) => (
          <div key={name} className={styles.fact}>
            <dt>{label}</dt>
            <dd>
              {formatQuantity(value, unit, units, { digits, kept: kept === true })}
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
}
