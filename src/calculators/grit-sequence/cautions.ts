import { type Grade, type Sequence, wetFrom } from '../../model/abrasive/index.ts';
import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution, Verdict } from '../../model/evidence/index.ts';
import { amount } from '../../model/quantity/index.ts';
import { isSand } from './result.ts';

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
function list(grades: readonly Grade[]): string {
  const ids = grades.map((grade) => grade.id);
  const shown = ids.length > 4 ? [...ids.slice(0, 3), `${ids.length - 3} more`] : ids;
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}

/** What is wrong with the first or the widest step, and the grits that would mend it. */
function gapWords({ sequence, limit, has }: Sanded): string {
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

/** What to beware of. */
export function cautionsOf(sanded: Sanded): Caution[] {
  const { sequence, material, inlaid, limit, method, has } = sanded;
  const shared = (...ids: string[]) => ids.flatMap((id) => cautionById(id) ?? []);
  const practice = (id: string, level: Caution['level'], text: string, why: string, own = false): Caution => ({
    id,
    level,
    text,
    why,
    ...(own ? { own } : {}),
    basis: 'shop-practice',
  });
  const toBuy = sequence.steps.filter(isSand).filter((step) => step.buy);
  const raise = sequence.steps.find((step) => step.kind === 'raise');
  const last = sequence.grits.at(-1);
  const finer = last !== undefined && last.grading === 'P' && last.number >= wetFrom;
  return [
    ...(sequence.within
      ? []
      : [
          practice(
            'step-too-wide',
            'warning',
            `${sequence.bridge.length > 0 ? `Buy ${list(sequence.bridge)}` : 'No grade between is known'}: ${gapWords(sanded)}.`,
            `The limit is ${limit} times the grain. ${sequence.tooFine ? 'The marks of the tool will show through.' : 'Scratches of the coarser grit will show through.'}`,
            true,
          ),
        ]),
    ...(toBuy.length > 0
      ? [
          practice(
            'grit-to-buy',
            'note',
            `Buy ${list(toBuy.map((step) => step.grade))}.`,
            'It is not in the drawer.',
            true,
          ),
        ]
      : []),
    ...(sequence.back && has && last
      ? [
          practice(
            'goes-back',
            'warning',
            `Stop at ${has.id}, or go on to a finer grit, unless a coat needs the coarser surface.`,
            `${last.id} puts deeper scratches in than are there.`,
            true,
          ),
        ]
      : []),
    ...(inlaid && finer
      ? [
          practice(
            'polish-beside-wood',
            'warning',
            'Polish the inlay before the board is finished, with the wood around it masked, and let no water stand on it.',
            `Past P${wetFrom} paper is used wet on resin; wood takes the water and the sludge up, and shines unevenly.`,
            true,
          ),
        ]
      : []),
    practice(
      'skipped-scratches',
      'note',
      'Look along a low light before each change of grit.',
      'Skipping a grit saves minutes on paper and costs in the surface: the next grit must take out scratches deeper than its own, a hand stops before it has, and what is left shows only under the finish.',
    ),
    ...(raise
      ? [
          practice(
            'raised-grain',
            'note',
            `Raise the grain after ${raise.after.id} and let it dry for hours, not minutes.`,
            'Then the first washing finds nothing left to raise. Sanding on afterwards lays bare new fibres, and it all starts again.',
          ),
        ]
      : []),
    ...(material === 'resin' || inlaid ? shared('resin-dust') : []),
    ...(material === 'resin' ? shared('wet-sanding') : []),
    ...shared('wood-dust', 'sanding-dust-fire'),
    ...(method === 'drum' ? shared('sander-guards') : []),
    ...(method === 'by-hand' ? [] : shared('noise')),
  ];
}
