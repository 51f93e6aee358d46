import type { Basis, Caution } from '../evidence/index.ts';
import { amount, listed } from '../quantity/index.ts';
import { inch } from './lumber.ts';

export { machineGuards } from '../evidence/machine-cautions.ts';

/** What a shop's jointer and planer can take, mm. */
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

/** Wood that a router on rails takes in one pass, mm. Common practice: two or three millimetres. */
export const routerDepthOfCut = 2;

/** Narrower boards than this are held by push blocks, never by a hand near the knives, mm. */
export const pushBlockWidth = 3 * inch;

const own = (id: string, level: Caution['level'], text: string, why: string): Caution => ({
  id,
  level,
  text,
  why,
  own: true,
  basis: 'shop-practice',
});

const mm = (value: number) => amount(value, 'mm');

/**
 * What stands between a board and the machines, and the safe way round it.
 *
 * @param board length along the grain and width as it is fed, thickness before and after, mm
 * @param limits of the machines that it is to go through; a limit left out, or a width of 0, is of a machine that is not there and asks nothing
 */
export function machineAdvice(
  board: { length: number; width: number; thickness: number; finished: number },
  limits: Partial<MachineLimits>,
): Caution[] {
  const advice: Caution[] = [];
  const { jointerWidth = 0, planerWidth = 0 } = limits;
  if (jointerWidth > 0 && board.width > jointerWidth) {
    advice.push(
      own(
        'wider-than-jointer',
        'danger',
        `Do not joint it: it is ${mm(board.width)} wide and the jointer takes ${mm(jointerWidth)}. Never take the guard off to let it overhang.`,
        'Shim it on a flat sled and pass it through the planer, flatten it with a router on rails, work it down with hand planes, or rip it, joint the strips and glue it up again.',
      ),
    );
  }
  if (planerWidth > 0 && board.width > planerWidth) {
    advice.push(
      own(
        'wider-than-planer',
        'warning',
        `Flatten both faces with a router on rails or by hand: it is ${mm(board.width)} wide and the planer takes ${mm(planerWidth)}.`,
        'Or find a drum sander that is wide enough, or rip it and glue it up again.',
      ),
    );
  }
  const short = [
    board.length < (limits.jointerLeastLength ?? 0)
      ? `the jointer is set for ${mm(limits.jointerLeastLength ?? 0)} or longer`
      : '',
    board.length < (limits.planerLeastLength ?? 0)
      ? `the planer for ${mm(limits.planerLeastLength ?? 0)} or longer`
      : '',
  ].filter(Boolean);
  if (short.length > 0) {
    advice.push(
      own(
        'too-short',
        'danger',
        `Do not feed it alone: it is ${mm(board.length)} long; ${listed(short)}. Flatten the long board and cut the piece from it afterwards.`,
        'A short piece tips into the knives and is thrown. Or work it by hand, or carry it on a sled with runners at its sides that are long enough.',
      ),
    );
  }
  const thin = [
    board.thickness < (limits.jointerLeastThickness ?? 0)
      ? `the jointer is set for ${mm(limits.jointerLeastThickness ?? 0)} or thicker`
      : '',
    board.finished < (limits.planerLeastThickness ?? 0)
      ? `the planer for ${mm(limits.planerLeastThickness ?? 0)} or thicker`
      : '',
  ].filter(Boolean);
  if (thin.length > 0) {
    advice.push(
      own(
        'too-thin',
        'danger',
        `Do not feed it bare: it is ${mm(board.thickness)} thick and is to be ${mm(board.finished)}; ${listed(thin)}. Carry it on a thicker flat board, or sand it down.`,
        'A thin board bends, is lifted and breaks up. Fix it to the carrier with double-sided tape.',
      ),
    );
  }
  if (board.width < pushBlockWidth && (jointerWidth > 0 || planerWidth > 0)) {
    advice.push(
      own(
        'push-blocks',
        'danger',
        'Feed it with push blocks that hold it down, never with a hand over the knives.',
        `It is under ${mm(pushBlockWidth)} wide.`,
      ),
    );
  }
  return advice;
}
