import type { WorkedMethod } from '../case/types.ts';

/** How many pieces at a time what a step keeps allows, where that is fewer than there are: moulds, clamps. */
interface Kept {
  tool: string;
  /** Pieces that the tools there are take at a time. */
  pieces: number;
  /** Steps from the one that takes it to the one that gives it back. */
  steps: ReadonlySet<string>;
}

function keptOf({ steps, tools, pieces }: WorkedMethod): Kept[] {
  const after = new Map(steps.map((step) => [step.id, step.after.map((link) => link.step)]));
  const earlier = (id: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(id)) return seen;
    seen.add(id);
    for (const before of after.get(id) ?? []) earlier(before, seen);
    return seen;
  };
  return steps.flatMap(({ id, record }) =>
    (record.holds ?? []).flatMap(({ tool, until, each = 1 }): Kept[] => {
      const room = Math.floor((tools[tool]?.count ?? 1) / each);
      // Where not even one piece has enough there is no plan, and that is said.
      if (room < 1 || room >= pieces) return [];
      const between = [...earlier(until)].filter((step) => earlier(step).has(id));
      return [{ tool, pieces: room, steps: new Set([id, until, ...between]) }];
    }),
  );
}

/**
 * Rounds in which pieces go through the steps that share too few moulds or clamps: by step, pieces of a round. A step that is not named takes all pieces.
 *
 * Where steps belong to several, the smallest round holds for all that hang together, so that no round waits for a part of the next.
 */
export function roundsOf(worked: WorkedMethod): ReadonlyMap<string, number> {
  const groups: { pieces: number; steps: Set<string> }[] = [];
  for (const { pieces, steps } of keptOf(worked)) {
    const joined = groups.filter((group) => [...steps].some((step) => group.steps.has(step)));
    for (const group of joined) groups.splice(groups.indexOf(group), 1);
    groups.push({
      pieces: Math.min(pieces, ...joined.map((group) => group.pieces)),
      steps: new Set([...steps, ...joined.flatMap((group) => [...group.steps])]),
    });
  }
  return new Map(groups.flatMap(({ pieces, steps }) => [...steps].map((step): [string, number] => [step, pieces])));
}

/** How often a step is set up: once a round. */
export function setUpsOf(rounds: ReadonlyMap<string, number>, step: string, pieces: number): number {
  return Math.ceil(pieces / (rounds.get(step) ?? pieces));
}

/** Tools of which there are too few for all pieces at a time, with what they allow. */
export const keptShort = (
  worked: WorkedMethod,
): readonly { tool: string; pieces: number; steps: ReadonlySet<string> }[] => keptOf(worked);
