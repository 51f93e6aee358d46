import { answer, refuse } from '../../model/evidence/index.ts';
import { flattenPlan, type MeasuredPoint } from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { depthOf, flattenCautions, limitsOf } from './cautions.ts';
import { type HeightGrid, offTheBoard, type PlacedHeight } from './fields.ts';
import { figures, figuresOf } from './figures.ts';
import { alternatives, example, inputs } from './inputs.ts';
import { evidenceOf, placesTable, planDrawing, verdictOf } from './result.ts';

export const flattenPlanCalculator = calculator({
  id: 'flatten-plan',
  title: 'Flattening a board',
  question: 'How much of this cupped or twisted board is left when it is flat, and how do I shim it?',
  summary:
    'From heights measured over a board and the thickness wanted: what is left when it is flat, the shims and the passes.',
  inputs,
  alternatives,
  example,
  figures,
  compute(inputs) {
    const { length, width, thickness, target, measured = 'heights', grid, places } = inputs;
    const named = grid !== undefined ? 'grid' : 'places';
    const raw = grid !== undefined ? gridPoints(grid, length, width) : places;
    if (raw === undefined)
      return refuse('grid', 'No heights were given', 'Measure the four corners at least, such as 0, 2; 1, 0.');
    const off = offTheBoard(places ?? [], length, width);
    if (off) return refuse('places', off.problem, off.wayOut);
    const sign = measured === 'gaps' ? -1 : 1;
    const points = raw.map((point): MeasuredPoint => ({ ...point, height: sign * point.height }));
    const depthOfCut = depthOf(inputs);
    const outcome = flattenPlan({ points, thickness, target, depthOfCut });
    if (!outcome.ok) {
      return {
        ok: false,
        errors: outcome.errors.map((error) => ({ ...error, field: error.field === 'heights' ? named : error.field })),
      };
    }
    const plan = outcome.value;
    const cautions = flattenCautions({ length, width, thickness, finished: plan.thickness }, plan, target, inputs);
    return answer({
      verdict: verdictOf(plan, target, cautions),
      figures: figuresOf(plan, target, inputs.depthOfCut === undefined ? 'shop-practice' : 'derived'),
      tables: [placesTable(plan, raw)],
      drawings: [planDrawing(plan, length, width)],
      cautions,
      evidence: evidenceOf(limitsOf(inputs).taken, inputs.depthOfCut === undefined ? depthOfCut : undefined),
    });
  },
});

/** Places of a grid: rows along the length, heights across the width, the outermost at the edges. */
function gridPoints(grid: HeightGrid, length: number, width: number): PlacedHeight[] {
  return grid.flatMap((row, i) =>
    row.map((height, j) => ({ x: (length * i) / (grid.length - 1), y: (width * j) / (row.length - 1), height })),
  );
}
