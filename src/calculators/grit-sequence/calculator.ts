import * as z from 'zod/mini';
import {
  equivalents,
  finishKindById,
  finishKinds,
  type Grade,
  type Grading,
  gradeOf,
  gritSequence,
  type RaiseStep,
  raiseAfter,
  type SandStep,
  type Sequence,
  sandingMethodById,
  sandingMethods,
  startSurfaceById,
  startSurfaces,
  usualRatio,
} from '../../model/abrasive/index.ts';
import { cautionById } from '../../model/evidence/cautions.ts';
import {
  answer,
  type Caution,
  type EvidenceNote,
  type Figure,
  type ResultTable,
  refuse,
} from '../../model/evidence/index.ts';
import { calculator } from '../kit/calculator.ts';
import { choiceField, quantityField } from '../kit/fields.ts';
import { countField } from '../kit/stock-fields.ts';
import { drawerField, gritField, readGrits } from './fields.ts';

const factorOfTwo = 'Half and twice: pressure, paper, wood and hand differ by that much.';

export const gritSequenceCalculator = calculator({
  id: 'grit-sequence',
  title: 'Grits in order',
  question: 'Which grits take this surface from the machine to its finish?',
  summary:
    'Takes what the machine left, the finish and the grits in the drawer, and gives the fewest grits whose steps in grain size stay within a limit, when to raise the grain, what skipping a grit would cost, and rough time and paper.',
  inputs: z.strictObject({
    material: z.optional(
      choiceField({
        label: 'Material',
        options: [
          { value: 'wood', label: 'Wood' },
          { value: 'resin', label: 'Resin' },
        ],
        examples: ['wood', 'resin'],
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
    const { material = 'wood', finish, lastGrit, surface, sandedWith, count = 1, water = 'yes' } = inputs;
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
    return answer({
      figures: figuresOf(sequence, end),
      tables: [stepTable(sequence), skipTable(sequence)].filter((table) => table.rows.length > 0),
      cautions: cautionsOf(sequence, material, inputs.ratio ?? usualRatio[material]),
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

function figuresOf(sequence: Sequence, last: Grade): Record<string, Figure> {
  const rough = (label: string, value: number, unit: string, digits: number): Figure => ({
    label,
    value,
    unit,
    low: value / 2,
    high: value * 2,
    band: factorOfTwo,
    basis: 'shop-practice',
    digits,
  });
  return {
    grits: {
      label: 'Grits',
      value: sequence.grits.length,
      unit: '1',
      basis: 'shop-practice',
      digits: 4,
      note: `${sequence.grits.map((grade) => grade.id).join(', ')}.`,
    },
    largestStep: {
      label: 'Largest step',
      value: sequence.largest,
      unit: '1',
      basis: 'derived',
      digits: 2,
      note: 'Grain size of one grit over that of the next.',
    },
    time: rough('Sanding time', sequence.minutes * 60, 's', 2),
    discs: {
      ...rough('Discs or sheets', sequence.discs, '1', 3),
      low: Math.max(sequence.grits.length, Math.ceil(sequence.discs / 2)),
    },
    lastGrain: {
      label: 'Grain of the last grit',
      value: last.micrometres,
      unit: 'um',
      low: last.low,
      high: last.high,
      band: 'What the texts read give, and 10 % either way: a grade is a distribution.',
      basis: last.basis,
      citation: { source: last.source, locator: last.id, seen: last.seen },
      digits: 2,
      note: equivalentWords(last),
    },
  };
}

function equivalentWords(grade: Grade): string {
  const { nearest, printed } = equivalents(grade);
  const prefix = grade.grading === 'P' ? 'ANSI ' : 'P';
  const others = [...new Set(printed.map((pair) => pair.grade))].filter((number) => number !== nearest.number);
  return `${grade.id}; nearest by grain is ${nearest.id}${others.length > 0 ? `, one text prints ${others.map((number) => `${prefix}${number}`).join(' and ')} beside it` : ''}.`;
}

const isSand = (step: SandStep | RaiseStep): step is SandStep => step.kind === 'sand';

function stepTable(sequence: Sequence): ResultTable {
  return {
    id: 'steps',
    title: 'Step by step',
    columns: [
      { id: 'step', label: 'Step', digits: 3 },
      { id: 'what', label: 'What to do' },
      { id: 'grain', label: 'Grain', unit: 'um', digits: 2 },
      { id: 'ratio', label: 'Step in grain', digits: 2 },
      { id: 'time', label: 'Time', unit: 's', digits: 2 },
      { id: 'discs', label: 'Discs', digits: 4 },
    ],
    rows: sequence.steps.map((step, at) =>
      isSand(step)
        ? [
            at + 1,
            `Sand with ${step.grade.id}${step.wet ? ', wet' : ''}${step.buy ? ' (not in the drawer)' : ''}`,
            step.grade.micrometres,
            step.ratio,
            step.minutes * 60,
            step.discs,
          ]
        : [
            at + 1,
            `Raise the grain: wipe with clean water, let dry, take the fibres off lightly with ${step.lightly.id}`,
            null,
            null,
            null,
            null,
          ],
    ),
    basis: 'shop-practice',
  };
}

function skipTable(sequence: Sequence): ResultTable {
  return {
    id: 'skipping',
    title: 'What skipping a grit would cost',
    columns: [
      { id: 'grit', label: 'Left out' },
      { id: 'ratio', label: 'Step across the gap', digits: 2 },
      { id: 'within', label: 'Within the limit' },
      { id: 'saved', label: 'Time saved', unit: 's', digits: 2 },
      { id: 'added', label: 'Time added to the next grit', unit: 's', digits: 2 },
    ],
    rows: sequence.skips.map((skip) => [
      skip.grade.id,
      skip.ratio,
      skip.within ? 'yes' : 'no',
      skip.saved * 60,
      skip.added * 60,
    ]),
    basis: 'shop-practice',
  };
}

function cautionsOf(sequence: Sequence, material: 'wood' | 'resin', limit: number): Caution[] {
  const dust = cautionById('wood-dust');
  const practice = (id: string, level: Caution['level'], text: string): Caution => ({
    id,
    level,
    text,
    basis: 'shop-practice',
  });
  const toBuy = sequence.steps
    .filter(isSand)
    .filter((step) => step.buy)
    .map((step) => step.grade.id);
  return [
    ...(sequence.within
      ? []
      : [
          practice(
            'step-too-wide',
            'warning',
            `A step of ${sequence.largest.toFixed(1)} is wider than the limit of ${limit}: scratches of the coarser grit will show through. ${
              sequence.bridge.length > 0
                ? `${sequence.bridge.map((grade) => grade.id).join(' and ')} would close it.`
                : 'No grade between is known.'
            }`,
          ),
        ]),
    ...(toBuy.length > 0
      ? [practice('grit-to-buy', 'note', `${toBuy.join(' and ')} is not in the drawer and has to be bought.`)]
      : []),
    practice(
      'skipped-scratches',
      'note',
      'Skipping a grit saves minutes on paper and costs in the surface: the next grit must take out scratches deeper than its own, a hand stops before it has, and what is left shows only under the finish. Look along a low light before each change of grit.',
    ),
    ...(sequence.steps.some((step) => step.kind === 'raise')
      ? [
          practice(
            'raised-grain',
            'note',
            `Raising the grain after P${raiseAfter} and before the last grit lets the first washing find nothing left to raise. Let it dry for hours, not minutes.`,
          ),
        ]
      : []),
    ...(material === 'resin'
      ? [
          practice(
            'resin-dust',
            'danger',
            'Sand only resin that has cured hard: dust of resin that has not cured sensitises skin and airways. Wear a mask and gloves, and extract at the tool.',
          ),
          practice(
            'wet-and-mains',
            'danger',
            'Wet paper and a mains sander do not go together. Sand wet by hand or with an air tool, keep water off the wood beside the resin or seal it first, and wipe all grit off before the next paper.',
          ),
        ]
      : []),
    ...(dust ? [dust] : []),
  ];
}

function evidenceOf(sequence: Sequence, finish: string | undefined): EvidenceNote[] {
  const used = new Map(sequence.grits.map((grade) => [grade.source, grade]));
  return [
    ...(finish ? [{ text: finish, basis: 'shop-practice' as const }] : []),
    {
      text: 'The fewest grits by a shortest path from coarse to fine; of several ways the most even.',
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'shortest path over grain sizes' },
    },
    ...[...used].map(
      ([source, grade]): EvidenceNote => ({
        text: 'Grain sizes. The tables of the standards themselves were not seen: the sizes come through texts that repeat them and differ by up to 8 %.',
        basis: grade.basis,
        citation: { source, seen: grade.seen },
      }),
    ),
    {
      text: 'The limit of the step, the first and last grits, times and paper are common practice, good to a factor of two.',
      basis: 'shop-practice',
    },
  ];
}
