import * as z from 'zod/mini';
import { answer, type Caution, type EvidenceNote, type Figure, type ResultTable } from '../../model/evidence/index.ts';
import { boardYield, type YieldBlank, type YieldBoard, type YieldPlan } from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField } from '../kit/fields.ts';
import { kerfField, lengthField } from '../kit/stock-fields.ts';
import { cutDrawing } from './drawing.ts';
import { blanksField, boardsField } from './fields.ts';

const usual = { kerf: 3.2, endTrim: 25, snipe: 50 };

export const boardYieldCalculator = calculator({
  id: 'board-yield',
  title: 'Blanks from boards',
  question: 'Which blanks come from which boards?',
  summary:
    'Takes the boards on the rack with the places to cut out, and the blanks wanted, and says where to cut: the most blanks, from the least board, with the longest offcut, saw cuts and planer snipe counted.',
  inputs: z.strictObject({
    boards: boardsField({
      label: 'Boards',
      help: 'One a line: name, length, width, then each defect with where it begins and ends, measured from one end. Numbers without a unit are millimetres.',
    }),
    blanks: blanksField({
      label: 'Blanks wanted',
      help: 'One a line: name, length along the grain, width, how many. Lengths before working, allowances included.',
    }),
    kerf: z.optional(kerfField()),
    endTrim: z.optional(
      lengthField(
        { label: 'Cut off each end of a board', help: 'End checks and sealer.', examples: ['25 mm', '1 in'] },
        { minimum: 0, maximum: 1000 },
      ),
    ),
    snipe: z.optional(
      lengthField(
        { label: 'Planer snipe', help: 'Length that the planer cuts too deep at an end.', examples: ['50 mm', '2 in'] },
        { minimum: 0, maximum: 500 },
      ),
    ),
    planed: z.optional(
      choiceField({
        label: 'Planed',
        options: [
          { value: 'boards', label: 'Before cutting up: snipe on boards' },
          { value: 'blanks', label: 'After cutting up: snipe on blanks' },
        ],
        examples: ['boards'],
      }),
    ),
  }),
  example: {
    metric: {
      boards:
        'ash A, 2400 mm, 260 mm, knot 700 to 780 mm\nash B, 1900 mm, 255 mm, check 1780 to 1900 mm\nash C, 1250 mm, 290 mm\nash D, 2100 mm, 230 mm, nail line 1000 to 1060 mm',
      blanks: 'tray, 450 mm, 240 mm, 6\npaddle, 600 mm, 200 mm, 2',
      kerf: '3 mm',
      endTrim: '25 mm',
      snipe: '50 mm',
      planed: 'boards',
    },
    inch: {
      boards:
        'ash A, 8 ft, 10 1/4 in, knot 27 1/2 in to 30 3/4 in\nash B, 6 ft 3 in, 10 in, check 70 in to 75 in\nash C, 49 in, 11 1/2 in\nash D, 7 ft, 9 in, nail line 39 1/2 in to 41 3/4 in',
      blanks: 'tray, 18 in, 9 1/2 in, 6\npaddle, 24 in, 8 in, 2',
      kerf: '1/8 in',
      endTrim: '1 in',
      snipe: '2 in',
      planed: 'boards',
    },
  },
  figures: {
    blanksCut: { label: 'Blanks cut' },
    blanksMissing: { label: 'Blanks missing' },
    boardsUsed: { label: 'Boards cut into' },
    yield: { label: 'Share of those boards that becomes blanks' },
    longestOffcut: { label: 'Longest piece left over' },
  },
  compute({ boards, blanks, kerf = usual.kerf, endTrim = usual.endTrim, snipe = usual.snipe, planed = 'boards' }) {
    const outcome = boardYield({ boards, blanks, kerf, endTrim, snipe, planed });
    if (!outcome.ok) return outcome;
    const plan = outcome.value;
    const drawing = cutDrawing(plan, boards, blanks);
    return answer({
      figures: figuresOf(plan, blanks),
      tables: [cutTable(plan, boards, blanks)],
      ...(drawing ? { drawings: [drawing] } : {}),
      cautions: cautionsOf(plan, planed),
      evidence: evidenceOf(plan),
    });
  },
});

const total = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);

