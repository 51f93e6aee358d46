import { memo } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import type { MethodPage } from '../../method/page/types.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './method.module.css';
import { minutesText } from './time-words.ts';

/** Every step in a line, with the time that its hands take for all pieces: to see the whole, and to go to one. Paper has the steps themselves. */
export const StepList = memo(
  function StepList({ page: { steps, makes } }: { page: MethodPage }) {
    const units = useUnits();
    return (
      <details className={`${styles.rests} no-print`} data-part="step-list">
        <summary>All {steps.length} steps in a list</summary>
        <ol className={styles.stepList}>
          {steps.map(({ id, title, hands }) => (
            <li key={id}>
              <a href={`#step-${id}`}>
                {inReaderUnits(title, units)}{' '}
                <span className={styles.stepTime}>{minutesText(hands.setUp + hands.each * makes.pieces, units)}</span>
              </a>
            </li>
          ))}
        </ol>
      </details>
    );
  },
  ({ page }, { page: other }) =>
    page.makes.pieces === other.makes.pieces &&
    page.steps.length === other.steps.length &&
    page.steps.every(({ id, title, hands }, at) => {
      const before = other.steps[at];
      return id === before?.id && title === before.title && hands === before.hands;
    }),
);
