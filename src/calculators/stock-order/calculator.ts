import * as z from 'zod/mini';
import { answer, refuse } from '../../model/evidence/index.ts';
import {
  type Allowances,
  defaultAllowances,
  gradeById,
  hardwoodGrades,
  stockOrder,
  usualAllowances,
} from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { countField, kerfField, lengthField } from '../kit/stock-fields.ts';
import { priceField } from './price.ts';
import { cautionsOf, evidenceOf, figuresOf, isInMillimetres, verdictOf } from './result.ts';

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
          help: 'The rough width, up to a whole inch and at least 4 in, unless given.',
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
      priceField({
        label: 'Price',
        help: 'In any currency, with its sign or without: $9.50, 9.50 EUR.',
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
        {
          label: 'Extra length, each end of a piece',
          help: helpOf('endTrim'),
          examples: ['50 mm', '2 in'],
          group: allowanceGroup,
        },
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
    boardLength: { label: 'Length of a board' },
    boardWidth: { label: 'Width of a board' },
    nominal: { label: 'Nominal thickness' },
    boardFeet: { label: 'Board feet, with fractions' },
    boardFeetTally: { label: 'Board feet, as a grader tallies them' },
    volume: { label: 'Volume' },
    cost: { label: 'Cost, counted with fractions or by volume' },
    costTally: { label: 'Cost, as a grader tallies' },
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
      ...(rate === undefined ? {} : { price: { rate: rate.rate, per: ratePer } }),
    });
    if (!outcome.ok) return outcome;
    return answer({
      verdict: verdictOf(
        outcome.value,
        surfacing,
        rate,
        (rate !== undefined && ratePer === 'cubic-metre') || isInMillimetres([length, width, thickness]),
      ),
      figures: figuresOf(outcome.value, grade?.name, rate),
      cautions: cautionsOf(outcome.value),
      evidence: evidenceOf(outcome.value),
    });
  },
});
