import { equivalents, type Grade, type RaiseStep, type SandStep, type Sequence } from '../../model/abrasive/index.ts';
import type { EvidenceNote, ResultTable, Use } from '../../model/evidence/index.ts';
import { listed } from '../../model/quantity/index.ts';
import type { FigureDeclaration, FigureValue } from '../kit/calculator.ts';

/** What the figures of a sequence are. */
export const figures = {
  grits: { label: 'Grits', unit: '{count}', digits: 4 },
  largestStep: {
    label: 'Largest step',
    unit: '1',
    digits: 2,
    help: 'Grain size of one grit over that of the next.',
  },
  time: { label: 'Sanding time', unit: 's', digits: 2 },
  discs: { label: 'Discs or sheets', unit: '{count}' },
  lastGrain: { label: 'Last grit size', unit: 'um', digits: 2 },
  area: { label: 'Area to sand, all pieces', unit: 'mm2', minor: true },
} as const satisfies Record<string, FigureDeclaration>;

const factorOfTwo = 'Half and twice: pressure, paper, wood and hand differ by that much.';

/** A time or a count of discs with its band. */
const rough = (value: number) => ({
  value,
  low: value / 2,
  high: value * 2,
  band: factorOfTwo,
  basis: 'shop-practice' as const,
});

/** The discs of some steps: at least one a grit, and whole ones. */
const discsOf = (discs: number, grits: number) => {
  const band = rough(discs);
  return { ...band, low: Math.max(grits, Math.ceil(band.low)) };
};

/**
 * The figures of a sequence.
 *
 * @param area of all pieces together, mm²
 */
export function figuresOf(
  sequence: Sequence,
  last: Grade,
  area: number,
): Partial<Record<keyof typeof figures, FigureValue>> {
  return {
    grits: {
      value: sequence.grits.length,
      basis: 'shop-practice',
      note: `${sequence.grits.map((grade) => grade.id).join(', ')}.`,
    },
    largestStep: { value: sequence.largest, basis: 'derived' },
    time: rough(sequence.minutes * 60),
    discs: discsOf(sequence.discs, sequence.grits.length),
    lastGrain: {
      value: last.micrometres,
      low: last.low,
      high: last.high,
      band: 'What the texts read give, and 10 % either way: a grade is a distribution.',
      basis: last.basis,
      citation: { source: last.source, locator: last.id, seen: last.seen },
      note: equivalentWords(last),
    },
    area: { value: area, basis: 'derived' },
  };
}

/** Discs or sheets of each grit, and the time that sanding takes. */
export function usesOf(sequence: Sequence): Use[] {
  return [
    ...sequence.steps.filter(isSand).map(
      ({ grade, discs, buy }): Use => ({
        id: `discs-${grade.id.toLowerCase().replaceAll(' ', '-')}`,
        what: `Discs or sheets, ${grade.id}`,
        amount: discs,
        ...bandOf(discsOf(discs, 1)),
        unit: '{count}',
        basis: 'shop-practice',
        ...(buy ? { note: 'Not in the drawer.' } : {}),
      }),
    ),
    {
      id: 'sanding-time',
      what: 'Sanding time',
      amount: sequence.minutes * 60,
      ...bandOf(rough(sequence.minutes * 60)),
      unit: 's',
      basis: 'shop-practice',
    },
  ];
}

const bandOf = ({ low, high }: { low: number; high: number }) => ({ low, high });

function equivalentWords(grade: Grade): string {
  const { nearest, printed } = equivalents(grade);
  const prefix = grade.grading === 'P' ? 'ANSI ' : 'P';
  const others = [...new Set(printed.map((pair) => pair.grade))].filter((number) => number !== nearest.number);
  return `${grade.id}; nearest by grain is ${nearest.id}${others.length > 0 ? `, one text prints ${listed(others.map((number) => `${prefix}${number}`))} beside it` : ''}.`;
}

export const isSand = (step: SandStep | RaiseStep): step is SandStep => step.kind === 'sand';

/** What to do, one row a step. */
export function stepTable(sequence: Sequence): ResultTable {
  return {
    id: 'steps',
    title: 'Step by step',
    columns: [
      { id: 'step', label: 'Step', digits: 3 },
      { id: 'what', label: 'What to do' },
      { id: 'grain', label: 'Grain', unit: 'um', digits: 2 },
      { id: 'ratio', label: 'Step in grain', unit: '1', digits: 2 },
      { id: 'time', label: 'Time', unit: 's', digits: 2 },
      { id: 'discs', label: 'Discs', unit: '{count}', digits: 4 },
    ],
    rows: sequence.steps.map((step, at) =>
      isSand(step)
        ? [
            at + 1,
            `${step.light ? `Take the fibres off with ${step.grade.id}: three or four light strokes by hand, no more` : `Sand with ${step.grade.id}${step.wet ? ', wet' : ''}`}${step.buy ? ' (not in the drawer)' : ''}`,
            step.grade.micrometres,
            step.ratio,
            step.minutes * 60,
            step.discs,
          ]
        : [
            at + 1,
            `Raise the grain: wipe with clean water, let dry${step.lightly === step.after ? `, take the fibres off with a worn piece of ${step.after.id}, three or four light strokes by hand` : ''}`,
            null,
            null,
            null,
            null,
          ],
    ),
    basis: 'shop-practice',
  };
}

/** What leaving each grit out would cost. */
export function skipTable(sequence: Sequence): ResultTable {
  return {
    id: 'skipping',
    title: 'What skipping a grit would cost',
    columns: [
      { id: 'grit', label: 'Left out' },
      { id: 'ratio', label: 'Step across the gap', unit: '1', digits: 2 },
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

/** What the sequence rests on. */
export function evidenceOf(sequence: Sequence, finish: string | undefined): EvidenceNote[] {
  const used = new Map(sequence.grits.map((grade) => [grade.source, grade]));
  return [
    ...(finish ? [{ text: finish, basis: 'shop-practice' as const }] : []),
    {
      text: 'The fewest grits by a shortest path from coarse to fine, the steps beyond the limit added up first; of several ways the most even.',
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
