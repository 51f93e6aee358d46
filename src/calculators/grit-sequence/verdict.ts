import type { Grade, Sequence } from '../../model/abrasive/index.ts';
import type { Verdict } from '../../model/evidence/index.ts';
import { amount, listed } from '../../model/quantity/index.ts';
import { isSand } from './figures.ts';

/** A sequence and what it was asked for. */
export interface Sanded {
  sequence: Sequence;
  material: 'wood' | 'resin';
  /** Whether resin lies in the wood. */
  inlaid: boolean;
  limit: number;
  /** Id of the way of sanding. */
  method: string;
  /** The grit that the surface was sanded with, where it was. */
  has?: Grade;
}

/** Grades in a row; of many the first few, the others counted. */
export function list(grades: readonly Grade[]): string {
  const ids = grades.map((grade) => grade.id);
  const shown = ids.length > 4 ? [...ids.slice(0, 3), `${ids.length - 3} more`] : ids;
  return listed(shown);
}

/** What is wrong with the first or the widest step, and the grits that would mend it. */
export function gapWords({ sequence, limit, has }: Sanded): string {
  const [first] = sequence.grits;
  const grains = [...(has ? [has] : []), ...sequence.grits];
  const wide = grains.flatMap((grade, at) => {
    const before = grains[at - 1];
    return before && before.micrometres / grade.micrometres > limit * (1 + 1e-9) ? [`${before.id} to ${grade.id}`] : [];
  });
  return [
    sequence.tooFine ? `${first?.id} is too fine to begin with` : '',
    wide.length > 2
      ? `${wide.length} steps are too wide`
      : wide.length > 0
        ? `the step from ${wide.join(' and from ')} is too wide`
        : '',
  ]
    .filter(Boolean)
    .join(', and ');
}

/** What the sequence comes to: its grits in a row. */
export function verdictOf(sanded: Sanded): Verdict {
  const { sequence, has } = sanded;
  const steps = sequence.steps.map((step) =>
    isSand(step) ? `${step.grade.id}${step.light ? ' lightly by hand' : ''}` : 'water',
  );
  const row = steps.join(', ');
  const cost = `about ${amount(sequence.minutes * 60, 's', 2)} and ${sequence.discs} ${sequence.discs === 1 ? 'disc or sheet' : 'discs or sheets'}`;
  if (sequence.back && has) {
    return {
      level: 'care',
      text: `${sequence.grits.at(-1)?.id} is coarser than the ${has.id} that the surface has: sand it so only to give a coat more hold, ${cost}.`,
    };
  }
  const buy = sequence.steps.filter(isSand).flatMap((step) => (step.buy ? [step.grade] : []));
  if (!sequence.within) {
    const wanted = [...sequence.bridge, ...buy];
    return {
      level: 'care',
      text: `${row}, but ${gapWords(sanded)}${wanted.length > 0 ? `: buy ${list(wanted)}` : ''}. ${cost.charAt(0).toUpperCase()}${cost.slice(1)}.`,
    };
  }
  if (buy.length > 0)
    return { level: 'care', text: `${row}: buy ${list(buy)}. ${cost.charAt(0).toUpperCase()}${cost.slice(1)}.` };
  return { level: 'good', text: `${row}: ${cost}.` };
}
