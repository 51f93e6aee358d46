import { likeliest } from '../../model/quantity/index.ts';

/** ` Did you mean plane?`, or which names there are. */
export function orThese(name: string, known: readonly string[], kind: string): string {
  const near = likeliest(name, known);
  if (near) return `Did you mean ${near}?`;
  return known.length === 0
    ? `There is no ${kind} yet: add one.`
    : `There ${known.length === 1 ? `is the ${kind}` : `are the ${kind}s`} ${known.slice(0, 40).join(', ')}${known.length > 40 ? ` and ${known.length - 40} more` : ''}.`;
}
