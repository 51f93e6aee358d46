import type { Kept } from '../kept/database.ts';

/** How keeping ended, as a sentence; empty where all is kept. */
export function keptWords(kept: Kept): string {
  if (kept === 'kept') return '';
  return kept === 'full'
    ? 'The space of this browser is used up: what you write lasts as long as this page. Save a file now, and make room.'
    : 'This browser stores nothing for this page: what you write lasts as long as this page. Save a file before you leave it.';
}
