import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';

/** The cautions of these ids; an id that there is no caution of stops the build. */
export function cautionsBy(ids: readonly string[]): Caution[] {
  return ids.map((id) => {
    const caution = cautionById(id);
    if (!caution) throw new Error(`<Cautions>: no caution “${id}”.`);
    return caution;
  });
}
