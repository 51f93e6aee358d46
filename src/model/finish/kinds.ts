import { films } from './films.ts';
import { oils } from './oils.ts';
import type { Finish } from './types.ts';

/** Every generic kind of finish: oils from those that never dry, then films. */
export const finishes: readonly Finish[] = [...oils, ...films];

const byId = new Map<string, Finish>(finishes.map((finish) => [finish.id, finish]));

/** The finish of this id, for example `mineral-oil`. */
export function finishById(id: string): Finish | undefined {
  return byId.get(id);
}
