import { useState } from 'react';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import styles from './batch.module.css';
import { OpenForm } from './OpenForm.tsx';
import type { MethodText } from './open.ts';

/** Longest method that is read, characters. */
const longest = 131_072;

/** Open a batch of a method that lies in a file of the reader's own. */
export function OwnMethod() {
  const [method, setMethod] = useState<MethodText | undefined>();
  const [said, setSaid] = useState('');
  const take = async (file: File) => {
    setMethod(undefined);
    if (file.size > 4 * longest) {
      setSaid(`${file.name} is too large for a method: ${longest} characters are read at most.`);
      return;
    }
    const text = await file.text();
    setSaid(text.trim() === '' ? `${file.name} is empty.` : '');
    if (text.trim() !== '') setMethod({ file: file.name.slice(0, 200), text });
  };
  return (
    <section aria-labelledby="own-method" className="no-print">
      <h2 id="own-method">Of a method of your own</h2>
      <FileButton accept=".yaml,.yml,text/yaml" part="method-file" onFile={(file) => void take(file)}>
        Choose a method file
      </FileButton>
      <p role="status" className={styles.status}>
        {said}
      </p>
      {method && <OpenForm method={method} asked={new URLSearchParams()} />}
    </section>
  );
}
