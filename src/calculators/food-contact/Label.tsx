import { useId, useState } from 'react';
import { answer } from '../kit/answer.ts';
import type { RawInputs } from '../kit/calculator.ts';
import form from '../view/form.module.css';
import frame from '../view/frame.module.css';
import { Heading, type HeadingLevel } from '../view/Heading.tsx';
import { useLinks } from '../view/links.tsx';
import { foodContactCalculator } from './calculator.ts';
import styles from './label.module.css';

/** Where the rules stand whole, and the words for the label as text to take away. */
export function Label({ asked, headingLevel }: { asked: RawInputs; headingLevel: HeadingLevel }) {
  const id = useId();
  const [said, setSaid] = useState('');
  const { Link } = useLinks();
  const outcome = answer(foodContactCalculator, asked);
  if (!outcome.ok) return null;
  const words = (outcome.value.result.tables?.find((table) => table.id === 'label')?.rows ?? []).flat().join('\n');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(words);
      setSaid('Copied.');
    } catch {
      setSaid('This browser does not copy: mark the text and copy it by hand.');
    }
  };
  return (
    <>
      <p>
        What each rule says of wood, its numbers and whom it binds:{' '}
        <Link to="/reference/food-rules">rules on food</Link>.
      </p>
      <section data-part="label" className={`${styles.part} no-print`}>
        <Heading level={headingLevel}>The label, to copy</Heading>
        <p id={`${id}-help`}>Fill in what stands in brackets. Shorten it if you must, but leave no ‘not’ out.</p>
        <textarea
          className={form.textarea}
          readOnly
          rows={Math.min(14, words.split('\n').length + 4)}
          value={words}
          aria-label="The label as text"
          aria-describedby={`${id}-help`}
        />
        <div className={frame.actions}>
          <button type="button" className={frame.button} onClick={() => void copy()}>
            Copy the label
          </button>
          <span className={frame.copied} role="status">
            {said}
          </span>
        </div>
      </section>
    </>
  );
}
