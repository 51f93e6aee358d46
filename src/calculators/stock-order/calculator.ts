import * as z from 'zod/mini';
import { answer, type Caution, type EvidenceNote, type Figure, refuse } from '../../model/evidence/index.ts';
import {
  type Allowances,
  boardFeet,
  defaultAllowances,
  gradeById,
  hardwoodGrades,
  netOfGrossTally,
  type OrderPlan,
  roughShortfall,
  stockOrder,
  surfaceMeasure,
  tallyBoardFeet,
  usualAllowances,
} from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cite } from '../kit/evidence.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { countField, kerfField, lengthField } from '../kit/stock-fields.ts';

const allowanceGroup = 'Allowances';
const yardGroup = 'At the yard';
const usualKerf = 3.2;

const helpOf = (id: keyof Allowances) => usualAllowances.find((one) => one.id === id)?.why ?? '';

export const stockOrderCalculator = calculator({
  id: 'stock-order',
  title: 'Ordering stock',
  question: 'How much lumber must I buy, and how thick, for so many pieces?',
  summary:
    'Takes the finished size and the number of pieces, adds the allowances of common practice, and gives the rough size, the nominal thickness to ask for, and the boards in board feet (with fractions, and as a grader tallies them) and cubic metres, with the price.',
  inputs: z.strictObject({
    length: lengthField(
      { label: 'Finished length', help: 'Along the grain.', examples: ['450 mm', '18 in'] },
      { minimum: 10, maximum: 5000 },
    ),
    width: lengthField({ label: 'Finished width', examples: ['250 mm', '10 in'] }, { minimum: 5, maximum: 1500 }),
    thickness: lengthField(
      { label: 'Finished thickness', examples: ['19 mm', '3/4 in'] },
      { minimum: 1, maximum: 150 },
    ),
    count: countField({ label: 'Pieces wanted', examples: ['12'] }, { minimum: 1, maximum: 1000 }),
    surfacing: z.optional(
      choiceField({
        label: 'Bought',
        options: [
          { value: 'rough', label: 'Rough' },
          { value: 's2s', label: 'Planed on two faces (S2S)' },
        ],
        examples: ['rough', 's2s'],
        group: yardGroup,
      }),
    ),
    boardLength: z.optional(
      lengthField(
        { label: 'Length of a board', help: '8 ft, unless given.', examples: ['2440 mm', '8 ft'], group: yardGroup },
        { minimum: 100, maximum: 12_000 },
      ),
    ),
    boardWidth: z.optional(
      lengthField(
        {
          label: 'Width of a board',
          help: 'The rough width, up to a whole inch, unless given.',
          examples: ['280 mm', '11 in'],
          group: yardGroup,
        },
        { minimum: 20, maximum: 2000 },
      ),
    ),
    grade: z.optional(
      choiceField({
        label: 'Grade',
        help: 'Adds boards where the clear share that the grade promises falls short.',
        options: hardwoodGrades.map((grade) => ({ value: grade.id, label: grade.name })),
        examples: ['1-common'],
        group: yardGroup,
      }),
    ),
    clearFaces: z.optional(
      choiceField({
        label: 'Faces that must be clear',
        options: [
          { value: 'both', label: 'Both' },
          { value: 'one', label: 'The better one' },
        ],
        examples: ['both'],
        group: yardGroup,
      }),
    ),
    rate: z.optional(
      quantityField({
        label: 'Price',
        help: 'In any currency.',
        dimension: 'number',
        minimum: 0,
        maximum: 1e7,
        examples: ['9.50'],
        group: yardGroup,
      }),
    ),
    ratePer: z.optional(
      choiceField({
        label: 'Price is for',
        options: [
          { value: 'board-foot', label: 'A board foot' },
          { value: 'cubic-metre', label: 'A cubic metre' },
        ],
        examples: ['board-foot'],
        group: yardGroup,
      }),
    ),
    endTrim: z.optional(
      lengthField(
        { label: 'End trim, each end', help: helpOf('endTrim'), examples: ['50 mm', '2 in'], group: allowanceGroup },
        { minimum: 0, maximum: 500 },
      ),
    ),
    outlineClearance: z.optional(
      lengthField(
        {
          label: 'Clearance outside the line',
          help: helpOf('outlineClearance'),
          examples: ['3.2 mm', '1/8 in'],
          group: allowanceGroup,
        },
        { minimum: 0, maximum: 50 },
      ),
    ),
    planing: z.optional(
      lengthField(
        {
          label: 'Planing, each face',
          help: helpOf('planing'),
          examples: ['2.4 mm', '3/32 in'],
          group: allowanceGroup,
        },
        { minimum: 0, maximum: 30 },
      ),
    ),
    spare: z.optional(
      quantityField({
        label: 'Spare pieces',
        help: helpOf('spare'),
        dimension: 'percent',
        minimum: 0,
        maximum: 200,
        examples: ['10 %'],
        group: allowanceGroup,
      }),
    ),
    kerf: z.optional(kerfField(allowanceGroup)),
  }),
  example: {
    metric: {
      length: '450 mm',
      width: '250 mm',
      thickness: '19 mm',
      count: '12',
      surfacing: 'rough',
      rate: '9.50',
      ratePer: 'board-foot',
    },
    inch: {
      length: '18 in',
      width: '10 in',
      thickness: '3/4 in',
      count: '12',
      surfacing: 'rough',
      rate: '9.50',
      ratePer: 'board-foot',
    },
  },
  figures: {
    boards: { label: 'Boards to buy' },
    nominal: { label: 'Nominal thickness' },
    boardFeet: { label: 'Board feet, with fractions' },
    boardFeetTally: { label: 'Board feet, as a grader tallies them' },
    volume: { label: 'Volume' },
    cost: { label: 'Cost by fractional board feet, or by volume' },
    costTally: { label: 'Cost by the grader’s tally' },
    pieces: { label: 'Pieces to cut' },
    roughLength: { label: 'Rough length' },
    roughWidth: { label: 'Rough width' },
    roughThickness: { label: 'Thickness needed before planing' },
    perBoard: { label: 'Pieces from one board' },
    used: { label: 'Share of the wood that stays' },
  },
  compute(inputs) {
    const {
      length,
      width,
      thickness,
      count,
      surfacing = 'rough',
      rate,
      ratePer = 'board-foot',
      kerf = usualKerf,
    } = inputs;
    if (!Number.isInteger(count))
      return refuse('count', `${count} is not a whole number of pieces`, 'Give a whole number, such as 12.');
    if ((inputs.boardLength === undefined) !== (inputs.boardWidth === undefined)) {
      const missing = inputs.boardLength === undefined ? 'boardLength' : 'boardWidth';
      return refuse(
        missing,
        'Only one of the length and the width of a board was given',
        'Give both, or leave both empty for the usual board.',
      );
    }
    const grade = inputs.grade ? gradeById(inputs.grade) : undefined;
    const outcome = stockOrder({
      finished: { length, width, thickness },
      count,
      allowances: {
        endTrim: inputs.endTrim ?? defaultAllowances.endTrim,
        outlineClearance: inputs.outlineClearance ?? defaultAllowances.outlineClearance,
        planing: surfacing === 's2s' ? (inputs.planing ?? 0) : (inputs.planing ?? defaultAllowances.planing),
        spare: inputs.spare === undefined ? defaultAllowances.spare : inputs.spare / 100,
      },
      surfacing,
      kerf,
      clearFaces: inputs.clearFaces ?? 'both',
      ...(inputs.boardLength !== undefined && inputs.boardWidth !== undefined
        ? { board: { length: inputs.boardLength, width: inputs.boardWidth } }
        : {}),
      ...(grade ? { grade } : {}),
      ...(rate === undefined ? {} : { price: { rate, per: ratePer } }),
    });
    if (!outcome.ok) return outcome;
    return answer({
      figures: figuresOf(outcome.value, grade?.name),
      cautions: cautionsOf(outcome.value),
      evidence: evidenceOf(outcome.value),
    });
  },
});

function figuresOf(plan: OrderPlan, grade: string | undefined): Record<string, Figure> {
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

function cautionsOf(plan: OrderPlan): Caution[] {
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
      basis: 'published',
      citation: { source: 'timber-importer-page', seen: 'quoted' },
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

function evidenceOf(plan: OrderPlan): EvidenceNote[] {
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
