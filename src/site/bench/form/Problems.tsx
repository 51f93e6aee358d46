import type { EditProblem } from '../../../method/edit/index.ts';
import { levelWords } from '../levels.ts';
import styles from './form.module.css';

/** What is wrong with a field or an entry, right below it. */
export function Problems({ id, problems }: { id?: string; problems: readonly EditProblem[] }) {
  return (
    <div id={id} className={styles.problems}>
      {problems.map((problem) => (
        <p key={`${problem.rule ?? ''} ${problem.message}`} data-level={problem.level} className={styles.problem}>
          <strong>{levelWords(problem)}:</strong> {problem.message}
        </p>
      ))}
    </div>
  );
}
