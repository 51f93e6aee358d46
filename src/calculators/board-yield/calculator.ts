import { answer } from '../../model/evidence/index.ts';
import { boardYield, usualBoardTrim, usualKerf, usualSnipe } from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf, evidenceOf } from './cautions.ts';
import { cutListDocument } from './cut-list.ts';
import { cutDrawing } from './drawing.ts';
import { cutTable, figures, figuresOf, usesOf } from './figures.ts';
import { inputs } from './inputs.ts';
import { verdictOf } from './verdict.ts';

export const boardYieldCalculator = calculator({
  id: 'board-yield',
  title: 'Blanks from boards',
  question: 'Which blanks come from which boards?',
  summary: 'From the boards on the rack and the blanks wanted: where to crosscut and rip, to use the least board.',
  inputs,
  taken: () => ({
    kerf: '3.2 mm',
    endTrim: '25 mm',
    edgeTrim: '0 mm',
    snipe: '50 mm',
    planed: 'boards',
    first: 'crosscut',
  }),
  example: {
    metric: {
      boards:
        'ash A, 2400 mm, 260 mm, knot 660 to 750 mm across 150 to 260 mm\nash B, 1880 mm, 260 mm, check 1765 to 1880 mm\nash C, 1270 mm, 280 mm\nash D, 2095 mm, 235 mm, nail line 1000 to 1060 mm',
      blanks: 'tray, 470 mm, 235 mm, 6\npaddle, 610 mm, 200 mm, 3',
      kerf: '3 mm',
      endTrim: '25 mm',
      snipe: '50 mm',
      planed: 'boards',
    },
    inch: {
      boards:
        'ash A, 94 1/2 in, 10 1/4 in, knot 26 in to 29 1/2 in across 5 7/8 in to 10 1/4 in\nash B, 74 in, 10 1/4 in, check 69 1/2 in to 74 in\nash C, 50 in, 11 in\nash D, 82 1/2 in, 9 1/4 in, nail line 39 3/8 in to 41 3/4 in',
      blanks: 'tray, 18 1/2 in, 9 1/4 in, 6\npaddle, 24 in, 7 7/8 in, 3',
      kerf: '1/8 in',
      endTrim: '1 in',
      snipe: '2 in',
      planed: 'boards',
    },
  },
  figures,
  compute({
    boards,
    blanks,
    kerf = usualKerf,
    endTrim = usualBoardTrim,
    edgeTrim = 0,
    snipe = usualSnipe,
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
    const table = cutTable(plan, boards, blanks);
    const verdict = verdictOf(plan, request);
    const cautions = cautionsOf(plan, request, other?.ok ? other.value : undefined);
    return answer({
      verdict,
      figures: figuresOf(plan, blanks),
      uses: usesOf(plan, boards),
      tables: [table],
      ...(drawing ? { drawings: [drawing] } : {}),
      ...(plan.boards.length > 0
        ? { documents: [cutListDocument(plan, request, { verdict: verdict.text, table, drawing, cautions })] }
        : {}),
      cautions,
      evidence: evidenceOf(plan),
    });
  },
});
