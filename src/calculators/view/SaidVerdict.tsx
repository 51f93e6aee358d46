import { useEffect, useRef, useState } from 'react';
import unseen from './unseen.module.css';

/** The fields have rested when nothing was typed for so long, ms. */
const rest = 1200;

/**
 * An answer's verdict for those who hear the page: said once, when the fields have rested, and not at every key.
 *
 * @param words undefined while there is nothing to say: before a field was touched, and while an input cannot be read
 */
export function SaidVerdict({ words }: { words: string | undefined }) {
  const [said, setSaid] = useState('');
  const before = useRef('');
  useEffect(() => {
    if (words === undefined || words === before.current) return;
    const timer = setTimeout(() => {
      before.current = words;
      setSaid(words);
    }, rest);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p className={unseen.unseen} role="status" data-part="said-verdict">
      {said}
    </p>
  );
}
