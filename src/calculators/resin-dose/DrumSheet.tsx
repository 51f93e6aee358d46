import { Fragment } from 'react';
import type { Caution } from '../../model/evidence/index.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { readInputs } from '../kit/answer.ts';
import { CautionList } from '../kit/CautionList.tsx';
import type { RawInputs } from '../kit/calculator.ts';
import frame from '../kit/frame.module.css';
import { Heading, type HeadingLevel } from '../kit/Heading.tsx';
import { useUnits } from '../kit/units.tsx';
import { cautionsOf } from './cautions.ts';
import styles from './drum.module.css';
import { type Inputs, inputs } from './inputs.ts';
import { marked, markedLabel } from './measured.ts';
import { type DosePlan, planOf } from './plan.ts';

/** Cautions that stand on the sheet: what can hurt at the bench, and what would spoil this very mix. */
const onTheSheet = ['resin-skin', 'resin-cup-heat', 'dosing-error', 'layer-too-deep', 'ratios-disagree'];

/** The sheet for the mixing bench: every cup with its parts, what the scale must read, and boxes to tick. */
export function DrumSheet({ asked, headingLevel }: { asked: RawInputs; headingLevel: HeadingLevel }) {
  const units = useUnits();
  const read = readInputs({ inputs }, asked);
  const planned = read.ok ? planOf(read.value) : read;
  if (!read.ok || !planned.ok) return null;
  const plan = planned.value;
  const cautions = cautionsOf(plan, read.value).filter(({ id }) => onTheSheet.includes(id));
  return (
    <section className={styles.sheet} data-part="drum-sheet" aria-labelledby="drum-sheet">
      <div className={styles.head}>
        <Heading level={headingLevel} id="drum-sheet" className={styles.title}>
          Drum sheet
        </Heading>
        <button type="button" className={frame.button} onClick={printAlone}>
          Print the drum sheet
        </button>
        <span className={styles.blank}>Piece</span>
        <span className={styles.blank}>Date</span>
      </div>
      <Warnings cautions={cautions} />
      <p className={styles.facts}>{factsOf(plan, read.value, units).join(' · ')}</p>
      <Cups plan={plan} />
    </section>
  );
}

function Warnings({ cautions }: { cautions: readonly Caution[] }) {
  return (
    <div className={styles.cautions}>
      <CautionList cautions={cautions} />
    </div>
  );
}

/** Print this sheet without the page around it. */
function printAlone(): void {
  const { dataset } = document.documentElement;
  dataset.print = 'drum-sheet';
  const done = () => {
    delete dataset.print;
    window.removeEventListener('afterprint', done);
  };
  window.addEventListener('afterprint', done);
  window.print();
}

/** What whoever mixes must know beside the cups. */
function factsOf(plan: DosePlan, { resin }: Inputs, units: ReaderUnits): string[] {
  const { mix, division, layers, layerThickness } = plan;
  const { potLife, potLifeMass, potLifeTemperature } = resin?.figures ?? {};
  const by = mix.by === 'weight';
  const words = (value: number, unit: string, digits = 3) => formatQuantity(value, unit, units, { digits });
  return [
    resin?.name ?? 'Own mix ratio',
    `A : B by ${by ? 'weight' : 'volume'} 100 : ${(100 * (by ? mix.weightRatio : mix.volumeRatio)).toFixed(1)}`,
    `${by ? 'scale' : 'cups'} marked every ${marked(plan, division)} ${markedLabel(plan)}`,
    ...(potLife
      ? [
          `pot life ${words(potLife.value, 's', 2)}${potLifeMass ? ` for ${words(potLifeMass.value, 'g')}` : ''}${potLifeTemperature ? ` at ${words(potLifeTemperature.value, 'Cel')}` : ''}${resin?.fromSheet ? '' : ', from memory and no maker’s sheet'}`,
        ]
      : []),
    ...(layers > 1
      ? [`${layers} layers${layerThickness ? ` of ${words(layerThickness, 'mm', 2)}` : ''}: mix each when it is due`]
      : []),
  ];
}

