import { useState } from 'react';
import { download } from '../../calculators/view/download.ts';
import { FileButton } from '../../calculators/view/FileButton.tsx';
import frame from '../../calculators/view/frame.module.css';
import { changeShop, useKeptShop } from '../../calculators/view/kept-shop.ts';
import { useLinks } from '../../calculators/view/links.tsx';
import { useUnits } from '../../calculators/view/units.tsx';
import { Begins } from './Begins.tsx';
import { RecordViews } from './RecordViews.tsx';
import styles from './shop.module.css';
import { useReading } from './use-reading.ts';

/** Bytes of a file beyond which it is not opened: a record of a large shop has some 20 kB. */
const largestFile = 256 * 1024;

/** The smallest record, to begin from, in the zone of the reader's browser. It says nothing of the shop that its owner has not said. */
const smallest = () => `shop: 1
name: My shop
zone: ${Intl.DateTimeFormat().resolvedOptions().timeZone}
currency: USD
`;

/** What is kept, as text; what is wrong with it; what calculators begin with of it. */
export function ShopRecord({ titles }: { titles: Readonly<Record<string, string>> }) {
  const { href } = useLinks();
  const units = useUnits();
  const kept = useKeptShop();
  const { text } = kept;
  const [said, setSaid] = useState('');
  const [before, setBefore] = useState<string>();
  const read = useReading(text, units);

  const write = (next: string | undefined) =>
    changeShop(({ defaults, aside }) =>
      next === undefined ? { aside } : { text: next, aside, ...(defaults ? { defaults } : {}) },
    );
  /** Put another text in place of this one, which can be had back. */
  const replace = (next: string | undefined, words: string) => {
    setBefore(text);
    write(next);
    setSaid(words);
  };
  const open = async (file: File) => {
    if (file.size > largestFile) {
      setSaid(`${file.name} is larger than 256 kB, the most that is read here. What is kept is unchanged.`);
      return;
    }
    replace(await file.text(), `${file.name} is opened.`);
  };
  const sample = async () => {
    try {
      const answer = await fetch(href('/data/shop-sample.yaml'));
      if (!answer.ok) throw new Error(String(answer.status));
      replace(await answer.text(), 'This is the record of an invented shop: put your own figures in its place.');
    } catch {
      setSaid('The sample could not be fetched. Begin with the smallest record, or try again with a network.');
    }
  };

  return (
    <>
      <div className={styles.buttons}>
        <FileButton accept=".yaml,.yml,text/yaml,application/yaml" part="shop-file" onFile={(file) => void open(file)}>
          Open a file
        </FileButton>
        <button
          type="button"
          className={frame.button}
          onClick={() => replace(smallest(), 'A small record to begin with.')}
        >
          Begin small
        </button>
        <button type="button" className={frame.button} onClick={() => void sample()}>
          Begin with the sample
        </button>
        <button
          type="button"
          className={frame.button}
          disabled={text === undefined}
          onClick={() => download('shop.yaml', 'application/yaml', text ?? '')}
        >
          Save as a file
        </button>
        <button
          type="button"
          className={frame.button}
          disabled={text === undefined}
          onClick={() => replace(undefined, 'The record is no longer kept.')}
        >
          Forget it
        </button>
      </div>
      <p role="status" className={styles.status}>
        {said}
        {before !== undefined && said !== '' && (
          <button
            type="button"
            className={frame.button}
            onClick={() => {
              write(before);
              setBefore(undefined);
              setSaid('The record is as it was before.');
            }}
          >
            Have the one before back
          </button>
        )}
      </p>
      {!kept.lasting && (
        <p className={styles.notice}>
          This browser does not let the page store anything: the record lasts as long as this page. Save it as a file.
        </p>
      )}
      {text !== undefined && (
        <RecordViews
          text={text}
          read={read}
          inUse={kept.defaults !== undefined}
          change={(changed) =>
            changeShop((now) => ({
              text: changed(now.text ?? ''),
              aside: now.aside,
              ...(now.defaults ? { defaults: now.defaults } : {}),
            }))
          }
        />
      )}
      <Begins defaults={text === undefined ? undefined : kept.defaults} aside={kept.aside} titles={titles} />
      <p>
        Every field is on the page of the <a href={href('/reference/shop-record')}>format of a shop record</a>. The same
        file serves the command line: <code>--shop shop.yaml</code>.
      </p>
    </>
  );
}
