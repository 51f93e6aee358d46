import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Activity, Lag, Problem } from '../../../src/method/schedule/index.ts';

/**
 * Published optimal makespans of eleven instances with 30 activities: Kolisch and Sprecher, PSPLIB: a project scheduling problem library,
 * European Journal of Operational Research 96 (1996) 205-216.
 */
export const optima: Readonly<Record<string, number>> = {
  j301_1: 43,
  j301_2: 47,
  j302_1: 38,
  j303_1: 72,
  j3048_1: 63,
  j305_1: 53,
  j3017_1: 64,
  j3041_1: 86,
  j309_1: 83,
  j3013_1: 58,
  j3025_1: 93,
};

const numbers = (line: string) => line.trim().split(/\s+/).map(Number);

/** The lines of a block, from so many after its heading until the next row of stars. */
function block(lines: readonly string[], heading: string, skip: number): number[][] {
  const from = lines.findIndex((line) => line.startsWith(heading)) + skip;
  const rest = lines.slice(from);
  return rest
    .slice(
      0,
      rest.findIndex((line) => line.startsWith('***')),
    )
    .map(numbers);
}

/** Read an instance; a unit of its time is taken as a minute. */
export function readInstance(name: string): Problem {
  const text = readFileSync(fileURLToPath(new URL(`psplib/${name}.sm`, import.meta.url)), 'utf8');
  const lines = text.split('\n');
  const capacities = block(lines, 'RESOURCEAVAILABILITIES', 2)[0] as number[];
  const activities: Activity[] = block(lines, 'REQUESTS/DURATIONS', 3).map(([job, , duration, ...units]) => ({
    id: String(job),
    duration: duration as number,
    splittable: false,
    uses: Object.fromEntries(units.map((each, at) => [`R${at + 1}`, each])),
  }));
  const lags: Lag[] = block(lines, 'PRECEDENCE RELATIONS', 2).flatMap(([job, , , ...successors]) =>
    successors.map((to) => ({ from: String(job), to: String(to), kind: 'end-start' as const })),
  );
  return {
    activities,
    lags,
    holds: [],
    resources: Object.fromEntries(capacities.map((units, at) => [`R${at + 1}`, units])),
    calendars: [],
    horizon: Number(/^horizon\s*:\s*(\d+)/m.exec(text)?.[1]),
  };
}
