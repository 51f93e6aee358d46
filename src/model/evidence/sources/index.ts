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

const list = [
  ...woodsSources,
  ...worldWoodsSources,
  ...safetySources,
  ...foodSources,
  ...moistureSources,
  ...stockSources,
  ...abrasivesSources,
  ...resinSources,
  ...finishSources,
  ...generalSources,
] as const;

/** Key of a source in the list. */
export type SourceId = (typeof list)[number]['id'];

/** Every source that a figure, equation, check or caution may cite, as CSL-JSON. */
export const sources: readonly CslItem[] = list;

const byId = new Map<string, CslItem>(sources.map((source) => [source.id, source]));

/** The source with this key. */
export function sourceById(id: SourceId): CslItem {
  return byId.get(id) as CslItem;
}
