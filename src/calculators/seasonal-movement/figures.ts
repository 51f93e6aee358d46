import { answer, type Basis, type Caution, type Figure, type Outcome, refuse } from '../../model/evidence/index.ts';
import {
  type Banded,
  boardVariation,
  type InlaidBoard,
  type InlayMovement,
  inlayMovement,
  type Labelled,
} from '../../model/movement/index.ts';
import { amount } from '../../model/quantity/index.ts';

/** A length with its band, in mm. */
export function bandedFigure(
  label: string,
  { value, low, high }: Banded,
  basis: Basis,
  rest: Partial<Figure> = {},
): Figure {
  return { label, value, low, high, band: boardVariation.sentence, unit: 'mm', basis, digits: 2, ...rest };
}

/** What board and panel have in common: narrowest, widest, swing and the change from now. */
export function widthFigures(
  year: { narrowest: Labelled; widest: Labelled; swing: Banded; changeFromNow: { low: Labelled; high: Labelled } },
  basis: Basis,
): Record<string, Figure> {
  const { low, high } = year.changeFromNow;
  const larger = Math.abs(low.value) > Math.abs(high.value) ? low : high;
  return {
    swing: bandedFigure('Swing between narrowest and widest', year.swing, basis),
    narrowest: bandedFigure('Narrowest', year.narrowest, basis, { note: `In ${year.narrowest.label}.`, digits: 4 }),
    widest: bandedFigure('Widest', year.widest, basis, { note: `In ${year.widest.label}.`, digits: 4 }),
    changeFromNow: {
      label: 'Change from now',
      value: larger.value,
      low: low.value,
      high: high.value,
      band: 'From the narrowest to the widest of the year, for the average board of this wood.',
      unit: 'mm',
      basis,
      digits: 2,
      note: `The larger change, in ${larger.label}. Least and most: in ${low.label} and in ${high.label}.`,
    },
  };
}

/** Figures and cautions of a rigid inlay; none where no inlay was asked about. */
export function inlayAnswer(
  board: InlaidBoard,
  inlayWidth: number | undefined,
  basis: Basis,
): Outcome<{ figures: Record<string, Figure>; cautions: readonly Caution[]; movement?: InlayMovement }> {
  if (inlayWidth === undefined) return answer({ figures: {}, cautions: [] });
  if (inlayWidth >= board.width) {
    return refuse(
      'inlayWidth',
      `An inlay ${amount(inlayWidth, 'mm')} wide leaves no wood of a board of ${amount(board.width, 'mm')}`,
      'Measure the inlay across the grain, or leave it out.',
    );
  }
  const movement = inlayMovement(board, inlayWidth);
  if (!movement.ok) return movement;
  const { swing, percent, cautions } = movement.value;
  return answer({
    figures: {
      inlaySwing: bandedFigure('Movement that the inlay does not follow', swing, basis, {
        note: 'What the wood would do over the inlay’s width between driest and wettest. The resin does not move.',
      }),
      inlayPercent: bandedFigure('The same as a share', percent, basis, { unit: '%' }),
    },
    cautions: cautions.map((caution) => ({ ...caution, own: true })),
    movement: movement.value,
  });
}
