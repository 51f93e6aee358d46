import { CautionList } from '../../calculators/view/CautionList.tsx';
import { cautionById } from '../../model/evidence/cautions.ts';
import type { SpeciesDossier } from '../../model/species/types.ts';
import { Anchored } from '../page/Anchored.tsx';
import { Statements } from './Structure.tsx';

/** What dust, splinters and sap of the wood are known to do, after what all wood dust does. */
export function Dust({ wood }: { wood: SpeciesDossier }) {
  const general = cautionById('wood-dust');
  return (
    <section>
      <Anchored as="h2" id="dust">
        Dust, splinters and sap
      </Anchored>
      <CautionList cautions={general ? [general] : []} />
      {wood.effects.length > 0 ? (
        <Statements statements={wood.effects} />
      ) : (
        <p>
          <strong>Nothing was read about this wood.</strong> That does not mean that its dust is harmless.
        </p>
      )}
    </section>
  );
}
