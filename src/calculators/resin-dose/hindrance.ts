import type { Caution, Verdict } from '../../model/evidence/index.ts';

/** What keeps a dose from being given: something is not known, or it must not be done so. */
export interface Hindrance {
  id: string;
  level: Extract<Verdict['level'], 'stop' | 'unknown'>;
  /** What is missing or wrong, and what to do. */
  text: string;
}

export const hindrance = (id: string, level: Hindrance['level'], text: string): Hindrance => ({ id, level, text });

/** Several hindrances: what must not be done before what is not known. */
export function gravest(all: readonly Hindrance[]): Hindrance | undefined {
  return all.find(({ level }) => level === 'stop') ?? all[0];
}

/** A hindrance as a caution of this very case. */
export function cautionOf({ id, level, text }: Hindrance): Caution {
  return { id, level: level === 'stop' ? 'danger' : 'warning', own: true, text, basis: 'derived' };
}
