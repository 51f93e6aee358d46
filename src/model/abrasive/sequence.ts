import { answer, type Outcome, refuse } from '../evidence/index.ts';
import type { Grade } from './grade-data.ts';
import { gradeOf, grades } from './grades.ts';
import { gritPath } from './path.ts';
import { type SandingMethod, type StartSurface, sandingMethodById } from './surfaces.ts';

/** What is to be sanded, from what to what, with which papers. */
export interface SequenceRequest {
  material: 'wood' | 'resin';
  /** What the tool left, or the grade that a surface was already sanded with. */
  start: StartSurface | Grade;
  last: Grade;
  drawer: readonly Grade[];
  /** Largest ratio of one grain size to the next. */
  ratio: number;
  /** Whether water will reach the wood, from its use or from the finish. */
  raiseGrain: boolean;
  /** Area to be sanded, mm². */
  area: number;
  method: SandingMethod;
}

/** Sanding with one grade. */
export interface SandStep {
  kind: 'sand';
  grade: Grade;
  /** Grain size of the step before over that of this one; null for the first after a tool. */
  ratio: number | null;
  /** Whether the paper is used wet, which keeps fine paper from clogging on resin. */
  wet: boolean;
  /** Whether the grade is not in the drawer. */
  buy: boolean;
  /** Whether it only takes raised fibres off: three or four light strokes by hand, since sanding on lays bare new ones. */
  light: boolean;
  /** Rough time, min, and discs or sheets. */
  minutes: number;
  discs: number;
}

/** Wetting the wood, letting it dry and taking the raised fibres off. */
export interface RaiseStep {
  kind: 'raise';
  /** The grade after which it is done, and the one that takes the fibres off, lightly. */
  after: Grade;
  lightly: Grade;
}

/** What leaving a grade out would cost. */
export interface Skip {
  grade: Grade;
  /** Ratio of the step that would span it, and whether that stays within the limit. */
  ratio: number;
  within: boolean;
  /** Time saved by not sanding with it, and added to the grade after it, min. */
  saved: number;
  added: number;
}

/** The way from the tool to the finish. */
export interface Sequence {
  steps: readonly (SandStep | RaiseStep)[];
  grits: readonly Grade[];
  /** Whether every step stays within the limit, the first from the marks of the tool included; and the largest between two grits. */
  within: boolean;
  largest: number;
  /** Whether the first grade is too fine for the marks of the tool. */
  tooFine: boolean;
  /** Whether the last grade is coarser than the one that the surface was sanded with. */
  back: boolean;
  /** Grades that would close the steps that are too wide, where there are any. */
  bridge: readonly Grade[];
  skips: readonly Skip[];
  minutes: number;
  discs: number;
}

/**
 * Usual limits of the ratio from one grain size to the next. At 1.7 a sequence of the usual P grades leaves out one of them
 * at most; common practice.
 */
export const usualRatio = { wood: 1.7, resin: 1.7 };

/** The grade after which wood is wetted, and what is as fine: common practice. */
export const raiseAfter = 220;

/** The first grade that is used wet on resin: common practice. */
export const wetFrom = 400;

/** The ratio that the usual times per grade are for; a wider step takes longer in proportion. */
const timedRatio = 1.5;

/** Grain sizes nearer than this are the same grain. */
const same = 1.05;

const sizeOf = (number: number) => (gradeOf('P', number) as Grade).micrometres;
const isSurface = (start: StartSurface | Grade): start is StartSurface => 'first' in start;

/** Light strokes by hand take this share of the time and paper of sanding by hand. Common practice. */
const lightShare = 1 / 4;

function timedLight(area: number): { minutes: number; discs: number } {
  const hand = sandingMethodById('by-hand') as SandingMethod;
  const squareMetres = area / 1e6;
  return {
    minutes: squareMetres * hand.minutes * lightShare,
    discs: Math.max(1, Math.ceil((squareMetres * lightShare) / hand.fine - 1e-9)),
  };
}

function timed(request: SequenceRequest, grade: Grade, ratio: number): { minutes: number; discs: number } {
  const squareMetres = request.area / 1e6;
  const perDisc = grade.micrometres * same >= sizeOf(150) ? request.method.coarse : request.method.fine;
  return {
    minutes: squareMetres * request.method.minutes * (Math.max(1, ratio) / timedRatio),
    discs: Math.max(1, Math.ceil(squareMetres / perDisc - 1e-9)),
  };
}

