import useBaseUrl from '@docusaurus/useBaseUrl';
import useDocusaurusContext from '@docusaurus/useDocusaurusContext';
import { useCallback, useEffect, useLayoutEffect, useState } from 'react';
import { useHasSearch } from '../../calculators/view/address-bar.ts';
import { standsIn } from '../../calculators/view/both-units.tsx';
// What a method is drawn with stands in the page before the code that draws it.
import '../../calculators/view/caution.module.css';
import { DrawnPart } from '../../calculators/view/DrawnPart.tsx';
import '../../calculators/view/drawing.module.css';
import '../../calculators/view/evidence.module.css';
import '../../calculators/view/form.module.css';
import '../../calculators/view/frame.module.css';
import { keepsOwn, shopKey } from '../../calculators/view/keeps-own.ts';
import '../../calculators/view/result.module.css';
import '../../calculators/view/rows.module.css';
import '../../calculators/view/unseen.module.css';
import { unitsNow, useUnits } from '../../calculators/view/units.tsx';
import '../../calculators/view/verdict.module.css';
import { Page } from '../page/Page.tsx';
import { workAhead } from './ahead.ts';
import type { DrawnMethod, LiveMethod } from './drawn-method.ts';
import './method.module.css';
import { NotYoursAsSent } from './NotYours.tsx';

/**
 * A method on its own page. The page as sent holds it whole, at its own case, in both systems of units; its data and its code are fetched when
 * somebody comes near its form, or where this browser knows something that changes the case: a case in the address, inches written otherwise, a shop
 * record.
 */
export default function MethodRoute({ method }: { method: DrawnMethod }) {
  const { id, title, version, here, load } = method;
  const { siteConfig } = useDocusaurusContext();
  const path = useBaseUrl(`/methods/${id}`);
  const raw = useBaseUrl(`/data/methods/${id}.yaml`);
  const units = useUnits();
  const asked = useHasSearch();
  // Another choice of units asks once more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  const own = useCallback(
    (part: Element) => asked || !standsIn(part, unitsNow()) || keepsOwn([shopKey]),
    [asked, units],
  );
  const [isLive, setLive] = useState(false);
  const arrived = useCallback(() => setLive(true), []);
  const draw = ({ View, page, calendars }: LiveMethod) => (
    <>
      <Arrived told={arrived} />
      <View id={id} page={page} calendars={calendars} />
    </>
  );
  // What the reader's own case needs comes beside the code of the page, not after it.
  useEffect(() => {
    if (asked || keepsOwn([shopKey])) workAhead(raw);
  }, [asked, raw]);
  return (
    <Page title={title} description={method.for}>
      {here && <here.Head page={here.page} address={`${siteConfig.url}${path}`} />}
      <h1>{title}</h1>
      {!isLive && <NotYoursAsSent isWritten={here !== undefined} />}
      <DrawnPart name={`method ${id}`} load={load} here={here} draw={draw} own={own} inBoth near='[data-part="case"]' />
      <p className="small quiet">
        <a href={raw} download>
          The method as a file
        </a>
        {version && `, of ${version}`}.
      </p>
    </Page>
  );
}

/** Says that the live part stands in the page. */
function Arrived({ told }: { told: () => void }) {
  useLayoutEffect(told, [told]);
  return null;
}
