import type { EvidenceNote } from '../../model/evidence/index.ts';
import { leftToSand, usualLimits } from '../../model/outline/index.ts';
import { amount } from '../../model/quantity/index.ts';
import type { Found } from './found.ts';
import { usual } from './inputs.ts';

/** What an answer rests on: our own geometry, and the limits of common practice. */
export function evidenceOf({ shape, nest }: Found): EvidenceNote[] {
  const { along, endGrain, marked, steep } = usualLimits;
  return [
    {
      text: `Lengths, areas and radii are measured on the outline’s own curves; places are found on polylines within ${amount(shape.tolerance, 'mm')} of them.`,
      basis: 'derived',
      citation: { source: 'kerf-and-cure', locator: 'Checks of outlines' },
    },
    {
      text: `The direction of the cut follows from the rotation of the bit. Up to ${along}° to the fibres counts as along the grain, from ${endGrain}° as end grain, from ${marked}° as marked and from ${steep}° as steep.`,
      basis: 'shop-practice',
    },
    {
      text: `Up to ${amount(leftToSand, 'mm')} left by the bit is sanded away and not counted. Parts up to ${amount(usual.shortGrainBelow, 'mm')} wide whose line across lies within 45° of the grain count as short-grained, unless told otherwise.`,
      basis: 'shop-practice',
    },
    {
      text: 'The grain is taken as straight and level, as the angle says. Around knots and in wild grain it is not, and the wood decides.',
      basis: 'shop-practice',
    },
    ...(nest
      ? [
          {
            text: 'Copies are laid in straight rows; this is safe, and not the best possible.',
            basis: 'derived' as const,
          },
        ]
      : []),
  ];
}
