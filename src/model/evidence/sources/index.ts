import { abrasivesSources } from './abrasives.ts';
import type { CslItem } from './csl.ts';
import { finishSources } from './finish.ts';
import { foodSources } from './food.ts';
import { generalSources } from './general.ts';
import { moistureSources } from './moisture.ts';
import { resinSources } from './resin.ts';
import { safetySources } from './safety.ts';
import { stockSources } from './stock.ts';
import { woodsSources } from './woods.ts';
import { worldWoodsSources } from './woods-of-the-world.ts';

export type { CslItem } from './csl.ts';

/** What the sources are about, in the order of the list. */
export const sourceSubjects = [
  { id: 'woods', title: 'Woods', sources: woodsSources },
  { id: 'woods-of-the-world', title: 'Woods of the world', sources: worldWoodsSources },
  { id: 'safety', title: 'Safety', sources: safetySources },
  { id: 'food', title: 'Food', sources: foodSources },
  { id: 'moisture', title: 'Moisture and air', sources: moistureSources },
  { id: 'stock', title: 'Stock and machines', sources: stockSources },
  { id: 'abrasives', title: 'Abrasives', sources: abrasivesSources },
  { id: 'resin', title: 'Resin', sources: resinSources },
  { id: 'finishes', title: 'Finishes', sources: finishSources },
  { id: 'general', title: 'General works', sources: generalSources },
] as const satisfies readonly { id: string; title: string; sources: readonly CslItem[] }[];

/** Key of a source in the list. */
export type SourceId = (typeof sourceSubjects)[number]['sources'][number]['id'];

/** Every source that a figure, equation, check or caution may cite, as CSL-JSON. */
export const sources: readonly CslItem[] = sourceSubjects.flatMap(({ sources: own }): readonly CslItem[] => own);

const byId = new Map<string, CslItem>(sources.map((source) => [source.id, source]));

/** The source with this key. */
export function sourceById(id: SourceId): CslItem {
  return byId.get(id) as CslItem;
}