function Cups({ plan }: { plan: DosePlan }) {
  const byWeight = plan.mix.by === 'weight';
  const unit = markedLabel(plan);
  const pigmented = plan.cups.some(({ pigment }) => pigment > 0);
  return (
    // A region that scrolls must be reachable by keyboard.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
    <section className={styles.scroll} tabIndex={0} aria-label="Cups of the drum sheet">
      <table className={styles.cups}>
        <thead>
          <tr>
            <th scope="col">Cup</th>
            {byWeight && <th scope="col">Tare to 0</th>}
            <th scope="col">Part A, {byWeight ? 'scale reads' : unit}</th>
            {pigmented && <th scope="col">Pigment{byWeight && ', scale reads'}</th>}
            <th scope="col">Part B, {byWeight ? 'scale reads' : unit}</th>
            <th scope="col">Mixed at</th>
            <th scope="col">Pot ends</th>
          </tr>
        </thead>
        <tbody>
          {plan.cups.map((cup, index) => {
            // The pigment is stirred into A before B comes: once B is in, the clock runs.
            const afterB = byWeight ? cup.a + cup.pigment + cup.b : cup.b;
            const first = plan.cups[index - 1]?.stage !== cup.stage;
            return (
              <Fragment key={`${cup.number} ${cup.a} ${cup.b} ${cup.colour}`}>
                {first && (
                  <tr className={styles.stage}>
                    <th scope="rowgroup" colSpan={(byWeight ? 6 : 5) + (pigmented ? 1 : 0)}>
                      {cup.stage}
                    </th>
                  </tr>
                )}
                <tr>
                  <th scope="row">
                    {cup.number}
                    <span className={styles.colour}>{cup.colour}</span>
                  </th>
                  {byWeight && (
                    <td data-label="Tare">
                      <Tick label={`Cup ${cup.number} tared`} />
                    </td>
                  )}
                  <td data-label="A">
                    <Tick label={`Cup ${cup.number}, part A`} />
                    <strong>
                      {marked(plan, cup.a)} {unit}
                    </strong>
                  </td>
                  {pigmented && (
                    <td data-label={cup.pigment > 0 ? 'Pigment' : undefined}>
                      {cup.pigment > 0 && (
                        <>
                          <Tick label={`Cup ${cup.number}, pigment`} />
                          <strong>{pigmentReading(plan, cup.a, cup.pigment)}</strong>
                          {byWeight && <span className={styles.added}>{`+ ${marked(plan, cup.pigment)} ${unit}`}</span>}
                        </>
                      )}
                    </td>
                  )}
                  <td data-label="B">
                    <Tick label={`Cup ${cup.number}, part B`} />
                    <strong>
                      {marked(plan, afterB)} {unit}
                    </strong>
                    {byWeight && <span className={styles.added}>{`+ ${marked(plan, cup.b)} ${unit}`}</span>}
                  </td>
                  <td className={styles.write} />
                  <td className={styles.write} />
                </tr>
              </Fragment>
            );
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">All</th>
            {byWeight && <td />}
            <td>
              A {marked(plan, plan.measured.a)} {unit}
            </td>
            {pigmented && <td />}
            <td>
              B {marked(plan, plan.measured.b)} {unit}
            </td>
            <td colSpan={2} />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

/** What the scale reads once the pigment is in A; measured by volume, the pigment's own weight. */
function pigmentReading(plan: DosePlan, before: number, pigment: number): string {
  return plan.mix.by === 'weight'
    ? `${marked(plan, before + pigment)} ${markedLabel(plan)}`
    : `${Number(pigment.toFixed(1))} g`;
}

function Tick({ label }: { label: string }) {
  return <input type="checkbox" className={styles.tick} aria-label={label} />;
}
