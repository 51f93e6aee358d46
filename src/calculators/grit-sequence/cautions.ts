import { wetFrom } from '../../model/abrasive/index.ts';
import { cautionById } from '../../model/evidence/cautions.ts';
import type { Caution } from '../../model/evidence/index.ts';
import { isSand } from './figures.ts';
import { gapWords, list, type Sanded } from './verdict.ts';

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
