import { cautionById } from '../../model/evidence/cautions.ts';
import { type Caution, cite, type EvidenceNote, type Figure, type Verdict } from '../../model/evidence/index.ts';
import { amount, formatNumber, formatQuantity } from '../../model/quantity/index.ts';
import {
  boardFeet,
  foot,
  inch,
  pushBlockWidth as narrow,
  netOfGrossTally,
  type OrderPlan,
  roughShortfall,
  type Surfacing,
  surfaceMeasure,
  tallyBoardFeet,
  usualAllowances,
} from '../../model/stock/index.ts';
import { type Price, sumWords } from './price.ts';

/** Whether a length is one that a yard writes in whole quarter inches. */
const isTrade = (mm: number) => Math.abs(mm / (inch / 4) - Math.round(mm / (inch / 4))) < 1e-6;

/** A length in feet and inches, as a yard says it. */
function feetWords(mm: number): string {
  const feet = Math.floor(mm / foot + 1e-9);
  const rest = mm - feet * foot;
  const inches = formatQuantity(rest, 'mm', { system: 'inch', inches: 'sixteenths' }, { digits: 6 });
  return [feet > 0 ? `${feet} ft` : '', rest > 1e-6 || feet === 0 ? inches : ''].filter(Boolean).join(' ');
}

/** A board in the words of the yard, `8 ft × 6 1/4 in`; one that is cut to millimetres in the reader's units. */
function boardWords({ length, width }: { length: number; width: number }): string {
  if (!isTrade(length) || !isTrade(width)) return `${amount(length, 'mm', 5)} × ${amount(width, 'mm', 5)}`;
  return `${feetWords(length)} × ${formatQuantity(width, 'mm', { system: 'inch', inches: 'sixteenths' }, { digits: 6 })}`;
}

/** Whether an order is one in millimetres: a finished size is a whole half of one, and no 64th of an inch. */
export const isInMillimetres = (sizes: readonly number[]): boolean =>
  sizes.some((mm) => {
    const off = (step: number) => Math.abs(mm / step - Math.round(mm / step));
    return off(0.5) < 1e-6 && off(inch / 64) > 1e-6;
  });

/**
 * What to buy, as one says it at the counter.
 *
 * @param metric whether the yard is to be told millimetres and cubic metres as well, whatever the reader's own units are
 */
export function verdictOf(plan: OrderPlan, surfacing: Surfacing, price: Price | undefined, metric: boolean): Verdict {
  const count = `${plan.boards} ${plan.boards === 1 ? 'board' : 'boards'}`;
  const cost = plan.cost && price ? `, about ${sumWords(plan.cost.sum, price, 3)}` : '';
  const kind = surfacing === 's2s' ? ', planed on two faces' : '';
  const { length, width } = plan.board;
  const size =
    metric && isTrade(length) && isTrade(width)
      ? ` (${amount(length, 'mm', 4, true)} × ${amount(width, 'mm', 3, true)})`
      : '';
  const volume = metric ? ` (${amount(plan.volume / 1e6, 'm3', 2, true)})` : '';
  const order = `Buy ${count}, ${boardWords(plan.board)}${size}, ${plan.nominal.name}${kind}: ${formatNumber(plan.boardFeet, 3)} board feet${volume}${cost}.`;
  const minded = [
    plan.thinIfShort ? `Measure the thickness first: ${plan.nominal.name} leaves nothing over.` : '',
    plan.rough.width < narrow ? 'Rip the narrow parts with a push block.' : '',
  ].filter(Boolean);
  return { level: minded.length > 0 ? 'care' : 'good', text: [order, ...minded].join(' ') };
}

/** The figures of an order. */
export function figuresOf(
  plan: OrderPlan,
  grade: string | undefined,
  price: Price | undefined,
): Record<string, Figure> {
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
    label: price?.currency ? `${label} (${price.currency})` : label,
    value: Math.round(value * 100) / 100,
    unit: '1',
    basis: 'shop-practice',
    digits: 9,
    note: `${note}${price?.currency ? `: ${sumWords(value, price)}` : ', in the currency of the price'}.`,
  });
  return {
    boards: counted(
      'Boards to buy',
      plan.boards,
      `Each ${boardWords(plan.board)}${plan.board.assumed ? ', the board taken where none is given' : ''}.${
        plan.boardsByGrade !== null && plan.boardsByGrade > plan.boardsByLayout
          ? ` By layout ${plan.boardsByLayout} would do; the clear share of ${grade} asks for ${plan.boardsByGrade}.`
          : ''
      }`,
    ),
    boardLength: size('Length of a board', plan.board.length),
    boardWidth: size('Width of a board', plan.board.width),
    nominal: {
      label: 'Nominal thickness',
      value: plan.nominal.rough,
      unit: 'mm',
      basis: plan.nominal.basis,
      citation: { source: 'hardwood-dimensions-table', locator: plan.nominal.name, seen: plan.nominal.seen },
      digits: 4,
      note: `${plan.nominal.name} in the trade; planed on two faces it is ${amount(plan.nominal.s2s, 'mm')}.`,
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
          cost:
            plan.cost.tally === undefined
              ? money('Cost, by volume', plan.cost.sum, 'Of the volume')
              : money('Cost, counted with fractions', plan.cost.sum, 'Of the board feet with fractions'),
          ...(plan.cost.tally === undefined
            ? {}
            : {
                costTally: money('Cost, as a grader tallies', plan.cost.tally, 'Of the whole board feet of the tally'),
              }),
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
            text: 'Measure the thickness before you pay, or take the next one.',
            why: `Kiln-dried rough lumber may be ${amount(roughShortfall, 'mm', 2)} under its nominal thickness, and then this board is too thin.`,
            own: true,
            basis: 'published' as const,
            citation: { source: 'sawing-and-drying-forum' as const, seen: 'quoted' as const },
          },
        ]
      : []),
    ...(plan.rough.width < narrow
      ? [
          {
            id: 'narrow-rips',
            level: 'danger' as const,
            text: 'Rip the narrow parts with a push block, guard and riving knife in place, never with fingers between blade and fence.',
            why: `They are ${amount(plan.rough.width, 'mm')} wide, narrower than a hand can guide past a blade.`,
            own: true,
            basis: 'shop-practice' as const,
          },
        ]
      : []),
    ...['stock-handling'].flatMap((id) => cautionById(id) ?? []),
    {
      id: 'gross-tally',
      level: 'note',
      text: 'Ask whether the tally is gross or net.',
      why: `Lumber measured before kiln-drying arrives about ${Math.round(100 * (1 - netOfGrossTally))} % short in board feet: of this order, ${(plan.boardFeet / netOfGrossTally).toFixed(1)} would have to be invoiced gross.`,
      basis: 'shop-practice',
    },
    {
      id: 'cupped-stock',
      level: 'note',
      text: 'Measure a cupped or twisted board and plan its flattening before you count on a thickness.',
      why: 'It needs more than the usual planing allowance.',
      basis: 'shop-practice',
    },
    {
      id: 'moisture-not-graded',
      level: 'note',
      text: 'Ask for a moisture content, and measure on arrival.',
      why: 'A hardwood grade says nothing of moisture.',
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
