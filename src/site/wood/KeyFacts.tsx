import { EvidenceMark } from '../../calculators/view/EvidenceMark.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import type { Figure } from '../../model/evidence/index.ts';
import { formatNumber, formatQuantity, type ReaderUnits } from '../../model/quantity/index.ts';
import { InEither } from '../page/InEither.tsx';
import { poreWords } from '../woods/query.ts';
import type { WoodFacts } from './facts.ts';
import styles from './wood.module.css';

/** Hardness, movement, pores and food contact: what is asked in the lumber yard. */
export function KeyFacts({ facts }: { facts: WoodFacts }) {
  const { wood, board } = facts;
  const { inches } = useUnits();
  const { tangentialShrinkage, radialShrinkage, sideHardness12 } = wood.figures;
  const { arrangement, openness } = wood.pores;
  return (
    <dl className={styles.facts}>
      <div>
        <dt>Side hardness</dt>
        <dd>
          {sideHardness12 ? (
            <>
              <Value figure={sideHardness12} />
              <HardnessBar value={sideHardness12.value} yardstick={facts.yardstick} />
            </>
          ) : (
            <Unknown />
          )}
        </dd>
      </div>
      <div>
        <dt>Movement</dt>
        <dd>
          {board ? (
            <>
              <span>
                A <InEither write={({ system }) => (system === 'metric' ? '300 mm' : '12 in')} /> flatsawn board gains{' '}
                <strong className="num unit">
                  <InEither inches={inches} write={(units) => changeWords(board[units.system], units)} />
                </strong>{' '}
                in width from 6 to 12&nbsp;% moisture content.
              </span>{' '}
              <EvidenceMark basis={board.metric.basis} citation={board.metric.citation} />
            </>
          ) : (
            <Unknown />
          )}
          {(tangentialShrinkage || radialShrinkage) && (
            <p className={styles.detail}>
              Shrinkage, green to ovendry: tangential{' '}
              {tangentialShrinkage ? <Value figure={tangentialShrinkage} /> : <Unknown />}, radial{' '}
              {radialShrinkage ? <Value figure={radialShrinkage} /> : <Unknown />}
            </p>
          )}
        </dd>
      </div>
      <div>
        <dt>Pores</dt>
        <dd>
          {arrangement ? poreWords[arrangement] : <Unknown />}
          {openness && openness !== 'none' && `, ${openness}`}
        </dd>
      </div>
      <div>
        <dt>Touching food</dt>
        <dd>
          {wood.food.summary}. <a href="#food">Reasons</a>
        </dd>
      </div>
    </dl>
  );
}

const changeWords = ({ value, unit }: Figure, units: ReaderUnits) => formatQuantity(value, unit, units, { digits: 2 });

/** A figure in the reader's units with its evidence mark. */
export function Value({ figure }: { figure: Figure }) {
  const { value, unit, digits = 3 } = figure;
  return (
    <>
      <strong className="num unit">
        <InEither write={(units) => formatQuantity(value, unit, units, { digits })} />
      </strong>{' '}
      <EvidenceMark basis={figure.basis} citation={figure.citation} />
    </>
  );
}

export function Unknown() {
  return <span className="unknown">not published</span>;
}

/** The hardness as a bar; a line across it stands at sugar maple, the only wood that the food code names. */
function HardnessBar({ value, yardstick }: { value: number; yardstick: number }) {
  // The bar ends at the hardest wood or twice sugar maple, so that woods of different pages can be compared by eye.
  const end = Math.max(2 * yardstick, value);
  const share = formatNumber(value / yardstick, 2);
  return (
    <span className={styles.bar}>
      <svg viewBox="0 0 200 14" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <rect className={styles.track} x="0.5" y="3.5" width="199" height="7" />
        <rect className={styles.fill} x="0.5" y="3.5" width={(199 * value) / end} height="7" />
        <line className={styles.tick} x1={(200 * yardstick) / end} x2={(200 * yardstick) / end} y1="0" y2="14" />
      </svg>
      <span className={styles.detail}>{share} × sugar maple, the line across the bar</span>
    </span>
  );
}