function figuresOf(plan: YieldPlan, blanks: readonly YieldBlank[]): Record<string, Figure> {
  const counted = (label: string, value: number, note?: string): Figure => ({
    label,
    value,
    unit: '1',
    basis: 'derived',
    digits: 6,
    ...(note ? { note } : {}),
  });
  const missing = blanks.flatMap((blank, at) =>
    (plan.missing[at] as number) > 0 ? [`${plan.missing[at]} × ${blank.name.slice(0, 40)}`] : [],
  );
  return {
    blanksCut: counted('Blanks cut', total(plan.cut), `Of ${total(plan.cut) + total(plan.missing)} wanted.`),
    blanksMissing: counted(
      'Blanks missing',
      total(plan.missing),
      missing.length > 0 ? `${missing.slice(0, 8).join(', ')}.` : undefined,
    ),
    boardsUsed: counted('Boards cut into', plan.boards.length),
    yield: {
      label: 'Share of those boards that becomes blanks',
      value: plan.boardArea > 0 ? (100 * plan.blankArea) / plan.boardArea : 0,
      unit: '%',
      basis: 'derived',
      digits: 3,
      note: 'By face area; what is ripped off a wide board counts as waste.',
    },
    longestOffcut: {
      label: 'Longest piece left over',
      value: plan.longestOffcut,
      unit: 'mm',
      basis: 'derived',
      digits: 5,
      note: 'Clear, on a board that is cut into.',
    },
  };
}

/** Where to cut: one row a blank, from the left end of its board. */
function cutTable(plan: YieldPlan, boards: readonly YieldBoard[], blanks: readonly YieldBlank[]): ResultTable {
  return {
    id: 'cuts',
    title: 'Cutting list',
    columns: [
      { id: 'board', label: 'Board' },
      { id: 'piece', label: 'Piece' },
      { id: 'from', label: 'From', unit: 'mm', digits: 6 },
      { id: 'to', label: 'To', unit: 'mm', digits: 6 },
      { id: 'width', label: 'Width', unit: 'mm', digits: 5 },
    ],
    rows: plan.boards.flatMap(({ board, cuts, offcuts }) => {
      const { name, width } = boards[board] as YieldBoard;
      return [
        ...cuts.map(({ blank, from, to }) => [
          name,
          (blanks[blank] as YieldBlank).name,
          from,
          to,
          (blanks[blank] as YieldBlank).width,
        ]),
        ...offcuts.map(({ from, to }) => [name, 'left over', from, to, width]),
      ].sort((a, b) => (a[2] as number) - (b[2] as number));
    }),
    basis: 'derived',
  };
}

function cautionsOf(plan: YieldPlan, planed: 'boards' | 'blanks'): Caution[] {
  return [
    ...(total(plan.missing) > 0
      ? [
          {
            id: 'rack-too-small',
            level: 'warning' as const,
            text: plan.mostYield
              ? 'The rack does not give all blanks, however it is cut.'
              : 'Not all blanks were found a place. A better plan may exist; try blanks a little shorter, or another board.',
            basis: 'derived' as const,
          },
        ]
      : []),
    {
      id: 'find-defects-first',
      level: 'warning',
      text: 'Look at both faces and both edges before you mark: a knot on one face, a check or a nail may run through under a clear one. Mark the defects on the board, and let the saw pass through none that hides metal.',
      basis: 'shop-practice',
    },
    ...(planed === 'blanks'
      ? [
          {
            id: 'short-blanks',
            level: 'danger' as const,
            text: 'Blanks shorter than the planer’s least length are not fed through it. Plane the board first and cut it up afterwards, or see Flattening a board.',
            basis: 'shop-practice' as const,
          },
        ]
      : []),
  ];
}

function evidenceOf(plan: YieldPlan): EvidenceNote[] {
  return [
    {
      text: plan.proved
        ? 'Every other plan was ruled out: none gives more blank area, or the same from less board, or then a longer offcut.'
        : `The search stopped after its set number of steps. ${
            plan.mostYield
              ? 'No plan gives more blanks; one that cuts into less board may exist.'
              : 'A better plan may exist.'
          }`,
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'branch and bound over clear spans' },
    },
    {
      text: 'Blanks are taken along the board across its full width; defects run right across; one saw cut parts a blank from what follows it, and a fault thinner than the saw costs one saw cut.',
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'rules of the cutting plan' },
    },
  ];
}
