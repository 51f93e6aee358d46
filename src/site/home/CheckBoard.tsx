import Link from '@docusaurus/Link';
import { useHistory } from '@docusaurus/router';
import useBaseUrl from '@docusaurus/useBaseUrl';
import { type FormEvent, useId, useState } from 'react';
import { Combobox } from '../../calculators/view/Combobox.tsx';
import { selectWhole } from '../../calculators/view/select-whole.ts';
import { useUnits } from '../../calculators/view/units.tsx';
import { readerUnit, unitLabel, withUnit } from '../../model/quantity/index.ts';
import { NeedsScripts } from '../page/NeedsScripts.tsx';
import { useSearchIndex } from '../search/use-search-index.ts';
import type { WoodName } from '../woods/row.ts';
import styles from './home.module.css';

const start = { species: 'white-ash', width: { metric: '280 mm', inch: '11 in' } };

/** The two things that are known in the lumber yard; the calculator asks the rest. The names of all woods come when one is looked for. */
export function CheckBoard({ usual }: { usual: readonly WoodName[] }) {
  const [state, wake] = useSearchIndex();
  const woods = typeof state === 'object' ? state.searching.woods : usual;
  const id = useId();
  const history = useHistory();
  const action = useBaseUrl('/calculators/seasonal-movement/');
  const units = useUnits();
  const bare = readerUnit('length', units);
  const [species, setSpecies] = useState(start.species);
  const [typedWidth, setWidth] = useState<string | null>(null);
  const width = typedWidth ?? start.width[units.system];
  const options = woods.map((wood) => ({
    value: wood.id,
    label: wood.name,
    wood,
    detail: [wood.botanical, ...wood.tradeNames].filter(Boolean).join(', '),
  }));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    history.push(`${action}?${new URLSearchParams({ species, width: withUnit(width, bare) })}`);
  };
  return (
    <section className={styles.check} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>Check a board</h2>
      <p className={styles.ask}>How far will it move through the year?</p>
      <NeedsScripts
        instead={
          <>
            This needs scripts. <Link to="/calculators/seasonal-movement">A worked board</Link> can be read without.
          </>
        }
      >
        <form action={action} onSubmit={submit}>
          {/* biome-ignore lint/a11y/noStaticElementInteractions: only fetches what the field within is about to need */}
          <div onFocus={wake} onPointerEnter={wake}>
            <label htmlFor={`${id}-wood`}>Wood</label>
            <Combobox
              id={`${id}-wood`}
              value={species}
              options={options}
              invalid={false}
              describedBy={undefined}
              onChange={setSpecies}
            />
          </div>
          <div>
            <label htmlFor={`${id}-width`}>Width ({unitLabel(bare)} unless you write another unit)</label>
            <input
              id={`${id}-width`}
              className="control"
              type="text"
              inputMode="text"
              onFocus={(event) => selectWhole(event.target, event.nativeEvent)}
              autoComplete="off"
              value={width}
              onChange={(event) => setWidth(event.target.value)}
            />
          </div>
          <button type="submit" className="button button--main">
            Check the board
          </button>
        </form>
      </NeedsScripts>
    </section>
  );
}
