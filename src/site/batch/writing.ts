import type { NewEntry } from './OneBatch.tsx';
import type { HalfTyped } from './use-typed.ts';

/** What every part needs that writes something down. */
export interface Writing {
  /** Time zone of the shop. */
  zone: string;
  /** When the batch was opened (RFC 3339). */
  opened: string;
  pieces: number;
  /** Instant that it is, ms. */
  now: number;
  typed: HalfTyped;
  write(entry: NewEntry, words: string): void;
}
