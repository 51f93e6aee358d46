import type { Grade } from './grade-data.ts';

/** A way from a surface to a last grade through the drawer. */
export interface GritPath {
  grades: readonly Grade[];
  /** Whether every step stays within the limit, the first from the marks of the tool included. */
  within: boolean;
  /** The largest step between two grits, or from the grit that the surface has, as a ratio of grain sizes; 1 where there is none. */
  largest: number;
}

/**
 * Cost of the best way to a grade: what its steps go beyond the limit weighs first, all of them added up, so that one step that
 * cannot be helped leaves the others held; then the number of steps, then how uneven they are.
 */
interface Cost {
  excess: number;
  steps: number;
  uneven: number;
  from: number;
}

/** Grain sizes nearer than this are the same grain: their figures differ by more between texts. */
const same = 1.05;

/** The drawer coarsest first, one grade for each grain. */
function sorted(drawer: readonly Grade[], last: Grade): Grade[] {
  const list = [...drawer].sort((a, b) => b.micrometres - a.micrometres || a.id.localeCompare(b.id));
  return list
    .filter((grade, at) => grade.id !== list[at - 1]?.id && grade.micrometres > last.micrometres * same)
    .concat(last);
}

/** Costs nearer than this are the same: the rest is noise of arithmetic. */
const noise = 1e-9;

/** What one step costs, by the ratio of its grain sizes. */
function stepCost(ratio: number, limit: number): Omit<Cost, 'from'> {
  const wide = Math.log(Math.max(1, ratio));
  const beyond = wide - Math.log(limit);
  return { excess: beyond > noise ? beyond : 0, steps: 1, uneven: wide ** 2 };
}

function better(a: Cost, b: Cost | undefined): boolean {
  if (!b) return true;
  if (Math.abs(a.excess - b.excess) > noise) return a.excess < b.excess;
  if (a.steps !== b.steps) return a.steps < b.steps;
  return a.uneven < b.uneven - noise;
}

/**
 * The way with the fewest steps whose ratio of grain sizes stays within a limit, by a shortest path from coarse to fine; of
 * several, the one with the most even steps. Where no way stays within it, the way whose steps go least beyond it in all.
 *
 * @param drawer grades at hand; those as fine as the last or finer play no part
 * @param last the grade to end with, whether at hand or not
 * @param start the grade that takes the marks of the surface out, as a grain size, µm; or, for a surface already sanded, the
 *   grain that left it
 * @param limit largest ratio of one grain size to the next, above 1
 */
export function gritPath(
  drawer: readonly Grade[],
  last: Grade,
  start: { first: number } | { sanded: number },
  limit: number,
): GritPath {
  const nodes = sorted(drawer, last);
  const entry = entryCosts(nodes, start, limit);
  const costs: (Cost | undefined)[] = [];
  for (const [to, grade] of nodes.entries()) {
    let best = entry[to];
    for (let from = 0; from < to; from += 1) {
      const before = costs[from];
      if (!before) continue;
      const step = stepCost((nodes[from] as Grade).micrometres / grade.micrometres, limit);
      const candidate = {
        excess: before.excess + step.excess,
        steps: before.steps + step.steps,
        uneven: before.uneven + step.uneven,
        from,
      };
      if (better(candidate, best)) best = candidate;
    }
    costs.push(best);
  }
  const grades: Grade[] = [];
  for (let at = nodes.length - 1; at >= 0; at = (costs[at] as Cost).from) grades.unshift(nodes[at] as Grade);
  const grains = [
    'sanded' in start ? start.sanded : (grades[0] as Grade).micrometres,
    ...grades.map((grade) => grade.micrometres),
  ];
  return {
    grades,
    within: (costs[nodes.length - 1] as Cost).excess === 0,
    largest: Math.max(1, ...grains.slice(1).map((grain, at) => (grains[at] as number) / grain)),
  };
}

/** What it costs to begin with each grade. */
function entryCosts(
  nodes: readonly Grade[],
  start: { first: number } | { sanded: number },
  limit: number,
): (Cost | undefined)[] {
  if ('sanded' in start) {
    return nodes.map((grade) => ({ ...stepCost(start.sanded / grade.micrometres, limit), from: -1 }));
  }
  // The finest grade that is still coarse enough; where all are too fine, each is a step from the marks of the tool.
  const enough = nodes.filter((grade) => grade.micrometres * same >= start.first);
  const begin = enough.at(-1);
  if (begin) return nodes.map((grade) => (grade === begin ? { excess: 0, steps: 1, uneven: 0, from: -1 } : undefined));
  // One grade too fine already asks for the limit: the marks of a tool are as deep as the grade before would leave.
  return nodes.map((grade) => ({ ...stepCost((limit * start.first) / grade.micrometres, limit), from: -1 }));
}
