import {
  finishKindById,
  type Grade,
  type Grading,
  gradeOf,
  gritSequence,
  type SequenceRequest,
  sandingMethodById,
  startSurfaceById,
  usualRatio,
} from '../../model/abrasive/index.ts';
import { answer, type Outcome, refuse } from '../../model/evidence/index.ts';
import type { Read } from '../../model/quantity/index.ts';
import { calculator } from '../kit/calculator.ts';
import { cautionsOf } from './cautions.ts';
import { readGrits } from './fields.ts';
import { evidenceOf, figures, figuresOf, skipTable, stepTable, usesOf } from './figures.ts';
import { type Inputs, inputs } from './inputs.ts';
import { verdictOf } from './verdict.ts';

export const gritSequenceCalculator = calculator({
  id: 'grit-sequence',
  title: 'Grits in order',
  question: 'Which grits take this surface from the machine to its finish?',
  summary: 'From what the machine left, the finish and the grits in your drawer: the fewest grits to sand with.',
  inputs,
  alternatives: [
    {
      label: 'From',
      sets: [
        { label: 'What a machine left', fields: ['surface'] },
        { label: 'A grit', fields: ['sandedWith'] },
      ],
    },
    {
      label: 'To',
      sets: [
        { label: 'A finish', fields: ['finish'] },
        { label: 'A grit', fields: ['lastGrit'] },
      ],
    },
  ],
  taken: () => ({ method: 'random-orbit', ratio: '1.7' }),
  example: {
    metric: {
      material: 'wood',
      surface: 'planed',
      finish: 'oil-or-wax',
      drawer: '80, 100, 120, 150, 180, 220, 320',
      water: 'yes',
      area: '0.27 m²',
      count: '12',
      method: 'random-orbit',
    },
    inch: {
      material: 'wood',
      surface: 'planed',
      finish: 'oil-or-wax',
      drawer: '80, 100, 120, 150, 180, 220, 320',
      water: 'yes',
      area: '2.9 sq ft',
      count: '12',
      method: 'random-orbit',
    },
  },
  figures,
  compute(given) {
    const asked = requestOf(given);
    if (!asked.ok) return asked;
    const { request, finish, inlaid } = asked.value;
    const { start, material, last, method, ratio: limit } = request;
    const outcome = gritSequence(request);
    if (!outcome.ok) return outcome;
    const sequence = outcome.value;
    const has = 'micrometres' in start ? { has: start } : {};
    const sanded = { sequence, material, inlaid, limit, method: method.id, ...has };
    return answer({
      verdict: verdictOf(sanded),
      figures: figuresOf(sequence, last, request.area),
      tables: [stepTable(sequence), skipTable(sequence)].filter((table) => table.rows.length > 0),
      uses: usesOf(sequence),
      cautions: cautionsOf(sanded),
      evidence: evidenceOf(sequence, finish),
    });
  },
});

/** What is asked of the model, the words for a finish that picked the last grit, and whether resin lies in the wood. */
function requestOf(given: Inputs): Outcome<{ request: SequenceRequest; finish: string | undefined; inlaid: boolean }> {
  const { material: asked = 'wood', finish, lastGrit, surface, sandedWith, count = 1, water = 'yes' } = given;
  // Resin as it was cast is there to be sanded, whatever lies around it.
  const inlaid = asked === 'inlay' || (asked === 'wood' && surface === 'resin-as-cast');
  const material: 'wood' | 'resin' = asked === 'resin' ? 'resin' : 'wood';
  const bare: Grading = given.grading === 'ansi' ? 'ANSI' : 'P';
  const drawer = readGrits(given.drawer, bare);
  if (!drawer.ok) return refuse('drawer', drawer.problem, drawer.wayOut);
  const kind = finishKindById(finish ?? (material === 'resin' ? 'resin-polish' : 'oil-or-wax'));
  const last = lastGrit === undefined ? lastOf(kind?.last ?? 320, drawer.value) : readGrits([lastGrit], bare);
  if (!last.ok) return refuse('lastGrit', last.problem, last.wayOut);
  const from = sandedWith === undefined ? undefined : readGrits([sandedWith], bare);
  if (from && !from.ok) return refuse('sandedWith', from.problem, from.wayOut);
  const start = from?.value[0] ?? startSurfaceById(surface ?? 'planed');
  const method = sandingMethodById(given.method ?? 'random-orbit');
  const [end] = last.value;
  if (!start || !method || !end)
    return refuse('drawer', 'There is nothing to sand with', 'List the grits in the drawer.');
  return answer({
    request: {
      material,
      start,
      last: end,
      drawer: drawer.value,
      ratio: given.ratio ?? usualRatio[material],
      raiseGrain: water === 'yes' || (lastGrit === undefined && kind?.waterBased === true),
      area: given.area * count,
      method,
    },
    finish:
      kind !== undefined && lastGrit === undefined ? `${kind.label}: last grit P${kind.last}. ${kind.why}` : undefined,
    inlaid,
  });
}

/** The last grit of a finish: the P grade, or one of the drawer whose grain is the same. */
function lastOf(number: number, drawer: readonly Grade[]): Read<Grade[]> {
  const wanted = gradeOf('P', number) as Grade;
  const held = drawer.find((grade) => Math.abs(Math.log(grade.micrometres / wanted.micrometres)) < 0.05);
  return { ok: true, value: [held ?? wanted] };
}
