import { answer } from '../../model/evidence/index.ts';
import { defaultAllowances, gradeById, type OrderRequest, stockOrder, usualKerf } from '../../model/stock/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf, evidenceOf } from './cautions.ts';
import { figures, figuresOf, usesOf } from './figures.ts';
import { type Inputs, inputs } from './inputs.ts';
import { isInMillimetres, verdictOf } from './verdict.ts';

export const stockOrderCalculator = calculator({
  id: 'stock-order',
  title: 'Ordering stock',
  question: 'How much lumber must I buy, and how thick, for so many pieces?',
  summary:
    'From the size and number of the pieces: the rough size, the thickness to ask for, the boards to buy and their price.',
  inputs,
  together: [{ fields: ['boardLength', 'boardWidth'], why: 'A board to order has a length and a width' }],
  taken: ({ surfacing = 'rough' }) => ({
    surfacing: 'rough',
    clearFaces: 'both',
    endTrim: '2 in',
    outlineClearance: '1/8 in',
    planing: surfacing === 's2s' ? '0 in' : '3/32 in',
    spare: '10 %',
    kerf: '3.2 mm',
  }),
  example: {
    metric: {
      length: '470 mm',
      width: '260 mm',
      thickness: '19 mm',
      count: '12',
      surfacing: 'rough',
      rate: '$9.50',
      ratePer: 'board-foot',
    },
    inch: {
      length: '18 1/2 in',
      width: '10 1/4 in',
      thickness: '3/4 in',
      count: '12',
      surfacing: 'rough',
      rate: '$9.50',
      ratePer: 'board-foot',
    },
  },
  figures,
  compute(given) {
    const { length, width, thickness, surfacing = 'rough', rate, ratePer } = given;
    const request = requestOf(given);
    const outcome = stockOrder(request);
    if (!outcome.ok) return outcome;
    const plan = outcome.value;
    const metric = (rate !== undefined && ratePer === 'cubic-metre') || isInMillimetres([length, width, thickness]);
    return answer({
      verdict: verdictOf(plan, surfacing, rate, metric),
      figures: figuresOf(plan, request.grade?.name, rate),
      uses: usesOf(plan, surfacing),
      cautions: cautionsOf(plan),
      evidence: evidenceOf(plan),
    });
  },
});

/** The order that is asked for, with what is usual wherever a field was left empty. */
function requestOf(given: Inputs): OrderRequest {
  const { length, width, thickness, count, surfacing = 'rough', boardLength, boardWidth, rate } = given;
  const grade = given.grade ? gradeById(given.grade) : undefined;
  return {
    finished: { length, width, thickness },
    count,
    allowances: {
      endTrim: given.endTrim ?? defaultAllowances.endTrim,
      outlineClearance: given.outlineClearance ?? defaultAllowances.outlineClearance,
      planing: given.planing ?? (surfacing === 's2s' ? 0 : defaultAllowances.planing),
      spare: given.spare === undefined ? defaultAllowances.spare : given.spare / 100,
    },
    surfacing,
    kerf: given.kerf ?? usualKerf,
    clearFaces: given.clearFaces ?? 'both',
    ...(boardLength !== undefined && boardWidth !== undefined
      ? { board: { length: boardLength, width: boardWidth } }
      : {}),
    ...(grade ? { grade } : {}),
    ...(rate === undefined ? {} : { price: { rate: rate.rate, per: given.ratePer ?? 'board-foot' } }),
  };
}
