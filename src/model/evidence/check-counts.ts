import { type CheckOutcome, type CheckReport, isOwn } from './check.ts';

/** How many values there are, and what became of them. */
export interface CheckTally {
  values: number;
  within: number;
  /** Outside their tolerance for a reason that is written down. */
  exceptions: number;
  failures: number;
}

/** What the check values of some sets are: a published value and one of our own on another road are never added up. */
export interface CheckCounts {
  /** Values that were read in a source, of sets that must hold. */
  published: CheckTally;
  /** The same by source, the source with most of them first. */
  sources: readonly (CheckTally & { source: string })[];
  /** Values of our own, worked out on another road than what they check. */
  own: CheckTally;
  /** Values of sets that are compared only, and prove nothing. */
  compared: number;
}

function tally(outcomes: readonly CheckOutcome[]): CheckTally {
  const within = outcomes.filter((outcome) => outcome.within).length;
  const exceptions = outcomes.filter((outcome) => !outcome.within && outcome.exception).length;
  return { values: outcomes.length, within, exceptions, failures: outcomes.length - within - exceptions };
}

/**
 * Count check values by what they can show.
 *
 * @param reports of the sets, as `runChecks` gives them
 */
export function countChecks(reports: readonly CheckReport[]): CheckCounts {
  const held = reports.filter(({ set }) => set.kind === 'check').flatMap(({ outcomes }) => outcomes);
  const [own, read] = [held.filter(({ value }) => isOwn(value)), held.filter(({ value }) => !isOwn(value))];
  const sources = [...new Set(read.map(({ value }) => value.citation.source))].map((source) => ({
    source,
    ...tally(read.filter(({ value }) => value.citation.source === source)),
  }));
  return {
    published: tally(read),
    sources: sources.sort((a, b) => b.values - a.values || a.source.localeCompare(b.source)),
    own: tally(own),
    compared: reports
      .filter(({ set }) => set.kind === 'comparison')
      .reduce((sum, { outcomes }) => sum + outcomes.length, 0),
  };
}

const things = (count: number, one: string) => `${count === 0 ? 'no' : count} ${one}${count === 1 ? '' : 's'}`;

const fates = ({ within, exceptions, failures }: CheckTally) =>
  [
    `${within} within tolerance`,
    ...(exceptions > 0 ? [`${exceptions} different for a known reason`] : []),
    `${failures === 0 ? 'none' : failures} failing`,
  ].join(', ');

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Counts in a sentence for each kind of value; a kind of which there is none is left out, but for the published. */
export function checkWords({ published, sources, own, compared }: CheckCounts): string[] {
  const read =
    published.values === 0
      ? 'No published value.'
      : `${things(published.values, 'published value')} from ${things(sources.length, 'source')}: ${fates(published)}.`;
  return [
    read,
    ...(own.values > 0 ? [`${capital(things(own.values, 'value'))} of our own by another road: ${fates(own)}.`] : []),
    ...(compared > 0 ? [`${capital(things(compared, 'value'))} more only compared, which proves nothing.`] : []),
  ];
}
