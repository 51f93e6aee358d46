import { type Planned, type Problem, type ScheduleOptions, schedule } from '../schedule/index.ts';
import type { LinkedLag, ProblemOfMethod } from './activities.ts';

/** Two steps whose pieces are done in turns: first some of the one, then some of the other, then the rest of the one. */
type InTurns = readonly [earlier: string, later: string];

/** Nodes that a plan without turns may take: it has the found one for its limit. */
const nodesForOrder = 200;
/** So many orders are tried, all pairs together first. */
const tries = 5;

/** The step of the pair that is not gone on with at once stands first. */
function inTurns({ sittings }: ProblemOfMethod, { placements }: Planned): InTurns[] {
  const placed = new Map(placements.map(({ id, pieces }) => [id, pieces]));
  const spans = new Map<string, { start: number; end: number }[]>();
  for (const { id, step } of sittings) {
    const pieces = placed.get(id) ?? [];
    const [start, end] = [pieces[0]?.start, pieces.at(-1)?.end];
    if (start === undefined || end === undefined || start === end) continue;
    spans.set(step, [...(spans.get(step) ?? []), { start, end }]);
  }
  const steps = [...spans.keys()];
  return steps.flatMap((earlier, at) =>
    steps.slice(at + 1).flatMap((later): InTurns[] => {
      const own = spans.get(earlier) ?? [];
      const others = spans.get(later) ?? [];
      const between = own.some(({ end }, place) => {
        const next = own[place + 1];
        return next !== undefined && others.some((other) => other.start >= end && other.end <= next.start);
      });
      return between ? [[earlier, later]] : [];
    }),
  );
}

/** The problem in which the earlier step of each pair is done to all pieces before the later one is begun. */
function inOrder(made: ProblemOfMethod, pairs: readonly InTurns[]): { problem: Problem; lags: LinkedLag[] } {
  const of = (step: string) => made.sittings.filter((sitting) => sitting.step === step);
  const more = pairs.flatMap(([earlier, later]): LinkedLag[] => {
    const [last, first] = [of(earlier).at(-1), of(later)[0]];
    return last && first ? [{ from: last.id, to: first.id, kind: 'end-start', least: 0, step: later }] : [];
  });
  const lags = [...made.lags, ...more];
  return { problem: { ...made.problem, lags }, lags };
}

/**
 * The same plan for readers: where a plan as short does a step to all pieces before it begins the next, that one stands, so that nobody changes to and
 * fro between two benches.
 *
 * Work that two people do side by side is not in turns, and stays.
 */
export function bundled(
  made: ProblemOfMethod,
  planned: Planned,
  options: ScheduleOptions,
): { made: ProblemOfMethod; planned: Planned } {
  let best = { made, planned };
  let pairs = inTurns(made, planned);
  let kept: readonly InTurns[] = [];
  let queue: (readonly InTurns[])[] = [pairs, ...(pairs.length > 1 ? pairs.map((pair) => [pair]) : [])];
  for (let tried = 0; tried < tries && pairs.length > 0; tried++) {
    const next = queue.shift();
    if (next === undefined) break;
    const { problem, lags } = inOrder(made, [...kept, ...next]);
    const again = schedule(
      { ...problem, ...(options.anchor === 'end' ? {} : { horizon: Math.max(planned.last, 1) }) },
      { ...options, nodes: Math.min(options.nodes, nodesForOrder), explain: false },
    );
    if (!again.ok || again.makespan > planned.makespan) continue;
    kept = [...kept, ...next];
    // What is known of the shortest plan stays known.
    const { proved, lowerBound } = planned;
    best = { made: { ...made, problem, lags }, planned: { ...again, proved, lowerBound } };
    pairs = inTurns(made, again);
    queue = [pairs, ...(pairs.length > 1 ? pairs.map((pair) => [pair]) : [])];
  }
  return best;
}
