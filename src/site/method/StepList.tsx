import { memo } from 'react';
import { useUnits } from '../../calculators/view/units.tsx';
import type { MethodPage } from '../../method/page/types.ts';
import { inReaderUnits } from '../../model/quantity/index.ts';
import styles from './method.module.css';
import { minutesText } from './time-words.ts';

/** Every step in a line, with the work that it is for all pieces, whoever shares it; by the clock it stands in the timetable: to see the whole, and to go to one. Paper has the steps themselves. */
export const StepList = memo(
  function StepList({ page: { steps, makes } }: { page: MethodPage }) {
    const units = useUnits();
    return (
      <details className={`${styles.rests} no-print`} data-part="step-list">
        <summary>All {steps.length} steps in a list</summary>
        <ol className={styles.stepList}>
          {steps.map(({ id, title, hands, people }) => (
            <li key={id}>
              <a href={`#step-${id}`}>
                {inReaderUnits(title, units)}{' '}
                <span className={styles.stepTime}>
                  {minutesText(people * (hands.setUp + hands.each * makes.pieces), units)} of work
                  {people > 1 && `, ${people} people`}
                </span>
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
    page.steps.every(({ id, title, hands, people }, at) => {
      const before = other.steps[at];
      return id === before?.id && title === before.title && people === before.people && hands === before.hands;
    }),
);
