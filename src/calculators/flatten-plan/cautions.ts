import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import {
  defaultMachines,
  type FlattenPlan,
  type MachineDefault,
  type MachineLimits,
  machineAdvice,
  machineDefaults,
  machineGuards,
  routerDepthOfCut,
} from '../../model/stock/index.ts';

/** Ways to flatten a board. */
export const ways = [
  { value: 'router', label: 'Router on rails' },
  { value: 'sled', label: 'On a sled through the planer' },
  { value: 'machines', label: 'Jointer, then planer' },
  { value: 'hand', label: 'Hand planes' },
] as const;
export type Way = (typeof ways)[number]['value'];

type Given = Partial<Record<keyof MachineLimits | 'depthOfCut', number | undefined>> & { way?: Way | undefined };

const jointer: readonly (keyof MachineLimits)[] = ['jointerWidth', 'jointerLeastLength', 'jointerLeastThickness'];
const planer: readonly (keyof MachineLimits)[] = ['planerWidth', 'planerLeastLength', 'planerLeastThickness'];

/** The depth of one pass, mm: as given, or usual for the way. */
export const depthOf = ({ depthOfCut, way }: Given): number =>
  depthOfCut ?? (way === 'router' ? routerDepthOfCut : defaultMachines.depthOfCut);

/** Whether the board meets a machine: where the way names it, or, the way left open, where some size of it was given. */
function machinesOf(given: Given): { jointer: boolean; planer: boolean } {
  const sized = (ids: readonly (keyof MachineLimits)[]) => ids.some((id) => given[id] !== undefined);
  const { way } = given;
  return {
    jointer: way === 'machines' || (way === undefined && sized(jointer)),
    planer: way === 'machines' || way === 'sled' || (way === undefined && sized(planer)),
  };
}

/** The limits that the board meets, and the settings among them that stand in for sizes nobody gave. */
export function limitsOf(given: Given): { limits: Partial<MachineLimits>; taken: MachineDefault[] } {
  const meets = machinesOf(given);
  const asked = [...(meets.jointer ? jointer : []), ...(meets.planer ? planer : [])];
  return {
    limits: Object.fromEntries(asked.map((id) => [id, given[id] ?? defaultMachines[id]])),
    taken: machineDefaults.filter(({ id }) => id !== 'depthOfCut' && asked.includes(id) && given[id] === undefined),
  };
}

/** Cautions of each way, by id; what the way is not, nobody needs to be warned of. */
const standing: Readonly<Record<Way | 'open', readonly string[]>> = {
  router: ['router-rails', 'router-setup', 'marked-speed', 'large-bits'],
  sled: ['planer-sled'],
  machines: [],
  hand: [],
  open: ['router-rails', 'planer-sled'],
};

/** What to beware of with a board, its plan and the way it is flattened. */
export function flattenCautions(
  board: { length: number; width: number; thickness: number; finished: number },
  plan: FlattenPlan,
  target: number,
  given: Given,
): Caution[] {
  const meets = machinesOf(given);
  const guards = machineGuards.filter(({ id }) =>
    id === 'jointer-guards' ? meets.jointer : id === 'planer-guards' ? meets.planer : meets.jointer || meets.planer,
  );
  const shared = (ids: readonly string[]) => ids.flatMap((id) => cautionById(id) ?? []);
  return [
    ...machineAdvice(board, limitsOf(given).limits),
    ...(plan.meetsTarget
      ? []
      : [
          {
            id: 'target-missed',
            level: 'warning' as const,
            text: `Make the piece thinner than ${amount(target, 'mm')}, or cut the board to blanks before flattening.`,
            why: 'Half the width has about a quarter of the cup.',
            own: true,
            basis: 'derived' as const,
          },
        ]),
    ...guards,
    ...shared(standing[given.way ?? 'open']),
    ...shared(given.way === 'hand' ? ['wood-dust'] : ['wood-dust', 'noise']),
    {
      id: 'rest-between',
      level: 'note',
      text: 'Take equal amounts from both faces, and let a thick or damp board rest a day or two before the last passes.',
      why: 'It moves when its stresses are freed.',
      basis: 'shop-practice',
    },
  ];
}
