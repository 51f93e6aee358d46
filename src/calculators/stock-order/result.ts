import type { Caution, EvidenceNote, Figure } from '../../model/evidence/index.ts';
import {
  boardFeet,
  netOfGrossTally,
  type OrderPlan,
  roughShortfall,
  surfaceMeasure,
  tallyBoardFeet,
  usualAllowances,
} from '../../model/stock/index.ts';
import { cite } from '../kit/evidence.ts';

/** The figures of an order. */
export function figuresOf(plan: OrderPlan, grade: string | undefined): Record<string, Figure> {
  const counted = (label: string, value: number, note?: string): Figure => ({
    label,
    value,
    unit: '1',
    basis: 'shop-practice',
    digits: 6,
    ...(note ? { note } : {}),
  });
  const size = (label: string, value: number): Figure => ({
    label,
    value,
    unit: 'mm',
    basis: 'shop-practice',
    digits: 4,
  });
  const money = (label: string, value: number, note: string): Figure => ({
    label,
    value: Math.round(value * 100) / 100,
    unit: '1',
    basis: 'shop-practice',
    digits: 9,
    note,
  });
  const measure = `${(plan.board.length / 304.8).toFixed(1)} ft by ${(plan.board.width / 25.4).toFixed(1)} in`;
  return {
    boards: counted(
      'Boards to buy',
      plan.boards,
      `Each ${measure}${plan.board.assumed ? ', the board taken where none is given' : ''}.${
        plan.boardsByGrade !== null && plan.boardsByGrade > plan.boardsByLayout
          ? ` By layout ${plan.boardsByLayout} would do; the clear share of ${grade} asks for ${plan.boardsByGrade}.`
          : ''
      }`,
    ),
    nominal: {
      label: 'Nominal thickness',
      value: plan.nominal.rough,
      unit: 'mm',
      basis: plan.nominal.basis,
      citation: { source: 'hardwood-dimensions-table', locator: plan.nominal.name, seen: plan.nominal.seen },
      digits: 4,
      note: `${plan.nominal.name} in the trade; planed on two faces it is ${plan.nominal.s2s.toFixed(1)} mm.`,
    },
    boardFeet: {
      label: 'Board feet, with fractions',
      value: plan.boardFeet,
      unit: '[bf_i]',
      basis: 'derived',
      digits: 4,
      note: 'What most shops reckon.',
    },
    boardFeetTally: {
      label: 'Board feet, as a grader tallies them',
      value: plan.boardFeetTally,
      unit: '[bf_i]',
      basis: 'derived',
      digits: 6,
      note: 'Through surface measure, rounded to whole square feet a board: what a graded pack is invoiced by.',
    },
    volume: {
      label: 'Volume',
      value: plan.volume / 1e6,
      unit: 'm3',
      basis: 'derived',
      digits: 3,
      note: 'At nominal thickness.',
    },
    ...(plan.cost
      ? {
          cost: money(
            'Cost by fractional board feet, or by volume',
            plan.cost.fractional,
            'In the currency of the price.',
          ),
          costTally: money('Cost by the grader’s tally', plan.cost.tally, 'In the currency of the price.'),
        }
      : {}),
    pieces: counted('Pieces to cut', plan.pieces, `${plan.spares} of them spare.`),
    roughLength: size('Rough length', plan.rough.length),
    roughWidth: size('Rough width', plan.rough.width),
    roughThickness: size('Thickness needed before planing', plan.rough.thickness),
    perBoard: counted('Pieces from one board', plan.along * plan.across, `${plan.along} along, ${plan.across} across.`),
    used: {
      label: 'Share of the wood that stays',
      value: 100 * plan.used,
      unit: '%',
      basis: 'shop-practice',
      digits: 2,
      note: 'By volume, of the boards as bought.',
    },
  };
}

/** What to ask and to beware of at the yard. */
export function cautionsOf(plan: OrderPlan): Caution[] {
  return [
    ...(plan.thinIfShort
      ? [
          {
            id: 'thin-lumber',
            level: 'warning' as const,
            text: `Kiln-dried rough lumber may be 1/16 in (${roughShortfall.toFixed(1)} mm) under its nominal thickness, and then this board is too thin. Measure before you pay, or take the next thickness.`,
            basis: 'published' as const,
            citation: { source: 'sawing-and-drying-forum' as const, seen: 'quoted' as const },
          },
        ]
      : []),
    {
      id: 'gross-tally',
      level: 'note',
      text: `Ask whether the tally is gross or net. Lumber measured before kiln-drying arrives about ${Math.round(100 * (1 - netOfGrossTally))} % short in board feet: of this order, ${(plan.boardFeet / netOfGrossTally).toFixed(1)} would have to be invoiced gross.`,
      basis: 'shop-practice',
    },
    {
      id: 'cupped-stock',
      level: 'note',
      text: 'A cupped or twisted board needs more than the usual planing allowance. Measure it and plan its flattening before you count on a thickness.',
      basis: 'shop-practice',
    },
    {
      id: 'moisture-not-graded',
      level: 'note',
      text: 'A hardwood grade says nothing of moisture. Ask for a moisture content, and measure on arrival.',
      basis: 'memory',
      citation: { source: 'nhla-rules', seen: 'memory' },
    },
  ];
}

/** What the order rests on. */
export function evidenceOf(plan: OrderPlan): EvidenceNote[] {
  return [
    cite(boardFeet, 'Used for the fractional count.'),
    cite(surfaceMeasure, 'Used for the grader’s tally of each board.'),
    cite(tallyBoardFeet, 'Used for the grader’s tally of all boards.'),
    {
      text: `Nominal thickness ${plan.nominal.name} from the table of rough and surfaced thicknesses.`,
      basis: plan.nominal.basis,
      citation: { source: 'hardwood-dimensions-table', seen: plan.nominal.seen },
    },
    ...usualAllowances.map(({ label, why, basis }) => ({ text: `${label}, unless given: ${why}`, basis })),
  ];
}
