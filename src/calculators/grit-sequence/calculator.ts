import * as z from 'zod/mini';
import {
  finishKindById,
  finishKinds,
  type Grade,
  type Grading,
  gradeOf,
  gritSequence,
  sandingMethodById,
  sandingMethods,
  startSurfaceById,
  startSurfaces,
  usualRatio,
} from '../../model/abrasive/index.ts';
import { answer, refuse } from '../../model/evidence/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { countField } from '../kit/stock-fields.ts';
import { cautionsOf, type Sanded, verdictOf } from './cautions.ts';
import { drawerField, gritField, readGrits } from './fields.ts';
import { evidenceOf, figuresOf, skipTable, stepTable } from './result.ts';

export const gritSequenceCalculator = calculator({
  id: 'grit-sequence',
  title: 'Grits in order',
  question: 'Which grits take this surface from the machine to its finish?',
  summary: 'From what the machine left, the finish and the grits in your drawer: the fewest grits to sand with.',
  inputs: z.strictObject({
    material: z.optional(
      choiceField({
        label: 'Material',
        options: [
          { value: 'wood', label: 'Wood' },
          { value: 'inlay', label: 'Wood with a resin inlay' },
          { value: 'resin', label: 'Resin' },
        ],
        examples: ['wood', 'inlay', 'resin'],
      }),
    ),
    surface: z.optional(
      choiceField({
        label: 'Surface now',
        options: startSurfaces.map(({ id, label }) => ({ value: id, label })),
        examples: ['planed', 'router-flattened'],
      }),
    ),
    sandedWith: z.optional(
      gritField({ label: 'Sanded already with', help: 'The last grit used.', examples: ['120', 'P80'] }),
    ),
    finish: z.optional(
      choiceField({
        label: 'Finish',
        options: finishKinds.map(({ id, label }) => ({ value: id, label })),
        examples: ['oil-or-wax'],
      }),
    ),
    lastGrit: z.optional(gritField({ label: 'Last grit', examples: ['320', 'P2000'] })),
    drawer: drawerField({ label: 'Grits in the drawer', help: 'As printed on the paper, parted by commas or spaces.' }),
    grading: z.optional(
      choiceField({
        label: 'A number without a P is',
        help: 'Paper graded in Europe carries a P. Above 220 the two differ: P400 is far coarser than ANSI 400.',
        options: [
          { value: 'p', label: 'A P grade' },
          { value: 'ansi', label: 'A US (ANSI) grade' },
        ],
        examples: ['p', 'ansi'],
      }),
    ),
    water: z.optional(
      choiceField({
        label: 'Water will reach the wood',
        help: 'From washing, food or a water-based finish: then the grain is raised on purpose before.',
        options: [
          { value: 'yes', label: 'Yes' },
          { value: 'no', label: 'No' },
        ],
        examples: ['yes'],
      }),
    ),
    area: quantityField({
      label: 'Area of one piece',
      help: 'Both faces and the edges.',
      dimension: 'area',
      minimum: 100,
      maximum: 1e8,
      examples: ['0.27 m²', '2.9 sq ft'],
    }),
    count: z.optional(countField({ label: 'Pieces', examples: ['12'] }, { minimum: 1, maximum: 1000 })),
    method: z.optional(
      choiceField({
        label: 'Sanding',
        options: sandingMethods.map(({ id, label }) => ({ value: id, label })),
        examples: ['random-orbit'],
      }),
    ),
    ratio: z.optional(
      quantityField({
        label: 'Largest step',
        help: `Grain size of one grit over that of the next; ${usualRatio.wood} is usual.`,
        dimension: 'number',
        minimum: 1.1,
        maximum: 5,
        examples: ['1.7'],
      }),
    ),
  }),
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
  figures: {
    grits: { label: 'Grits' },
    largestStep: { label: 'Largest step' },
    time: { label: 'Sanding time' },
    discs: { label: 'Discs or sheets' },
    lastGrain: { label: 'Grain of the last grit' },
  },
  compute(inputs) {
    const { material: asked = 'wood', finish, lastGrit, surface, sandedWith, count = 1, water = 'yes' } = inputs;
    // Resin as it was cast is there to be sanded, whatever lies around it.
    const inlaid = asked === 'inlay' || (asked === 'wood' && surface === 'resin-as-cast');
    const material: 'wood' | 'resin' = asked === 'resin' ? 'resin' : 'wood';
    if (!Number.isInteger(count))
      return refuse('count', `${count} is not a whole number of pieces`, 'Give a whole number, such as 12.');
    if (surface !== undefined && sandedWith !== undefined) {
      return refuse('sandedWith', 'Both a surface and a grit were given to start from', 'Leave one of them empty.');
    }
    if (finish !== undefined && lastGrit !== undefined) {
      return refuse('lastGrit', 'Both a finish and a last grit were given', 'Leave one of them empty.');
    }
    const bare: Grading = inputs.grading === 'ansi' ? 'ANSI' : 'P';
    const drawer = readGrits(inputs.drawer, bare);
    if (!drawer.ok) return refuse('drawer', drawer.problem, drawer.wayOut);
    const kind = finishKindById(finish ?? (material === 'resin' ? 'resin-polish' : 'oil-or-wax'));
    const last = lastGrit === undefined ? lastOf(kind?.last ?? 320, drawer.value) : readGrits([lastGrit], bare);
    if (!last.ok) return refuse('lastGrit', last.problem, last.wayOut);
    const from = sandedWith === undefined ? undefined : readGrits([sandedWith], bare);
    if (from && !from.ok) return refuse('sandedWith', from.problem, from.wayOut);
    const start = from?.value[0] ?? startSurfaceById(surface ?? 'planed');
    const method = sandingMethodById(inputs.method ?? 'random-orbit');
    const [end] = last.value;
    if (!start || !method || !end)
      return refuse('drawer', 'There is nothing to sand with', 'List the grits in the drawer.');
    const outcome = gritSequence({
      material,
      start,
      last: end,
      drawer: drawer.value,
      ratio: inputs.ratio ?? usualRatio[material],
      raiseGrain: water === 'yes' || (lastGrit === undefined && kind?.waterBased === true),
      area: inputs.area * count,
      method,
    });
    if (!outcome.ok) return outcome;
    const sequence = outcome.value;
    const limit = inputs.ratio ?? usualRatio[material];
    const sanded: Sanded = {
      sequence,
      material,
      inlaid,
      limit,
      method: method.id,
      ...(from ? { has: from.value[0] as Grade } : {}),
    };
    return answer({
      verdict: verdictOf(sanded),
      figures: figuresOf(sequence, end),
      tables: [stepTable(sequence), skipTable(sequence)].filter((table) => table.rows.length > 0),
      cautions: cautionsOf(sanded),
      evidence: evidenceOf(
        sequence,
        kind !== undefined && lastGrit === undefined
          ? `${kind.label}: last grit P${kind.last}. ${kind.why}`
          : undefined,
      ),
    });
  },
});

/** The last grit of a finish: the P grade, or one of the drawer whose grain is the same. */
function lastOf(number: number, drawer: readonly Grade[]): { ok: true; value: Grade[] } {
  const wanted = gradeOf('P', number) as Grade;
  const held = drawer.find((grade) => Math.abs(Math.log(grade.micrometres / wanted.micrometres)) < 0.05);
  return { ok: true, value: [held ?? wanted] };
}
