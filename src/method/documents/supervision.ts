import { type ActId, actIds } from '../acts/ids.ts';
import { actOf } from '../acts/index.ts';
import type { MethodPage, ShownStep } from '../page/types.ts';
import type { ToolKind } from '../record/index.ts';

/** Why a step is done with somebody beside who knows it. */
export type Supervised = 'machine' | 'resin' | 'solvent or oily rags';

const isAct = (id: string): id is ActId => (actIds as readonly string[]).includes(id);

/** Tools of the trade that cut, grind or heat by themselves. */
const machines: readonly string[] = [
  'planer',
  'jointer',
  'drum-sander',
  'table-saw',
  'mitre-saw',
  'track-saw',
  'band-saw',
  'router-table',
  'plunge-router',
  'router-sled',
  'drill-press',
  'belt-sander',
  'spindle-sander',
  'jigsaw',
  'scroll-saw',
  'heat-gun',
  'torch',
] satisfies ToolKind[];

export const isMachine = (kind: string): boolean => machines.includes(kind);

/** What stands or hangs ready at every session: it is named once for all of them. */
const always: readonly string[] = [
  'eye-protection',
  'hearing-protection',
  'respirator',
  'apron',
  'ventilation',
  'eye-wash',
  'fire-extinguisher',
  'rag-can',
] satisfies ToolKind[];

export const isAlways = (kind: string): boolean => always.includes(kind);

/** What of a step says whether somebody stands beside. */
export interface SupervisedStep {
  act: Pick<ShownStep['act'], 'id'>;
  tools: readonly Pick<ShownStep['tools'][number], 'kind'>[];
  uses: readonly Pick<ShownStep['uses'][number], 'kind'>[];
}

/** What of a step is done only under the eyes of somebody who knows it; common practice, over which local rules stand. */
export function supervised(
  { materials }: { materials: readonly Pick<MethodPage['materials'][number], 'kind'>[] },
  { act, tools, uses }: SupervisedStep,
): Supervised[] {
  const hazards = isAct(act.id) ? actOf(act.id).hazards : [];
  // Leftovers are cleared away after oil too; where no resin is used there is none among them.
  const withResin = materials.some(({ kind }) => kind === 'resin');
  const kinds = uses.map(({ kind }) => kind);
  return [
    ...(tools.some(({ kind }) => isMachine(kind)) ? (['machine'] as const) : []),
    ...(withResin && (hazards.includes('resin') || kinds.includes('resin')) ? (['resin'] as const) : []),
    ...(hazards.includes('solvent') || hazards.includes('rags') || kinds.includes('solvent')
      ? (['solvent or oily rags'] as const)
      : []),
  ];
}
