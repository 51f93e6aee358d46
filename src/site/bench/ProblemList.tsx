import frame from '../../calculators/view/frame.module.css';
import type { EditProblem } from '../../method/edit/index.ts';
import styles from './bench.module.css';
import { fieldWords, levelWords } from './levels.ts';
import type { LookedAt } from './use-problems.ts';

interface ProblemListProps {
  looked: LookedAt | undefined;
  /** The text as it stands: what was found in another is marked as old. */
  text: string;
  goTo: (problem: EditProblem) => void;
  /** Left out where the text cannot be changed here. */
  mend?: ((problem: EditProblem, fix: EditProblem['fixes'][number]) => void) | undefined;
}

/** What is wrong with the text and what the rules find, in its order; each goes to its place. */
export function ProblemList({ looked, text, goTo, mend }: ProblemListProps) {
  const fresh = looked?.text === text;
  return (
    <section aria-labelledby="bench-problems" data-part="problems" data-stale={fresh ? undefined : ''}>
      <h3 id="bench-problems">Problems</h3>
      <p className={styles.hint} data-part="stale">
        {!looked && 'Looking the text over …'}
        {looked && !fresh && 'As it was before the last change.'}
        {looked && fresh && looked.problems.length === 0 && 'None.'}
      </p>
      <ol className={styles.problems}>
        {looked?.problems.map((problem) => (
          <li key={[problem.from, problem.rule, ...problem.path, problem.message].join(' ')} data-level={problem.level}>
            <button type="button" className={styles.problem} onClick={() => goTo(problem)}>
              <span className={styles.place}>
                {levelWords(problem)}, line {problem.line}:
              </span>{' '}
              {fieldWords(problem)}
              {problem.message}
              {problem.excepted !== undefined && ` The method departs from it: ${problem.excepted}`}
            </button>
            {mend &&
              fresh &&
              problem.fixes.map((fix) => (
                <button key={fix.title} type="button" className={frame.button} onClick={() => mend(problem, fix)}>
                  {fix.title}
                </button>
              ))}
          </li>
        ))}
      </ol>
    </section>
  );
}
