/**
 * How many random cases a property over a calculator's addresses tries: 500 while one works, so that a run stays short, or as many
 * as KERF_RUNS says. The cases are the same in every run (KERF_SEED), so the first 500 of many are the 500 of a short run.
 */
export const runs = readRuns(process.env.KERF_RUNS);

function readRuns(text: string | undefined): number {
  if (text === undefined || text === '') return 500;
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1)
    throw new Error(`KERF_RUNS is “${text}”. Give a whole number of 1 or more, or unset it for 500.`);
  return count;
}
