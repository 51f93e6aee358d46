import { answer, type Basis, type Caution, type Outcome, refuse } from '../../model/evidence/index.ts';
import {
  type Banded,
  boardVariation,
  type InlaidBoard,
  type InlayMovement,
  inlayMovement,
  type Labelled,
} from '../../model/movement/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';

/** All but the moisture of the day is what a year makes of the board. */
const foretold = true;

/** What the calculator may tell, the headline first. */
export const figures = {
  swing: { label: 'Swing between narrowest and widest', unit: 'mm', digits: 2, foretold },
  narrowest: { label: 'Narrowest', unit: 'mm', digits: 4, foretold },
  widest: { label: 'Widest', unit: 'mm', digits: 4, foretold },
  changeFromNow: {
    label: 'Change from now',
    unit: 'mm',
    digits: 2,
    foretold,
    help: 'The larger of the two; its ends are the narrowest and the widest.',
  },
  cup: { label: 'Greatest cup', unit: 'mm', digits: 2, foretold },
  faceDifference: { label: 'Difference of the two faces', unit: 'mm', digits: 2, foretold },
  step: { label: 'Step between staves', unit: 'mm', digits: 2, foretold },
  inlaySwing: {
    label: 'Movement that the inlay does not follow',
    unit: 'mm',
    digits: 2,
    foretold,
    help: 'What the wood would do over the inlay’s width between driest and wettest. The resin does not move.',
  },
  inlayPercent: { label: 'The same as a share', unit: '%', digits: 2, foretold },
  moistureNow: { label: 'Moisture content now', unit: '%', help: 'At balance with the air of the shop.' },
  driest: { label: 'Driest', unit: '%', foretold },
  wettest: { label: 'Wettest', unit: '%', foretold },
} as const satisfies Record<string, FigureDeclaration>;

/** Figures of an answer, or of a part of it. */
export type Values = Partial<Record<keyof typeof figures, FigureValue>>;

/** A value with the band for nine boards in ten. */
export const ofBoards = ({ value, low, high }: Banded, basis: Basis, note?: string): FigureValue => ({
  value,
  low,
  high,
  band: boardVariation.sentence,
  basis,
  ...(note ? { note } : {}),
});

/** What board and panel have in common: narrowest, widest, swing and the change from now. */
export function widthFigures(
  year: { narrowest: Labelled; widest: Labelled; swing: Banded; changeFromNow: { low: Labelled; high: Labelled } },
  basis: Basis,
): Values {
  const { low, high } = year.changeFromNow;
  const larger = Math.abs(low.value) > Math.abs(high.value) ? low : high;
  return {
    swing: ofBoards(year.swing, basis),
    narrowest: ofBoards(year.narrowest, basis, `In ${year.narrowest.label}.`),
    widest: ofBoards(year.widest, basis, `In ${year.widest.label}.`),
    changeFromNow: {
      value: larger.value,
      low: low.value,
      high: high.value,
      band: 'From the narrowest to the widest of the year, for the average board of this wood.',
      basis,
      note: `The larger change, in ${larger.label}. Least and most: in ${low.label} and in ${high.label}.`,
    },
  };
}

/** Figures and cautions of a rigid inlay; none where no inlay was asked about. */
export function inlayAnswer(
  board: InlaidBoard,
  inlayWidth: number | undefined,
  basis: Basis,
): Outcome<{ figures: Values; cautions: readonly Caution[]; movement?: InlayMovement }> {
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
      inlaySwing: ofBoards(swing, basis),
      inlayPercent: ofBoards(percent, basis),
    },
    cautions: cautions.map((caution) => ({ ...caution, own: true })),
    movement: movement.value,
  });
}

/** The driest and the wettest month or season. */
export function moistureFigures(
  readings: readonly { label: string; moisture: number }[],
  basis: Basis,
): Record<'driest' | 'wettest', FigureValue> {
  const byMoisture = [...readings].sort((a, b) => a.moisture - b.moisture);
  const figure = (at: { label: string; moisture: number } | undefined): FigureValue => ({
    value: at?.moisture ?? 0,
    basis,
    citation: { source: 'fpl-gtr-190', locator: 'Eq. 4-5' },
    note: `Moisture content at balance, ${at?.label}.`,
  });
  return { driest: figure(byMoisture[0]), wettest: figure(byMoisture.at(-1)) };
}
