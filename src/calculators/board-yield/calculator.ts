import * as z from 'zod/mini';
import { answer } from '../../model/evidence/index.ts';
import { boardYield } from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField } from '../kit/fields.ts';
import { kerfField, lengthField } from '../kit/stock-fields.ts';
import { cutDrawing } from './drawing.ts';
import { blanksField, boardsField } from './fields.ts';
import { cautionsOf, cutTable, evidenceOf, figuresOf, verdictOf } from './result.ts';

const usual = { kerf: 3.2, endTrim: 25, edgeTrim: 0, snipe: 50 };

export const boardYieldCalculator = calculator({
  id: 'board-yield',
  title: 'Blanks from boards',
  question: 'Which blanks come from which boards?',
  summary:
    'Takes the boards on the rack with the places to cut out, and the blanks wanted, and says where to crosscut and rip: the most blanks from the least board, side by side where the width allows, saw cuts and planer snipe counted.',
  inputs: z.strictObject({
    boards: boardsField({
      label: 'Boards',
      help: 'One a line: name, length, width, then each place to cut out with where it begins and ends, measured from one end: knot 700 to 780 mm. One that leaves wood beside it has its place across too, measured from one edge: knot 700 to 780 mm across 0 to 60 mm.',
    }),
    blanks: blanksField({
      label: 'Blanks wanted',
      help: 'One a line: name, length along the grain, width, how many. Sizes before working, allowances included.',
    }),
    kerf: z.optional(kerfField()),
    endTrim: z.optional(
      lengthField(
        { label: 'Cut off each end of a board', help: 'End checks and sealer.', examples: ['25 mm', '1 in'] },
        { minimum: 0, maximum: 1000 },
      ),
    ),
    edgeTrim: z.optional(
      lengthField(
        {
          label: 'Taken off each edge of a board',
          help: 'Bark edge, or what the jointer takes before the first rip.',
          examples: ['5 mm', '1/4 in'],
        },
        { minimum: 0, maximum: 500 },
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
    first: z.optional(
      choiceField({
        label: 'First cut',
        help: 'What the shop does first to a board: the saw goes right through, whichever it is.',
        options: [
          { value: 'crosscut', label: 'Crosscut, then rip' },
          { value: 'rip', label: 'Rip, then crosscut' },
        ],
        examples: ['crosscut'],
      }),
    ),
  }),
  example: {
    metric: {
      boards:
        'ash A, 2400 mm, 260 mm, knot 700 to 780 mm across 150 to 260 mm\nash B, 1900 mm, 255 mm, check 1780 to 1900 mm\nash C, 1250 mm, 290 mm\nash D, 2100 mm, 230 mm, nail line 1000 to 1060 mm',
      blanks: 'tray, 450 mm, 240 mm, 6\npaddle, 600 mm, 200 mm, 2',
      kerf: '3 mm',
      endTrim: '25 mm',
      snipe: '50 mm',
      planed: 'boards',
    },
    inch: {
      boards:
        'ash A, 8 ft, 10 1/4 in, knot 27 1/2 in to 30 3/4 in across 6 in to 10 1/4 in\nash B, 6 ft 3 in, 10 in, check 70 in to 75 in\nash C, 49 in, 11 1/2 in\nash D, 7 ft, 9 in, nail line 39 1/2 in to 41 3/4 in',
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
    couldBeSaved: { label: 'Of the boards cut into, another plan might save at most', minor: true },
  },
  compute({
    boards,
    blanks,
    kerf = usual.kerf,
    endTrim = usual.endTrim,
    edgeTrim = usual.edgeTrim,
    snipe = usual.snipe,
    planed = 'boards',
    first = 'crosscut',
  }) {
    const request = { boards, blanks, kerf, endTrim, edgeTrim, snipe, planed, first };
    const outcome = boardYield(request);
    if (!outcome.ok) return outcome;
    const plan = outcome.value;
    // What the other order of cuts gives is worth a word where it gives more.
    const other = plan.missing.some((count) => count > 0)
      ? boardYield({ ...request, first: first === 'crosscut' ? 'rip' : 'crosscut' })
      : undefined;
    const drawing = cutDrawing(plan, boards, blanks);
    return answer({
      verdict: verdictOf(plan, request),
      figures: figuresOf(plan, blanks),
      tables: [cutTable(plan, boards, blanks)],
      ...(drawing ? { drawings: [drawing] } : {}),
      cautions: cautionsOf(plan, request, other?.ok ? other.value : undefined),
      evidence: evidenceOf(plan),
    });
  },
});
