import { Fragment } from 'react';
import type { Caution } from '../../model/evidence/index.ts';
import { resinCautions } from '../../model/evidence/resin-cautions.ts';
import { formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import type { Cup } from '../../model/resin/batches.ts';
import { readInputs } from '../kit/answer.ts';
import type { RawInputs } from '../kit/calculator.ts';
import { CautionList } from '../view/CautionList.tsx';
import frame from '../view/frame.module.css';
import { Heading, type HeadingLevel } from '../view/Heading.tsx';
import { useUnits } from '../view/units.tsx';
import { cautionsOf } from './cautions.ts';
import { inputs } from './inputs.ts';
import { marked, markedLabel } from './measured.ts';
import styles from './mixing.module.css';
import { alikeOf, filledBy, numbersOf } from './pieces.ts';
import { type DosePlan, planOf } from './plan.ts';

/** The sheet for the mixing bench: every cup with its parts and boxes to tick. Where there is no dose there is no sheet. */
export function MixingSheet({ asked, headingLevel }: { asked: RawInputs; headingLevel: HeadingLevel }) {
  const units = useUnits();
  const read = readInputs({ inputs }, asked);
  const planned = read.ok ? planOf(read.value) : read;
  if (!planned.ok || 'none' in planned.value) return null;
  const { plan } = planned.value;
  return (
    <section className={styles.sheet} data-part="mixing-sheet" aria-labelledby="mixing-sheet">
      <div className={styles.head}>
        <Heading level={headingLevel} id="mixing-sheet" className={styles.title}>
          Mixing sheet
        </Heading>
        <button type="button" className={frame.button} onClick={printAlone}>
          Print the mixing sheet
        </button>
        <span className={styles.blank}>Piece</span>
        <span className={styles.blank}>Date</span>
        <span className={styles.blank}>Shop and bottles, °</span>
      </div>
      <div className={styles.cautions}>
        <CautionList cautions={linesOf(plan)} />
      </div>
      <p className={styles.facts}>{factsOf(plan, units).join(' · ')}</p>
      <p className={styles.facts}>{stepsOf(plan)}</p>
      <Cups plan={plan} />
    </section>
  );
}

/** What is at stake while mixing, beside what every dose is warned of. */
const alsoAtTheBench = ['hardener-burns', 'resin-air', 'hardener-sawdust', 'resin-waste'];

/** This case's own cautions and those of the bench, a line each: the reasons stand on the page. */
function linesOf(plan: DosePlan): Caution[] {
  return [...cautionsOf(plan), ...resinCautions.filter(({ id }) => alsoAtTheBench.includes(id))]
    .filter(({ level }) => level !== 'note')
    .map(({ why: _, ...line }) => line);
}

/** Print this sheet without the page around it. */
function printAlone(): void {
  const { dataset } = document.documentElement;
  dataset.print = 'mixing-sheet';
  const done = () => {
    delete dataset.print;
    window.removeEventListener('afterprint', done);
  };
  window.addEventListener('afterprint', done);
  window.print();
}

/** What whoever mixes must know beside the cups. */
function factsOf(plan: DosePlan, units: ReaderUnits): string[] {
  const { mix, division, layers, clock, cup, given } = plan;
  const { resin } = given;
  const { potLife, potLifeMass, potLifeTemperature } = resin?.figures ?? {};
  const by = mix.by === 'weight';
  const words = (value: number, unit: string, digits = 3) =>
    formatQuantity(value, unit, units, { digits, kept: unit === 'g' });
  const shop = given.shopTemperature ?? layers.shop?.celsius;
  return [
    resin && mix.ratioOf !== 'reader' ? resin.name : resin ? `${resin.name}, own mix ratio` : 'Own mix ratio',
    `A : B by ${by ? 'weight' : 'volume'} 100 : ${(100 * (by ? mix.weightRatio : mix.volumeRatio)).toFixed(1)}`,
    `${by ? 'scale' : 'cups'} marked every ${marked(plan, division)} ${markedLabel(plan)}${plan.divisionAssumed ? ' (taken)' : ''}`,
    ...(shop === undefined
      ? []
      : [`shop ${words(shop, 'Cel')}${given.shopTemperature === undefined ? ' (assumed)' : ''}`]),
    ...(clock && potLife
      ? [
          `pot life ${words(potLife.value, 's', 2)}${potLifeMass ? ` for ${words(potLifeMass.value, 'g')}` : ''}${potLifeTemperature ? ` at ${words(potLifeTemperature.value, 'Cel')}` : ''}${resin?.fromSheet ? '' : ', from memory and no maker’s sheet'}`,
        ]
      : []),
    ...(cup.empty === undefined
      ? []
      : [`each cup empty within ${words(cup.empty, 's', 2)} of B, at ${words(clock?.celsius ?? 0, 'Cel')}`]),
    ...(layers.count > 1
      ? [
          `${layers.count} layers${layers.thickness ? ` of ${words(layers.thickness, 'mm', 2)}` : ''}: mix each when it is due`,
        ]
      : []),
    ...(layers.allowed === undefined ? [] : [`no layer deeper than ${words(layers.allowed, 'mm', 2)}`]),
    ...piecesOf(plan, words),
  ];
}

function piecesOf(plan: DosePlan, words: (value: number, unit: string, digits?: number) => string): string[] {
  const rows = alikeOf(plan);
  if (!rows.some(({ to }) => to > 1)) return [];
  return rows.map(({ seal, fill, ...numbers }) => {
    const one = numbers.from === numbers.to;
    return `piece${one ? '' : 's'} ${numbersOf(numbers)}: ${words(fill, 'g')}${one ? '' : ' each'}${seal > 0 ? `, seal coat ${words(seal, 'g', 2)}` : ''}`;
  });
}

/** How a cup is mixed, common practice, and how its row is read. */
function stepsOf(plan: DosePlan): string {
  const pigmented = plan.cups.some(({ pigment }) => pigment > 0);
  return `Each cup: A first, ${pigmented ? 'pigment into A, ' : ''}then B. Stir three minutes, into a second clean cup, one minute more, pour at once.${
    plan.mix.by === 'weight'
      ? ' Large: what to pour. Small: what the scale then shows if it was not set back to zero between the parts.'
      : ''
  }`;
}

function Cups({ plan }: { plan: DosePlan }) {
  const byWeight = plan.mix.by === 'weight';
  const unit = markedLabel(plan);
  const pigmented = plan.cups.some(({ pigment }) => pigment > 0);
  const fills = filledBy(plan);
  const placed = fills.some((words) => words !== '');
  const columns = 5 + (byWeight ? 1 : 0) + (pigmented ? 1 : 0) + (placed ? 1 : 0);
  return (
    // A region that scrolls must be reachable by keyboard.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
    <section className={styles.scroll} tabIndex={0} aria-label="Cups of the mixing sheet">
      <table className={styles.cups}>
        <thead>
          <tr>
            <th scope="col">Cup</th>
            {byWeight && <th scope="col">Cup on, zero</th>}
            <th scope="col">Pour A</th>
            {pigmented && <th scope="col">Pigment</th>}
            <th scope="col">Pour B</th>
            {placed && <th scope="col">Fills pieces</th>}
            <th scope="col">B in at</th>
            <th scope="col">Empty by</th>
          </tr>
        </thead>
        <tbody>
          {plan.cups.map((cup, index) => (
            <Fragment key={`${cup.number} ${cup.a} ${cup.b} ${cup.colour}`}>
              {plan.cups[index - 1]?.stage !== cup.stage && (
                <tr className={styles.stage}>
                  <th scope="rowgroup" colSpan={columns}>
                    {cup.stage}
                  </th>
                </tr>
              )}
              <CupRow plan={plan} cup={cup} pigmented={pigmented} fills={placed ? (fills[index] ?? '') : undefined} />
            </Fragment>
          ))}
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
            <td colSpan={placed ? 3 : 2} />
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

interface CupRowProps {
  plan: DosePlan;
  cup: Cup;
  pigmented: boolean;
  /** Undefined where no cup says it. */
  fills: string | undefined;
}

function CupRow({ plan, cup, pigmented, fills }: CupRowProps) {
  const byWeight = plan.mix.by === 'weight';
  const unit = markedLabel(plan);
  return (
    <tr>
      <th scope="row">
        {cup.number}
        <span className={styles.colour}>{cup.colour}</span>
      </th>
      {byWeight && (
        <td data-label="Cup on, zero">
          <Tick label={`Cup ${cup.number} on the scale, set to zero`} />
        </td>
      )}
      <td data-label="Pour A">
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
              <strong>
                {byWeight ? `${marked(plan, cup.pigment)} ${unit}` : `${Number(cup.pigment.toFixed(1))} g`}
              </strong>
              {byWeight && <Reading plan={plan} value={cup.a + cup.pigment} />}
            </>
          )}
        </td>
      )}
      <td data-label="Pour B">
        <Tick label={`Cup ${cup.number}, part B`} />
        <strong>
          {marked(plan, cup.b)} {unit}
        </strong>
        {/* The pigment is stirred into A before B comes: once B is in, the clock runs. */}
        {byWeight && <Reading plan={plan} value={cup.a + cup.pigment + cup.b} />}
      </td>
      {fills !== undefined && (
        <td className={styles.fills} data-label={fills === '' ? undefined : 'Fills pieces'}>
          {fills}
        </td>
      )}
      <td className={styles.write} />
      <td className={styles.write} />
    </tr>
  );
}

/** What a scale shows that runs on from part to part. */
function Reading({ plan, value }: { plan: DosePlan; value: number }) {
  return <span className={styles.reading}>{`scale then shows ${marked(plan, value)} ${markedLabel(plan)}`}</span>;
}

function Tick({ label }: { label: string }) {
  return <input type="checkbox" className={styles.tick} aria-label={label} />;
}
