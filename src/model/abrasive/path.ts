import type { Grade } from './grade-data.ts';

/** A way from a surface to a last grade through the drawer. */
export interface GritPath {
  grades: readonly Grade[];
  /** Whether every step stays within the limit. */
  within: boolean;
  /** The largest step, as a ratio of grain sizes; 1 where there is none. */
  largest: number;
}

/** Cost of the best way to a grade: steps over the limit weigh first, then the number of steps, then how uneven they are. */
interface Cost {
  largest: number;
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

/**
 * The way with the fewest steps whose ratio of grain sizes stays within a limit, by a shortest path from coarse to fine; of
 * several, the one with the most even steps. Where no way stays within it, the way whose largest step is smallest.
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
  const allowed = limit * (1 + 1e-9);
  const over = (cost: Cost) => Math.max(cost.largest, allowed);
  const better = (a: Cost, b: Cost | undefined) =>
    !b || (over(a) - over(b) || a.steps - b.steps || a.uneven - b.uneven) < 0;
  for (const [to, grade] of nodes.entries()) {
    let best = entry[to];
    for (let from = 0; from < to; from += 1) {
      const before = costs[from];
      if (!before) continue;
      const ratio = (nodes[from] as Grade).micrometres / grade.micrometres;
      const candidate = {
        largest: Math.max(before.largest, ratio),
        steps: before.steps + 1,
        uneven: before.uneven + Math.log(ratio) ** 2,
        from,
      };
      if (better(candidate, best)) best = candidate;
    }
    costs.push(best);
  }
  const grades: Grade[] = [];
  for (let at = nodes.length - 1; at >= 0; at = (costs[at] as Cost).from) grades.unshift(nodes[at] as Grade);
  const { largest } = costs[nodes.length - 1] as Cost;
  return { grades, within: largest <= allowed, largest };
}

/** What it costs to begin with each grade. */
function entryCosts(
  nodes: readonly Grade[],
  start: { first: number } | { sanded: number },
  limit: number,
): (Cost | undefined)[] {
  if ('sanded' in start) {
    return nodes.map((grade) => {
      const ratio = Math.max(1, start.sanded / grade.micrometres);
      return { largest: ratio, steps: 1, uneven: Math.log(ratio) ** 2, from: -1 };
    });
  }
  // The finest grade that is still coarse enough; where all are too fine, each is a step from the marks of the tool.
  const enough = nodes.filter((grade) => grade.micrometres * same >= start.first);
  const begin = enough.at(-1);
  if (begin) return nodes.map((grade) => (grade === begin ? { largest: 1, steps: 1, uneven: 0, from: -1 } : undefined));
  return nodes.map((grade) => {
    // One grade too fine already asks for the limit: the marks of a tool are as deep as the grade before would leave.
    const ratio = (limit * start.first) / grade.micrometres;
    return { largest: ratio, steps: 1, uneven: Math.log(ratio) ** 2, from: -1 };
  });
}
