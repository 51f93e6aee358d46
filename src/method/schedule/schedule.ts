import { lowerBound } from './bound.ts';
import { compile, mirrored, turned } from './compile.ts';
import { type CriticalLink, criticalChain } from './explain.ts';
import { generate } from './generate.ts';
import { causeOf, type Impossible, withWaysOut } from './impossible.ts';
import { type Lag, needProblem, type Placement, type Problem, ProblemError } from './problem.ts';
import { Search } from './search.ts';
import { settle } from './settle.ts';

/** How hard to look, and from where. */
export interface ScheduleOptions {
  /**
   * Decisions and contradictions that the search may take, half as many again for the bound below a plan that is not proved, and some times as
   * many to say why there is none; no clock, so that the same problem has the same plan everywhere.
   */
  readonly nodes: number;
  /** 'start' (as early as can be from zero) or 'end' (as late as can be before the minute `at`). */
  readonly anchor?: 'start' | 'end';
  /** With anchor 'end': minutes from zero by which all must have ended. */
  readonly at?: number;
  /** False where nobody asks why there is no plan: it is then only said whether that is proved. 'cause' where nobody asks for the ways out. */
  readonly explain?: boolean | 'cause';
}

/** A plan that keeps everything. */
export interface Planned {
  readonly ok: true;
  /** One for each activity, in the order of the problem. */
  readonly placements: readonly Placement[];
  /** Anchor 'start': minutes from zero to the last end. Anchor 'end': minutes from the first start to `at`. */
  readonly makespan: number;
  /** No plan is shorter than this, in the same count. */
  readonly lowerBound: number;
  /** Is this plan proved to be a shortest one? */
  readonly proved: boolean;
  /**
   * By activity, elapsed minutes that it may start later, others giving way in the same order on each resource, while the end stays. Anchor
   * 'end': minutes that it may end earlier while the first start stays.
   */
  readonly slack: Readonly<Record<string, number>>;
  /**
   * From the last activity back to zero, what kept each from starting earlier. Anchor 'end': from the first activity on to the wanted end, what
   * kept each from ending later; `start` and `end` are minutes from zero as ever.
   */
  readonly critical: readonly CriticalLink[];
  /** First start and last end, minutes from zero. */
  readonly first: number;
  readonly last: number;
  readonly nodes: number;
}

/** There is no plan, or none was found. */
export interface Unplanned {
  readonly ok: false;
  readonly why: Impossible;
}

/** A plan, or why there is none. */
export type Schedule = Planned | Unplanned;

/**
 * Plan activities with limited resources, waits, holds and opening hours.
 *
 * The search shortens its first plan, and those that rules give, until one is proved shortest or the limit is reached. What is given is always
 * a whole plan with a bound below which none can be.
 *
 * @throws ProblemError for a problem that contradicts itself (an unknown name, minutes that are not whole), never for one without a plan
 */
export function schedule(problem: Problem, options: ScheduleOptions): Schedule {
  needProblem(problem);
  const { nodes, explain = true } = options;
  const none = (asked: Problem, proved: boolean): Unplanned => {
    if (!explain) return { ok: false, why: { proved, constraints: [], minimal: false, changes: [] } };
    const cause = causeOf(asked, nodes, proved);
    return { ok: false, why: explain === 'cause' ? cause : withWaysOut(asked, cause, nodes) };
  };
  if (options.anchor !== 'end') {
    const plan = forwards(problem, nodes);
    return plan.ok ? plan : none(problem, plan.proved);
  }
  const { at = problem.horizon } = options;
  if (!Number.isInteger(at) || at < 0 || at > problem.horizon)
    throw new ProblemError(
      `at: ${at} is not allowed; a whole minute from 0 to the horizon, ${problem.horizon}, is. Move the wanted end, or the horizon.`,
    );
  const turnedProblem = mirrored(problem, at);
  const back = forwards(turnedProblem, nodes);
  if (!back.ok) return none({ ...problem, horizon: at }, back.proved);
  const lagOf = new Map(turnedProblem.lags.map((lag, place) => [lag, problem.lags[place] as Lag]));
  const first = at - back.last;
  return {
    ...back,
    placements: back.placements.map(({ id, pieces }) => ({ id, pieces: turned(pieces, at) })),
    critical: back.critical.map(({ heldBy, ...link }) => ({
      ...link,
      start: at - link.end,
      end: at - link.start,
      heldBy: heldBy.kind === 'lag' ? { ...heldBy, lag: lagOf.get(heldBy.lag) ?? heldBy.lag } : heldBy,
    })),
    first,
    last: at - back.first,
  };
}

/** So many nodes the search has alone, which is enough for most; then plans by rules come to its help. */
const beforeRules = 200;

function forwards(problem: Problem, nodes: number): Planned | { ok: false; proved: boolean } {
  const model = compile(problem);
  const calendars = problem.activities.map(({ calendar }) => calendar);
  const floor = lowerBound(problem, model);
  if (!Number.isFinite(floor)) return { ok: false, proved: true };
  const search = new Search(model);
  let found = search.run(Math.min(nodes, beforeRules));
  if (found.ending === 'limit') {
    search.offer(
      generate(problem, model, { shuffles: Math.min(6, Math.floor(nodes / 50)), goal: floor, known: found.starts }),
    );
    found = search.run(nodes, { goal: floor });
  }
  const { starts } = found;
  if (starts === undefined) return { ok: false, proved: found.ending === 'none' };
  const end = starts[model.last] as number;
  const raised = found.ending === 'done' || end <= floor ? { bound: end, nodes: 0 } : raise(problem, floor, end, nodes);
  const bound = raised.bound;
  const used = found.nodes + raised.nodes;
  const settled = settle(model, starts);
  const { starts: early } = settled;
  const placements = problem.activities.map(({ id }, at) => ({
    id,
    pieces: model.tracks[at]?.pieces(early[at] as number) ?? [],
  }));
  const makespan = early[model.last] as number;
  return {
    ok: true,
    placements,
    makespan,
    lowerBound: Math.min(bound, makespan),
    proved: bound >= makespan,
    slack: Object.fromEntries(problem.activities.map(({ id }, at) => [id, settled.slack[at] as number])),
    critical: problem.activities.length === 0 ? [] : criticalChain(model, settled, calendars),
    first: Math.min(...placements.map(({ pieces }) => pieces[0]?.start ?? 0), makespan),
    last: makespan,
    nodes: used,
  };
}

/** Raise the bound below a plan that was not proved shortest: try ends halfway and prove that there is none so early. */
function raise(problem: Problem, floor: number, end: number, nodes: number): { bound: number; nodes: number } {
  let [low, high, used] = [floor, end, 0];
  const each = Math.floor(nodes / 12);
  for (let round = 0; round < 6 && low < high; round += 1) {
    const middle = (low + high) >> 1;
    const found = new Search(compile({ ...problem, horizon: middle })).run(each, { first: true });
    used += found.nodes;
    if (found.ending === 'none') low = middle + 1;
    else high = middle;
  }
  return { bound: low, nodes: used };
}
