import leven from 'leven';

/** The known name with the fewest edits from a misspelt one, where that is at most two, or a third of its length. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  const wanted = name.toLowerCase().slice(0, 60);
  let best: { name: string; edits: number } | undefined;
  for (const candidate of known) {
    const edits = leven(wanted, candidate.toLowerCase());
    if (!best || edits < best.edits) best = { name: candidate, edits };
  }
  return best && best.edits <= Math.max(2, Math.floor(wanted.length / 3)) ? best.name : undefined;
}