/** Where to raise the grain: before the last grade, where the one before it is as fine as P220; else after the last. */
function raiseStep(grits: readonly Grade[]): { at: number; step: RaiseStep } {
  const before = grits.at(-2);
  const at = before && before.micrometres <= sizeOf(raiseAfter) * same ? grits.length - 2 : grits.length - 1;
  const after = grits[at] as Grade;
  return { at, step: { kind: 'raise', after, lightly: grits[at + 1] ?? after } };
}

/**
 * Grades, of the grading of the last one, that part each step which is too wide into steps within the limit.
 *
 * @param entry what the first grade follows; a surface where it is coarse enough for that needs no bridge
 */
function bridges(grits: readonly Grade[], entry: { first: number } | { sanded: number }, limit: number): Grade[] {
  const last = grits.at(-1) as Grade;
  const known = grades.filter((grade) => grade.grading === last.grading && grade.basis !== 'memory');
  return grits.flatMap((grade, at) => {
    const from = at === 0 ? entry : { sanded: (grits[at - 1] as Grade).micrometres };
    const fits =
      'first' in from ? grade.micrometres * same >= from.first : from.sanded / grade.micrometres <= limit * (1 + 1e-9);
    return fits ? [] : gritPath(known, grade, from, limit).grades.slice(0, -1);
  });
}

/**
 * The fewest grades from a surface to its finish, with the step that raises the grain, what leaving a grade out would cost, and
 * rough time and paper. Times, paper and the limit are common practice, to a factor of two.
 */
export function gritSequence(request: SequenceRequest): Outcome<Sequence> {
  const { start, last, drawer, ratio, material } = request;
  if (!(ratio > 1.05 && ratio <= 10)) {
    return refuse('ratio', `A limit of ${ratio} is not between 1.05 and 10`, 'Give a ratio such as 1.7.');
  }
  if (!(request.area > 0 && request.area <= 1e9)) {
    return refuse('area', `An area of ${request.area} mm² cannot be sanded`, 'Give an area up to 1000 m².');
  }
  const entry = isSurface(start) ? { first: sizeOf(start.first) } : { sanded: start.micrometres };
  const path = gritPath(drawer, last, entry, ratio);
  const grits = path.grades;
  const held = new Set(drawer.map((grade) => grade.id));
  // A tool's marks are taken for those of a grade one usual step coarser than the one that takes them out; where the drawer
  // has none so coarse, for the widest step that the limit allows.
  const tooFine = 'first' in entry && (grits[0] as Grade).micrometres * same < entry.first;
  const before = 'sanded' in entry ? entry.sanded : entry.first * (tooFine ? ratio : timedRatio);
  const ratioAt = (at: number) =>
    (at === 0 ? before : (grits[at - 1] as Grade).micrometres) / (grits[at] as Grade).micrometres;
  const sanding = grits.map(
    (grade, at): SandStep => ({
      kind: 'sand',
      grade,
      ratio: at === 0 && isSurface(start) ? null : ratioAt(at),
      wet: material === 'resin' && grade.micrometres <= sizeOf(wetFrom) * same,
      buy: !held.has(grade.id),
      light: false,
      ...timed(request, grade, ratioAt(at)),
    }),
  );
  const skips = grits.slice(1, -1).map((grade, index): Skip => {
    const at = index + 1;
    const next = grits[at + 1] as Grade;
    const wide = (grits[at - 1] as Grade).micrometres / next.micrometres;
    return {
      grade,
      ratio: wide,
      within: wide <= ratio * (1 + 1e-9),
      saved: (sanding[at] as SandStep).minutes,
      added: timed(request, next, wide).minutes - timed(request, next, ratioAt(at + 1)).minutes,
    };
  });
  const steps: (SandStep | RaiseStep)[] = [...sanding];
  if (material === 'wood' && request.raiseGrain) {
    const { at, step } = raiseStep(grits);
    const fibres = sanding[at + 1];
    if (fibres) sanding[at + 1] = { ...fibres, light: true, ...timedLight(request.area) };
    steps.splice(0, steps.length, ...sanding.slice(0, at + 1), step, ...sanding.slice(at + 1));
  }
  return answer({
    steps,
    grits,
    within: path.within,
    largest: path.largest,
    tooFine,
    back: 'sanded' in entry && entry.sanded * same < last.micrometres,
    bridge: path.within ? [] : bridges(grits, entry, ratio),
    skips,
    minutes: sanding.reduce((sum, step) => sum + step.minutes, 0),
    discs: sanding.reduce((sum, step) => sum + step.discs, 0),
  });
}
