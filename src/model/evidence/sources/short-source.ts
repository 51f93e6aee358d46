import { type SourceId, sourceById } from './index.ts';

/** Short name for a line beside a number, for example `Wood Handbook 2010`; the list of sources has the whole title. */
export function shortSource(id: SourceId): string {
  const source = sourceById(id);
  return source['title-short'] ?? source.title;
}
