import type { Basis, Caution } from '../evidence/index.ts';
import { inch } from './lumber.ts';

export { machineGuards } from '../evidence/machine-cautions.ts';

/** What a shop's jointer and planer can take, mm; a machine that is not there has a width of 0. */
export interface MachineLimits {
  jointerWidth: number;
  jointerLeastLength: number;
  jointerLeastThickness: number;
  planerWidth: number;
  planerLeastLength: number;
  planerLeastThickness: number;
}

/** A setting that stands for the machine until its owner enters the manual's. */
export interface MachineDefault {
  id: keyof MachineLimits | 'depthOfCut';
  label: string;
  value: number;
  basis: Basis;
  why: string;
}

/** Settings to start from. None is a rule: the manual of the machine wins. */
export const machineDefaults: readonly MachineDefault[] = [
  {
    id: 'jointerWidth',
    label: 'Width of the jointer',
    value: 6 * inch,
    basis: 'shop-practice',
    why: 'A common small jointer.',
  },
  {
    id: 'jointerLeastLength',
    label: 'Shortest board on the jointer',
    value: 12 * inch,
    basis: 'shop-practice',
    why: 'Three rules of schools and clubs say 12 in; one machine’s label says 10 in and one manual 8 in.',
  },
  {
    id: 'jointerLeastThickness',
    label: 'Thinnest board on the jointer',
    value: inch / 2,
    basis: 'shop-practice',
    why: 'One machine’s label says 1/2 in; one manual goes to 1/4 in with hold-downs.',
  },
  {
    id: 'planerWidth',
    label: 'Width of the planer',
    value: 13 * inch,
    basis: 'shop-practice',
    why: 'A common bench planer.',
  },
  {
    id: 'planerLeastLength',
    label: 'Shortest board through the planer',
    value: 12 * inch,
    basis: 'shop-practice',
    why: 'It must reach from one feed roll past the next; one machine’s label says 5 5/8 in.',
  },
  {
    id: 'planerLeastThickness',
    label: 'Thinnest board through the planer',
    value: inch / 4,
    basis: 'shop-practice',
    why: 'One machine’s label says 3/16 in.',
  },
  {
    id: 'depthOfCut',
    label: 'Depth of one pass',
    value: inch / 16,
    basis: 'shop-practice',
    why: 'Two shop rules say 1/16 in for a jointer, one 2 mm, and one 1/32 in in knotty wood.',
  },
];

/** The settings to start from as one object; `depthOfCut` among them. */
export const defaultMachines = Object.fromEntries(
  machineDefaults.map(({ id, value }) => [id, value]),
) as unknown as MachineLimits & { depthOfCut: number };

/** Narrower boards than this are held by push blocks, never by a hand near the knives, mm. */
export const pushBlockWidth = 3 * inch;

const practice = (id: string, level: Caution['level'], text: string): Caution => ({
  id,
  level,
  text,
  basis: 'shop-practice',
});

const metres = (value: number) => `${value.toFixed(0)} mm`;

/**
 * What stands between a board and the machines, and the safe way round it.
 *
 * @param board length along the grain and width as it is fed, thickness before and after, mm
 * @param limits of the shop's machines
 */
export function machineAdvice(
  board: { length: number; width: number; thickness: number; finished: number },
  limits: MachineLimits,
): Caution[] {
  const advice: Caution[] = [];
  if (board.width > limits.jointerWidth) {
    advice.push(
      practice(
        'wider-than-jointer',
        'danger',
        `The board is ${metres(board.width)} wide and the jointer takes ${metres(limits.jointerWidth)}. Do not take the guard off to let it overhang. Shim it on a flat sled and pass it through the planer, flatten it with a router on rails, work it down with hand planes, or rip it, joint the strips and glue it up again.`,
      ),
    );
  }
  if (board.width > limits.planerWidth) {
    advice.push(
      practice(
        'wider-than-planer',
        'warning',
        `The board is ${metres(board.width)} wide and the planer takes ${metres(limits.planerWidth)}. Flatten both faces with a router on rails or by hand, find a drum sander that is wide enough, or rip it and glue it up again.`,
      ),
    );
  }
  const shortJointer = board.length < limits.jointerLeastLength;
  const shortPlaner = board.length < limits.planerLeastLength;
  if (shortJointer || shortPlaner) {
    advice.push(
      practice(
        'too-short',
        'danger',
        `The board is ${metres(board.length)} long; ${[
          shortJointer ? `the jointer is set for ${metres(limits.jointerLeastLength)} or longer` : '',
          shortPlaner ? `the planer for ${metres(limits.planerLeastLength)} or longer` : '',
        ]
          .filter(Boolean)
          .join(
            ' and ',
          )}. A short piece tips into the knives and is thrown. Flatten the long board and cut the piece from it afterwards; or work it by hand, or carry it on a sled with runners at its sides that are long enough.`,
      ),
    );
  }
  if (board.thickness < limits.jointerLeastThickness || board.finished < limits.planerLeastThickness) {
    advice.push(
      practice(
        'too-thin',
        'danger',
        `The board is ${board.thickness.toFixed(1)} mm thick and is to be ${board.finished.toFixed(1)} mm; the jointer is set for ${limits.jointerLeastThickness.toFixed(1)} mm or thicker, the planer for ${limits.planerLeastThickness.toFixed(1)} mm. A thin board bends, is lifted and breaks up. Carry it on a thicker flat board fixed with double-sided tape, or sand it down.`,
      ),
    );
  }
  if (board.width < pushBlockWidth) {
    advice.push(
      practice(
        'push-blocks',
        'danger',
        'The board is under 3 in (76 mm) wide: feed it with push blocks that hold it down, never with a hand over the knives.',
      ),
    );
  }
  return advice;
}
