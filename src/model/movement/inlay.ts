import { cautionById } from '../evidence/cautions.ts';
import { answer, type Caution, type FieldError, type Outcome } from '../evidence/index.ts';
import { amount } from '../quantity/index.ts';
import { type Banded, banded } from './band.ts';
import type { Labelled } from './season.ts';

/** A board or panel that an inlay lies in: its width now and what the year does to it, all in mm. */
export interface InlaidBoard {
  /** mm now, when the resin sets. */
  width: number;
  swing: Banded;
  changeFromNow: { low: Labelled; high: Labelled };
}

/** What the wood would do over the width of a rigid inlay, were it wood. The inlay does none of it. */
export interface InlayMovement {
  /** Width of the inlay across the grain, mm. */
  inlayWidth: number;
  /** mm between driest and wettest. */
  swing: Banded;
  /** The same as a share of the inlay's width, %. */
  percent: Banded;
  /** mm by which the wood would close on the inlay when driest (below 0); 0 where it never gets drier than now. */
  closing: Banded;
  /** mm by which the wood would draw away from the inlay when wettest; 0 where it never gets wetter than now. */
  opening: Banded;
  cautions: readonly Caution[];
}

/**
 * How far wood would move over a rigid inlay across its grain.
 *
 * The pocket moves as the board does, in proportion to its width; the resin is taken not to move at all. Stress, bond and
 * splitting are not computed.
 *
 * @param board the board or panel through its year
 * @param inlayWidth mm across the grain; the whole board unless told
 * @returns the movement; an error on `inlayWidth` where it is not above 0 or is wider than the board
 */
export function inlayMovement(board: InlaidBoard, inlayWidth: number = board.width): Outcome<InlayMovement> {
  if (!Number.isFinite(inlayWidth) || inlayWidth <= 0 || inlayWidth > board.width) {
    const error: FieldError = {
      field: 'inlayWidth',
      message: `An inlay ${amount(inlayWidth, 'mm')} wide across the grain was read; it is above 0 and at most the ${amount(board.width, 'mm')} of the board. Measure it across the grain, or leave it out.`,
    };
    return { ok: false, errors: [error] };
  }
  const over = (share: number) => (part: Banded) => banded(part.low * share, part.value * share, part.high * share);
  const inlay = over(inlayWidth / board.width);
  const { low, high } = board.changeFromNow;
  const none: Banded = { value: 0, low: 0, high: 0 };
  const caution = cautionById('rigid-inlay');
  return answer({
    inlayWidth,
    swing: inlay(board.swing),
    percent: over(100 / board.width)(board.swing),
    closing: low.value < 0 ? inlay(low) : none,
    opening: high.value > 0 ? inlay(high) : none,
    cautions: caution ? [caution] : [],
  });
}
