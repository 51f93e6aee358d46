import type { Citation } from './figure.ts';
import type { Caution } from './result.ts';

/** A caution of common practice, without a source: what to do, and why. */
export const practice = (id: string, level: Caution['level'], text: string, why?: string): Caution => ({
  id,
  level,
  text,
  ...(why ? { why } : {}),
  basis: 'shop-practice',
});

/** A caution whose figure or rule was read at a source; the advice around it is common practice. */
export const published = (
  id: string,
  level: Caution['level'],
  text: string,
  why: string,
  citation: Citation,
): Caution => ({
  id,
  level,
  text,
  why,
  basis: 'published',
  citation,
});
